import type { Bound } from './bound.ts';
import { normalProbability } from './normal-probability.ts';
import { intervalFactor, valueIn, type Quantity } from '../quantity/quantity.ts';

// One normal deviate: a zone's ends are its 5 % and 95 % points, as borderline is .05 to .95.
const zoneDeviate = 1.645;

/**
 * The probability that the true value lies below a limit, all in one unit: the estimate's error is
 * normal. Without any uncertainty it is 1 or 0, and a half on the limit itself.
 *
 * Source: JCGM 106:2012, clause 7 (from memory).
 */
export function probabilityBelow(value: number, uncertainty: number, limit: number): number {
  if (uncertainty === 0) {
    return value === limit ? 0.5 : value < limit ? 1 : 0;
  }
  return normalProbability((limit - value) / uncertainty);
}

/**
 * The probability that the true value of a reading lies below a bound, which may have another unit
 * and may be a zone. `uncertainty` is the reading's standard uncertainty in the reading's unit.
 *
 * A zone counts as a normal limit around its middle whose 5 % and 95 % points are the zone's ends:
 * the reading's error and the zone's own spread are independent, so their variances add. Throws
 * `unit-mismatch`, `value-not-finite`.
 */
export function probabilityBelowBound(
  reading: Quantity,
  uncertainty: number,
  { low, high, unit }: Bound,
): number {
  const value = valueIn(reading, unit);
  const scaled = uncertainty * intervalFactor(reading.unit, unit);
  const spread = (high - low) / 2 / zoneDeviate;
  const deviation = spread === 0 ? scaled : Math.hypot(scaled, spread);
  return probabilityBelow(value, deviation, (low + high) / 2);
}
