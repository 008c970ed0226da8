import type { Teller } from '@keyturn/language';
import type { Theme } from '../theme.ts';
import { element, escapeText } from './element.ts';
import { createPen, type Pen } from './pen.ts';

/** How a picture is drawn. */
export interface DrawingOptions {
  /** Whose language and words it is in. */
  readonly speaker: Teller;
  /** @defaultValue light */
  readonly theme?: Theme;
}

/** How wide every picture is, in its own units: a phone's width in CSS pixels. */
export const pictureWidth = 390;

/** What is kept free round a picture's contents. */
export const margin = 12;

/** What stands in a picture, and how high it comes. */
export interface Contents {
  /** What the picture is, for those who cannot see it. */
  readonly title: string;
  /** What it shows, whole enough to do without it. */
  readonly description: string;
  readonly height: number;
  readonly shapes: readonly string[];
}

/** The pen that `frame` expects the contents to be drawn with. */
export function penFor({ speaker, theme = 'light' }: DrawingOptions): Pen {
  return createPen(theme, speaker.locale);
}

/**
 * A whole SVG document. It holds no identifiers, styles or scripts, so that any number of pictures
 * can stand in one page; the page may set its own typeface by a rule for `text`.
 */
export function frame(contents: Contents, pen: Pen, { speaker }: DrawingOptions): string {
  const { title, description, height, shapes } = contents;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${pictureWidth} ${Math.ceil(height)}`,
      width: pictureWidth,
      height: Math.ceil(height),
      role: 'img',
      lang: speaker.locale,
      // Text is placed by its left and right ends, whichever way the page around it runs.
      direction: 'ltr',
      'font-family': `'DejaVu Sans', Verdana, sans-serif`,
    },
    [
      element('title', {}, [escapeText(title)]),
      element('desc', {}, [escapeText(description)]),
      pen.shape('rect', {
        x: 0,
        y: 0,
        width: pictureWidth,
        height: Math.ceil(height),
        fill: pen.palette.paper,
      }),
      ...shapes,
    ],
  );
}
