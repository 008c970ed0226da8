import { assert, constantFrom, double, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Meter } from './meter.ts';
import type { Quantity } from './quantity.ts';
import { readingInterval } from './reading-interval.ts';

describe("a reading as far as the meter's limits of error allow", () => {
  // Worked examples of explanations of multimeter accuracy: 98.8 to 101.2 V, and ±0.010 V.
  test.each<readonly [string, number, Meter, number, number]>([
    ['±(1 % + 2) at 100.0 V', 100, { percent: 1, digits: 2, digit: 0.1 }, 98.8, 101.2],
    ['±(0.5 % + 1) at 1.755 V', 1.755, { percent: 0.5, digits: 1, digit: 0.001 }, 1.745, 1.765],
  ])('%s: from %f to', (_, value, meter, low, high) => {
    const interval = readingInterval({ quantity: { value, unit: 'V' }, meter }, 'V');
    expect(interval.best).toBe(value);
    expect(interval.unit).toBe('V');
    expect(interval.low).toBeCloseTo(low, 3);
    expect(interval.high).toBeCloseTo(high, 3);
  });

  test('reaches half of the step in which it was typed further', () => {
    const meter: Meter = { percent: 0, digits: 2, digit: 0.01 };
    const typed = { value: 12.4, unit: 'V', resolution: 0.1 } as const;
    // 2 × 0.01 V and 0.1 V / 2.
    const { low, high } = readingInterval({ quantity: typed, meter }, 'V');
    expect(low).toBeCloseTo(12.33, 12);
    expect(high).toBeCloseTo(12.47, 12);
  });

  test('goes by the usual meter where none is named: ±(0.5 % + 2) at 12.40 V is 0.082 V', () => {
    const { low, high } = readingInterval({ quantity: { value: 12.4, unit: 'V' } }, 'V');
    expect(low).toBeCloseTo(12.318, 9);
    expect(high).toBeCloseTo(12.482, 9);
  });

  test("goes by the user's own meter where its accuracy was said", () => {
    const meter = { percent: 0.1, digits: 2, counts: 6000 };
    const { low, high } = readingInterval({ quantity: { value: 12.4, unit: 'V', meter } }, 'V');
    // 0.0124 V and two digits of 0.01 V.
    expect(low).toBeCloseTo(12.3676, 9);
    expect(high).toBeCloseTo(12.4324, 9);
  });

  test('the per cent of a reading below nothing still widen it', () => {
    const meter: Meter = { percent: 10, digits: 0, digit: 0 };
    const { low, best, high } = readingInterval({ quantity: { value: -5, unit: 'A' }, meter }, 'A');
    expect([low, best, high]).toEqual([-5.5, -5, -4.5]);
  });

  test('a meter that does not err leaves the figure alone', () => {
    const meter: Meter = { percent: 0, digits: 0, digit: 0.01 };
    const interval = readingInterval({ quantity: { value: 12.4, unit: 'V' }, meter }, 'V');
    expect(interval).toEqual({ low: 12.4, best: 12.4, high: 12.4, unit: 'V' });
  });
});

describe('a reading in another unit', () => {
  test.each<readonly [string, Quantity, Meter]>([
    [
      'the digit in the unit of the reading',
      { value: 250, unit: 'mV', resolution: 2 },
      { percent: 1, digits: 2, digit: 1 },
    ],
    [
      'the digit in a unit of its own',
      { value: 250, unit: 'mV', resolution: 2 },
      { percent: 1, digits: 2, digit: 0.001, unit: 'V' },
    ],
  ])('is as wide: %s', (_, quantity, meter) => {
    // 2.5 mV, 2 × 1 mV and 2 mV / 2.
    const { low, best, high, unit } = readingInterval({ quantity, meter }, 'V');
    expect(unit).toBe('V');
    expect(best).toBeCloseTo(0.25, 12);
    expect(low).toBeCloseTo(0.2445, 12);
    expect(high).toBeCloseTo(0.2555, 12);
  });

  test('a step of temperature is brought over without the offset of the scale', () => {
    const meter: Meter = { percent: 0, digits: 1, digit: 1 };
    const quantity = { value: 32, unit: '[degF]', resolution: 1.6 } as const;
    const { low, best, high } = readingInterval({ quantity, meter }, 'Cel');
    expect(best).toBeCloseTo(0, 9);
    expect(low).toBeCloseTo(-1.8 / 1.8, 9);
    expect(high).toBeCloseTo(1.8 / 1.8, 9);
  });

  test.each<readonly [string, Quantity, string]>([
    ['amperes are no volts', { value: 1, unit: 'A' }, 'unit-mismatch'],
    ['no number is none', { value: NaN, unit: 'V' }, 'value-not-finite'],
    [
      'an accuracy below nothing is none',
      { value: 1, unit: 'V', meter: { percent: -1, digits: 0 } },
      'value-out-of-range',
    ],
  ])('is refused: %s', (_, quantity, code) => {
    expect(() => readingInterval({ quantity }, 'V')).toThrow(code);
  });
});

test('a simulated meter that keeps its specification leaves the true value inside', () => {
  assert(
    property(
      record({
        truth: double({ min: 0.1, max: 20, noNaN: true }),
        error: double({ min: -1, max: 1, noNaN: true }),
        percent: double({ min: 0, max: 3, noNaN: true }),
        digits: constantFrom(1, 2, 5),
        step: constantFrom(0.01, 0.001),
      }),
      ({ truth, error, percent, digits, step }) => {
        // The per cent are of what is shown, and the rounding takes half a digit of the digits.
        const own = (digits - 0.5) * step;
        const read = (truth + error * own) / (1 - (error * percent) / 100);
        const value = Math.round(read / step) * step;
        const meter: Meter = { percent, digits, digit: step };
        const { low, high } = readingInterval({ quantity: { value, unit: 'V' }, meter }, 'V');
        // What is rounded up or down takes its own per cent along.
        const slack = (step * percent) / 100 + 1e-9;
        expect(low).toBeLessThanOrEqual(truth + slack);
        expect(high).toBeGreaterThanOrEqual(truth - slack);
      },
    ),
  );
});
