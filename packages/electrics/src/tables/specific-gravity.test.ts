import { describe, expect, test } from 'vitest';
import { stateOfChargeByGravity } from '../battery/state-of-charge.ts';
import {
  almostEmptyGravity,
  armySpecificGravity,
  carSpecificGravity,
  manualSpecificGravity,
  tractionSpecificGravity,
} from './specific-gravity.ts';

function expectWithin(gravity: number, percent: number): void {
  const { low, high } = stateOfChargeByGravity(gravity);
  expect(low).toBeLessThanOrEqual(percent);
  expect(high).toBeGreaterThanOrEqual(percent);
}

describe("specific gravity, filled to 1.265: a battery maker's questions and answers", () => {
  test.each([
    [100, 1.265],
    [75, 1.225],
    [50, 1.19],
    [25, 1.155],
    [0, 1.12],
  ])('%d %% is %d, and is what is used', (percent, gravity) => {
    expect(carSpecificGravity.rows).toContainEqual([gravity, percent]);
    expect(stateOfChargeByGravity(gravity).best).toBeCloseTo(percent, 9);
  });
});

describe('specific gravity, filled to 1.280: TM 5-1185, Tables II to IV', () => {
  test.each([
    [100, 1.28],
    [75, 1.25],
    [50, 1.22],
    [25, 1.19],
    [0, 1.13],
  ])('%d %% is %d, and within the interval', (percent, gravity) => {
    expect(armySpecificGravity.rows).toContainEqual([gravity, percent]);
    expectWithin(gravity, percent);
  });

  test('almost empty is 1.160', () => {
    expect(almostEmptyGravity.rows[0]).toMatchObject({ low: 1.16, high: 1.16 });
    expect(almostEmptyGravity.rows[0]!.source).toBe(armySpecificGravity.source);
  });
});

describe('specific gravity of a traction battery: TM 10-6140-200-14, Table 1-1, a rival', () => {
  test.each([
    [100, 1.28],
    [75, 1.25],
    [50, 1.22],
    [25, 1.16],
  ])('%d %% is %d, and within the interval', (percent, gravity) => {
    expect(tractionSpecificGravity.rows).toContainEqual([gravity, percent]);
    expectWithin(gravity, percent);
  });
});

describe("ranges of specific gravity: a vehicle maker's service manual, a rival", () => {
  test.each([
    [100, 1.26, 1.28],
    [75, 1.23, 1.25],
    [50, 1.2, 1.22],
    [25, 1.17, 1.19],
    [0, 1.11, 1.13],
  ])('%d %% is %d to %d, and both ends are within the interval', (percent, low, high) => {
    expect(manualSpecificGravity.rows).toContainEqual({ percent, low, high });
    expectWithin(low, percent);
    expectWithin(high, percent);
  });

  test('almost empty is 1.140 to 1.160', () => {
    expect(almostEmptyGravity.rows[1]).toMatchObject({ low: 1.14, high: 1.16 });
    expect(almostEmptyGravity.rows[1]!.source).toBe(manualSpecificGravity.source);
  });
});
