import { describe, expect, test } from 'vitest';
import { stateOfCharge } from '../battery/state-of-charge.ts';
import { openCircuitVoltage } from './open-circuit-voltage.ts';

describe("open-circuit voltage, flooded: a battery maker's questions and answers, table 6", () => {
  test.each([
    [100, 12.65],
    [75, 12.45],
    [50, 12.24],
    [25, 12.06],
    [0, 11.89],
  ])('%d %% is %d V, and is what is used', (percent, volts) => {
    expect(openCircuitVoltage.flooded[0].points).toContainEqual([volts, percent]);
    expect(stateOfCharge(volts, 'flooded').best).toBeCloseTo(percent, 9);
  });
});

describe('open-circuit voltage, flooded: TM 5-3805-262-20 para 5-9, a rival', () => {
  test.each([
    [100, 12.6],
    [75, 12.4],
    [50, 12.2],
    [25, 12],
    [0, 11.7],
  ])('%d %% is %d V, and within the interval', (percent, volts) => {
    expect(openCircuitVoltage.flooded[1]?.points).toContainEqual([volts, percent]);
    const { low, high } = stateOfCharge(volts, 'flooded');
    expect(low).toBeLessThanOrEqual(percent);
    expect(high).toBeGreaterThanOrEqual(percent);
  });
});

describe('open-circuit voltage: a workshop trade table by type of battery', () => {
  test.each([
    [100, 12.7],
    [90, 12.65],
    [70, 12.5],
    [60, 12.4],
    [50, 12.3],
    [20, 12],
    [0, 11.9],
  ])('flooded, a rival: %d %% is %d V, and within the interval', (percent, volts) => {
    expect(openCircuitVoltage.flooded[2]?.points).toContainEqual([volts, percent]);
    const { low, high } = stateOfCharge(volts, 'flooded');
    expect(low).toBeLessThanOrEqual(percent);
    expect(high).toBeGreaterThanOrEqual(percent);
  });

  test.each([
    [100, 12.85, 12.9],
    [90, 12.8, 12.85],
    [70, 12.55, 12.6],
    [60, 12.5, 12.5],
    [50, 12.4, 12.45],
    [20, 12, 12.1],
  ])('%d %% is %d V for AGM and %d V for gel, and is what is used', (percent, agm, gel) => {
    expect(openCircuitVoltage.agm[0].points).toContainEqual([agm, percent]);
    expect(openCircuitVoltage.gel[0].points).toContainEqual([gel, percent]);
    expect(stateOfCharge(agm, 'agm').best).toBeCloseTo(percent, 9);
    expect(stateOfCharge(gel, 'gel').best).toBeCloseTo(percent, 9);
  });

  test('an empty sealed battery is somewhere below 12.0 V: 11.8 V, common practice, no source', () => {
    expect(openCircuitVoltage.agm[0].points[0]).toEqual([11.8, 0]);
    expect(openCircuitVoltage.gel[0].points[0]).toEqual([11.8, 0]);
  });
});

describe('open-circuit voltage: TB 43-PS-665 (April 2008), military AGM battery', () => {
  test.each([
    [95, 12.9],
    [100, 12.9],
    [0, 11.4],
  ])('%d %% is %d V, and within the interval', (percent, volts) => {
    expect(openCircuitVoltage.agm[1]?.points.map(([point]) => point)).toContain(volts);
    const { low, high } = stateOfCharge(volts, 'agm');
    expect(low).toBeLessThanOrEqual(percent);
    expect(high).toBeGreaterThanOrEqual(percent);
  });
});

test('an enhanced flooded battery has the flooded columns (common practice, no source)', () => {
  expect(openCircuitVoltage.efb).toBe(openCircuitVoltage.flooded);
});
