import { expect, test } from 'vitest';
import { tokenise } from './token.ts';

/** Tokens as one line: numbers as value and decimals, marks as they are. */
function show(text: string, grouping = ','): string {
  return tokenise(text, grouping)
    .map((token) => {
      if (token.kind === 'number') return `${token.value}/${token.decimals}`;
      return token.kind === 'malformed' ? `!${token.text}` : token.text;
    })
    .join(' ');
}

test.each([
  { text: '12.40v', tokens: '12.4/2 v' },
  { text: '12,4 v', tokens: '12.4/1 v' },
  { text: '1,200 a', tokens: '1200/0 a' },
  { text: '1,200,000', tokens: '1200000/0' },
  { text: '0,125', tokens: '0.125/3' },
  { text: '12.650', tokens: '12.65/3' },
  { text: '12,5, 9,8', tokens: '12.5/1 , 9.8/1' },
  { text: '-8', tokens: '-8/0' },
  { text: '-.5', tokens: '-0.5/1' },
  { text: '.5', tokens: '0.5/1' },
  { text: '12-13', tokens: '12/0 - 13/0' },
  { text: 'no-change', tokens: 'no change' },
  { text: 'r/min n.m', tokens: 'r min n m' },
  { text: '12.4.5', tokens: '!12.4.5' },
  { text: '1234567890123456', tokens: '!1234567890123456' },
  { text: '12.', tokens: '12/0 .' },
  { text: 'a\nb', tokens: 'a \n b' },
  { text: '50 %', tokens: '50/0 %' },
  { text: 'p0340 cam', tokens: 'p0340 cam' },
  { text: 'p034', tokens: 'p 34/0' },
  { text: '12.l', tokens: '!12.l' },
  { text: '1o.3 v', tokens: '!1o.3 v' },
  { text: 'it says lo.3v', tokens: 'it says !lo.3 v' },
  { text: '1l0 amps', tokens: '!1l0 amps' },
  { text: 'o.4', tokens: '!o.4' },
  { text: '1.6i, 2.0l', tokens: '1.6/1 i , 2/1 l' },
  { text: 'o2 sensor, no.3', tokens: 'o 2/0 sensor , no . 3/0' },
])('"$text" is cut into $tokens', ({ text, tokens }) => {
  expect(show(text)).toBe(tokens);
});

test('a language that groups with a dot reads the comma as decimal mark', () => {
  expect(show('1.200,5', '.')).toBe('1200.5/1');
});
