import { round } from './element.ts';
import type { Pen } from './pen.ts';

/** A rectangle. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const spacing = 6;

/** Slanted lines that fill a box, each cut at its edges, so that no pattern needs a name. */
export function hatch(box: Box, colour: string, pen: Pen): string {
  const { x, y, width, height } = box;
  const strokes: string[] = [];
  for (let offset = spacing / 2; offset < width + height; offset += spacing) {
    const from = [x + Math.max(0, offset - height), y + Math.min(height, offset)] as const;
    const to = [x + Math.min(width, offset), y + Math.max(0, offset - width)] as const;
    strokes.push(`M${from.map(round).join(' ')}L${to.map(round).join(' ')}`);
  }
  return pen.shape('path', {
    d: strokes.join(''),
    stroke: colour,
    'stroke-width': 1.2,
    fill: 'none',
  });
}
