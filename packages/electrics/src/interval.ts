import type { UnitCode } from './unit.ts';

/**
 * An estimate that owns up to its spread: the best figure and the ends between which the true
 * value is expected, all in `unit`. `low` ≤ `best` ≤ `high`.
 */
export type Interval = {
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly unit: UnitCode;
};
