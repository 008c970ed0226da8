import type { Source } from '../source.ts';
import type { UnitCode } from '../quantity/unit.ts';

/**
 * A limit between two bands of a reading.
 *
 * `low` = `high` where the limit is sharp. Where the limit is itself a zone, because the trade
 * agrees on no single figure or because it depends on what is not known, what lies between `low`
 * and `high` is borderline. `source` says where the figure comes from.
 */
export type Bound = {
  readonly low: number;
  readonly high: number;
  readonly unit: UnitCode;
  readonly source: Source;
};

/** A limit that is one figure. */
export function sharpBound(value: number, unit: UnitCode, source: Source): Bound {
  return { low: value, high: value, unit, source };
}

/** The bound with both its ends multiplied by `factor` (above 0). */
export function scaleBound(bound: Bound, factor: number): Bound {
  return { ...bound, low: bound.low * factor, high: bound.high * factor };
}
