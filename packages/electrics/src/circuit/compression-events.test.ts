import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressionRate, speedByCompressions, weakCylinderSign } from './compression-events.ts';

const speeds = [60, 100, 150, 200, 250, 300] as const;

describe('compressions a second of a four-stroke engine that fires evenly', () => {
  // Computed from the four strokes: each cylinder compresses once in two turns.
  test.each([
    [3, [1.5, 2.5, 3.75, 5, 6.25, 7.5]],
    [4, [2, 3.33, 5, 6.67, 8.33, 10]],
    [5, [2.5, 4.17, 6.25, 8.33, 10.4, 12.5]],
    [6, [3, 5, 7.5, 10, 12.5, 15]],
    [8, [4, 6.67, 10, 13.3, 16.7, 20]],
  ])('of %d cylinders at 60, 100, 150, 200, 250 and 300 /min: %j Hz', (cylinders, rates) => {
    for (const [index, speed] of speeds.entries()) {
      const { value, unit } = compressionRate(cylinders, speed);
      expect(unit).toBe('Hz');
      expect(Number(value.toPrecision(3))).toBe(rates[index]);
    }
  });

  test('the speed follows from them again', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 16 }),
        fc.double({ min: 0, max: 400, noNaN: true }),
        (n, speed) => {
          const { value, unit } = speedByCompressions(n, compressionRate(n, speed).value);
          expect(value).toBeCloseTo(speed, 9);
          expect(unit).toBe('/min');
        },
      ),
    );
  });

  test('6 Hz from four cylinders are 180 /min', () => {
    expect(speedByCompressions(4, 6)).toEqual({ value: 180, unit: '/min' });
  });

  test.each([
    [0, 200],
    [4.5, 200],
    [17, 200],
    [4, -1],
    [4, NaN],
    [4, Infinity],
  ])('%d cylinders at %d are refused', (cylinders, figure) => {
    expect(() => compressionRate(cylinders, figure)).toThrow('value-out-of-range');
    expect(() => speedByCompressions(cylinders, figure)).toThrow('value-out-of-range');
    expect(() => weakCylinderSign(cylinders, figure)).toThrow('value-out-of-range');
  });
});

describe('one weak cylinder', () => {
  test.each([
    [3, 180, 3, 1.5],
    [4, 180, 4, 1.5],
    [6, 200, 6, 1.667],
    [8, 240, 8, 2],
  ])('of %d at %d /min shows in every %d-th event, %d Hz', (cylinders, speed, every, rate) => {
    const sign = weakCylinderSign(cylinders, speed);
    expect(sign.everyEvents).toBe(every);
    expect(sign.rate.unit).toBe('Hz');
    expect(sign.rate.value).toBeCloseTo(rate, 3);
  });

  test('shows once in two turns, however many cylinders there are', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 16 }),
        fc.double({ min: 1, max: 400, noNaN: true }),
        (n, speed) => {
          expect(weakCylinderSign(n, speed).rate.value * 60 * 2).toBeCloseTo(speed, 6);
        },
      ),
    );
  });

  test('has no other to stand out from in an engine of one cylinder', () => {
    expect(() => weakCylinderSign(1, 200)).toThrow('value-out-of-range');
  });
});
