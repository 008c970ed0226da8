import { describe, expect, test } from 'vitest';
import { correctedSpecificGravity, freezingPoint, specificGravityVoltage } from './electrolyte.ts';
import { estimatedCrankingAmps, internalResistance } from './internal-resistance.ts';
import { stateOfCharge, stateOfChargeByGravity } from './state-of-charge.ts';
import type { BatteryTechnology } from './limit-context.ts';
import { openCircuitVoltage } from './tables/open-circuit-voltage.ts';

describe('state of charge by open-circuit voltage', () => {
  // Battery maker's questions and answers (flooded); workshop trade table (agm, gel).
  test.each<readonly [BatteryTechnology, number, number]>([
    ['flooded', 12.65, 100],
    ['flooded', 12.45, 75],
    ['flooded', 12.24, 50],
    ['flooded', 12.06, 25],
    ['flooded', 11.89, 0],
    ['efb', 12.24, 50],
    ['agm', 12.85, 100],
    ['agm', 12.8, 90],
    ['agm', 12.55, 70],
    ['agm', 12.5, 60],
    ['agm', 12.4, 50],
    ['agm', 12, 20],
    ['gel', 12.9, 100],
    ['gel', 12.85, 90],
    ['gel', 12.6, 70],
    ['gel', 12.5, 60],
    ['gel', 12.45, 50],
    ['gel', 12.1, 20],
    // The empty end of both is common practice, no source.
    ['agm', 11.8, 0],
    ['gel', 11.8, 0],
  ])('%s at %d V has %d %%', (technology, volts, percent) => {
    expect(stateOfCharge(volts, technology).best).toBeCloseTo(percent, 9);
  });

  test('12.40 V flooded is 60, 69 or 75 %, by three publishers, and the interval holds them', () => {
    const { low, best, high } = stateOfCharge(12.4, 'flooded');
    expect(best).toBeCloseTo(69, 0);
    expect(low).toBeLessThanOrEqual(60);
    expect(high).toBeGreaterThanOrEqual(75);
  });

  test.each([
    // TM 5-3805-262-20 para 5-9.
    [12.6, 100],
    [12.4, 75],
    [12.2, 50],
    [12, 25],
    [11.7, 0],
  ])('the army figure of %d V, %d %%, is within the interval', (volts, percent) => {
    const { low, high } = stateOfCharge(volts, 'flooded');
    expect(low).toBeLessThanOrEqual(percent);
    expect(high).toBeGreaterThanOrEqual(percent);
  });

  test.each([
    // TB 43-PS-665 (April 2008), military AGM battery.
    [12.9, 97.5],
    [11.4, 0],
  ])('the military AGM figure of %d V, %d %%, is within the interval', (volts, percent) => {
    const { low, high } = stateOfCharge(volts, 'agm');
    expect(low).toBeLessThanOrEqual(percent);
    expect(high).toBeGreaterThanOrEqual(percent);
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
    // Battery maker's table for a battery filled to 1.265.
    [1.265, 100],
    [1.225, 75],
    [1.19, 50],
    [1.155, 25],
    [1.12, 0],
  ])('%d is %d %%', (gravity, percent) => {
    expect(stateOfChargeByGravity(gravity).best).toBeCloseTo(percent, 9);
  });

  test.each([
    // TM 5-1185, Tables II to IV, a battery filled to 1.280; 1.265 and 1.160 between its figures.
    [1.265, 87.5],
    [1.25, 75],
    [1.22, 50],
    [1.19, 25],
    [1.16, 12.5],
  ])('the army figure of %d, %d %%, is its low end', (gravity, percent) => {
    expect(stateOfChargeByGravity(gravity).low).toBeCloseTo(percent, 9);
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

  test.each([
    // TM 5-4210-230-14&P-1; an engine set's manual TP-5606 p. 48; service manuals.
    [1.25, 90, 1.254],
    [1.25, 70, 1.246],
    [1.25, 20, 1.226],
    [1.235, 100, 1.243],
  ])('read as %d at %d degF is %d at 80 degF', (gravity, fahrenheit, corrected) => {
    const temperature = (fahrenheit - 32) / 1.8;
    expect(correctedSpecificGravity(gravity, temperature)).toBeCloseTo(corrected, 9);
  });

  test.each([
    // Army subcourse OD1002, lesson 2; TM 5-1185 for 1.280.
    [1, 32],
    [1.05, 25.5],
    [1.1, 19],
    [1.15, 5],
    [1.2, -16],
    [1.25, -62],
    [1.28, -90],
  ])('of %d freezes at %d degF', (gravity, fahrenheit) => {
    const { value, unit } = freezingPoint(gravity);
    expect(unit).toBe('Cel');
    expect(value * 1.8 + 32).toBeCloseTo(fahrenheit, 6);
  });

  test.each([0.9, 1.5, NaN])('of %d is refused', (gravity) => {
    expect(() => freezingPoint(gravity)).toThrow('value-out-of-range');
  });
});

describe('internal resistance', () => {
  test('12.6 V at rest and 10.2 V at 160 A are 15 mOhm', () => {
    expect(internalResistance(12.6, 10.2, 160).best).toBeCloseTo(15, 9);
  });

  test('its ends are two standard uncertainties away', () => {
    // 0.083 V and 0.071 V of error limit, 3.5 A: 0.0631 V and 2.02 A, so 0.394 and 0.189 mOhm.
    const { low, high } = internalResistance(12.6, 10.2, 160);
    expect(high).toBeCloseTo(15.875, 3);
    expect(low).toBeCloseTo(14.125, 3);
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
