import { assert, double, property, tuple } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { commonPractice } from '../source.ts';
import type { Bound } from './bound.ts';
import { probabilityBelow, probabilityBelowBound } from './probability-below.ts';

const invented = commonPractice('made up for this test');

function bound(low: number, high = low, unit: Bound['unit'] = 'V'): Bound {
  return { low, high, unit, source: invented };
}

describe('the probability that the true value is below a limit', () => {
  // Printed tables of the normal distribution: Phi(1) = 0.8413, Phi(1.645) = 0.95, Phi(1.96) = 0.975.
  test.each([
    ['on the limit', 12.4, 0.05, 12.4, 0.5],
    ['one uncertainty below it', 12.35, 0.05, 12.4, 0.8413],
    ['one uncertainty above it', 12.45, 0.05, 12.4, 0.1587],
    ['1.645 of them below it', 12.4 - 1.645 * 0.05, 0.05, 12.4, 0.95],
    ['1.96 of them below it', 12.4 - 1.96 * 0.05, 0.05, 12.4, 0.975],
    ['2.576 of them above it', 12.4 + 2.576 * 0.05, 0.05, 12.4, 0.005],
  ])('%s: %f V with u %f V against %f V is %f', (_, value, uncertainty, limit, expected) => {
    expect(probabilityBelow(value, uncertainty, limit)).toBeCloseTo(expected, 4);
  });

  test('is that of the motor oil of JCGM 106:2012, example of clause 7: 13.6, u 1.8 (from memory)', () => {
    // Between 12.5 and 16.3: 66 %.
    const within = probabilityBelow(13.6, 1.8, 16.3) - probabilityBelow(13.6, 1.8, 12.5);
    expect(within).toBeCloseTo(0.663, 3);
  });

  test.each([
    ['below', 12.39, 1],
    ['above', 12.41, 0],
    ['exactly on', 12.4, 0.5],
  ])('is certain without any uncertainty, %s the limit', (_, value, expected) => {
    expect(probabilityBelow(value, 0, 12.4)).toBe(expected);
  });

  test('falls as the value rises, and grows with the limit', () => {
    const figure = double({ min: -20, max: 20, noNaN: true });
    const uncertainty = double({ min: 0, max: 3, noNaN: true });
    assert(
      property(tuple(figure, figure), uncertainty, figure, ([one, other], u, limit) => {
        const [lower, higher] = [Math.min(one, other), Math.max(one, other)];
        const most = probabilityBelow(lower, u, limit);
        const least = probabilityBelow(higher, u, limit);
        expect(least).toBeGreaterThanOrEqual(0);
        expect(most).toBeLessThanOrEqual(1);
        expect(least).toBeLessThanOrEqual(most + 1e-14);
        expect(probabilityBelow(limit, u, lower)).toBeLessThanOrEqual(
          probabilityBelow(limit, u, higher) + 1e-14,
        );
      }),
    );
  });
});

describe('the probability that the true value is below a bound', () => {
  test('is that of its limit where it is sharp', () => {
    const reading = { value: 12.45, unit: 'V' } as const;
    expect(probabilityBelowBound(reading, 0.05, bound(12.4))).toBe(
      probabilityBelow(12.45, 0.05, 12.4),
    );
  });

  test.each([
    ['at its low end', 12.4, 0.95],
    ['in its middle', 12.5, 0.5],
    ['at its high end', 12.6, 0.05],
  ])('a zone has its own spread: an exact reading %s is below it with %f', (_, value, expected) => {
    const zone = bound(12.4, 12.6);
    expect(probabilityBelowBound({ value, unit: 'V' }, 0, zone)).toBeCloseTo(expected, 4);
  });

  test('the squares of both spreads add: 0.08 V and 0.06 V are 0.1 V', () => {
    // A zone of ±1.645 × 0.06 V; the reading stands 0.1 V above its middle, Phi(-1) = 0.1587.
    const zone = bound(12.4 - 1.645 * 0.06, 12.4 + 1.645 * 0.06);
    const below = probabilityBelowBound({ value: 12.5, unit: 'V' }, 0.08, zone);
    expect(below).toBeCloseTo(0.1587, 4);
  });

  test.each([
    ['mV against V', 12_350, 'mV', 50, bound(12.4)],
    ['V against mV', 12.35, 'V', 0.05, bound(12_400, 12_400, 'mV')],
    ['Fahrenheit against Celsius', 30.2, '[degF]', 1.8, bound(0, 0, 'Cel')],
  ] as const)('a reading in another unit is brought over: %s', (_, value, unit, u, limit) => {
    // Each stands one uncertainty below its limit.
    expect(probabilityBelowBound({ value, unit }, u, limit)).toBeCloseTo(0.8413, 4);
  });

  test('amperes have no probability below volts', () => {
    const reading = { value: 12, unit: 'A' } as const;
    expect(() => probabilityBelowBound(reading, 1, bound(12.4))).toThrow('unit-mismatch');
  });

  test('a reading that is no number has none', () => {
    const reading = { value: NaN, unit: 'V' } as const;
    expect(() => probabilityBelowBound(reading, 1, bound(12.4))).toThrow('value-not-finite');
  });
});
