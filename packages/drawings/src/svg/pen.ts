import { measure, type Setting } from '../text/measure.ts';
import { palettes, type Palette, type Theme } from '../theme.ts';
import { element, escapeText, round, type Attributes } from './element.ts';

/** A place in a picture: x to the right, y downwards. */
export type Point = readonly [x: number, y: number];

/** Where a text stands: its anchor on x, its baseline on y. */
interface TextPlace extends Partial<Setting> {
  readonly x: number;
  readonly y: number;
  /** Which side of the text x is at, whatever the language. */
  readonly anchor?: 'start' | 'middle' | 'end';
  /** @defaultValue ink */
  readonly colour?: keyof Palette;
  /**
   * Drawn over lines: the letters get a rim of the paper's colour. In print they stand on a piece
   * of paper instead: with a rim, whoever copies the text would get it twice.
   */
  readonly rim?: boolean;
}

/** Draws in one theme and one direction of writing. All shapes are text of SVG. */
export interface Pen {
  readonly palette: Palette;
  readonly rightToLeft: boolean;
  readonly text: (text: string, place: TextPlace) => string;
  readonly lines: (lines: readonly string[], place: TextPlace) => string[];
  readonly line: (points: readonly Point[], attributes?: Attributes) => string;
  /** A line as SVG writes its path. */
  readonly path: (d: string, attributes?: Attributes) => string;
  readonly shape: (name: string, attributes: Attributes) => string;
}

/** The size of a text where none is said: legible at arm's length on a phone 390 units wide. */
export const textSize = 13;

/** From one baseline to the next, by the size of the text. */
export const lineHeight = 1.3;

const rightToLeftScript = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/u;

/** Languages written from right to left, of those that a page may ask for. */
const rightToLeftLanguages = new Set(['ar', 'fa', 'he', 'ur']);

/** A pen for a theme and a locale's direction of writing. */
export function createPen(theme: Theme, locale: string): Pen {
  const palette = palettes[theme];
  const rightToLeft = rightToLeftLanguages.has(locale.split('-', 1)[0] ?? locale);

  /** Isolates keep the figures of a text in their own order, and the text in its own. */
  const isolated = (text: string): string => {
    if (!rightToLeft) return text;
    return `${rightToLeftScript.test(text) ? '\u2067' : '\u2066'}${text}\u2069`;
  };

  const text = (content: string, place: TextPlace): string => {
    const {
      x,
      y,
      anchor = 'start',
      size = textSize,
      weight = 'regular',
      colour = 'ink',
      rim,
    } = place;
    const isRimmed = rim === true && theme !== 'print';
    const drawn = element(
      'text',
      {
        x,
        y,
        'font-size': size,
        'font-weight': weight === 'bold' ? 'bold' : undefined,
        'text-anchor': anchor === 'start' ? undefined : anchor,
        fill: palette[colour],
        ...(isRimmed
          ? {
              stroke: palette.paper,
              'stroke-width': 4,
              'stroke-linejoin': 'round',
              'paint-order': 'stroke',
            }
          : {}),
      },
      [escapeText(isolated(content))],
    );
    if (rim !== true || isRimmed) return drawn;
    const width = measure(content, { size, weight });
    const left = { start: x, middle: x - width / 2, end: x - width }[anchor];
    // From the top of the tallest letter to the foot of the lowest.
    const box = { x: left, y: y - size * 0.85, width, height: size * 1.1 };
    return element('rect', { ...box, fill: palette.paper }) + drawn;
  };

  const path = (d: string, attributes: Attributes = {}): string =>
    element('path', {
      d,
      fill: 'none',
      stroke: palette.line,
      'stroke-width': 1.5,
      'stroke-linejoin': 'round',
      'stroke-linecap': 'round',
      ...attributes,
    });

  return {
    palette,
    rightToLeft,
    text,
    lines: (lines, place) =>
      lines.map((line, index) =>
        text(line, { ...place, y: place.y + index * (place.size ?? textSize) * lineHeight }),
      ),
    line: (points, attributes) => path(pathThrough(points), attributes),
    path,
    shape: (name, attributes) => element(name, attributes),
  };
}

/** The path of a line through points, from the first to the last. */
export function pathThrough(points: readonly Point[]): string {
  return points
    .map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`)
    .join('');
}

/** How wide a text is as a pen would set it. */
export function textWidth(
  text: string,
  { size = textSize, weight = 'regular' }: Partial<Setting> = {},
): number {
  return measure(text, { size, weight });
}
