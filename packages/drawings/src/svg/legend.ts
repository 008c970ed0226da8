import { wrap } from '../text/wrap.ts';
import { lineHeight, type Pen, type Point } from './pen.ts';
import { margin, pictureWidth } from './picture.ts';

/** A line under a picture: a sign, if it has one, and what it stands for. */
export interface LegendRow {
  readonly text: string;
  readonly weight?: 'regular' | 'bold';
  readonly sign?: {
    readonly width: number;
    readonly draw: (middle: Point) => string[];
  };
}

const size = 13;
const step = size * lineHeight;
const rowGap = 6;

/** Rows one below the other from `top`, signs at the side where the language begins. */
export function drawLegend(
  rows: readonly LegendRow[],
  top: number,
  pen: Pen,
): { readonly shapes: string[]; readonly end: number } {
  const signs = Math.max(0, ...rows.map(({ sign }) => sign?.width ?? 0));
  const begin = pen.rightToLeft ? pictureWidth - margin : margin;
  const inwards = pen.rightToLeft ? -1 : 1;
  const shapes: string[] = [];
  let y = top;
  for (const { text, weight = 'regular', sign } of rows) {
    const indent = sign === undefined ? 0 : signs + 8;
    const lines = wrap(text, pictureWidth - 2 * margin - indent, { size, weight });
    if (sign !== undefined) {
      shapes.push(...sign.draw([begin + (inwards * signs) / 2, y + step / 2]));
    }
    shapes.push(
      ...pen.lines(lines, {
        x: begin + inwards * indent,
        y: y + size,
        anchor: pen.rightToLeft ? 'end' : 'start',
        size,
        weight,
      }),
    );
    y += lines.length * step + rowGap;
  }
  return { shapes, end: y };
}
