import { describe, expect, test } from 'vitest';
import { keyOffDrain } from './key-off-drain.ts';
import type { Provenance } from '../source.ts';
import {
  awakeDrain,
  keyOffDrainLimits,
  lampLeftOnMa,
  type KeyOffDrainRule,
} from '../tables/key-off-drain-limit.ts';
import { moduleSleepRange, moduleSleepWait } from '../tables/module-sleep-time.ts';

describe('the current with the key off', () => {
  test.each<readonly [KeyOffDrainRule, number, number, number, Provenance]>([
    // Common practice, no source.
    ['trade', 0, 50, 60, 'common practice'],
    // Two vehicle makers' service manuals.
    ['maker-a', 10, 30, 5, 'published'],
    ['maker-b', 25, 50, 75, 'published'],
  ])('%s: %d to %d mA after %d min (%s)', (rule, lowMa, highMa, afterMin, provenance) => {
    const row = keyOffDrainLimits.rows[rule];
    expect(row).toMatchObject({ lowMa, highMa, afterMin });
    expect(row.source.provenance).toBe(provenance);
  });

  test("may be over 100 mA for the first 2 to 5 min (a vehicle maker's service manual)", () => {
    expect(awakeDrain.rows).toEqual({ aboveMa: 100, leastMin: 2, mostMin: 5 });
    expect(awakeDrain.source.provenance).toBe('published');
  });

  test("of one lamp left on is about 1 A (a vehicle maker's service manual)", () => {
    expect(lampLeftOnMa.rows).toBe(1000);
    expect(lampLeftOnMa.source.provenance).toBe('published');
  });

  test('is judged after 60 min, and not before 30 (common practice, no source)', () => {
    expect(moduleSleepWait.rows).toEqual({ leastMin: 30, waitMin: 60 });
    expect(moduleSleepWait.source.provenance).toBe('common practice');
    expect(moduleSleepWait.source.text).toContain('10 to 60 min');
  });

  test("falls asleep in 2 to 75 min (vehicle makers' service manuals)", () => {
    expect(moduleSleepRange.rows).toEqual({ leastMin: 2, mostMin: 75 });
    expect(moduleSleepRange.source.provenance).toBe('published');
  });
});

describe('what a key-off current says', () => {
  // A meter of ±(2 % + 3 digits) in steps of 1 mA tells 50 mA to 4.5 mA.
  test.each([
    [20, 60, 'normal'],
    [45, 60, 'normal'],
    [46, 60, 'cannot-tell'],
    [50, 60, 'cannot-tell'],
    [54, 60, 'cannot-tell'],
    [55, 60, 'investigate'],
    [320, 60, 'investigate'],
    [20, 30, 'normal'],
    [20, 29.9, 'wait'],
    [320, 30, 'wait'],
    [320, 59.9, 'wait'],
    [320, 0, 'wait'],
    [50, 45, 'wait'],
  ])('%d mA after %d min: %s', (value, undisturbedMin, type) => {
    expect(keyOffDrain({ value, unit: 'mA', resolution: 1 }, undisturbedMin).type).toBe(type);
  });

  test('too early it names the minutes that are left', () => {
    const drain = { value: 320, unit: 'mA', resolution: 1 } as const;
    expect(keyOffDrain(drain, 10)).toMatchObject({ type: 'wait', minutes: 20 });
    expect(keyOffDrain(drain, 40)).toMatchObject({ type: 'wait', minutes: 20 });
  });

  test('the limit is 50 mA and says that it is common practice', () => {
    const { limit } = keyOffDrain({ value: 20, unit: 'mA' }, 90);
    expect(limit).toMatchObject({ low: 50, high: 50, unit: 'mA' });
    expect(limit.source.provenance).toBe('common practice');
  });

  test('minutes below 0 and volts are refused', () => {
    expect(() => keyOffDrain({ value: 20, unit: 'mA' }, -1)).toThrow('value-out-of-range');
    expect(() => keyOffDrain({ value: 20, unit: 'mV' }, 60)).toThrow('unit-mismatch');
  });
});
