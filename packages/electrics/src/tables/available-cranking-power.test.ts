import { describe, expect, test } from 'vitest';
import { interpolate } from '../interpolate.ts';
import { availablePower } from '../limits/battery-resistance.ts';
import {
  availableCapacity,
  availableCrankingPower,
  militaryCrankingPower,
} from './available-cranking-power.ts';

describe('cranking power left in the cold: a trade chart of battery power against engine need', () => {
  test.each([
    [80, 27, 1],
    [32, 0, 0.65],
    [0, -18, 0.4],
    [-20, -29, 0.25],
  ])('at %d degF (%d Cel) %d is left, and is what is used', (fahrenheit, celsius, part) => {
    expect(availableCrankingPower.rows).toContainEqual([celsius, part]);
    expect(availablePower(celsius)).toBeCloseTo(part, 9);
    expect(Math.round((fahrenheit - 32) / 1.8)).toBe(celsius);
  });
});

describe('cranking power left in the cold: TM 5-1185, Tables II to IV', () => {
  test.each([
    [80, 27, 1],
    [30, -1, 0.65],
    [0, -18, 0.4],
  ])('at %d degF (%d Cel) %d is left, within 0.02 of what is used', (fahrenheit, celsius, part) => {
    expect(militaryCrankingPower.rows).toContainEqual([celsius, part]);
    expect(Math.abs(availablePower(celsius) - part)).toBeLessThan(0.02);
    expect(Math.round((fahrenheit - 32) / 1.8)).toBe(celsius);
  });
});

describe('capacity left in the cold, another quantity: TM 10-6140-200-14', () => {
  test.each([
    [77, 25, 1],
    [32, 0, 0.75],
    [0, -18, 0.4],
  ])('at %d degF (%d Cel) %d is left', (fahrenheit, celsius, part) => {
    expect(availableCapacity.rows).toContainEqual([celsius, part]);
    expect(Math.round((fahrenheit - 32) / 1.8)).toBe(celsius);
  });

  test('at freezing more capacity is left than cranking power', () => {
    expect(interpolate(availableCapacity.rows, 0)).toBeGreaterThan(availablePower(0));
  });
});
