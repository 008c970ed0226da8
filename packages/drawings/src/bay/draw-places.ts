import type { Speaker } from '@keyturn/language';
import { drawLegend } from '../svg/legend.ts';
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

function bay(pen: Pen, speaker: Speaker): string[] {
  const { palette } = pen;
  const rim = { stroke: palette.line, 'stroke-width': 1.5 };
  const box = (x: number, y: number, width: number, height: number, fill: string): string =>
    pen.shape('rect', { x, y, width, height, rx: 6, fill, ...rim });
  const name = (text: string, [x, y]: Point, width: number): string[] => {
    const lines = wrap(text, width, { size, weight: 'regular' });
    const first = y - ((lines.length - 1) * size * lineHeight) / 2;
    return pen.lines(lines, { x, y: first + 4, anchor: 'middle', size, rim: true });
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
    pen.line(
      [
        [195, 30],
        [195, 12],
      ],
      { stroke: palette.ink, 'stroke-width': 2 },
    ),
    pen.line(
      [
        [189, 18],
        [195, 11],
        [201, 18],
      ],
      { stroke: palette.ink, 'stroke-width': 2 },
    ),
    pen.text(speaker.drawing('front'), { x: 210, y: 24, size }),
    // The engine lies across, the gearbox beside it, the starter low down where the two meet.
    box(60, 136, 142, 104, palette.deep),
    box(202, 150, 90, 78, palette.paper),
    box(252, 50, 86, 62, palette.paper),
    box(116, 50, 122, 56, palette.paper),
    pen.line(
      [
        [272, 112],
        [272, 150],
      ],
      thick,
    ),
    pen.line(
      [
        [318, 112],
        [318, 234],
        [250, 234],
      ],
      thick,
    ),
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
    ...name(speaker.drawing('engine'), [122, 180], 110),
    ...name(speaker.drawing('gearbox'), [247, 182], 84),
    ...name(speaker.drawing('battery'), [295, 81], 80),
    ...name(speaker.drawing('fuseBox'), [177, 78], 116),
    ...name(speaker.drawing('starter'), [205, 233], 84),
    ...name(speaker.drawing('positiveCable'), [286, 254], 100),
    ...name(speaker.drawing('groundCable'), [180, 122], 160),
  ];
}
