import { describe, expect, test } from 'vitest';
import { correctedSpecificGravity, freezingPoint, specificGravityVoltage } from './electrolyte.ts';
import { estimatedCrankingAmps, internalResistance } from './internal-resistance.ts';
import { stateOfCharge, stateOfChargeByGravity } from './state-of-charge.ts';
import type { BatteryTechnology } from '../limits/limit-context.ts';
import { openCircuitVoltage } from '../tables/open-circuit-voltage.ts';

describe('state of charge by open-circuit voltage', () => {
  test('12.40 V flooded is 60, 69 or 75 %, by three publishers, and the interval holds them', () => {
    const { low, best, high } = stateOfCharge(12.4, 'flooded');
    expect(best).toBeCloseTo(69, 0);
    expect(low).toBeLessThanOrEqual(60);
    expect(high).toBeGreaterThanOrEqual(75);
  });

  test.each<readonly [BatteryTechnology, number, 'low' | 'high', number]>([
    // Workshop trade table: 12.50 V 70 %, 12.65 V 90 %; TB 43-PS-665: 11.4 V 0 %, 12.9 V 97.5 %.
    ['flooded', 12.5, 'low', 70],
    ['flooded', 12.6, 'low', 83.333],
    ['agm', 12, 'high', 39],
  ])('a rival table sets the end where it is farther: %s %d V, %s', (kind, volts, end, percent) => {
    expect(stateOfCharge(volts, kind)[end]).toBeCloseTo(percent, 3);
  });

  test('beyond the table it is empty or full, and never outside 0 to 100 %', () => {
    expect(stateOfCharge(8, 'flooded')).toEqual({ low: 0, best: 0, high: 10, unit: '%' });
    expect(stateOfCharge(13.5, 'agm')).toMatchObject({ best: 100, high: 100 });
  });

  test('every column rises with the voltage', () => {
    for (const { points } of Object.values(openCircuitVoltage).flat()) {
      const sorted = points.toSorted(([a], [b]) => a - b);
      expect(points).toEqual(sorted);
      expect(points.map(([, percent]) => percent)).toEqual(
        sorted.map(([, percent]) => percent).toSorted((a, b) => a - b),
      );
    }
  });
});

describe('state of charge by specific gravity', () => {
  test.each([
    // Between the figures of TM 5-1185, Tables II to IV, for a battery filled to 1.280.
    [1.265, 87.5],
    [1.16, 12.5],
  ])('of %d is at least %d %%, as a battery filled to 1.280 has', (gravity, percent) => {
    expect(stateOfChargeByGravity(gravity).low).toBeCloseTo(percent, 9);
  });

  test('is never known closer than to ten points', () => {
    expect(stateOfChargeByGravity(1.12)).toEqual({ low: 0, best: 0, high: 10, unit: '%' });
    const { best, high } = stateOfChargeByGravity(1.19);
    expect(high).toBeCloseTo(best + 10, 9);
  });
});

describe('electrolyte', () => {
  test.each([
    // DOE-HDBK-1084-95 equation 6: 0.845; trade texts: 0.84.
    [1.265, 12.63, 12.66],
    [1.225, 12.39, 12.42],
    [1.19, 12.18, 12.21],
    [1.155, 11.97, 12],
    [1.12, 11.76, 11.79],
  ])('of %d gives six cells %d to %d V', (gravity, low, high) => {
    const voltage = specificGravityVoltage(gravity);
    expect(voltage.low).toBeCloseTo(low, 6);
    expect(voltage.high).toBeCloseTo(high, 6);
  });

  test('freezes in proportion between two printed gravities: 1.050 at 25.5 degF', () => {
    expect(freezingPoint(1.05).value * 1.8 + 32).toBeCloseTo(25.5, 6);
  });

  test.each([0.9, 1.5, NaN])('of %d is refused', (gravity) => {
    expect(() => freezingPoint(gravity)).toThrow('value-out-of-range');
    expect(() => correctedSpecificGravity(gravity, 20)).toThrow('value-out-of-range');
    expect(() => specificGravityVoltage(gravity)).toThrow('value-out-of-range');
  });
});

describe('internal resistance', () => {
  test('12.6 V at rest and 10.2 V at 160 A are 15 mOhm', () => {
    expect(internalResistance(12.6, 10.2, 160).best).toBeCloseTo(15, 9);
  });

  test('its ends are the limits of error of all meters together away', () => {
    // 0.083 V, 0.071 V and 3.5 A: 2.554 V / 156.5 A and 2.246 V / 163.5 A.
    const { low, high } = internalResistance(12.6, 10.2, 160);
    expect(high).toBeCloseTo(16.319, 3);
    expect(low).toBeCloseTo(13.737, 3);
  });

  test('the interval holds the best figure and widens as the current falls', () => {
    const heavy = internalResistance(12.6, 10.2, 160);
    const light = internalResistance(12.6, 12.5, 10);
    expect(heavy.low).toBeLessThan(heavy.best);
    expect(heavy.high).toBeGreaterThan(heavy.best);
    expect(light.high / light.best).toBeGreaterThan(heavy.high / heavy.best);
    expect(light.low).toBe(0);
  });

  test.each([
    ['no current', 12.6, 10, 0],
    ['a voltage that rises under load', 12, 12.1, 100],
    ['no number', NaN, 10, 100],
  ])('%s is refused', (_, rest, loaded, current) => {
    expect(() => internalResistance(rest, loaded, current)).toThrow('value-out-of-range');
  });
});

describe('estimated cold-cranking current', () => {
  test('5.5 mOhm warm is a battery of several hundred amperes, with a wide interval', () => {
    const { low, best, high, unit, reason } = estimatedCrankingAmps(5.5, 21);
    expect(unit).toBe('A');
    expect(low).toBeLessThan(500);
    expect(high).toBeGreaterThan(700);
    expect(best).toBeCloseTo(Math.sqrt(low * high), 9);
    expect(reason).toMatch(/\w/);
  });

  test('9 mOhm at -18 Cel is the label of SAE J537: 600 A leave 7.2 V of 12.6 V', () => {
    expect(estimatedCrankingAmps(9, -18).low).toBeCloseTo(600, 9);
  });

  test.each([
    // TM 5-1185, Tables II to IV: 65 % at freezing, 40 % at 0 degF; trade chart: 25 % at -20 degF.
    [27, 1],
    [0, 0.65],
    [-18, 0.4],
    [-29, 0.25],
  ])('%d Cel leaves %d of the cranking power', (temperature, part) => {
    const { low, high } = estimatedCrankingAmps(10, temperature);
    const scaled = (540 * 0.4) / part;
    expect(Math.min(Math.abs(low - scaled), Math.abs(high - scaled))).toBeLessThan(1e-9);
  });

  test('10 mOhm at 21 Cel just passes the load test of a 600 A battery: 300 A, 9.6 V', () => {
    expect(estimatedCrankingAmps(10, 70 / 1.8 - 32 / 1.8).high).toBeCloseTo(600, 9);
  });

  test.each([
    [0, 20],
    [-1, 20],
    [10, -40],
    [10, NaN],
  ])('%d mOhm at %d Cel is refused', (resistance, temperature) => {
    expect(() => estimatedCrankingAmps(resistance, temperature)).toThrow('value-out-of-range');
  });
});
