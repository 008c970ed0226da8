import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalProbability } from './normal-probability.ts';

// Abramowitz and Stegun, Handbook of Mathematical Functions, Table 26.1, and NIST TN 1297 section 6
// for the 95 % and 99 % factors.
test.each([
  [0, 0.5],
  [1, 0.841_344_746_068_543],
  [-1, 0.158_655_253_931_457],
  [1.645, 0.950_015_094_460_879],
  [1.96, 0.975_002_104_851_78],
  [2.576, 0.995_002_467_684_265],
  [-3, 0.001_349_898_031_63],
  [5, 0.999_999_713_348_428],
])('below %d lies %d of the normal distribution', (z, expected) => {
  expect(normalProbability(z)).toBeCloseTo(expected, 13);
});

test.each([
  [-5.5, 1.898_956_246_588_77e-8],
  [-6, 9.865_876_450_377e-10],
  [-10, 7.619_853_024_160_5e-24],
])('far out at %d the tail keeps its digits', (z, expected) => {
  expect(normalProbability(z) / expected).toBeCloseTo(1, 10);
});

/** Half and the area between 0 and z by its power series: Abramowitz and Stegun, 26.2.10. */
function bySeries(z: number): number {
  let term = z;
  let sum = z;
  for (let n = 1; n < 200; n += 1) {
    term *= (-z * z) / (2 * n);
    sum += term / (2 * n + 1);
  }
  return 0.5 + sum / Math.sqrt(2 * Math.PI);
}

/** The area below z (far below 0) by its continued fraction: Abramowitz and Stegun, 26.2.14. */
function byFraction(z: number): number {
  let fraction = -z;
  for (let step = 200; step >= 1; step -= 1) {
    fraction = step / fraction - z;
  }
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / fraction;
}

test('it is that of the power series to 1e-14 near the middle', () => {
  for (let z = -3; z <= 3; z += 0.01) {
    expect(Math.abs(normalProbability(z) - bySeries(z))).toBeLessThan(1e-14);
  }
});

test('it is that of the continued fraction, to 1e-12 of itself, far below', () => {
  for (let z = -37; z <= -2.5; z += 0.01) {
    expect(Math.abs(normalProbability(z) / byFraction(z) - 1)).toBeLessThan(1e-12);
  }
});

test('infinity is certain', () => {
  expect([normalProbability(-Infinity), normalProbability(Infinity)]).toEqual([0, 1]);
});

test('it rises, stays between 0 and 1 and is symmetric', () => {
  const deviate = fc.double({ min: -12, max: 12, noNaN: true });
  fc.assert(
    fc.property(deviate, deviate, (a, b) => {
      const [lower, upper] = a < b ? [a, b] : [b, a];
      expect(normalProbability(lower)).toBeLessThanOrEqual(normalProbability(upper) + 1e-15);
      expect(normalProbability(a)).toBeGreaterThanOrEqual(0);
      expect(normalProbability(a) + normalProbability(-a)).toBeCloseTo(1, 13);
    }),
  );
});
