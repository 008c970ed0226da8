/**
 * How well phrases are understood that were written without sight of the phrase lists. The levels
 * hold what has been reached; the bench `understand` prints the figures and the confusion.
 */
import { createSpeaker, localeTags } from '@keyturn/language';
import { shippedTexts } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { noStart } from './support/no-start.ts';
import { dangersOf, scorePhrases, seenPhrasesOf, type Scored } from './support/phrases.ts';

const { checks, interrupts } = noStart.chart.flow;

describe.each(localeTags)('in %s', (locale) => {
  const seen = scorePhrases(locale, seenPhrasesOf(locale));
  const fresh = scorePhrases(locale);
  const part = (
    scored: readonly Scored[],
    kind: Scored['kind'],
    outcome: Scored['outcome'],
  ): number => {
    const those = scored.filter((one) => one.kind === kind);
    return those.filter((one) => one.outcome === outcome).length / Math.max(those.length, 1);
  };

  test('there are enough phrases and readings', () => {
    expect(fresh.length).toBeGreaterThanOrEqual(140);
    expect(fresh.filter(({ kind }) => kind === 'reading').length).toBeGreaterThanOrEqual(40);
  });

  test('no reading is wrong by a factor of ten', () => {
    const off = [...seen, ...fresh].filter(({ isOffByTen }) => isOffByTen);
    expect(off.map(({ phrase }) => phrase.text)).toEqual([]);
  });

  test('of the interrupts that were looked at few in a hundred are missed, and few others', () => {
    const missed = seen.filter((one) => one.kind === 'interrupt' && one.outcome !== 'right');
    expect(
      part(seen, 'interrupt', 'right'),
      missed.map(({ phrase }) => phrase.text).join('\n'),
    ).toBeGreaterThanOrEqual(0.95);
    expect(part(fresh, 'interrupt', 'right')).toBeGreaterThanOrEqual(0.9);
  });

  test('no danger that was not looked at is missed', () => {
    const dangers = fresh.filter(
      ({ kind, phrase }) => kind === 'interrupt' && phrase.talk !== 'starts-now',
    );
    const missed = dangers.filter(({ outcome }) => outcome !== 'right');
    expect(missed.map(({ phrase }) => phrase.text)).toEqual([]);
  });

  // What is reached; a danger is never to be missed for the sake of an answer.
  test('of dangers told in an answer or beside one nine in ten are raised', () => {
    expect(
      part(scorePhrases(locale, dangersOf(locale)), 'interrupt', 'right'),
    ).toBeGreaterThanOrEqual(0.9);
  });

  test('most answers are understood at first, and few wrongly', () => {
    expect(part(seen, 'choice', 'right')).toBeGreaterThanOrEqual(0.86);
    expect(part(seen, 'choice', 'wrong')).toBeLessThanOrEqual(0.035);
    expect(part(seen, 'reading', 'right')).toBeGreaterThanOrEqual(0.89);
    expect(part(fresh, 'choice', 'right')).toBeGreaterThanOrEqual(0.79);
    expect(part(fresh, 'choice', 'wrong')).toBeLessThanOrEqual(0.06);
    expect(part(fresh, 'reading', 'right')).toBeGreaterThanOrEqual(0.76);
    expect(part(fresh, 'talk', 'right')).toBeGreaterThanOrEqual(0.75);
  });

  test.each([
    ['one letter', 'a'.repeat(10_000)],
    ['digits', '1'.repeat(10_000)],
    ['marks', '.,-/'.repeat(2500)],
    ['words', 'no click 12.4 V smoke '.repeat(460)],
    ['just short enough', '12,4 ما no nicht pas click '.repeat(80).slice(0, 2000)],
    ['joiners', '\u200d\u0301'.repeat(5000)],
  ])(
    'a hostile text of %s is answered at once',
    (_, text) => {
      const flowTexts = shippedTexts('no-start', locale);
      const speaker = createSpeaker({ locale, flowTexts, checks });
      const understood = speaker.understand(text, {
        awaiting: 'answer',
        check: null,
        checks,
        interrupts: Object.keys(interrupts),
        answered: [],
        kit: [],
        nominal: 12,
        lamp: false,
      });
      expect(understood.type).toBeTypeOf('string');
    },
    2000,
  );
});
