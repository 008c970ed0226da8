import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Quantity } from '../quantity/quantity.ts';
import { rippleVerdict, type RippleResult } from './ripple.ts';
import {
  rippleLimits,
  rippleRules,
  rippleTestSpeed,
  type RipplePlace,
} from '../tables/ripple-limit.ts';

describe('limits of ripple by place', () => {
  test.each([
    // Two trade articles, and 90 mV as a trade text reports it.
    [0, 'battery-posts', 0.05, 0.1, 'published'],
    [1, 'battery-posts', 0.09, 0.09, 'reported'],
    [2, 'generator-b-plus', 0.5, 0.5, 'published'],
  ])('row %i: %s %d to %d V AC, %s', (index, place, lowV, highV, provenance) => {
    const row = rippleLimits.rows[index]!;
    expect(row).toMatchObject({ place, lowV, highV });
    expect(row.source.provenance).toBe(provenance);
  });

  test('the battery posts: 0.1 V recheck, 0.5 V diode fault (common practice)', () => {
    expect(rippleRules.rows['battery-posts']).toMatchObject({ recheckV: 0.1, faultV: 0.5 });
    expect(rippleRules.rows['battery-posts'].source.provenance).toBe('common practice');
  });

  test("the generator's B+: 0.5 V (trade article of September 2007)", () => {
    expect(rippleRules.rows['generator-b-plus']).toMatchObject({ recheckV: 0.5, faultV: 0.5 });
    expect(rippleRules.rows['generator-b-plus'].source.provenance).toBe('published');
  });

  test('they hold at 1500 to 3000 /min with the lamps on (common practice, no source)', () => {
    expect(rippleTestSpeed.rows).toEqual({ low: 1500, high: 3000 });
    expect(rippleTestSpeed.source.provenance).toBe('common practice');
  });
});

describe('what a reading of ripple says', () => {
  const mV = (value: number): Quantity => ({ value, unit: 'mV', resolution: 1 });

  // A meter of ±(0.5 % + 2 digits) in steps of 1 mV tells 100 mV to 3 mV and 500 mV to 5 mV.
  test.each<readonly [RipplePlace, number, RippleResult['verdict']]>([
    ['battery-posts', 0, 'fine'],
    ['battery-posts', 50, 'fine'],
    ['battery-posts', 97, 'fine'],
    ['battery-posts', 98, 'recheck'],
    ['battery-posts', 100, 'recheck'],
    ['battery-posts', 300, 'recheck'],
    ['battery-posts', 505, 'recheck'],
    ['battery-posts', 506, 'diode-fault-likely'],
    ['generator-b-plus', 300, 'fine'],
    ['generator-b-plus', 495, 'fine'],
    ['generator-b-plus', 496, 'recheck'],
    ['generator-b-plus', 500, 'recheck'],
    ['generator-b-plus', 506, 'diode-fault-likely'],
  ])('%s, %d mV: %s', (place, value, verdict) => {
    expect(rippleVerdict({ reading: mV(value), place }).verdict).toBe(verdict);
  });

  test('a coarse display leaves more to recheck', () => {
    const at = (value: number): string =>
      rippleVerdict({ reading: { value, unit: 'V', resolution: 0.01 }, place: 'battery-posts' })
        .verdict;
    expect(at(0.07)).toBe('fine');
    expect(at(0.08)).toBe('recheck');
  });

  test('it is an indication only, unless the meter gives the true root mean square', () => {
    const reading = { reading: mV(30), place: 'battery-posts' } as const;
    expect(rippleVerdict(reading).indicationOnly).toBe(true);
    expect(rippleVerdict({ ...reading, trueRms: false }).indicationOnly).toBe(true);
    expect(rippleVerdict({ ...reading, trueRms: true }).indicationOnly).toBe(false);
  });

  test('more ripple never gives a better verdict', () => {
    const grades = ['fine', 'recheck', 'diode-fault-likely'];
    const volts = fc.double({ min: 0, max: 1, noNaN: true });
    const place = fc.constantFrom<RipplePlace>('battery-posts', 'generator-b-plus');
    fc.assert(
      fc.property(volts, volts, place, (one, other, where) => {
        const grade = (value: number): number =>
          grades.indexOf(
            rippleVerdict({ reading: { value, unit: 'V', resolution: 0.001 }, place: where })
              .verdict,
          );
        expect(grade(Math.max(one, other))).toBeGreaterThanOrEqual(grade(Math.min(one, other)));
      }),
    );
  });

  test('an AC voltage below 0 and a current are refused', () => {
    expect(() => rippleVerdict({ reading: mV(-1), place: 'battery-posts' })).toThrow(
      'value-out-of-range',
    );
    expect(() =>
      rippleVerdict({ reading: { value: 1, unit: 'A' }, place: 'battery-posts' }),
    ).toThrow('unit-mismatch');
  });
});
