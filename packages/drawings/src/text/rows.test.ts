import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { placeInRows } from './rows.ts';

test('labels that have room stand where they are wanted, in one row', () => {
  expect(
    placeInRows(
      [
        { middle: 50, width: 40 },
        { middle: 150, width: 40 },
      ],
      0,
      200,
    ),
  ).toEqual([
    { middle: 50, row: 0 },
    { middle: 150, row: 0 },
  ]);
});

test('a label that would touch its neighbour goes a row further; one at an edge is held inside', () => {
  expect(
    placeInRows(
      [
        { middle: 5, width: 40 },
        { middle: 60, width: 50 },
      ],
      0,
      200,
    ),
  ).toEqual([
    { middle: 20, row: 0 },
    { middle: 60, row: 1 },
  ]);
});

test('no two labels of a row touch, whatever they are', () => {
  const label = fc.record({
    middle: fc.integer({ min: -50, max: 450 }),
    width: fc.integer({ min: 1, max: 300 }),
  });
  fc.assert(
    fc.property(fc.array(label, { maxLength: 8 }), (labels) => {
      const placed = placeInRows(labels, 0, 400).map((one, index) => ({
        ...one,
        half: (labels[index]?.width ?? 0) / 2,
      }));
      return placed.every(
        (one, index) =>
          one.middle - one.half >= 0 &&
          one.middle + one.half <= 400 &&
          placed
            .slice(index + 1)
            .every(
              (other) =>
                other.row !== one.row ||
                Math.abs(other.middle - one.middle) >= one.half + other.half,
            ),
      );
    }),
  );
});
