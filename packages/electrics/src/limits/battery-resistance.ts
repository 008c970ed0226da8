import { scaleBound, type Bound } from '../conformance/bound.ts';
import { interpolate } from '../interpolate.ts';
import { batteriesInSeries, type LimitContext } from './limit-context.ts';
import { commonPractice, computed } from '../source.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';
import { availableCrankingPower } from '../tables/available-cranking-power.ts';
import { loadTestVoltage } from './battery-load.ts';

const fullVoltage = 12.6;

// A battery is past use below 60 % of its label; resistance rises as cranking current falls.
const wornPart = 0.6;

// The label's figure: volts left at -18 Cel after 30 s (SAE J537) or 10 s (EN 50342-1).
const labelVoltage = { sae: 7.2, en: 7.5 };

/** Part of the warm cranking power left at a temperature in Cel: 1 at 27 Cel and above. */
export function availablePower(temperature: number): number {
  return interpolate(availableCrankingPower.rows, temperature);
}

/** The zone by the label of a battery that a standard of known test was used for, mOhm. */
function zoneByLabel(rating: number, standard: 'sae' | 'en', temperature: number): Bound {
  const newInFrost = ((fullVoltage - labelVoltage[standard]) / rating) * 1000;
  const worn = (newInFrost / wornPart) * (availablePower(-18) / availablePower(temperature));
  const failsLoadTest = ((fullVoltage - loadTestVoltage(temperature)) / (rating / 2)) * 1000;
  return {
    low: Math.min(worn, failsLoadTest),
    high: Math.max(worn, failsLoadTest),
    unit: 'mOhm',
    source: computed(
      '60 % of the label (SAE J537: 7.2 V, EN 50342-1: 7.5 V at -18 °C) scaled by the cranking power of TM 5-1185, and the resistance with which the load test just fails',
    ),
  };
}

/** The warm zone by fuel, mOhm: a diesel carries the larger battery. */
function warmZone(fuel: LimitContext['fuel']): { readonly low: number; readonly high: number } {
  return { low: fuel === 'petrol' ? 9 : 6, high: fuel === 'diesel' ? 9 : 12 };
}

/** The zone where no label helps, mOhm: the warm one, larger as the cold takes cranking power. */
function zoneByPractice(fuel: LimitContext['fuel'], coldest: number, warmest: number): Bound {
  const { low, high } = warmZone(fuel);
  return {
    low: low / availablePower(warmest),
    high: high / availablePower(coldest),
    unit: 'mOhm',
    source: commonPractice('by fuel, when warm; scaled by the cranking power of TM 5-1185'),
  };
}

/**
 * Above it no want of charge explains the internal resistance, but for a battery that is nearly
 * empty: twice the limit of a sound one. Common practice, no source.
 */
export function resistanceSpent(context: LimitContext): LimitResult {
  const worn = resistanceWorn(context);
  return worn.type === 'unknown'
    ? worn
    : knownLimit({
        ...scaleBound(worn.bound, 2),
        source: commonPractice('twice the resistance of a battery that is just worn'),
      });
}

/**
 * Up to it the internal resistance of the battery, from rest and cranking, is that of a sound one:
 * in mOhm of the whole battery.
 *
 * With a label after SAE or EN, the zone between two rules: 60 % of the label, and the resistance
 * with which the load test just fails. Else 9 to 12 mOhm warm for petrol, 6 to 9 for diesel, 6 to
 * 12 where the fuel is not known. Without a temperature it is taken to be 10 to 27 Cel: frost shows
 * in the currents, and a limit open to it would pass every weak battery.
 */
export function resistanceWorn(context: LimitContext): LimitResult {
  const { rating, ratingStandard: standard, temperature } = context;
  const series = batteriesInSeries(context);
  const coldest = temperature ?? 10;
  const warmest = temperature ?? 27;
  if (rating === undefined || (standard !== 'sae' && standard !== 'en')) {
    return knownLimit(scaleBound(zoneByPractice(context.fuel, coldest, warmest), series));
  }
  const cold = zoneByLabel(rating, standard, coldest);
  const warm = zoneByLabel(rating, standard, warmest);
  const bound = {
    ...warm,
    low: Math.min(cold.low, warm.low),
    high: Math.max(cold.high, warm.high),
  };
  return knownLimit(scaleBound(bound, series));
}
