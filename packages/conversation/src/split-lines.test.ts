import fc from 'fast-check';
import { expect, test } from 'vitest';
import { splitLines } from './split-lines.ts';

test('lines that fit together stay together', () => {
  expect(splitLines(['one', 'two', 'three'], 8)).toEqual([['one', 'two'], ['three']]);
});

test('a long line is cut at a space', () => {
  expect(splitLines(['go to the vehicle'], 9)).toEqual([['go to the'], ['vehicle']]);
});

test('nothing is lost, nothing is too long, and no character is halved', () => {
  fc.assert(
    fc.property(
      fc.array(fc.string({ unit: 'grapheme', maxLength: 60 })),
      fc.integer({ min: 4, max: 30 }),
      (lines, most) => {
        const groups = splitLines(lines, most);
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
