import type { Pen } from '../svg/pen.ts';
import type { Scene } from './scene.ts';

/** A stud with its nut, standing out to the right. */
function stud(x: number, y: number, pen: Pen): string[] {
  const { palette } = pen;
  return [
    pen.shape('rect', {
      x,
      y: y - 4,
      width: 30,
      height: 8,
      fill: palette.paper,
      stroke: palette.line,
      'stroke-width': 1.5,
    }),
    pen.shape('rect', {
      x: x + 4,
      y: y - 8,
      width: 9,
      height: 16,
      fill: palette.deep,
      stroke: palette.line,
      'stroke-width': 1.5,
    }),
  ];
}

/** A starter from the side: the large cylinder is the motor, the small one on it the solenoid. */
export const starterScene: Scene = {
  height: 226,
  draw: (pen, speaker) => {
    const { palette } = pen;
    const rim = { stroke: palette.line, 'stroke-width': 1.5 };
    const teeth = [0, 1, 2, 3].map((tooth) =>
      pen.line(
        [
          [66, 148 + tooth * 9],
          [88, 148 + tooth * 9],
        ],
        { 'stroke-width': 2 },
      ),
    );
    return [
      pen.shape('rect', { x: 0, y: 84, width: 44, height: 130, fill: palette.deep, ...rim }),
      pen.shape('rect', {
        x: 44,
        y: 112,
        width: 66,
        height: 94,
        rx: 8,
        fill: palette.tint,
        ...rim,
      }),
      pen.shape('rect', { x: 64, y: 140, width: 26, height: 44, fill: palette.paper, ...rim }),
      ...teeth,
      pen.shape('rect', {
        x: 110,
        y: 118,
        width: 200,
        height: 92,
        rx: 10,
        fill: palette.tint,
        ...rim,
      }),
      pen.path('M290 119L290 209'),
      pen.path('M350 92L366 92L366 150L310 150', { 'stroke-width': 6 }),
      pen.path('M350 56L390 56', { 'stroke-width': 12, 'stroke-linecap': 'butt' }),
      pen.shape('rect', {
        x: 128,
        y: 40,
        width: 160,
        height: 70,
        rx: 8,
        fill: palette.deep,
        ...rim,
      }),
      pen.shape('rect', { x: 288, y: 46, width: 34, height: 58, fill: palette.paper, ...rim }),
      ...stud(322, 56, pen),
      ...stud(322, 92, pen),
      pen.shape('rect', { x: 301, y: 32, width: 8, height: 14, fill: palette.tint, ...rim }),
      pen.text(speaker.drawing('solenoid').replaceAll('\u00ad', ''), {
        x: 208,
        y: 80,
        anchor: 'middle',
      }),
      pen.text(speaker.drawing('starter'), { x: 200, y: 196, anchor: 'middle' }),
    ];
  },
  places: {
    'starter-main-stud': { at: [350, 56], tag: [344, 20] },
    'starter-motor-stud': { at: [350, 92], tag: [340, 124] },
    'starter-body': { at: [160, 140], tag: [220, 164] },
    'engine-metal': { at: [22, 120], tag: [56, 96] },
    'solenoid-control-terminal': { at: [305, 34], tag: [250, 18] },
  },
};
