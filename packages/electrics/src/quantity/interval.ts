import type { Source } from '../source.ts';
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

/** An estimate that says where it comes from. */
export type SourcedInterval = Interval & { readonly source: Source };
