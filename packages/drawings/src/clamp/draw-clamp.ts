import { clampOn, leadPost } from '../closeup/battery-scene.ts';
import { element } from '../svg/element.ts';
import { drawLegend } from '../svg/legend.ts';
import type { Pen, Point } from '../svg/pen.ts';
import { frame, penFor, type DrawingOptions } from '../svg/picture.ts';

const panelHeight = 150;

/**
 * How to hold a clamp meter: its jaws round the ground cable with every wire that goes to that
 * post, and not round plus and minus together. Pure; deterministic.
 */
export function drawClamp(options: DrawingOptions): string {
  const pen = penFor(options);
  const { speaker } = options;
  const rightText = speaker.drawing('clampRight');
  const wrongText = speaker.drawing('clampWrong');
  const panel = (top: number, shapes: readonly string[]): string =>
    element('g', { transform: `translate(0 ${top})` }, shapes);
  const legendOf = (text: string, sign: Sign, top: number): ReturnType<typeof drawLegend> =>
    drawLegend([{ text, sign: { width: 22, draw: (middle) => sign(middle, pen) } }], top, pen);

  const right = legendOf(rightText, tick, panelHeight + 4);
  const second = right.end + 10;
  const wrong = legendOf(wrongText, cross, second + panelHeight + 4);
  return frame(
    {
      title: speaker.drawing('clamp'),
      description: `${rightText}\n${wrongText}`,
      height: wrong.end + 6,
      shapes: [
        panel(0, rightPanel(pen)),
        ...right.shapes,
        panel(second, wrongPanel(pen)),
        ...wrong.shapes,
      ],
    },
    pen,
    options,
  );
}

type Sign = (middle: Point, pen: Pen) => string[];

function ring([cx, cy]: Point, pen: Pen, stroke: string): string {
  return pen.shape('circle', { cx, cy, r: 11, fill: pen.palette.paper, stroke, 'stroke-width': 2 });
}

const tick: Sign = ([x, y], pen) => [
  ring([x, y], pen, pen.palette.sound),
  pen.line(
    [
      [x - 5, y],
      [x - 1, y + 4.5],
      [x + 5.5, y - 4.5],
    ],
    { stroke: pen.palette.ink, 'stroke-width': 2.5 },
  ),
];

const cross: Sign = ([x, y], pen) => [
  ring([x, y], pen, pen.palette.red),
  pen.line(
    [
      [x - 4.5, y - 4.5],
      [x + 4.5, y + 4.5],
    ],
    { stroke: pen.palette.ink, 'stroke-width': 2.5 },
  ),
  pen.line(
    [
      [x + 4.5, y - 4.5],
      [x - 4.5, y + 4.5],
    ],
    { stroke: pen.palette.ink, 'stroke-width': 2.5 },
  ),
];

/** The minus post at the left edge, its thick and its thin wire both inside the jaws. */
function rightPanel(pen: Pen): string[] {
  const thin = pen.path('M100 62L150 44L390 44', { 'stroke-width': 3 });
  return [
    batteryEdge(pen),
    ...leadPost([62, 84], '-', pen),
    ...clampOn([62, 84], 1, pen),
    thin,
    ...clampMeter(
      {
        at: [240, 58],
        radius: 36,
        through: [
          pen.path('M102 72L390 72', { 'stroke-width': 12, 'stroke-linecap': 'butt' }),
          pen.path('M150 44L390 44', { 'stroke-width': 3, 'stroke-linecap': 'butt' }),
        ],
      },
      pen,
    ),
    ...tick([360, 18], pen),
  ];
}

/** Both cables of a battery inside the jaws. */
function wrongPanel(pen: Pen): string[] {
  return [
    batteryEdge(pen),
    ...leadPost([62, 84], '+', pen),
    ...leadPost([124, 84], '-', pen),
    ...clampOn([124, 84], 1, pen),
    ...clampOn([62, 84], -1, pen),
    pen.path('M8 78L8 30L390 30', { 'stroke-width': 12, 'stroke-linecap': 'butt' }),
    ...clampMeter(
      {
        at: [240, 51],
        radius: 42,
        through: [
          pen.path('M8 30L390 30', { 'stroke-width': 12, 'stroke-linecap': 'butt' }),
          pen.path('M164 72L390 72', { 'stroke-width': 12, 'stroke-linecap': 'butt' }),
        ],
      },
      pen,
    ),
    ...signs(pen),
    ...cross([360, 108], pen),
  ];
}

/** Which cable is which, on the cables. */
function signs(pen: Pen): string[] {
  const stroke = { stroke: pen.palette.paper, 'stroke-width': 2.5 };
  return [
    pen.path('M180 30L190 30', stroke),
    pen.path('M185 26.5L185 33.5', stroke),
    pen.path('M180 72L190 72', stroke),
  ];
}

function batteryEdge(pen: Pen): string {
  return pen.shape('rect', {
    x: -6,
    y: 84,
    width: 170,
    height: 56,
    rx: 6,
    fill: pen.palette.tint,
    stroke: pen.palette.line,
    'stroke-width': 1.5,
  });
}

/** A clamp meter's jaws: their middle, half their height, and what runs through them. */
interface Held {
  readonly at: Point;
  readonly radius: number;
  readonly through: readonly string[];
}

/** A clamp meter whose jaws stand round what is drawn through them. */
function clampMeter({ at: [x, y], radius, through }: Held, pen: Pen): string[] {
  const { palette } = pen;
  const rim = { stroke: palette.ink, 'stroke-width': 1.5 };
  const foot = y + radius;
  return [
    // The far side of the jaws lies behind the cables, the near one over them.
    pen.shape('ellipse', {
      cx: x,
      cy: y,
      rx: 22,
      ry: radius,
      fill: 'none',
      stroke: palette.ink,
      'stroke-width': 9,
    }),
    pen.shape('ellipse', {
      cx: x,
      cy: y,
      rx: 22,
      ry: radius,
      fill: 'none',
      stroke: palette.deep,
      'stroke-width': 6,
    }),
    ...through,
    pen.shape('path', {
      d: `M${x} ${y - radius}A22 ${radius} 0 0 0 ${x} ${foot}`,
      fill: 'none',
      stroke: palette.ink,
      'stroke-width': 9,
    }),
    pen.shape('path', {
      d: `M${x} ${y - radius}A22 ${radius} 0 0 0 ${x} ${foot}`,
      fill: 'none',
      stroke: palette.deep,
      'stroke-width': 6,
    }),
    pen.shape('rect', {
      x: x - 24,
      y: foot - 2,
      width: 48,
      height: panelHeight - foot - 4,
      rx: 6,
      fill: palette.deep,
      ...rim,
    }),
    pen.shape('rect', {
      x: x - 17,
      y: foot + 6,
      width: 34,
      height: 22,
      rx: 2,
      fill: palette.paper,
      ...rim,
    }),
    pen.text('A', { x, y: foot + 22, anchor: 'middle', weight: 'bold' }),
  ];
}
