import { ElectricsError } from '../electrics-error.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { readingInterval } from '../quantity/reading-interval.ts';
import type { Source } from '../source.ts';
import { rippleRules, type RipplePlace } from '../tables/ripple-limit.ts';

/** An AC reading, its place, and whether the meter is known to give the true root mean square. */
export type RippleReading = {
  readonly reading: Quantity;
  readonly place: RipplePlace;
  readonly trueRms?: boolean | undefined;
};

/**
 * What a reading of ripple says. `indicationOnly` is true unless the meter gives the true root mean
 * square: an averaging meter is right for a sine only, which ripple is not.
 */
export type RippleResult = {
  readonly verdict: 'fine' | 'recheck' | 'diode-fault-likely';
  readonly indicationOnly: boolean;
  readonly source: Source;
};

/**
 * Tells what the AC voltage (0 or above) at the battery's posts or at the generator's B+ says of
 * its diodes, with a charged battery, the lamps on and the engine at 1500 to 3000 /min.
 *
 * At the posts up to 0.1 V is fine and above 0.5 V a diode fault is likely; at B+ 0.5 V parts both.
 * A reading that is nearer to its limit than the meter can tell is one to `recheck`. Sources: see
 * the table `rippleRules`. Throws `value-out-of-range`, `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * rippleVerdict({ reading: { value: 30, unit: 'mV' }, place: 'battery-posts' }); // fine
 */
export function rippleVerdict({ reading, place, trueRms }: RippleReading): RippleResult {
  const { low, best, high } = readingInterval({ quantity: reading }, 'V');
  if (best < 0) {
    throw new ElectricsError('value-out-of-range', { reading: best, low: 0 });
  }
  const { recheckV, faultV, source } = rippleRules.rows[place];
  const verdict = high <= recheckV ? 'fine' : low > faultV ? 'diode-fault-likely' : 'recheck';
  return { verdict, indicationOnly: trueRms !== true, source };
}
