import { describe, expect, test } from 'vitest';
import { expectedCrankingCurrent, expectedStallCurrent } from '../limits/cranking-current-range.ts';
import {
  coldCrankingFactor,
  dieselCrankingCurrent,
  inrushMultiple,
  petrolCrankingCurrent,
  printedCrankingCurrents,
} from './cranking-current.ts';

type Ends = { readonly low?: number; readonly high?: number; readonly unit: 'A' | 'V' };

describe('printed cranking currents of 12 V petrol engines: automotive training text', () => {
  test.each<readonly [number, string, Ends]>([
    [4, 'normal, warm', { high: 100, unit: 'A' }],
    [4, 'greatest', { low: 150, high: 185, unit: 'A' }],
    [6, 'normal, warm', { high: 125, unit: 'A' }],
    [6, 'greatest', { low: 160, high: 200, unit: 'A' }],
    [8, 'normal, warm', { high: 150, unit: 'A' }],
    [8, 'greatest', { low: 185, high: 250, unit: 'A' }],
  ])('%d cylinders, %s: %j', (cylinders, kind, ends) => {
    const of = `petrol, ${cylinders} cylinders, ${kind}`;
    const row = printedCrankingCurrents.rows.find((one) => one.of === of);
    expect(row).toMatchObject({ ...ends, source: { provenance: 'published' } });
    expect(row!.source.text).toContain('training text');
  });
});

describe('printed cranking currents of diesels', () => {
  test.each<readonly [string, string, Ends]>([
    ['TM 10-3930-671-24', 'diesel lift truck, 12 V', { low: 180, high: 220, unit: 'A' }],
    ['TM 9-2320-211-20', '5-ton truck, 24 V, greatest', { high: 300, unit: 'A' }],
    ['TM 9-2320-211-20', '5-ton truck, 24 V, voltage meanwhile', { low: 18, unit: 'V' }],
  ])('%s, %s: %j', (text, of, ends) => {
    const row = printedCrankingCurrents.rows.find((one) => one.of === of);
    expect(row).toMatchObject({ ...ends, source: { provenance: 'published' } });
    expect(row!.source.text).toContain(text);
  });

  test('TM 9-2320-211-20: 300 A is within what a 24 V engine of 6 L is expected to take', () => {
    const { low, high } = expectedCrankingCurrent({
      nominal: 24,
      displacement: 6,
      temperature: 20,
    });
    expect(low).toBeLessThan(300);
    expect(high).toBeGreaterThan(300);
  });
});

describe('usual warm cranking currents (common practice, no source)', () => {
  test.each([
    [0.6, 80, 200],
    [1, 120, 200],
    [2, 120, 200],
    [2.5, 160, 260],
    [3.5, 160, 260],
    [6, 200, 360],
  ])('petrol of %d L: %d to %d A', (displacement, low, high) => {
    expect(petrolCrankingCurrent.rows).toContainEqual({ displacement, low, high });
    expect(petrolCrankingCurrent.source.provenance).toBe('common practice');
  });

  test.each([
    [1, 150, 350],
    [1.5, 200, 350],
    [2.2, 200, 350],
    [6, 350, 600],
    [7.5, 350, 600],
    [13, 600, 1000],
  ])('diesel of %d L: %d to %d A', (displacement, low, high) => {
    expect(dieselCrankingCurrent.rows).toContainEqual({ displacement, low, high });
    expect(dieselCrankingCurrent.source.provenance).toBe('common practice');
  });

  test.each([
    [20, 1],
    [0, 1.4],
    [-18, 1.8],
  ])('at %d Cel it is %d times that', (celsius, factor) => {
    expect(coldCrankingFactor.rows).toContainEqual([celsius, factor]);
    expect(coldCrankingFactor.source.provenance).toBe('common practice');
    const vehicle = { fuel: 'petrol', displacement: 1.6 } as const;
    expect(expectedCrankingCurrent({ ...vehicle, temperature: celsius }).high).toBeCloseTo(
      200 * factor,
      9,
    );
  });

  test('the inrush of the first 20 to 60 ms is 2.5 to 5 times that, 400 to 900 A for a car', () => {
    expect(inrushMultiple.rows).toEqual({ low: 2.5, high: 5 });
    expect(inrushMultiple.source).toEqual({
      provenance: 'common practice',
      text: '2.5 to 5 times for 20 to 60 ms, 400 to 900 A for a car; battery and cable bound it',
    });
    const stall = expectedStallCurrent({ fuel: 'petrol', displacement: 1.6, temperature: 20 });
    expect(stall.low).toBeCloseTo(400, 9);
    expect(stall.high).toBeLessThan(900);
  });
});
