import { ElectricsError } from '../electrics-error.ts';
import type { Interval } from '../quantity/interval.ts';
import { availablePower } from '../limits/battery-resistance.ts';
import { loadTestVoltage } from '../limits/battery-load.ts';
import { intervalFactor } from '../quantity/quantity.ts';
import { readingInterval } from '../quantity/reading-interval.ts';

/** The volts at rest and under load, both at the posts, and the current of the load in A. */
export type PairIntervals = {
  readonly rest: Interval;
  readonly loaded: Interval;
  readonly current: Interval;
};

/**
 * Internal resistance in mOhm of a battery from its voltage at rest and under a load, each as an
 * interval: the ends are those of the fall of voltage through the opposite ends of the current, so
 * that the true resistance is inside wherever the three true values are.
 *
 * `low` is never below 0, and `high` is infinite where the current may be none. The best current
 * is above 0 and the best fall not negative, else the result means nothing. Source: Ohm's law.
 */
export function resistanceBetween({ rest, loaded, current }: PairIntervals): Interval {
  return {
    low: (Math.max(0, rest.low - loaded.high) / current.high) * 1000,
    best: ((rest.best - loaded.best) / current.best) * 1000,
    high: current.low > 0 ? ((rest.high - loaded.low) / current.low) * 1000 : Infinity,
    unit: 'mOhm',
  };
}

/**
 * Internal resistance in mOhm of a battery from its rest voltage, its voltage under load (V, both
 * at the posts) and the current (A): the ends are as far as the limits of error of the assumed
 * meters allow at their worst together.
 *
 * Source: Ohm's law. Throws `value-out-of-range` unless the current is above 0 and the loaded
 * voltage at most the rest voltage.
 *
 * @example
 * internalResistance(12.5, 9.7, 180); // best 15.6 mOhm: a weak battery when warm
 */
export function internalResistance(restV: number, loadedV: number, currentA: number): Interval {
  const fall = restV - loadedV;
  if (!(currentA > 0 && fall >= 0 && Number.isFinite(fall + currentA))) {
    throw new ElectricsError('value-out-of-range', {
      restV: String(restV),
      loadedV: String(loadedV),
      currentA: String(currentA),
    });
  }
  return resistanceBetween({
    rest: readingInterval({ quantity: { value: restV, unit: 'V' } }, 'V'),
    loaded: readingInterval({ quantity: { value: loadedV, unit: 'V' } }, 'V'),
    current: readingInterval({ quantity: { value: currentA, unit: 'A' } }, 'A'),
  });
}

/** An interval with the reason for its spread. */
export type ReasonedInterval = Interval & { readonly reason: string };

const fullVoltage = 12.6;
const labelVoltage = 7.2;

/** What the two published rules make of one resistance in mOhm, in A. */
function crankingAmpsByRule(
  resistance: number,
  temperature: number,
): { readonly inFrost: number; readonly byLoadTest: number } {
  const ohms = resistance / 1000;
  return {
    inFrost:
      ((fullVoltage - labelVoltage) / ohms) * (availablePower(-18) / availablePower(temperature)),
    byLoadTest: (2 * (fullVoltage - loadTestVoltage(temperature))) / ohms,
  };
}

function resistanceEnds(resistance: number | Interval): Omit<Interval, 'unit'> {
  if (typeof resistance === 'number') {
    return { low: resistance, best: resistance, high: resistance };
  }
  const scale = intervalFactor(resistance.unit, 'mOhm');
  const { low, best, high } = resistance;
  return { low: low * scale, best: best * scale, high: high * scale };
}

/**
 * Cold-cranking current, in A after SAE J537, of a 12 V battery with this internal resistance (a
 * number in mOhm or an interval, above 0) at a temperature in Cel (-29 to 60): an estimate only,
 * never a test.
 *
 * Two rules: the current that leaves 7.2 V at -18 Cel, the resistance scaled by the cranking power
 * of TM 5-1185; and the label whose load test (half of it, 9.6 V at 21 Cel) this battery would just
 * pass. Low end: the lesser rule at the highest resistance. High end: the greater at the lowest.
 * Best: the geometric mean of both at the best. Throws `value-out-of-range`, `unit-mismatch`.
 */
export function estimatedCrankingAmps(
  resistance: number | Interval,
  temperature: number,
): ReasonedInterval {
  const { low, best, high } = resistanceEnds(resistance);
  if (
    !(low > 0 && low <= best && best <= high && Number.isFinite(high)) ||
    !(temperature >= -29 && temperature <= 60)
  ) {
    throw new ElectricsError('value-out-of-range', {
      resistance: low === high ? String(best) : `${String(low)} to ${String(high)}`,
      temperature: String(temperature),
    });
  }
  const weakest = crankingAmpsByRule(high, temperature);
  const middle = crankingAmpsByRule(best, temperature);
  const strongest = crankingAmpsByRule(low, temperature);
  return {
    low: Math.min(weakest.inFrost, weakest.byLoadTest),
    best: Math.sqrt(middle.inFrost * middle.byLoadTest),
    high: Math.max(strongest.inFrost, strongest.byLoadTest),
    unit: 'A',
    reason:
      'A resistance does not fix the cold-cranking current: it changes with charge, temperature and the length of the load, and the two published rules differ.',
  };
}
