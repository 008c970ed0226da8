import { expect, test } from 'vitest';
import type { Quantity } from './quantity.ts';
import { plausible, readingRange, type ReadingKind } from './reading-range.ts';

type Row = readonly [string, Quantity, ReadingKind, 12 | 24];

// Ranges: common practice, no source.
test.each<Row>([
  ['124 V of a battery', { value: 124, unit: 'V' }, 'battery-voltage', 12],
  ['-12 V, leads swapped', { value: -12, unit: 'V' }, 'battery-voltage', 12],
  ['0.0124 V, millivolts taken for volts', { value: 0.0124, unit: 'V' }, 'battery-voltage', 12],
  ['12.4 mV', { value: 12.4, unit: 'mV' }, 'battery-voltage', 12],
  ['25 V on a 12 V vehicle', { value: 25, unit: 'V' }, 'battery-voltage', 12],
  ['120 V of drop, millivolts meant', { value: 120, unit: 'V' }, 'drop', 12],
  ['14.2 V of drop, more than any battery has to lose', { value: 14.2, unit: 'V' }, 'drop', 12],
  ['-0.5 V of drop', { value: -0.5, unit: 'V' }, 'drop', 12],
  ['20 000 A', { value: 20_000, unit: 'A' }, 'current', 12],
  ['-150 A, clamp the wrong way round', { value: -150, unit: 'A' }, 'current', 12],
  [
    '640 A of a battery’s label, on a starter bench',
    { value: 640, unit: 'A' },
    'bench-current',
    12,
  ],
  ['250 Cel', { value: 250, unit: 'Cel' }, 'temperature', 12],
  ['90 Cel', { value: 90, unit: 'Cel' }, 'temperature', 12],
  ['2019, a year taken for an age', { value: 2019, unit: 'a' }, 'age', 12],
  ['5000 N.m', { value: 5000, unit: 'N.m' }, 'torque', 12],
  ['1265, points taken for density', { value: 1265, unit: '1' }, 'density', 12],
])('%s is questioned', (_, quantity, kind, nominal) => {
  expect(plausible(quantity, kind, nominal)).toBe(false);
});

test.each<Row>([
  ['12.4 V', { value: 12.4, unit: 'V' }, 'battery-voltage', 12],
  ['12 400 mV', { value: 12_400, unit: 'mV' }, 'battery-voltage', 12],
  ['2.1 V of a dead battery', { value: 2.1, unit: 'V' }, 'battery-voltage', 12],
  ['15.06 V charging in frost', { value: 15.06, unit: 'V' }, 'battery-voltage', 12],
  ['25 V on a 24 V vehicle', { value: 25, unit: 'V' }, 'battery-voltage', 24],
  ['0 V where nothing arrives', { value: 0, unit: 'V' }, 'signal-voltage', 12],
  ['0.124 V of drop', { value: 0.124, unit: 'V' }, 'drop', 12],
  ['120 mV of drop', { value: 120, unit: 'mV' }, 'drop', 12],
  ['12.6 V across an open path', { value: 12.6, unit: 'V' }, 'drop', 12],
  ['780 A locked', { value: 780, unit: 'A' }, 'current', 12],
  ['310 A of a starter that is stuck, on a bench', { value: 310, unit: 'A' }, 'bench-current', 12],
  ['20 degF', { value: 20, unit: '[degF]' }, 'temperature', 12],
  ['18 months', { value: 18, unit: 'mo' }, 'age', 12],
  ['60 lbf.in', { value: 60, unit: '[lbf_av].[in_i]' }, 'torque', 12],
  ['3000 /min', { value: 3000, unit: '/min' }, 'speed', 12],
])('%s can be true', (_, quantity, kind, nominal) => {
  expect(plausible(quantity, kind, nominal)).toBe(true);
});

test('both ends of a range belong to it', () => {
  const { low, high, unit } = readingRange('battery-voltage', 24);
  expect([plausible({ value: low, unit }, 'battery-voltage', 24)]).toEqual([true]);
  expect([plausible({ value: high, unit }, 'battery-voltage', 24)]).toEqual([true]);
});

test('a vehicle is taken for 12 V where nothing is said', () => {
  expect(plausible({ value: 18, unit: 'V' }, 'battery-voltage')).toBe(true);
  expect(plausible({ value: 18.1, unit: 'V' }, 'battery-voltage')).toBe(false);
});

test('amperes are no voltage', () => {
  expect(() => plausible({ value: 12, unit: 'A' }, 'battery-voltage')).toThrow('unit-mismatch');
});
