import type { Pen, Point } from '../svg/pen.ts';
import type { Scene } from './scene.ts';

const bold = { 'stroke-width': 2.5 } as const;

/** A lead post on its battery, its sign beneath: wider at its foot, as posts are. */
export function leadPost([x, foot]: Point, sign: '+' | '-', pen: Pen): string[] {
  const { palette } = pen;
  const stroke = palette.ink;
  return [
    pen.shape('path', {
      d: `M${x - 13} ${foot - 42}L${x + 13} ${foot - 42}L${x + 17} ${foot}L${x - 17} ${foot}Z`,
      fill: palette.deep,
      stroke: palette.line,
      'stroke-width': 1.5,
    }),
    pen.line(
      [
        [x - 8, foot + 16],
        [x + 8, foot + 16],
      ],
      { ...bold, stroke },
    ),
    ...(sign === '+'
      ? [
          pen.line(
            [
              [x, foot + 8],
              [x, foot + 24],
            ],
            { ...bold, stroke },
          ),
        ]
      : []),
  ];
}

/** A clamp round the foot of a post, its bolt and cable to one side: -1 left, 1 right. */
export function clampOn([x, foot]: Point, side: -1 | 1, pen: Pen): string[] {
  const { palette } = pen;
  const rim = { stroke: palette.line, 'stroke-width': 1.5 };
  const end = side < 0 ? 0 : 390;
  return [
    pen.line(
      [
        [x + side * 30, foot - 12],
        [end, foot - 12],
      ],
      { 'stroke-width': 12, 'stroke-linecap': 'butt' },
    ),
    pen.shape('rect', {
      x: x - 28,
      y: foot - 21,
      width: 56,
      height: 18,
      rx: 5,
      fill: palette.paper,
      ...rim,
    }),
    pen.shape('rect', {
      x: side < 0 ? x - 40 : x + 28,
      y: foot - 24,
      width: 12,
      height: 24,
      rx: 2,
      fill: palette.tint,
      ...rim,
    }),
  ];
}

/** A battery from the side: the posts stand out above their clamps. */
export const batteryScene: Scene = {
  height: 176,
  draw: (pen, speaker) => [
    pen.shape('rect', {
      x: 60,
      y: 100,
      width: 270,
      height: 70,
      rx: 6,
      fill: pen.palette.tint,
      stroke: pen.palette.line,
      'stroke-width': 1.5,
    }),
    ...leadPost([125, 100], '+', pen),
    ...leadPost([265, 100], '-', pen),
    ...clampOn([125, 100], -1, pen),
    ...clampOn([265, 100], 1, pen),
    pen.text(speaker.drawing('battery'), { x: 195, y: 158, anchor: 'middle' }),
  ],
  places: {
    'battery-positive-post': { at: [125, 59], tag: [100, 24] },
    'battery-negative-post': { at: [265, 59], tag: [290, 24] },
    'battery-positive-clamp': { at: [146, 88], tag: [190, 62] },
    'battery-negative-clamp': { at: [244, 88], tag: [200, 62] },
  },
};

/** Two batteries in a row, each measured on its own posts. */
export const pairScene: Scene = {
  height: 156,
  draw: (pen) => [
    ...[14, 204].map((x) =>
      pen.shape('rect', {
        x,
        y: 96,
        width: 172,
        height: 54,
        rx: 6,
        fill: pen.palette.tint,
        stroke: pen.palette.line,
        'stroke-width': 1.5,
      }),
    ),
    ...leadPost([56, 96], '+', pen),
    ...leadPost([144, 96], '-', pen),
    ...leadPost([246, 96], '+', pen),
    ...leadPost([334, 96], '-', pen),
    pen.path('M144 84L246 84', { 'stroke-width': 9, 'stroke-linecap': 'butt' }),
  ],
  places: {
    'battery-a': {
      says: 'first',
      sign: [100, 134],
      red: { at: [56, 55], tag: [52, 22] },
      black: { at: [144, 55], tag: [148, 22] },
    },
    'battery-b': {
      says: 'second',
      sign: [290, 134],
      red: { at: [246, 55], tag: [242, 22] },
      black: { at: [334, 55], tag: [338, 22] },
    },
  },
};
