import { describe, expect, test } from 'vitest';
import { selfDischarge } from './self-discharge.ts';

describe('self-discharge in the first ten days: TM 9-6140-200-14 (1998)', () => {
  test.each([
    [100, 38, 0.0025],
    [80, 27, 0.001],
    [50, 10, 0.0003],
  ])('at %d degF (%d Cel) the specific gravity falls by %d a day', (fahrenheit, celsius, fall) => {
    expect(selfDischarge.rows).toContainEqual([celsius, fall]);
    expect(Math.round((fahrenheit - 32) / 1.8)).toBe(celsius);
  });
});
