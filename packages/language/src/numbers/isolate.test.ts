import bidiFactory from 'bidi-js';
import { describe, expect, test } from 'vitest';
import { createFigures } from './figures.ts';
import { isolationIn, isRightToLeft } from './isolate.ts';
import { createSay } from '../texts/create-say.ts';
import { findLocale } from '../locale.ts';

const bidi = bidiFactory();

/** A line as it is seen from left to right, by the Unicode bidirectional algorithm (UAX #9). */
function seen(line: string): string {
  const { levels, paragraphs } = bidi.getEmbeddingLevels(line);
  expect(paragraphs).toHaveLength(1);
  const shown = bidi.getReorderedString(line, { levels, paragraphs });
  return shown.replace(/[\u2066-\u2069\u200e\u200f\u061c]/g, '');
}

test.each([
  ['ar', true],
  ['ar-EG', true],
  ['he', true],
  ['fa', true],
  ['ur', true],
  ['en', false],
  ['pl', false],
  ['az-Arab', true],
])('%s runs from right to left: %s', (locale, is) => {
  expect(isRightToLeft(locale)).toBe(is);
});

describe.each(['ar', 'ar-EG', 'ar-MA'])('a figure within a sentence in %s', (locale) => {
  const say = createSay(locale, findLocale(locale).texts);
  const figures = createFigures(locale, say);

  test.each([
    { value: 12.4, unit: 'V', resolution: 0.01 },
    { value: -8, unit: 'Cel', resolution: 1 },
    { value: 4.2, unit: 'mOhm', resolution: 0.1 },
    { value: 1200, unit: 'A', resolution: 1 },
  ])('$value $unit stands as it is written, its unit behind it', (figure) => {
    const written = figures.formatQuantity(figure);
    // Arabic digits have their sign at the right, as CLDR writes it.
    const alone = seen(written);
    expect(alone).toMatch(/^[\p{Nd}.,٫٬-]+ \P{Nd}+$/u);
    expect(seen(`الجهد ${written} عند الراحة`)).toContain(alone);
    // Shown within a longer text of ours as well.
    const text = say('reading.plain', { figure: written, means: 'البطارية ممتلئة' });
    expect(seen(text)).toContain(alone);
  });

  test('two figures in a row keep their order of reading, from right to left', () => {
    const [low, high] = [12.4, 12.6].map((value) => figures.formatQuantity({ value, unit: 'V' }));
    const line = seen(say('refused.range', { low: low ?? '', high: high ?? '' }));
    const places = [low, high].map((one) =>
      line.indexOf((one ?? '').replace(/[\u2066-\u2069]/g, '')),
    );
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
    expect(places[0]).toBeGreaterThan(places[1] ?? 0);
  });
});

test('without isolates the unit would be seen before the figure, so that this test can fail', () => {
  expect(seen('الجهد 12.4 V')).not.toContain('12.4 V');
});

test('words that are all isolates keep the direction of the first of them', () => {
  const { words: isolate } = isolationIn('ar');
  const source = isolate(`${isolate('منشور')} (${isolate('all lamps on')})`);
  // The source in brackets stands behind the word, at its left.
  expect(seen(`الحد: ${source}`)).toBe('(all lamps on) روشنم :دحلا');
});

test('what is isolated already is left, and a language from left to right has no isolates', () => {
  const { words: isolate, figure } = isolationIn('ar');
  expect(isolate(figure('12.4 V'))).toBe('\u206612.4 V\u2069');
  expect(isolate('\u2068a\u2069 و\u2068b\u2069')).toBe('\u2068\u2068a\u2069 و\u2068b\u2069\u2069');
  expect(isolate('')).toBe('');
  expect(isolationIn('de').figure('12,4 V')).toBe('12,4 V');
});
