import { assert, double, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { increasingRoot } from './increasing-root.ts';

type Row = readonly [
  title: string,
  value: (x: number) => number,
  low: number,
  high: number,
  root: number,
];

/** How far off a root is, of itself; from a root at 0 as it is. */
function relative(found: number, root: number): number {
  return Math.abs(found - root) / (root === 0 ? 1 : Math.abs(root));
}

describe('the root in closed form is found to 1e-12 of itself', () => {
  test.each<Row>([
    ['a straight line', (x) => 2 * x - 3, 0, 10, 1.5],
    ['a straight line below 0', (x) => x + 5, -10, -1, -5],
    ['a root near 0 of a wide range', (x) => x - 1e-9, 0, 1e4, 1e-9],
    ['a parabola', (x) => x * x - 2, 0, 2, Math.SQRT2],
    ['a parabola in a wide range', (x) => x * x - 2, 0, 1e6, Math.SQRT2],
    ['a square root', (x) => Math.sqrt(x) - 1e-3, 0, 1, 1e-6],
    ['an overvoltage', (x) => Math.asinh(x) - 3, 0, 1000, Math.sinh(3)],
    ['an exponential', (x) => Math.exp(x) - 2, 0, 5, Math.LN2],
    ['a sum', (x) => x + Math.sqrt(x) - 6, 0, 100, 4],
  ])('%s', (_, value, low, high, root) => {
    expect(relative(increasingRoot(value, low, high), root)).toBeLessThan(1e-12);
  });

  test.each<Row>([
    ['an exponential of 300 decades', (x) => Math.exp(x) - 2, 0, 700, Math.LN2],
    ['a root with an upright tangent', (x) => Math.cbrt(x - 0.3), 0, 1, 0.3],
    ['a ramp of a millionth', (x) => Math.tanh(1e6 * (x - 0.3)), 0, 1, 0.3],
    ['a ramp of a thousand-millionth', (x) => Math.atan(1e9 * (x - 0.3)), 0, 1, 0.3],
    ['a step', (x) => (x < 0.3 ? -1 : 1), 0, 1, 0.3],
    ['an end without limit', (x) => (x > 0.9 ? Infinity : x - 0.3), 0, 1, 0.3],
  ])('where the function is steep: %s', (_, value, low, high, root) => {
    expect(relative(increasingRoot(value, low, high), root)).toBeLessThan(1e-12);
  });

  test.each<Row>([
    ['a level tangent', (x) => (x - 0.3) ** 3, 0, 1, 0.3],
    ['nine roots in one', (x) => (x - 0.3) ** 9, 0, 1, 0.3],
    ['a level tangent at 0', (x) => x ** 3, -1, 2, 0],
    ['next to nothing, then a slope', (x) => Math.max(-1e-20, x - 0.4), 0, 1, 0.4],
  ])('where the function is flat: %s', (_, value, low, high, root) => {
    expect(relative(increasingRoot(value, low, high), root)).toBeLessThan(1e-12);
  });

  test('a cubic with any root, slope and curvature', () => {
    assert(
      property(
        record({
          root: double({ min: 0.01, max: 900, noNaN: true }),
          slope: double({ min: 1e-3, max: 1e3, noNaN: true }),
          curvature: double({ min: 0, max: 1e3, noNaN: true }),
        }),
        ({ root, slope, curvature }) => {
          const value = (x: number): number => slope * (x - root) + curvature * (x - root) ** 3;
          expect(relative(increasingRoot(value, 0, 1000), root)).toBeLessThan(1e-12);
        },
      ),
    );
  });
});

describe('a root at an end is that end', () => {
  test('the low one', () => {
    expect(increasingRoot((x) => x - 2, 2, 7)).toBe(2);
  });

  test('the high one', () => {
    expect(increasingRoot((x) => x ** 3 - 343, 2, 7)).toBe(7);
  });

  test('the low one where the function is above zero all along', () => {
    expect(increasingRoot((x) => x + 1, 2, 7)).toBe(2);
  });

  test('the high one where the function is below zero all along', () => {
    expect(increasingRoot((x) => x - 9, 2, 7)).toBe(7);
  });

  test('both where they are one', () => {
    expect(increasingRoot((x) => x - 2, 2, 2)).toBe(2);
  });
});

describe('looking at the function', () => {
  const looks = (value: (x: number) => number, low: number, high: number): number[] => {
    const seen: number[] = [];
    increasingRoot(
      (x) => {
        seen.push(x);
        return value(x);
      },
      low,
      high,
    );
    return seen;
  };

  test.each<readonly [string, (x: number) => number]>([
    ['a smooth one', (x) => x * x - 2],
    ['a steep one', (x) => Math.exp(70 * x) - 2],
    ['a step', (x) => (x < 9 ? -1 : 1)],
  ])('never outside of its two ends: %s', (_, value) => {
    for (const x of looks(value, 0.5, 10)) {
      expect(x).toBeGreaterThanOrEqual(0.5);
      expect(x).toBeLessThanOrEqual(10);
    }
  });

  test('a smooth one takes a quarter of the looks that halving would', () => {
    // Halving from 10 to the last of 53 bits takes some 56.
    expect(looks((x) => x * x + x - 3, 0, 10).length).toBeLessThanOrEqual(14);
  });
});
