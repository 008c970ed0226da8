import { describe, expect, test } from 'vitest';
import type { LimitContext } from './limit-context.ts';
import { expectedCrankingCurrent, expectedStallCurrent } from './cranking-current-range.ts';

const petrol: LimitContext = { fuel: 'petrol', displacement: 1.6, temperature: 20 };

describe('the cranking current to expect (common practice, no source)', () => {
  test.each<readonly [string, LimitContext, number, number]>([
    ['petrol 1.6 L, warm', petrol, 120, 200],
    ['petrol 3 L, warm', { ...petrol, displacement: 3 }, 160, 260],
    ['petrol 2.25 L, between the classes', { ...petrol, displacement: 2.25 }, 140, 230],
    ['diesel 2 L, warm', { ...petrol, fuel: 'diesel', displacement: 2 }, 200, 350],
    ['diesel 6.5 L, warm', { ...petrol, fuel: 'diesel', displacement: 6.5 }, 350, 600],
    ['petrol 0.6 L, warm', { ...petrol, displacement: 0.6 }, 80, 200],
    ['petrol 0.8 L, warm', { ...petrol, displacement: 0.8 }, 100, 200],
    ['petrol 3.5 L, warm', { ...petrol, displacement: 3.5 }, 160, 260],
    ['petrol 4.75 L, warm', { ...petrol, displacement: 4.75 }, 180, 310],
    ['petrol 6 L, warm', { ...petrol, displacement: 6 }, 200, 360],
    ['diesel 1 L, warm', { ...petrol, fuel: 'diesel', displacement: 1 }, 150, 350],
    ['diesel 1.25 L, warm', { ...petrol, fuel: 'diesel', displacement: 1.25 }, 175, 350],
    ['diesel 7.5 L, warm', { ...petrol, fuel: 'diesel', displacement: 7.5 }, 350, 600],
    ['diesel 13 L, warm', { ...petrol, fuel: 'diesel', displacement: 13 }, 600, 1000],
    ['petrol 1.6 L at 0 Cel', { ...petrol, temperature: 0 }, 168, 280],
    ['petrol 1.6 L at -18 Cel', { ...petrol, temperature: -18 }, 216, 360],
    ['petrol 1.6 L, temperature not known', { fuel: 'petrol', displacement: 1.6 }, 120, 280],
    ['fuel not known', { displacement: 1.6, temperature: 20 }, 120, 350],
    ['petrol, nothing else known', { fuel: 'petrol', temperature: 20 }, 120, 260],
    ['diesel, nothing else known', { fuel: 'diesel', temperature: 20 }, 200, 600],
    ['petrol, 8 cylinders', { fuel: 'petrol', cylinders: 8, temperature: 20 }, 160, 360],
    ['diesel, 4 cylinders', { fuel: 'diesel', cylinders: 4, temperature: 20 }, 200, 350],
    ['diesel, 6 cylinders', { fuel: 'diesel', cylinders: 6, temperature: 20 }, 200, 468.42],
    ["the owner's 180 A", { ...petrol, expectedCurrent: 180 }, 135, 225],
    ["the owner's 180 A at 0 Cel", { expectedCurrent: 180, temperature: 0 }, 189, 315],
    ["the owner's 180 A, 24 V", { expectedCurrent: 180, temperature: 20, nominal: 24 }, 135, 225],
    // TM 9-2320-211-20 allows the 24 V starter of a 5-ton truck 300 A.
    ['24 V, 6 L', { nominal: 24, displacement: 6, temperature: 20 }, 157.5, 330],
    ['24 V, nothing else known', { nominal: 24, temperature: 20 }, 121.97, 550],
  ])('%s, %j: %d to %d A', (_, context, low, high) => {
    const expected = expectedCrankingCurrent(context);
    expect(expected.low).toBeCloseTo(low, 1);
    expect(expected.high).toBeCloseTo(high, 1);
    expect(expected.best).toBeGreaterThan(expected.low);
    expect(expected.best).toBeLessThan(expected.high);
    expect(expected.unit).toBe('A');
  });

  test('the middle of the normal range is the best figure', () => {
    expect(expectedCrankingCurrent(petrol).best).toBeCloseTo(160, 9);
  });
});

describe('the current of an engine that does not turn (common practice, no source)', () => {
  test('is 400 to 800 A for a petrol car, cold or warm', () => {
    const warm = expectedStallCurrent(petrol);
    expect(warm.low).toBeCloseTo(400, 9);
    expect(warm.best).toBeCloseTo(560, 9);
    expect(warm.high).toBeCloseTo(800, 9);
    expect(expectedStallCurrent({ ...petrol, temperature: -18 })).toEqual(warm);
  });

  test('a locked starter of the 1.4 kW class at 780 A is within it', () => {
    // A vehicle maker's service manual: 780 A at 4.0 V, locked.
    const { low, high } = expectedStallCurrent(petrol);
    expect(low).toBeLessThan(780);
    expect(high).toBeGreaterThan(780);
  });
});
