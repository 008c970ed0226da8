/**
 * Numbers in words against n2words, a general-purpose library that writes them: 0 to 99.99 in every
 * language that it has, and then as people say them.
 */
import { createSpeaker } from '@keyturn/language';
import { shippedTexts } from '@keyturn/terminal';
import { toCardinal as ar } from 'n2words/ar-SA';
import { toCardinal as de } from 'n2words/de-DE';
import { toCardinal as en } from 'n2words/en-GB';
import { toCardinal as es } from 'n2words/es-ES';
import { toCardinal as frBelgium } from 'n2words/fr-BE';
import { toCardinal as fr } from 'n2words/fr-FR';
import { toCardinal as pl } from 'n2words/pl-PL';
import { describe, expect, test } from 'vitest';
import { noStart } from './support/no-start.ts';

const { checks, interrupts } = noStart.chart.flow;

/** What a text reads as at a check without a narrow range: the figure as it was typed. */
function reader(locale: string): (text: string) => number | undefined {
  const flowTexts = shippedTexts('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts, checks });
  return (text) => {
    const understood = speaker.understand(text, {
      awaiting: 'answer',
      check: 'crank-current',
      checks,
      interrupts: Object.keys(interrupts),
      answered: [],
      kit: [],
      nominal: 12,
      lamp: false,
    });
    const [input] = understood.type === 'input' ? understood.inputs : [];
    const value = input?.type === 'answers' ? input.answers[0]?.value : undefined;
    return value !== undefined && 'value' in value ? value.value : undefined;
  };
}

const writers = { en, es, de, fr, 'fr-BE': frBelgium, pl, ar };

describe.each(Object.entries(writers))('in %s', (locale, inWords) => {
  const read = reader(locale);

  test('every whole number and its hundredths, from 0 to 99.99', () => {
    for (let whole = 0; whole < 100; whole += 1) {
      expect(read(inWords(whole)), inWords(whole)).toBe(whole);
      // All hundredths of every 25th number, a few of the others.
      const step = whole % 25 === 0 ? 1 : 17;
      for (let hundredths = 1; hundredths < 100; hundredths += step) {
        const value = Number(`${whole}.${String(hundredths).padStart(2, '0')}`);
        expect(read(inWords(value)), inWords(value)).toBe(value);
      }
    }
  }, 30_000);

  test.each([100, 120, 170, 185, 200, 250, 315, 600, 999, 1200])('%d', (value) => {
    expect(read(inWords(value)), inWords(value)).toBe(value);
  });
});

test.each([
  ['en', 'about twelve and a half', 12.5],
  ['en', 'twelve point oh five', 12.05],
  ['es', 'doce y medio', 12.5],
  ['es', 'doce coma cuatro', 12.4],
  ['es', "12'4", 12.4],
  ['de', 'anderthalb', 1.5],
  ['de', 'zwölfeinhalb', 12.5],
  ['de', 'knapp zwoelf Komma vier', 12.4],
  ['de', 'einhundertsiebzig', 170],
  ['fr', 'douze et demi', 12.5],
  ['fr', 'soixante et onze', 71],
  ['fr', 'nonante-deux', 92],
  ['fr', 'quatre-vingt-dix-sept', 97],
  ['pl', 'dwanaście i pół', 12.5],
  ['pl', 'półtora', 1.5],
  ['pl', 'okolo dwanascie przecinek cztery', 12.4],
  ['ar', 'اثنا عشر ونصف', 12.5],
  ['ar', '١٢٫٤', 12.4],
  ['ar', '۱۲٫۴', 12.4],
  ['ar', 'خمسة وعشرون', 25],
])('in %s "%s" is %d', (locale, text, value) => {
  expect(reader(locale)(text)).toBe(value);
});
