/**
 * Typing as it comes: letters swapped or left out, words written together, and words around an
 * answer that tell nothing. What is understood as it stands is understood so as well. The phrases
 * have been looked at; what is done to them is not.
 */
import { localeTags } from '@keyturn/language';
import { shippedTexts } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { scorePhrases, seenPhrasesOf, type Phrase } from './support/phrases.ts';

/** Every so many phrases of those that were looked at. */
const everySo = 10;

/** What must still be understood; in Arabic a letter more or less is oftener another word. */
const leastOf = (locale: string): number => (locale === 'ar' ? 0.87 : 0.94);

/** The one of several that a number falls on. */
const pick = <Thing>(things: readonly Thing[], by: number): Thing | undefined =>
  things[by % Math.max(things.length, 1)];

/** A text with one of its longer words changed. */
function changed(text: string, by: number, change: (word: string, at: number) => string): string {
  const word = pick([...text.matchAll(/\p{L}{5,}/gu)], by);
  if (word === undefined) return text;
  const at = 1 + (by % (word[0].length - 2));
  return `${text.slice(0, word.index)}${change(word[0], at)}${text.slice(word.index + word[0].length)}`;
}

const swapped = (text: string, by: number): string =>
  changed(
    text,
    by,
    (word, at) => word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2),
  );

const shortened = (text: string, by: number): string =>
  changed(text, by, (word, at) => word.slice(0, at) + word.slice(at + 1));

function writtenTogether(text: string, by: number): string {
  const space = pick([...text.matchAll(/(?<=\p{L}{3}) (?=\p{L}{3})/gu)], by);
  return space === undefined ? text : text.slice(0, space.index) + text.slice(space.index + 1);
}

describe.each(localeTags)('in %s', (locale) => {
  // Arabic in Latin letters is put into its own first, and only where all of it is in them.
  const isInOwn = locale === 'ar' ? /\p{sc=Arabic}|^\P{L}*$/u : /^/u;
  const asides = shippedTexts('no-start', locale).heard?.asides ?? [];
  const phrases = seenPhrasesOf(locale)
    .filter((_, at) => at % everySo === 0)
    .filter(({ text, understood }) => understood !== undefined && isInOwn.test(text));
  const known = scorePhrases(locale, phrases)
    .filter(({ outcome }) => outcome === 'right')
    .map(({ phrase }) => phrase);

  /** The share that is still understood. */
  const understood = (make: (text: string, by: number) => string): number => {
    const texts = known.map((phrase, at): Phrase => ({ ...phrase, text: make(phrase.text, at) }));
    const others = texts.filter(({ text }, at) => text !== known[at]?.text);
    expect(others.length).toBeGreaterThan(120);
    return (
      scorePhrases(locale, others).filter(({ outcome }) => outcome === 'right').length /
      others.length
    );
  };

  test('two letters that changed places do no harm', () => {
    expect(understood(swapped)).toBeGreaterThanOrEqual(leastOf(locale));
  });

  test('a letter that is missing does little', () => {
    expect(understood(shortened)).toBeGreaterThanOrEqual(leastOf(locale));
  });

  test('a space that is missing does little', () => {
    expect(understood(writtenTogether)).toBeGreaterThanOrEqual(0.9);
  });

  test('what tells nothing does no harm before an answer or behind it', () => {
    const before = (text: string, at: number): string => `${pick(asides, at) ?? ''}, ${text}`;
    const behind = (text: string, at: number): string => `${text}, ${pick(asides, at) ?? ''}`;
    expect(understood(before)).toBeGreaterThanOrEqual(0.99);
    expect(understood(behind)).toBeGreaterThanOrEqual(0.99);
  });
});

test.each([
  ['en', 'a yes is no mistyped year', 'battery-rest', '12.4 yeah', [12.4]],
  [
    'fr',
    'a glance is no oil',
    'air-temperature',
    "j'ai jeté un coup d'oeil, moins vingt-deux",
    [-22],
  ],
  [
    'es',
    'a new line parts what it parts',
    'history',
    'ayer lo arrancamos con pinzas\npor cierto traigo multimetro',
    ['jumped-recently', 'voltmeter'],
  ],
] as const)('in %s %s', (locale, _, check, text, given) => {
  const [scored] = scorePhrases(locale, [{ check, text }]);
  const { understood, talk } = scored!.meaning;
  expect(talk).toBeNull();
  expect(understood.map(({ value }) => (typeof value === 'string' ? value : value.value))).toEqual(
    given,
  );
});
