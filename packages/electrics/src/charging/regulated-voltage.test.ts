import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { regulatedVoltageWindow } from './regulated-voltage.ts';
import { boostRecheck, startRecovery } from '../tables/charge-recovery.ts';
import { chargingWindow, type ChargingWindowName } from '../tables/charging-window.ts';
import type { Provenance } from '../source.ts';
import { regulatedVoltageByAmbient } from '../tables/regulated-voltage.ts';

describe('regulated voltage by ambient temperature (TM 9-6115-464-12, Table 4-5)', () => {
  // Published for 24 V; the 12 V figures are halves of it.
  test.each([
    [-18, 14.6, 15.06],
    [-7, 14.43, 14.87],
    [4, 14.32, 14.68],
    [16, 14.16, 14.49],
    [27, 14, 14.3],
    [38, 13.84, 14.16],
    [49, 13.66, 14.02],
  ])('%d Cel: %d to %d V, and twice that at 24 V', (ambientC, low, high) => {
    const window = regulatedVoltageWindow(ambientC);
    expect(window).toMatchObject({ low, high, unit: 'V' });
    expect(window.best).toBeCloseTo((low + high) / 2, 9);
    expect(window.source.provenance).toBe('published');
    expect(window.source.text).toContain('TM 9-6115-464-12');
    expect(regulatedVoltageWindow(ambientC, 24)).toMatchObject({ low: 2 * low, high: 2 * high });
  });

  test('it falls by 14.9 mV a kelvin, from the first row to the last', () => {
    const [cold] = regulatedVoltageByAmbient.rows;
    const hot = regulatedVoltageByAmbient.rows.at(-1)!;
    // The text has 0 and 120 degF, of which the table's whole Cel are roundings: 66.67 K.
    const fall = (cold.lowV + cold.highV - hot.lowV - hot.highV) / 2;
    expect((fall / (120 / 1.8)) * 1000).toBeCloseTo(14.85, 6);
    const byFunction = regulatedVoltageWindow(-18).best - regulatedVoltageWindow(49).best;
    expect((byFunction / 67) * 1000).toBeGreaterThan(14.7);
    expect((byFunction / 67) * 1000).toBeLessThan(15);
  });

  test('halfway between two rows it is halfway between their windows', () => {
    const window = regulatedVoltageWindow(10);
    expect(window.low).toBeCloseTo(14.24, 9);
    expect(window.high).toBeCloseTo(14.585, 9);
  });

  test('a warmer day never raises it', () => {
    const ambient = fc.double({ min: -60, max: 80, noNaN: true });
    fc.assert(
      fc.property(ambient, ambient, (one, other) => {
        const cold = regulatedVoltageWindow(Math.min(one, other));
        const warm = regulatedVoltageWindow(Math.max(one, other));
        expect(warm.low).toBeLessThanOrEqual(cold.low);
        expect(warm.high).toBeLessThanOrEqual(cold.high);
      }),
    );
  });

  test('a temperature that is no number is refused', () => {
    expect(() => regulatedVoltageWindow(Number.NaN)).toThrow('value-not-finite');
  });
});

describe('windows of charging voltage', () => {
  test.each<readonly [ChargingWindowName, number, number, Provenance, string]>([
    ['conventional', 13.5, 14.8, 'common practice', 'conventional regulator'],
    ['passenger-car', 13.5, 14.5, 'published', "a vehicle maker's service manual"],
    ['trailer-set', 13.6, 14.2, 'published', 'TM 9-2330-356-14'],
    ['smart', 12.2, 15, 'common practice', 'start-stop'],
  ])('%s: %d to %d V (%s, %s)', (name, lowV, highV, provenance, text) => {
    const row = chargingWindow.rows[name];
    expect(row).toMatchObject({ lowV, highV });
    expect(row.source.provenance).toBe(provenance);
    expect(row.source.text).toContain(text);
  });

  test('without a temperature it is that of a warm system (common practice, no source)', () => {
    expect(regulatedVoltageWindow(undefined)).toMatchObject({ low: 13.5, high: 14.8 });
    expect(regulatedVoltageWindow(undefined, 24)).toMatchObject({ low: 27, high: 29.6 });
    expect(regulatedVoltageWindow(undefined).source.provenance).toBe('common practice');
  });

  test('one start is charged back in 20 to 30 min at 1000 to 1200 /min (TM 9-6140-200-14)', () => {
    expect(startRecovery.rows).toEqual({
      lowSpeedPerMin: 1000,
      highSpeedPerMin: 1200,
      leastMin: 20,
      mostMin: 30,
    });
    expect(startRecovery.source.provenance).toBe('published');
    expect(startRecovery.source.text).toContain('TM 9-6140-200-14');
  });

  test('13.0 to 13.5 V after a boost is measured again (common practice, no source)', () => {
    expect(boostRecheck.rows).toEqual({ lowV: 13, highV: 13.5, speedPerMin: 1500, afterMin: 20 });
    expect(boostRecheck.source.provenance).toBe('common practice');
  });
});
