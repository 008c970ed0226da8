import type { Bound } from './bound.ts';
import { standardUncertainty, type Meter } from '../quantity/meter.ts';
import { probabilityBelowBound } from './probability-below.ts';
import type { Quantity } from '../quantity/quantity.ts';

/**
 * The probability that the true value lies in each of the bands that `bounds` part: one number
 * more than there are bounds, in ascending order, together 1.
 *
 * The reading's error is normal with its standard uncertainty; a zone counts as a normal limit
 * around its middle whose 5 % and 95 % points are the zone's ends. A bound that lies below the one
 * before it leaves an empty band: that happens where both depend on other readings. Bounds may
 * have other units of the reading's dimension. Source: JCGM 106:2012, clause 7 (conformance
 * probability; from memory). Throws `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * const bound = sharpBound(12.4, 'V', published('TM 5-3805-262-20, para 5-9'));
 * bandWeights({ value: 12.45, unit: 'V' }, [bound]); // [0.15, 0.85]
 */
export function bandWeights(quantity: Quantity, bounds: readonly Bound[], meter?: Meter): number[] {
  const uncertainty = standardUncertainty(quantity, meter);
  const weights: number[] = [];
  let below = 0;
  for (const bound of bounds) {
    const reached = Math.max(below, probabilityBelowBound(quantity, uncertainty, bound));
    weights.push(reached - below);
    below = reached;
  }
  weights.push(1 - below);
  return weights;
}
