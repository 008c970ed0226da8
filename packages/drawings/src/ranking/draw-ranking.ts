import type { Rendered, RenderedFault, Teller } from '@keyturn/language';
import { lineHeight, textSize, textWidth, type Pen } from '../svg/pen.ts';
import { frame, margin, penFor, pictureWidth, type DrawingOptions } from '../svg/picture.ts';
import { wrap } from '../text/wrap.ts';

/** A ranking in words, as a speaker renders it. */
export type RenderedRanking = Extract<Rendered, { readonly kind: 'ranking' }>;

const barHeight = 16;
const small = { size: 12, weight: 'regular' } as const;
const heading = { size: 15, weight: 'bold' } as const;
const figure = { size: textSize, weight: 'bold' } as const;

/** All that the rows go by. */
interface Drawing {
  readonly pen: Pen;
  readonly speaker: Teller;
  /** The longest a bar can be. */
  readonly track: number;
  /** The x of a distance from the side where the language begins. */
  readonly from: (distance: number) => number;
}

/**
 * The faults that fit best, as bars: filled how likely each is now, dashed how likely it was a turn
 * before, with an arrow from then to now. Where the language runs from right to left so do the
 * bars. Pure; deterministic.
 */
export function drawRanking(ranking: RenderedRanking, options: DrawingOptions): string {
  const pen = penFor(options);
  const { speaker } = options;
  const widest = Math.max(
    0,
    ...ranking.faults.map(({ share }) => textWidth(speaker.formatPercent(share), figure)),
  );
  const track = pictureWidth - 2 * margin - widest - 8;
  const from = (distance: number): number =>
    pen.rightToLeft ? pictureWidth - margin - distance : margin + distance;
  const drawing = { pen, speaker, track, from };

  const headings = wrap(ranking.heading, pictureWidth - 2 * margin, heading);
  const shapes = pen.lines(headings, {
    ...heading,
    x: from(0),
    y: margin + heading.size,
    anchor: pen.rightToLeft ? 'end' : 'start',
  });
  let y = margin + headings.length * heading.size * lineHeight + 8;
  for (const fault of ranking.faults) {
    const row = drawRow(fault, y, drawing);
    shapes.push(...row.shapes);
    y = row.end + 10;
  }
  return frame(
    {
      title: ranking.heading,
      description: ranking.faults
        .map(({ name, share, before }) =>
          speaker.drawing('share', {
            name,
            share: speaker.formatPercent(share),
            before: speaker.formatPercent(before),
          }),
        )
        .join('\n'),
      height: y + 2,
      shapes,
    },
    pen,
    options,
  );
}

function drawRow(
  { name, share, before }: RenderedFault,
  top: number,
  { pen, speaker, track, from }: Drawing,
): { readonly shapes: string[]; readonly end: number } {
  const { palette, rightToLeft } = pen;
  const now = speaker.formatPercent(share);
  const was = speaker.formatPercent(before);
  const moved = now !== was;
  const wasText = moved ? speaker.drawing('was', { share: was }) : '';
  const room = pictureWidth - 2 * margin - (moved ? textWidth(wasText, small) + 12 : 0);
  const lines = wrap(name, room, { size: textSize, weight: 'regular' });
  const [begin, end] = rightToLeft ? (['end', 'start'] as const) : (['start', 'end'] as const);
  const bar = top + lines.length * textSize * lineHeight + 3;
  const box = (
    width: number,
  ): {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  } => ({
    x: Math.min(from(0), from(width)),
    y: bar,
    width,
    height: barHeight,
  });
  return {
    shapes: [
      ...pen.lines(lines, { x: from(0), y: top + textSize, anchor: begin }),
      ...(moved
        ? [
            pen.text(wasText, {
              ...small,
              x: from(pictureWidth - 2 * margin),
              y: top + textSize,
              anchor: end,
              colour: 'soft',
            }),
          ]
        : []),
      pen.shape('rect', { ...box(track), fill: palette.tint }),
      pen.shape('rect', { ...box(Math.max(2, share * track)), fill: palette.suspect }),
      ...(moved
        ? movement({ before: before * track, now: share * track, top: bar }, { pen, from })
        : []),
      pen.text(now, { ...figure, x: from(track + 8), y: bar + 13, anchor: begin }),
    ],
    end: bar + barHeight + (moved ? 9 : 0),
  };
}

/** How a bar moved: its end before, dashed, and an arrow below from there to where it ends now. */
function movement(
  { before, now, top }: Readonly<Record<'before' | 'now' | 'top', number>>,
  { pen, from }: Pick<Drawing, 'pen' | 'from'>,
): string[] {
  const { palette } = pen;
  const y = top + barHeight + 5;
  const [x0, x1] = [from(before), from(now)];
  const back = x1 > x0 ? -1 : 1;
  const stroke = { stroke: palette.ink, 'stroke-width': 1.5 };
  const head = Math.min(6, Math.abs(x1 - x0));
  return [
    pen.line(
      [
        [x0, top - 1],
        [x0, y + 3],
      ],
      { ...stroke, 'stroke-dasharray': '3 3', 'stroke-linecap': 'butt' },
    ),
    pen.line(
      [
        [x0, y],
        [x1, y],
      ],
      stroke,
    ),
    pen.line(
      [
        [x1 + back * head, y - 3.5],
        [x1, y],
        [x1 + back * head, y + 3.5],
      ],
      stroke,
    ),
  ];
}
