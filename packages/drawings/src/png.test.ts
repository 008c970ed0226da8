import { expect, test } from 'vitest';
import { toPng } from './png.ts';

const svg = (shapes: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 390 100" width="390" height="100">${shapes}</svg>`;

const text =
  '<text x="10" y="50" font-family="\'DejaVu Sans\'" font-size="20">\u2067بطارية\u2069</text>';

/** Width and height from the header chunk, PNG specification section 11.2.2. */
function sizeOf(png: Uint8Array): number[] {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  return [view.getUint32(16), view.getUint32(20)];
}

test('a picture becomes a PNG three pixels to the unit, or as wide as is asked', async () => {
  const png = await toPng(svg(text));
  expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect(sizeOf(png)).toEqual([1170, 300]);
  expect(sizeOf(await toPng(svg(text), { width: 390 }))).toEqual([390, 100]);
});

test('its text is drawn with the fonts that come along', async () => {
  const [drawn, empty] = await Promise.all([toPng(svg(text)), toPng(svg(''))]);
  expect(drawn.length).toBeGreaterThan(empty.length + 500);
});

test('what is not well-formed is refused', async () => {
  await expect(toPng('<svg')).rejects.toThrow();
});
