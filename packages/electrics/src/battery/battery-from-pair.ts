import {
  estimatedCrankingAmps,
  resistanceBetween,
  type ReasonedInterval,
} from './internal-resistance.ts';
import type { Interval, SourcedInterval } from '../quantity/interval.ts';
import { intervalFactor, type Quantity } from '../quantity/quantity.ts';
import { readingInterval } from '../quantity/reading-interval.ts';
import { computed } from '../source.ts';

/**
 * What was read at the posts of one 12 V battery: at rest with its surface charge gone, then under
 * a load, at a temperature in Cel (-29 to 60).
 *
 * `load` is the current as read, or as known by what was switched on (`loadCurrent`
 * at the voltage under load).
 */
export type BatteryPair = {
  readonly rest: Quantity;
  readonly loaded: Quantity;
  readonly load: Quantity | SourcedInterval;
  readonly temperatureC: number;
};

/**
 * What a pair of readings tells of a battery: its internal resistance in mOhm and the
 * cold-cranking current to expect of it in A after SAE J537. Where that cannot be told, why:
 *
 * - `fall-not-told`: the fall of voltage is within the meters' error, so that the battery may have
 *   no resistance at all; it has at most `resistanceAtMost`.
 * - `current-not-told`: the current of the load may be none.
 * - `rises-under-load`: the voltage under load is above the one at rest, so that one of them was
 *   read wrongly, or something charges.
 */
export type BatteryFromPair =
  | {
      readonly type: 'estimated';
      readonly resistance: SourcedInterval;
      readonly crankingAmps: ReasonedInterval;
    }
  | {
      readonly type: 'refused';
      readonly reason: 'fall-not-told';
      readonly resistanceAtMost: Quantity;
    }
  | { readonly type: 'refused'; readonly reason: 'current-not-told' | 'rises-under-load' };

function currentOf(load: BatteryPair['load']): Interval {
  if ('value' in load) {
    return readingInterval({ quantity: load }, 'A');
  }
  const scale = intervalFactor(load.unit, 'A');
  return { low: load.low * scale, best: load.best * scale, high: load.high * scale, unit: 'A' };
}

function loadText(load: BatteryPair['load']): string {
  return 'value' in load ? 'the current as read' : `the current of the load (${load.source.text})`;
}

/**
 * Internal resistance and estimated cold-cranking current of a 12 V battery from its voltage at
 * rest and under a load.
 *
 * Both carry the limits of error of the meters and the spread of the load, at their worst together:
 * the true resistance is inside wherever the meters keep to their specification and the load lies
 * within its interval. The two voltages count as read independently, though one meter that errs
 * alike in both would tell smaller falls.
 *
 * Source: Ohm's law; for the current, see `estimatedCrankingAmps`. Throws `unit-unknown`,
 * `unit-mismatch`, `value-not-finite`, `value-out-of-range`.
 *
 * @example
 * batteryFromPair({
 *   rest: { value: 12.6, unit: 'V' },
 *   loaded: { value: 10.2, unit: 'V' },
 *   load: { value: 160, unit: 'A' },
 *   temperatureC: 20,
 * }); // resistance 13.7 to 16.3, best 15 mOhm
 */
export function batteryFromPair(pair: BatteryPair): BatteryFromPair {
  const rest = readingInterval({ quantity: pair.rest }, 'V');
  const loaded = readingInterval({ quantity: pair.loaded }, 'V');
  const current = currentOf(pair.load);
  if (loaded.best > rest.best) {
    return { type: 'refused', reason: 'rises-under-load' };
  }
  if (current.low <= 0) {
    return { type: 'refused', reason: 'current-not-told' };
  }
  const resistance = resistanceBetween({ rest, loaded, current });
  if (resistance.low <= 0) {
    const resistanceAtMost: Quantity = { value: resistance.high, unit: 'mOhm' };
    return { type: 'refused', reason: 'fall-not-told', resistanceAtMost };
  }
  return {
    type: 'estimated',
    resistance: {
      ...resistance,
      source: computed(`Ohm's law, the limits of error of the meters, and ${loadText(pair.load)}`),
    },
    crankingAmps: estimatedCrankingAmps(resistance, pair.temperatureC),
  };
}
