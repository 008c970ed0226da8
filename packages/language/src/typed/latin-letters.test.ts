import { describe, expect, test } from 'vitest';
import { arLatin } from '../words/ar-latin.ts';
import { arWords } from '../words/ar.ts';
import { createLatinReader } from './latin-letters.ts';
import { readTokens } from './read-tokens.ts';

const words = { ...arWords, spelling: { ...arWords.spelling, digits: arLatin.digits } };
const known = ['مفتاح', 'عندي', 'سياره', 'طقه', 'مش', 'شغال', 'بيدور', 'بس', 'درجه', 'سوق'];
const read = createLatinReader(arLatin, () => ({
  counts: new Map(known.map((word) => [word, 8])),
  kept: new Set(['stop']),
  told: new Set(['سبعه']),
}));

/** A text as its tokens are read, with spaces. */
function spelled(text: string): string {
  return read(readTokens(text, words))
    .map((token) => (token.kind === 'number' ? token.digits : token.text))
    .join(' ');
}

describe('a text in Latin letters', () => {
  test.each([
    ['3andi siyara', 'عندي سياره'],
    ['el mofta7 mesh shaghal', 'مفتاح مش شغال'],
    ['biydour bass', 'بيدور بس'],
    ['ta2a bas', 'طقه بس'],
    ['stop msh sha8al bas', 'stop مش sha 8 al بس'],
    // A unit behind its figure is no word, nor is a letter of the gear lever.
    ['12.4 v bas', '12.4 v بس'],
    ['bas f D', 'بس في d'],
    ['12v bas', '12 v بس'],
    // A number is told by its consonants before.
    ['3andi sb3 bas', 'عندي سبعه بس'],
  ])('%s is read as the words that it spells', (text, words) => {
    expect(spelled(text)).toBe(words);
  });

  test('in another language stays', () => {
    expect(spelled('vous parlez bas')).toBe('vous parlez bas');
  });

  test('amid other letters stays', () => {
    expect(spelled('السيارة bas')).toBe('السياره bas');
  });
});
