import { describe, expect, test } from 'vitest';
import type { Provenance } from '../source.ts';
import { crankingSpeeds, starterRatios } from './cranking-speed.ts';

describe('cranking speeds', () => {
  test.each<readonly [string, number, number, Provenance]>([
    ['least to start, any engine', 100, 100, 'published'],
    ['least to start, petrol at -20 Cel', 60, 100, 'from memory'],
    ['least to start, diesel with glow plugs', 80, 150, 'from memory'],
    ['least to start, diesel without glow plugs', 100, 200, 'from memory'],
    ['usual, petrol, warm', 180, 300, 'common practice'],
    ['usual, diesel, warm', 150, 250, 'common practice'],
  ])('%s: %d to %d /min (%s)', (of, low, high, provenance) => {
    const found = crankingSpeeds.rows.filter((row) => row.of === of);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ low, high, unit: '/min', source: { provenance } });
  });
});

test.each([
  ['pinion on ring gear, direct', 12, 12],
  ['pinion on ring gear', 15, 20],
  ['with double reduction', 25, 40],
])('ratio, Army subcourse OD1003 and TM 5-3805-255-14, %s: %d to %d', (of, low, high) => {
  const row = starterRatios.rows.find((one) => one.of === of);
  expect(row).toMatchObject({ low, high, unit: '1', source: { provenance: 'published' } });
  expect(row!.source.text).toMatch(/OD1003.*TM 5-3805-255-14/);
});
