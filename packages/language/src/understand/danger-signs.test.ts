import { describe, expect, test } from 'vitest';
import { readTokens } from '../typed/read-tokens.ts';
import { spellWords } from '../typed/spell-words.ts';
import { deWords } from '../words/de.ts';
import { enWords } from '../words/en.ts';
import { readSigns } from './danger-signs.ts';

/** What a text tells by these signs while a check is in hand. */
function toldBy(
  signs: Readonly<Record<string, readonly string[]>>,
  given = enWords,
): (text: string, check?: string) => readonly string[] {
  const words = spellWords(given);
  const read = readSigns(signs, words);
  return (text, check) =>
    read(readTokens(text, words), {
      check: check ?? null,
      possible: Object.keys(signs).filter((id) => id !== 'ordinary'),
    }).map(({ interrupt, isOrdinary }) => `${interrupt}${isOrdinary ? '?' : ''}`);
}

describe('a thing and what it does', () => {
  const told = toldBy({
    leak: ['petrol, fuel line, ?fuel-level | drip*, all over | ! mower'],
    ordinary: ['last year'],
  });

  test('tell a danger in any order, beside whatever else is said', () => {
    expect(told('half full and theres petrol dripping down there')).toEqual(['leak']);
    expect(told('it is all over the place, that petrol')).toEqual(['leak']);
    expect(told('the fuel line drips')).toEqual(['leak']);
  });

  test('tell none alone, far from each other, or beside what makes it ordinary', () => {
    expect(told('runs on petrol')).toEqual([]);
    expect(told('petrol, and what I heard back then behind the house was dripping')).toEqual([]);
    expect(told('petrol drips from the mower')).toEqual([]);
  });

  test('are denied before them and between them, but not by an answer', () => {
    expect(told('no petrol dripping')).toEqual([]);
    expect(told('petrol is not dripping')).toEqual([]);
    expect(told('no, petrol is dripping')).toEqual(['leak']);
  });

  test('need not be named where they are asked about', () => {
    expect(told('half, and it drips', 'fuel-level')).toEqual(['leak']);
    expect(told('half, and it drips', 'dash')).toEqual([]);
  });

  test('of another day are doubtful', () => {
    expect(told('petrol dripped last year')).toEqual(['leak?']);
  });
});

test('a letter may be drawn out, and a compound end in the thing', () => {
  expect(toldBy({ smoke: ['fire'] })('fiiiire')).toEqual(['smoke']);
  expect(toldBy({ smoke: ['*qualm | steigt'] }, deWords)('da steigt schwarzqualm auf')).toEqual([
    'smoke',
  ]);
});

test('what answers the question is no sign there', () => {
  const told = toldBy({ battery: ['swollen | ! ?battery-look'] });
  expect(told('swollen', 'battery-look')).toEqual([]);
  expect(told('swollen', 'battery-age')).toEqual(['battery']);
});
