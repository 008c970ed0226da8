/**
 * Reads a QR code in a picture, by jsQR, which has no part in drawing it.
 */
import { Resvg } from '@resvg/resvg-js';
import jsQr from 'jsqr';

// The library's types name an export that its file does not have: the function is all of it.
const read = jsQr as unknown as typeof jsQr.default;

/** What the code in an SVG picture says; undefined where none is found. */
export function scanQr(svg: string): string | undefined {
  const { width, height, pixels } = new Resvg(svg, {
    fitTo: { mode: 'width', value: 500 },
  }).render();
  return read(Uint8ClampedArray.from(pixels), width, height)?.data;
}
