import type { Teller } from '@keyturn/language';
import { drawLegend } from '../svg/legend.ts';
import type { Box } from '../svg/hatch.ts';
import { lineHeight, type Pen, type Point } from '../svg/pen.ts';
import { frame, penFor, type DrawingOptions } from '../svg/picture.ts';
import { wrap } from '../text/wrap.ts';

const size = 12;

/**
 * Where the parts of the start circuit are in general: an engine bay from above, much simplified,
 * and what may be otherwise. Common practice, no source. Pure; deterministic.
 */
export function drawPlaces(options: DrawingOptions): string {
  const pen = penFor(options);
  const { speaker } = options;
  const note = speaker.drawing('placesShow');
  const legend = drawLegend([{ text: note }], 322, pen);
  return frame(
    {
      title: speaker.drawing('places'),
      description: [
        note,
        ...(
          [
            'battery',
            'fuseBox',
            'engine',
            'gearbox',
            'starter',
            'positiveCable',
            'groundCable',
          ] as const
        ).map((name) => speaker.drawing(name).replaceAll('\u00ad', '')),
      ].join('\n'),
      height: legend.end + 6,
      shapes: [...bay(pen, speaker), ...legend.shapes],
    },
    pen,
    options,
  );
}

function bay(pen: Pen, speaker: Teller): string[] {
  const { palette } = pen;
  const rim = { stroke: palette.line, 'stroke-width': 1.5 };
  const box = (outline: Box, fill: string): string =>
    pen.shape('rect', { ...outline, rx: 6, fill, ...rim });
  const name = (
    text: string,
    [x, y]: Point,
    room: { readonly width: number; readonly anchor?: 'end' },
  ): string[] => {
    const { width, anchor = 'middle' } = room;
    const lines = wrap(text, width, { size, weight: 'regular' });
    const first = y - ((lines.length - 1) * size * lineHeight) / 2;
    return pen.lines(lines, { x, y: first + 4, anchor, size });
  };
  const thick = { 'stroke-width': 5 };
  return [
    // The front of the vehicle, wheels to both sides.
    pen.shape('path', {
      d: 'M40 308L40 96Q40 36 110 34L280 34Q350 36 350 96L350 308',
      fill: palette.tint,
      ...rim,
    }),
    pen.shape('rect', { x: 14, y: 120, width: 22, height: 84, rx: 8, fill: palette.deep, ...rim }),
    pen.shape('rect', { x: 354, y: 120, width: 22, height: 84, rx: 8, fill: palette.deep, ...rim }),
    pen.path('M195 30L195 12', { stroke: palette.ink, 'stroke-width': 2 }),
    pen.path('M189 18L195 11L201 18', { stroke: palette.ink, 'stroke-width': 2 }),
    pen.text(speaker.drawing('front'), { x: 210, y: 24, size }),
    // The engine lies across, the gearbox beside it, the starter low down where the two meet.
    box({ x: 60, y: 136, width: 142, height: 104 }, palette.deep),
    box({ x: 202, y: 150, width: 90, height: 78 }, palette.paper),
    box({ x: 236, y: 50, width: 90, height: 62 }, palette.paper),
    box({ x: 98, y: 50, width: 124, height: 56 }, palette.paper),
    pen.path('M262 112L262 150', thick),
    pen.path('M312 112L312 234L250 234', thick),
    pen.shape('rect', {
      x: 160,
      y: 212,
      width: 90,
      height: 42,
      rx: 6,
      fill: palette.paper,
      stroke: palette.ink,
      'stroke-width': 2,
      'stroke-dasharray': '5 4',
    }),
    ...name(speaker.drawing('engine'), [122, 180], { width: 110 }),
    ...name(speaker.drawing('gearbox'), [247, 182], { width: 84 }),
    ...name(speaker.drawing('battery'), [281, 81], { width: 82 }),
    ...name(speaker.drawing('fuseBox'), [160, 78], { width: 116 }),
    ...name(speaker.drawing('starter'), [205, 233], { width: 84 }),
    ...name(speaker.drawing('positiveCable'), [298, 252], { width: 84 }),
    ...name(speaker.drawing('groundCable'), [252, 122], { width: 180, anchor: 'end' }),
  ];
}
