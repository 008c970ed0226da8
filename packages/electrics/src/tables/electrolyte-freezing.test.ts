import { describe, expect, test } from 'vitest';
import { freezingPoint } from '../battery/electrolyte.ts';
import { electrolyteFreezing } from './electrolyte-freezing.ts';

describe('freezing point of electrolyte: Army subcourse OD1002, lesson 2; TM 5-1185 for 1.280', () => {
  test.each([
    [1.28, -90, -68],
    [1.25, -62, -52],
    [1.2, -16, -27],
    [1.15, 5, -15],
    [1.1, 19, -7],
    [1, 32, 0],
  ])('of a gravity of %d is %d degF (%d Cel)', (gravity, fahrenheit, celsius) => {
    expect(electrolyteFreezing.rows).toContainEqual([gravity, fahrenheit]);
    expect(Math.round(freezingPoint(gravity).value)).toBeCloseTo(celsius, 9);
  });

  test.each([
    // A vehicle owner's manual, degF.
    [1.225, -35],
    [1.2, -17],
    [1.15, 5],
    [1.1, 18],
    // TM 10-6140-200-14.
    [1.28, -95],
    [1.25, -62],
    [1.22, -31],
    [1.16, 1],
  ])('of a gravity of %d is within 6 degF of a second text, %d degF', (gravity, fahrenheit) => {
    const { value } = freezingPoint(gravity);
    expect(Math.abs(value * 1.8 + 32 - fahrenheit)).toBeLessThan(6);
  });
});
