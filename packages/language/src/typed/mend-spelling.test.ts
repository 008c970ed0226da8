import { describe, expect, test } from 'vitest';
import { deWords } from '../words/de.ts';
import { enWords } from '../words/en.ts';
import { frWords } from '../words/fr.ts';
import type { Words } from '../words/words.ts';
import { createSpellingMender } from './mend-spelling.ts';
import { readTokens } from './read-tokens.ts';

/** A text as it is mended where these words are heard so often. */
function mended(text: string, heard: Readonly<Record<string, number>>, words: Words): string {
  const mend = createSpellingMender({
    counts: new Map(Object.entries(heard)),
    spelling: words.spelling,
    ofFigures: new Set(['six', 'volts']),
    isNumber: (word) => word === 'zweihundertzehn',
  });
  return mend(readTokens(text, words))
    .map((token) => (token.kind === 'number' ? token.digits : token.text))
    .join(' ');
}

describe('a word that nobody is heard to say', () => {
  const heard = { lights: 90, light: 20, the: 900, no: 700, sound: 80, point: 8, fade: 4, fame: 3 };
  test.each([
    ['letters swapped', 'the lihgts', 'the lights'],
    ['a letter left out', 'the lghts', 'the lights'],
    ['letters drawn out', 'noooo soound', 'no sound'],
    ['a space left out', 'nosound', 'no sound'],
    ['a space left out before a number', 'pointsix', 'point six'],
    ['a space left out before a unit, of what is no word', 'xyvolts', 'xyvolts'],
    ['either of two that are heard as often', 'fabe', 'fabe'],
    ['nothing like any', 'zebra', 'zebra'],
    ['what is written on to a figure', '12.4lihgts', '12.4 lihgts'],
    ['a figure before two words', '10 nosound', '10 nosound'],
  ])('with %s: %s', (_, text, read) => {
    expect(mended(text, heard, enWords)).toBe(read);
  });

  test('takes the apostrophe that was left out for one', () => {
    expect(mended('darret', { d: 300, arret: 12, arreter: 2 }, frWords)).toBe('d arret');
  });

  test('is left as it is where it is a number, or its parts are short ends of words', () => {
    const german = { zweihundert: 9, zehn: 40, an: 90, liegen: 9, akku: 30, lampe: 30 };
    expect(mended('zweihundertzehn', german, deWords)).toBe('zweihundertzehn');
    expect(mended('anliegen', german, deWords)).toBe('anliegen');
    expect(mended('akkulampe', german, deWords)).toBe('akku lampe');
  });
});
