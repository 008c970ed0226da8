import { describe, expect, test } from 'vitest';
import { columnsOf, cutTo, padTo, wrapBehind, wrapText } from './wrap.ts';

describe('wrapping', () => {
  test.each([
    ['between words', 'red lead on the post', 9, ['red lead', 'on the', 'post']],
    ['within a word that is too long', 'abcdefgh ij', 3, ['abc', 'def', 'gh', 'ij']],
    ['at line breaks of the text', 'one\ntwo', 9, ['one', 'two']],
    ['nowhere in an empty text', '', 9, ['']],
  ])('breaks %s', (_, text, width, lines) => {
    expect(wrapText(text, width)).toEqual(lines);
  });

  test('hangs the lines behind the sign of the first', () => {
    expect(wrapBehind('?  ', 'is everyone safe', 11)).toEqual(['?  is', '   everyone', '   safe']);
  });

  test.each([
    ['a letter with its accent', 'e\u0301', 1],
    ['an East Asian character', '電', 2],
    ['an Arabic word', 'بطارية', 6],
    ['nothing', '', 0],
  ])('counts columns: %s', (_, text, columns) => {
    expect(columnsOf(text)).toBe(columns);
  });

  test('cuts a text with an ellipsis only where it is too long', () => {
    expect(cutTo('12.6', 4)).toBe('12.6');
    expect(cutTo('x'.repeat(10_000), 5)).toBe('xxxx…');
  });

  test('pads by columns', () => {
    expect(padTo('電', 4)).toBe('電  ');
  });
});
