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
