import { expect, test } from 'vitest';
import { interpolate } from './interpolate.ts';

test.each([
  ['before the first point', -1, 10],
  ['at a point', 0, 10],
  ['between points', 1, 15],
  ['at the last point', 2, 20],
  ['after it', 9, 20],
])('%s', (_, x, expected) => {
  expect(
    interpolate(
      [
        [0, 10],
        [2, 20],
      ],
      x,
    ),
  ).toBe(expected);
});
