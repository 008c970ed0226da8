/**
 * Figures as people say them: every sentence with every way to write a voltage, by language, and
 * what is said at other checks. Common practice, no source. Nothing may be read wrongly; where it
 * is not read, it is asked back.
 */
import { createSpeaker, localeTags } from '@keyturn/language';
import { meaningOf, shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { speech } from './support/said-figures.ts';

/** Voltages in figures; those in words stand with each language. */
const voltages = [12.4, 12.61, 9.8, 10.05, 11, 12];

/** Below this a voltage is a drop, and no battery's. */
const leastBattery = 9;

/** Figures as they are typed in a locale: with point, with comma, in its own digits. */
function written(value: number, locale: string): string[] {
  const plain = String(value);
  const ways = [plain, plain.replace('.', ',')];
  return locale === 'ar'
    ? [...ways, new Intl.NumberFormat('ar-EG', { useGrouping: false }).format(value)]
    : ways;
}

describe.each(localeTags)('in %s', (locale) => {
  const { sentences, volts, inWords, elsewhere } = speech[locale]!;
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });

  /** The figure that was read at a check, undefined where it was asked back. */
  const read = (check: string, text: string): number | string | undefined => {
    const { understood, talk } = meaningOf({ check, text }, chart, speaker);
    const [only, more] = understood;
    if (only === undefined) return talk ?? undefined;
    if (more !== undefined || only.check !== check) return JSON.stringify(understood);
    return typeof only.value === 'string' ? only.value : Number(only.value.value.toFixed(4));
  };

  const said = [
    ...voltages.flatMap((value) => written(value, locale).map((text) => ({ value, text }))),
    ...inWords.flatMap(([value, texts]) => texts.map((text) => ({ value, text }))),
  ];
  const figures = sentences.flatMap((sentence, row) =>
    said.map(({ value, text }, column) => {
      const unit = volts[(row * said.length + column) % volts.length]!;
      const figure = [text, `${text} ${unit}`, /\d$/.test(text) ? `${text}${unit}` : text];
      const one = figure[(row + column) % figure.length]!;
      const check = value < leastBattery ? 'drop-positive' : 'battery-rest';
      return { check, value, text: sentence.replace('{}', one) };
    }),
  );

  test('no sentence about a voltage is read wrongly, and hardly any is asked back', () => {
    const results = figures.map((one) => ({ ...one, got: read(one.check, one.text) }));
    const wrong = results.filter(({ value, got }) => got !== undefined && got !== value);
    expect(wrong.map(({ text, got }) => `${text}: ${String(got)}`)).toEqual([]);
    const asked = results.filter(({ got }) => got === undefined);
    expect(asked.length, asked.map(({ text }) => text).join('\n')).toBeLessThan(
      0.02 * results.length,
    );
  }, 60_000);

  test.each(elsewhere)('at %s, %s', (check, value, texts) => {
    for (const text of texts) {
      const got = read(check, text);
      if (typeof value !== 'number' || typeof got !== 'number') expect(got, text).toBe(value);
      else expect(got, text).toBeCloseTo(value, 2);
    }
  });
});
