import type { Bound } from './bound.ts';
import { ElectricsError } from '../electrics-error.ts';
import { standardUncertainty, type Meter } from '../quantity/meter.ts';
import { probabilityBelow, probabilityBelowBound } from './probability-below.ts';
import type { Quantity } from '../quantity/quantity.ts';

/** A measured value with its standard uncertainty (0 or more), in one unit. */
export type Estimate = { readonly value: number; readonly uncertainty: number };

/** What conforms: the values from `low` to `high`, in one unit; an end that is absent is open. */
export type Tolerance = {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
};

/** What conforms, where its ends may be zones and may have units of their own. */
export type ToleranceBounds = {
  readonly low?: Bound | undefined;
  readonly high?: Bound | undefined;
};

/** Refuses what is no tolerance: an end that is not a number, or a low end above the high one. */
function requireTolerance({ low = -Infinity, high = Infinity }: Tolerance): void {
  if (!(low <= high)) {
    throw new ElectricsError('value-out-of-range', { low: String(low), high: String(high) });
  }
}

/**
 * The probability that the true value conforms, when a value was measured.
 *
 * The error is normal; nothing else is known of the true value. Source: JCGM 106:2012, clause 7
 * (from memory). Throws `value-not-finite`, and `value-out-of-range` for an uncertainty below 0 or
 * a low end above the high one.
 *
 * @example
 * conformanceProbability({ value: 9.55, uncertainty: 0.039 }, { low: 9.6 }); // 0.10
 */
export function conformanceProbability(estimate: Estimate, tolerance: Tolerance): number {
  const { value, uncertainty } = estimate;
  const { low, high } = tolerance;
  if (!Number.isFinite(value)) {
    throw new ElectricsError('value-not-finite', { value: String(value) });
  }
  if (!(uncertainty >= 0)) {
    throw new ElectricsError('value-out-of-range', { uncertainty: String(uncertainty), low: 0 });
  }
  requireTolerance(tolerance);
  const belowHigh = high === undefined ? 1 : probabilityBelow(value, uncertainty, high);
  const belowLow = low === undefined ? 0 : probabilityBelow(value, uncertainty, low);
  return belowHigh - belowLow;
}

/** From this probability on a reading is decided: 19 in 20. JCGM 106 leaves the figure to the user. */
export const decisiveProbability = 0.95;

/** What a reading says of a tolerance, and the probability that the true value lies inside it. */
export type Decision = {
  readonly type: 'inside' | 'outside' | 'borderline';
  readonly probability: number;
};

/**
 * Decides whether what was read lies inside its bounds, of which one may be absent.
 *
 * It is decided from a probability of 0.95 on, on either side; else the reading is borderline. The
 * ends of a zone are its 5 % and 95 % points, as in `bandWeights`; a low bound above the high one
 * leaves nothing inside. Without `meter` the one of the reading is meant, or else the one assumed.
 * Source: JCGM 106:2012, clauses 7 and 8 (from memory). Throws as `standardUncertainty` does, and
 * `value-not-finite`.
 *
 * @example
 * const low = sharpBound(9.6, 'V', published('TM 9-6140-200-14, para 4-6'));
 * decide({ value: 9.55, unit: 'V', resolution: 0.01 }, { low }); // borderline, 0.10
 */
export function decide(reading: Quantity, { low, high }: ToleranceBounds, meter?: Meter): Decision {
  const uncertainty = standardUncertainty(reading, meter);
  const belowHigh = high === undefined ? 1 : probabilityBelowBound(reading, uncertainty, high);
  const belowLow = low === undefined ? 0 : probabilityBelowBound(reading, uncertainty, low);
  const probability = Math.max(0, belowHigh - belowLow);
  if (probability >= decisiveProbability) {
    return { type: 'inside', probability };
  }
  const type = probability <= 1 - decisiveProbability ? 'outside' : 'borderline';
  return { type, probability };
}

/**
 * How far acceptance keeps from the limits: w = `ratio` × `expandedUncertainty`. A ratio of 1 is
 * guarded acceptance, 0 simple acceptance (shared risk) and -1 guarded rejection.
 */
export type GuardBand = { readonly expandedUncertainty: number; readonly ratio: number };

/** The values that are accepted, or that none can be: the guard bands leave nothing between them. */
export type Acceptance =
  ({ readonly type: 'accepts' } & Tolerance) | { readonly type: 'accepts-nothing' };

/**
 * The measured values that are accepted when a guard band is kept within each limit, or beyond it
 * with a ratio below 0.
 *
 * With a ratio of 1 and U = 2 u, what is accepted at one limit fails to conform with a probability
 * below 2.5 %: ILAC-G8:09/2019, 4.2. Source: JCGM 106:2012, clause 8 (from memory). Throws
 * `value-out-of-range` for an expanded uncertainty below 0 or a low end above the high one.
 *
 * @example
 * acceptance({ low: 12.4 }, { expandedUncertainty: 0.095, ratio: 1 }); // from 12.495 on
 */
export function acceptance(tolerance: Tolerance, guardBand: GuardBand): Acceptance {
  const { expandedUncertainty, ratio } = guardBand;
  const width = ratio * expandedUncertainty;
  if (!(expandedUncertainty >= 0 && Number.isFinite(width))) {
    throw new ElectricsError('value-out-of-range', {
      expandedUncertainty: String(expandedUncertainty),
      ratio: String(ratio),
      low: 0,
    });
  }
  requireTolerance(tolerance);
  const low = tolerance.low === undefined ? undefined : tolerance.low + width;
  const high = tolerance.high === undefined ? undefined : tolerance.high - width;
  return (low ?? -Infinity) > (high ?? Infinity)
    ? { type: 'accepts-nothing' }
    : { type: 'accepts', low, high };
}
