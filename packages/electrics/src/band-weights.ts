import type { Bound } from './bound.ts';
import { standardUncertainty, type Meter } from './meter.ts';
import { normalProbability } from './normal-probability.ts';
import { convert, intervalFactor, type Quantity } from './quantity.ts';

// One normal deviate: a zone's ends are its 5 % and 95 % points, as borderline is .05 to .95.
const zoneDeviate = 1.645;

/**
 * The probability that the true value lies below the bound: the reading's error and the zone's own
 * spread are independent, so their variances add.
 */
function probabilityBelow(value: number, uncertainty: number, bound: Bound): number {
  const middle = (bound.low + bound.high) / 2;
  const spread = (bound.high - bound.low) / 2 / zoneDeviate;
  const deviation = Math.hypot(uncertainty, spread);
  if (deviation === 0) {
    return value === middle ? 0.5 : value < middle ? 1 : 0;
  }
  return normalProbability((middle - value) / deviation);
}

/**
 * The probability that the true value lies in each of the bands that `bounds` part: one number
 * more than there are bounds, in ascending order, together 1.
 *
 * The reading's error is normal with its standard uncertainty; a zone counts as a normal limit
 * around its middle whose 5 % and 95 % points are the zone's ends. A bound that lies below the one
 * before it leaves an empty band: that happens where both depend on other readings. Bounds may
 * have other units of the reading's dimension. Source: JCGM 106:2012, clause 7 (conformance
 * probability). Throws `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * const bound = { low: 12.4, high: 12.4, unit: 'V', source: 'TM 5-3805-262-20 para 5-9' } as const;
 * bandWeights({ value: 12.45, unit: 'V' }, [bound]); // [0.15, 0.85]
 */
export function bandWeights(quantity: Quantity, bounds: readonly Bound[], meter?: Meter): number[] {
  const uncertainty = standardUncertainty(quantity, meter);
  const weights: number[] = [];
  let below = 0;
  for (const bound of bounds) {
    const value = convert(quantity, bound.unit).value;
    const scaled = uncertainty * intervalFactor(quantity.unit, bound.unit);
    const reached = Math.max(below, probabilityBelow(value, scaled, bound));
    weights.push(reached - below);
    below = reached;
  }
  weights.push(1 - below);
  return weights;
}
