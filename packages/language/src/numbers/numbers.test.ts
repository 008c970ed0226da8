import { describe, expect, test } from 'vitest';
import { createNumberWords } from './number-words.ts';
import { spellNumbers } from './numbers.ts';
import { readTokens } from '../typed/read-tokens.ts';
import { spellWords } from '../typed/spell-words.ts';
import type { Token } from '../typed/token.ts';
import { enWords } from '../words/en.ts';

const english = createNumberWords(spellWords(enWords));

function read(text: string): readonly Token[] {
  return spellNumbers(readTokens(text, enWords), english);
}

function show(text: string): string {
  return read(text)
    .map((token) => (token.kind === 'number' ? String(token.value) : token.text))
    .join(' ');
}

test.each([
  { text: 'twelve point four', read: '12.4' },
  { text: 'twelve point four five', read: '12.45' },
  { text: 'twelve point oh five', read: '12.05' },
  { text: 'twelve point forty five', read: '12.45' },
  { text: '12 point 4', read: '12.4' },
  { text: 'twelve and a half volts', read: '12.5 volts' },
  { text: '12 and a half', read: '12.5' },
  { text: '12 and half', read: '12.5' },
  { text: 'twelve and three quarters', read: '12.75' },
  { text: '12 1/2', read: '12.5' },
  { text: '12½', read: '12.5' },
  { text: '1/2', read: '0.5' },
  { text: 'half a volt', read: '0.5 volt' },
  { text: 'a quarter of a volt', read: '0.25 of a volt' },
  { text: 'point two', read: '0.2' },
  { text: 'minus eight', read: '-8' },
  { text: 'minus twelve and a half', read: '-12.5' },
  { text: 'minus zero point five', read: '-0.5' },
  { text: 'a hundred and eighty amps', read: '180 amps' },
  { text: 'one hundred eighty', read: '180' },
  { text: 'two hundred', read: '200' },
  { text: 'one thousand two hundred and five', read: '1205' },
  { text: 'a thousand', read: '1000' },
  { text: 'twenty four', read: '24' },
  { text: 'twelve fifty', read: '12 50' },
  { text: 'twelve thirteen', read: '12 13' },
  { text: '12/13', read: '12 / 13' },
  { text: '1/0', read: '1 / 0' },
  { text: 'a battery and a clamp', read: 'a battery and a clamp' },
  { text: 'point', read: 'point' },
])('"$text" reads as $read', ({ text, read: expected }) => {
  expect(show(text)).toBe(expected);
});

test.each([
  { text: '12.4', decimals: 1 },
  { text: '12.40', decimals: 2 },
  { text: 'twelve', decimals: 0 },
  { text: 'twelve point four zero', decimals: 2 },
  { text: 'twelve and a half', decimals: 1 },
  { text: '12 1/4', decimals: 2 },
])('"$text" keeps $decimals decimals', ({ text, decimals }) => {
  expect(read(text)).toMatchObject([{ kind: 'number', decimals }]);
});

const ones = [
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen',
  'fifteen sixteen seventeen eighteen nineteen',
]
  .join(' ')
  .split(' ');
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** A whole number below 100 in English words. */
function inWords(value: number): string {
  const small = ones[value];
  if (small !== undefined) return small;
  const unit = value % 10;
  return `${tens[Math.floor(value / 10) - 2]}${unit === 0 ? '' : `-${ones[unit]}`}`;
}

describe('every number from zero to ninety nine point nine nine', () => {
  test.each(Array.from({ length: 100 }, (_, whole) => whole))('%i and its hundredths', (whole) => {
    expect(show(inWords(whole))).toBe(String(whole));
    for (let hundredths = 0; hundredths < 100; hundredths += 1) {
      const digits = String(hundredths).padStart(2, '0');
      const spoken = Array.from(digits, (digit) => ones[Number(digit)]).join(' ');
      expect(read(`${inWords(whole)} point ${spoken}`)).toMatchObject([
        { kind: 'number', value: Number(`${whole}.${digits}`), decimals: 2 },
      ]);
    }
  });
});
