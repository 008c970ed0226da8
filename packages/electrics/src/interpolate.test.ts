import { expect, test } from 'vitest';
import { interpolate, tablePoints } from './interpolate.ts';

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

test('the points of a table follow its rows', () => {
  type Row = { readonly cold: number; readonly volts: number };
  const rows: readonly [Row, ...Row[]] = [
    { cold: -18, volts: 8.5 },
    { cold: 0, volts: 9.1 },
  ];
  expect(tablePoints(rows, ({ cold, volts }) => [cold, volts])).toEqual([
    [-18, 8.5],
    [0, 9.1],
  ]);
});
