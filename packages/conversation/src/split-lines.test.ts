import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Line } from './channel.ts';
import { splitLines } from './split-lines.ts';

const split = (lines: readonly string[], most: number): readonly (readonly string[])[] =>
  splitLines(
    lines.map((text): Line => ({ text })),
    most,
  ).map((group) => group.map(({ text }) => text));

test('lines that fit together stay together', () => {
  expect(split(['one', 'two', 'three'], 8)).toEqual([['one', 'two'], ['three']]);
});

test('a long line is cut at a space', () => {
  expect(split(['go to the vehicle'], 9)).toEqual([['go to the'], ['vehicle']]);
});

test('a gap stands between two lines, and never at either end of a text', () => {
  expect(split(['', 'one', '', 'two', ''], 20)).toEqual([['one', '', 'two']]);
  expect(split(['one', '', 'three'], 5)).toEqual([['one'], ['three']]);
});

test('a title that is cut stays a title', () => {
  expect(splitLines([{ text: 'go on', isTitle: true }], 4)).toEqual([
    [{ text: 'go', isTitle: true }],
    [{ text: 'on', isTitle: true }],
  ]);
});

test('nothing is lost, nothing is too long, and no character is halved', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ unit: 'grapheme', maxLength: 60 })),
      fc.integer({ min: 4, max: 30 }),
      (lines, most) => {
        const groups = split(lines, most);
        const bare = (text: string): string => text.replaceAll(/\s/g, '');
        expect(bare(groups.flat().join(''))).toBe(bare(lines.join('')));
        for (const group of groups) {
          expect(group.join('\n').length).toBeLessThanOrEqual(most);
          expect(encodeURIComponent(group.join(''))).toBeTypeOf('string');
        }
      },
    ),
  );
});
