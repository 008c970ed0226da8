import { expect, test } from 'vitest';
import { arWords } from '../words/ar.ts';
import { deWords } from '../words/de.ts';
import { enWords } from '../words/en.ts';
import { esWords } from '../words/es.ts';
import { frWords } from '../words/fr.ts';
import { plWords } from '../words/pl.ts';
import { spellWords } from './spell-words.ts';
import { createTermReader } from './terms.ts';

const readerOf = {
  ar: createTermReader(spellWords(arWords)),
  de: createTermReader(spellWords(deWords)),
  en: createTermReader(spellWords(enWords)),
  es: createTermReader(spellWords(esWords)),
  fr: createTermReader(spellWords(frWords)),
  pl: createTermReader(spellWords(plWords)),
};

/** What is said of each word: `-` where it is denied, `+` where it is not. */
function signs(locale: keyof typeof readerOf, text: string): string {
  return readerOf[locale]
    .fromText(text)
    .map((term) => (term.startsWith('!') ? '-' : '+'))
    .join('');
}

test.each([
  ['es', 'fundido no, entero', '-+'],
  ['es', 'pinza no tengo', '--'],
  ['fr', 'vide non, moitié', '-+'],
  ['fr', 'non, vide', '++'],
  ['de', 'locker nein, sauber', '-+'],
  ['en', 'clamp meter no', '--'],
  ['pl', 'prostownika nie mam', '--'],
] as const)('in %s "%s" denies what stands before', (locale, text, said) => {
  expect(signs(locale, text)).toBe(said);
});

test.each([
  ['es', 'girar gira', '+'],
  ['es', 'zumba no zumba', '-'],
] as const)('in %s what is named and then said again is said once: "%s"', (locale, text, said) => {
  expect(signs(locale, text).replace('++', '+')).toBe(said);
});

test.each([
  ['pl', 'nie słabną tylko gasną', '-+'],
  ['en', "doesn't click just hums", '-+'],
  ['de', 'nicht langsam nur laut', '-+'],
] as const)('in %s a denial ends where the true thing is named: "%s"', (locale, text, said) => {
  expect(signs(locale, text)).toBe(said);
});

test.each([
  ['بعد ما وقفت', '++'],
  ['من يوم ما بدلوها', '++'],
  ['يوم ما تحركت', '+-'],
  ['غير السلف', '++'],
  ['غير مشدود', '-'],
  ['تدور وماتشتغلش', '+-'],
] as const)('in Arabic a word denies only where it is a denial: "%s"', (text, said) => {
  expect(signs('ar', text)).toBe(said);
});

test.each([
  ['وبصمة', 'بصمه'],
  ['وزر', 'زر'],
  ['وعشرين', 'وعشرين'],
] as const)('what joins a word is no part of it, but in a number: "%s"', (typed, word) => {
  expect(readerOf.ar.unjoined(typed.replace('ة', 'ه'))).toBe(word);
});
