import { convert, type Quantity } from './quantity.ts';
import type { UnitCode } from './unit.ts';

/** Every kind of reading that has a range. */
export const readingKinds = [
  'battery-voltage',
  'battery-polarity',
  'signal-voltage',
  'drop',
  'current',
  'bench-current',
  'rating',
  'torque',
  'temperature',
  'age',
  'speed',
  'density',
  'density-difference',
] as const;

/** What is read, as far as it decides which figures can be true. */
export type ReadingKind = (typeof readingKinds)[number];

/** The figures that a meter's reading of one kind can have, both ends included. */
export type ReadingRange = { readonly low: number; readonly high: number; readonly unit: UnitCode };

/**
 * The range in which a reading of a kind can be true on a 12 V or 24 V vehicle. A reading outside
 * it is questioned, never taken: 124 V, -12 V, 0.0124 V of a battery.
 *
 * Source: common practice, no source. A battery's upper end is what an unregulated generator
 * reaches; one that is charged the wrong way round reads below 0; drops and signals may be 0 and
 * slightly negative; a clamp meter has an offset. Across an open path stands all that the battery
 * gives, with the engine off at most what a freshly charged one does.
 * The amperes on a starting battery's label begin with those of a small motorcycle's; a bench for
 * starters feeds some hundreds, and 640 A there is the label of a battery.
 */
export function readingRange(kind: ReadingKind, nominal: 12 | 24): ReadingRange {
  const series = nominal / 12;
  switch (kind) {
    case 'battery-voltage':
      return { low: 1, high: 18 * series, unit: 'V' };
    case 'battery-polarity':
      return { low: -18 * series, high: 18 * series, unit: 'V' };
    case 'signal-voltage':
      return { low: -0.2, high: 18 * series, unit: 'V' };
    case 'drop':
      return { low: -0.2, high: 13.5 * series, unit: 'V' };
    case 'current':
      return { low: -5, high: 2000, unit: 'A' };
    case 'bench-current':
      return { low: -5, high: 600, unit: 'A' };
    case 'rating':
      return { low: 30, high: 2000, unit: 'A' };
    case 'torque':
      return { low: 0.5, high: 500, unit: 'N.m' };
    case 'temperature':
      return { low: -60, high: 70, unit: 'Cel' };
    case 'age':
      return { low: 0, high: 30, unit: 'a' };
    case 'speed':
      return { low: 0, high: 20_000, unit: '/min' };
    case 'density':
      return { low: 1, high: 1.4, unit: '1' };
    case 'density-difference':
      return { low: 0, high: 0.4, unit: '1' };
  }
}

/**
 * Tells whether a reading can be true, in any unit of its kind; `nominal` is 12 where absent.
 *
 * Throws `unit-unknown`, `unit-mismatch`, `value-not-finite`.
 */
export function plausible(quantity: Quantity, kind: ReadingKind, nominal: 12 | 24 = 12): boolean {
  const { low, high, unit } = readingRange(kind, nominal);
  const { value } = convert(quantity, unit);
  return value >= low && value <= high;
}
