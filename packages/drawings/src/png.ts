/**
 * Pictures as PNG, for channels that cannot show SVG. Needs Node: a page never imports this face.
 */
import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';

const require = createRequire(import.meta.url);

/** The typeface by whose widths every picture is laid out; it has Latin and Arabic letters. */
export const fontFiles: readonly string[] = [
  require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
];

/** How a picture is turned into PNG. */
export interface PngOptions {
  /** How wide it becomes, in pixels. @defaultValue 1170, three to each unit of a picture */
  readonly width?: number;
}

/** A drawing of this package as PNG. Throws where the text is not well-formed SVG. */
export function toPng(svg: string, { width = 1170 }: PngOptions = {}): Uint8Array {
  const resvg = new Resvg(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontFiles: [...fontFiles], loadSystemFonts: false, defaultFontFamily: 'DejaVu Sans' },
  });
  return resvg.render().asPng();
}
