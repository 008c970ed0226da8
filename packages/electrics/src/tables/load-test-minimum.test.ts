import { describe, expect, test } from 'vitest';
import { interpolate } from '../interpolate.ts';
import { limit } from '../limits/limit.ts';
import {
  loadTestFigures,
  loadTestMinimum,
  secondMakerLoadTestMinimum,
  steadyLoadTestMinimum,
} from './load-test-minimum.ts';

describe('load-test table of the battery trade (from memory), as a vehicle maker prints it', () => {
  test.each([
    [70, 21, 9.6],
    [60, 16, 9.5],
    [50, 10, 9.4],
    [40, 4, 9.3],
    [30, -1, 9.1],
    [20, -7, 8.9],
    [10, -12, 8.7],
    [0, -18, 8.5],
  ])('at %d degF (%d Cel) it asks for %d V', (fahrenheit, celsius, volts) => {
    expect(loadTestMinimum.rows).toContainEqual([fahrenheit, volts]);
    const result = limit('battery.load-test.minimum', { temperature: (fahrenheit - 32) / 1.8 });
    expect(result.type === 'bound' && result.bound.low).toBeCloseTo(volts, 9);
    expect(Math.round((fahrenheit - 32) / 1.8)).toBe(celsius);
  });

  test('is the one in use, and holds above 70 degF', () => {
    expect(interpolate(loadTestMinimum.rows, 100)).toBe(9.6);
    expect(loadTestMinimum.rows).toHaveLength(8);
  });
});

describe("a second vehicle maker's service manual, a rival of the load-test table", () => {
  test.each([
    [70, 9.6],
    [50, 9.4],
    [32, 9.1],
    [15, 8.8],
    [0, 8.5],
  ])('at %d degF it asks for %d V, within 0.1 V of the table', (fahrenheit, volts) => {
    expect(secondMakerLoadTestMinimum.rows).toContainEqual([fahrenheit, volts]);
    expect(Math.abs(interpolate(loadTestMinimum.rows, fahrenheit) - volts)).toBeLessThan(0.1);
  });
});

describe('a steady rule as a second text reports it, a rival of the load-test table', () => {
  test.each([
    [100, 9.9],
    [90, 9.8],
    [80, 9.7],
    [70, 9.6],
    [60, 9.5],
    [50, 9.4],
    [40, 9.3],
  ])('at %d degF it asks for %d V', (fahrenheit, volts) => {
    expect(interpolate(steadyLoadTestMinimum.rows, fahrenheit)).toBeCloseTo(volts, 9);
    expect(steadyLoadTestMinimum.source.provenance).toBe('reported');
  });
});

test.each([
  ['below -18 Cel', 8],
  ['at -18 Cel', 8],
  ['at 18 Cel', 9.5],
  ['at any temperature', 9.7],
])('further service manuals ask for another figure %s: %d V', (of, low) => {
  const found = loadTestFigures.rows.filter((row) => row.of.startsWith(of));
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({ low, unit: 'V', source: { provenance: 'published' } });
});
