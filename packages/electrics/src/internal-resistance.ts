import { ElectricsError } from './electrics-error.ts';
import type { Interval } from './interval.ts';
import { availablePower } from './limits/battery-resistance.ts';
import { loadTestVoltage } from './limits/battery-load.ts';
import { standardUncertainty } from './meter.ts';

const coverage = 2;

/**
 * Internal resistance in mOhm of a battery from its rest voltage, its voltage under load (V, both
 * at the posts) and the current (A): the ends are two standard uncertainties of the assumed meters
 * away.
 *
 * Source: Ohm's law; JCGM 100:2008, 5.1.2, for the uncertainty. Throws `value-out-of-range` unless
 * the current is above 0 and the loaded voltage at most the rest voltage.
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
  const best = (fall / currentA) * 1000;
  const fallUncertainty = Math.hypot(
    standardUncertainty({ value: restV, unit: 'V' }),
    standardUncertainty({ value: loadedV, unit: 'V' }),
  );
  const currentUncertainty = standardUncertainty({ value: currentA, unit: 'A' });
  const uncertainty = Math.hypot(
    (fallUncertainty / currentA) * 1000,
    best * (currentUncertainty / currentA),
  );
  return {
    low: Math.max(0, best - coverage * uncertainty),
    best,
    high: best + coverage * uncertainty,
    unit: 'mOhm',
  };
}

/** An interval with the reason for its spread. */
export type ReasonedInterval = Interval & { readonly reason: string };

const fullVoltage = 12.6;
const labelVoltage = 7.2;

/**
 * Cold-cranking current, in A after SAE J537, of a 12 V battery with this internal resistance
 * (mOhm, above 0) at a temperature in Cel (-29 to 60): an estimate only, never a test.
 *
 * Low end: the current that leaves 7.2 V at -18 Cel, the resistance scaled by the cranking power of
 * TM 5-1185. High end: the label whose load test (half of it, 9.6 V at 21 Cel) this battery would
 * just pass. Best: their geometric mean. Throws `value-out-of-range`.
 */
export function estimatedCrankingAmps(resistance: number, temperature: number): ReasonedInterval {
  if (
    !(resistance > 0 && Number.isFinite(resistance)) ||
    !(temperature >= -29 && temperature <= 60)
  ) {
    throw new ElectricsError('value-out-of-range', {
      resistance: String(resistance),
      temperature: String(temperature),
    });
  }
  const ohms = resistance / 1000;
  const inFrost =
    ((fullVoltage - labelVoltage) / ohms) * (availablePower(-18) / availablePower(temperature));
  const byLoadTest = (2 * (fullVoltage - loadTestVoltage(temperature))) / ohms;
  return {
    low: Math.min(inFrost, byLoadTest),
    best: Math.sqrt(inFrost * byLoadTest),
    high: Math.max(inFrost, byLoadTest),
    unit: 'A',
    reason:
      'A resistance does not fix the cold-cranking current: it changes with charge, temperature and the length of the load, and the two published rules differ.',
  };
}
