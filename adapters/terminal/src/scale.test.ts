import createBidi from 'bidi-js';
import { describe, expect, test } from 'vitest';
import { drawScale, type Scale } from './scale.ts';
import { columnsOf } from './wrap.ts';

const rest: Scale = {
  bands: ['flat', 'partly discharged', 'ready', 'freshly charged', 'too high'],
  bounds: [
    { low: 12, high: 12 },
    { low: 12.4, high: 12.6 },
    { low: 12.9, high: 13.1 },
    { low: 13.4, high: 13.8 },
  ],
  value: 12.2,
  halfWidth: 0.05,
  label: '12.2 V',
  figure: String,
  range: (low, high) => `${String(low)}–${String(high)}`,
  direction: 'ltr',
};

const drop: Scale = {
  bands: ['good', 'too high'],
  bounds: [{ low: 0.1, high: 0.1 }],
  value: 0.05,
  halfWidth: 0.005,
  label: '0.05 V',
  figure: String,
  range: (low, high) => `${String(low)}–${String(high)}`,
  direction: 'ltr',
};

describe('a reading on its scale', () => {
  test('has the names over the bands, the mark over the ruler, and the figures under it', () => {
    expect(drawScale(rest, 74)).toMatchInlineSnapshot(`
      [
        "              partly                          freshly",
        "   flat     discharged         ready          charged        too high",
        "              12.2 V",
        "                ~v~",
        "-----------|-----------|///|-----------|///|-----------|///|-----------",
        "          12         12.4–12.6       12.9–13.1       13.4–13.8",
      ]
    `);
  });

  test.each([
    ['below the lowest bound', 11.9, 'flat'],
    ['between two bounds', 12.2, 'partly discharged'],
    ['above the highest bound', 13.9, 'too high'],
  ])('is marked within its band: %s', (_, value, band) => {
    const lines = drawScale({ ...rest, value }, 74);
    const ruler = lines.findIndex((line) => line.startsWith('--'));
    const column = lines[ruler - 1]!.indexOf('v');
    const before = lines[ruler]!.slice(0, column);
    const index = before.split(/\|\/+\||\|/).length - 1;
    expect(rest.bands[index]).toBe(band);
    expect(lines[ruler]![column]).toBe('-');
  });

  test('is marked on the hatching where it lies in a zone between two bounds', () => {
    const lines = drawScale({ ...rest, value: 12.5 }, 74);
    const ruler = lines.find((line) => line.startsWith('--'))!;
    const mark = lines.find((line) => line.includes('v~') || line.includes('~v'))!;
    expect(ruler[mark.indexOf('v')]).toBe('/');
  });

  test.each([
    ['far above', 5, '>', 'end'],
    ['far below', -5, '<', 'start'],
  ])('is clamped at the end of the ruler where it lies %s', (_, value, mark, side) => {
    const lines = drawScale({ ...drop, value, label: `${String(value)} V` }, 60);
    const ruler = lines.findIndex((line) => line.startsWith('--'));
    const column = lines[ruler - 1]!.indexOf(mark);
    expect(column).toBe(side === 'start' ? 0 : lines[ruler]!.length - 1);
  });

  test('shows how far it may be out', () => {
    const [narrow, broad] = [0.001, 0.03].map((halfWidth) =>
      drawScale({ ...drop, halfWidth }, 60)
        .find((line) => line.includes('v'))!
        .trim(),
    );
    expect(broad!.length).toBeGreaterThan(narrow!.length);
    expect(broad).toMatch(/^~+v~+$/);
  });

  test.each([40, 60, 80])('stays within %i columns', (width) => {
    for (const scale of [rest, drop, { ...rest, value: 99, label: '99 V' }]) {
      for (const line of drawScale(scale, width))
        expect(columnsOf(line)).toBeLessThanOrEqual(width);
    }
  });

  test('shows by dots where the reading of a sound vehicle would lie', () => {
    const lines = drawScale(
      { ...rest, expected: { low: 12.62, high: 12.85, label: 'expected' } },
      74,
    );
    const dots = lines.find((line) => line.includes(':'))!;
    const ruler = lines.find((line) => line.startsWith('--'))!;
    expect(lines.indexOf(dots)).toBe(lines.indexOf(ruler) + 1);
    // Between the hatching below the band that it lies in and the one above, and nowhere else.
    const [below, above] = [...ruler.matchAll(/\|\/+\|/g)].map(({ index }) => index);
    expect(dots.trim()).toMatch(/^:+ expected$/);
    expect(dots.indexOf(':')).toBeGreaterThan(below! + 4);
    expect(dots.lastIndexOf(':')).toBeLessThan(above!);
  });

  test('names its bands by letters where their names have no room', () => {
    const lines = drawScale(rest, 40);
    expect(lines[1]).toBe('B partly discharged');
    expect(lines[5]).toMatch(/^ +A +B +C +D +E$/);
  });

  test('is not drawn where the bounds are not known', () => {
    expect(drawScale({ ...rest, bounds: [] }, 80)).toEqual([]);
  });
});

test('in a language from right to left the scale still runs from left to right, names and all', () => {
  const bands = ['بارد', 'معتدل', 'دافئ'];
  const lines = drawScale(
    {
      ...rest,
      bands,
      bounds: [
        { low: 0, high: 0 },
        { low: 15, high: 15 },
      ],
      value: -8,
      label: '\u2066-8 °C\u2069',
      direction: 'rtl',
    },
    74,
  );
  const [names = '', label = ''] = lines.map(seen);
  const places = bands.map((name) => names.indexOf(Array.from(name).reverse().join('')));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(places).toEqual(places.toSorted((one, other) => one - other));
  expect(label).toContain('-8 °C');
});

const bidi = createBidi();

/** A line as it is seen from left to right, by the Unicode bidirectional algorithm (UAX #9). */
function seen(line: string): string {
  return bidi
    .getReorderedString(line, bidi.getEmbeddingLevels(line))
    .replace(/[\u2066-\u2069\u200e]/g, '');
}
