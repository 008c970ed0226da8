/**
 * Pictures as PNG, for channels that cannot show SVG. Needs Node: a page never imports this face.
 */
import { createRequire } from 'node:module';
import { renderAsync } from '@resvg/resvg-js';

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

/**
 * A drawing of this package as PNG, made beside whatever else runs. Rejects where the text is not
 * well-formed SVG.
 */
export async function toPng(svg: string, { width = 1170 }: PngOptions = {}): Promise<Uint8Array> {
  const image = await renderAsync(svg, {
    fitTo: { mode: 'width', value: width },
    font: { fontFiles: [...fontFiles], loadSystemFonts: false, defaultFontFamily: 'DejaVu Sans' },
  });
  return image.asPng();
}
