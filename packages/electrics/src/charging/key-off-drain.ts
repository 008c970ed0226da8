import { sharpBound, type Bound } from '../conformance/bound.ts';
import { ElectricsError } from '../electrics-error.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { readingInterval } from '../quantity/reading-interval.ts';
import { keyOffDrainLimits } from '../tables/key-off-drain-limit.ts';
import { moduleSleepWait } from '../tables/module-sleep-time.ts';

/**
 * What a key-off current says: `normal`; `investigate`; `wait`, since modules may still be awake,
 * for `minutes` more; `cannot-tell`, since the meter does not part it from the limit.
 */
export type KeyOffDrainResult =
  | { readonly type: 'normal' | 'investigate' | 'cannot-tell'; readonly limit: Bound }
  | { readonly type: 'wait'; readonly minutes: number; readonly limit: Bound };

/** The limit of the key-off current: 50 mA, common practice, no source. */
const limit: Bound = sharpBound(
  keyOffDrainLimits.rows.trade.highMa,
  'mA',
  keyOffDrainLimits.rows.trade.source,
);

/**
 * Tells whether the current with the key off, `undisturbedMin` minutes (0 or above) after the last
 * door was closed, is normal. Opening a door starts the minutes again.
 *
 * Above 50 mA after 60 min is to be investigated; before 30 min nothing is judged, and before 60
 * min a current above the limit only asks for more waiting. The maker's own figure goes before it:
 * two makers' are 10 to 30 and 25 to 50 mA. Source: common practice, no source. Throws
 * `value-out-of-range`, `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * keyOffDrain({ value: 320, unit: 'mA' }, 10); // wait 20 min more
 */
export function keyOffDrain(drain: Quantity, undisturbedMin: number): KeyOffDrainResult {
  if (!(undisturbedMin >= 0)) {
    throw new ElectricsError('value-out-of-range', {
      undisturbedMin: String(undisturbedMin),
      low: 0,
    });
  }
  const { low, high } = readingInterval({ quantity: drain }, 'mA');
  const { leastMin, waitMin } = moduleSleepWait.rows;
  if (undisturbedMin < leastMin) {
    return { type: 'wait', minutes: leastMin - undisturbedMin, limit };
  }
  if (high <= limit.low) {
    return { type: 'normal', limit };
  }
  if (undisturbedMin < waitMin) {
    return { type: 'wait', minutes: waitMin - undisturbedMin, limit };
  }
  return { type: low > limit.high ? 'investigate' : 'cannot-tell', limit };
}
