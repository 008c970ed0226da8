import { scaleBound, sharpBound, type Bound } from '../conformance/bound.ts';
import { interpolate } from '../interpolate.ts';
import { commonPractice, published, type Source } from '../source.ts';
import { batteriesInSeries, type LimitContext } from './limit-context.ts';
import { knownLimit, unknownLimit, type LimitResult } from './limit-result.ts';
import { loadTestMinimum } from '../tables/load-test-minimum.ts';

/**
 * The least voltage of a 12 V battery under half of its cold-cranking current, in V, at a
 * temperature in Cel: straight lines between the table's steps, and its ends beyond them.
 */
export function loadTestVoltage(temperature: number): number {
  return interpolate(loadTestMinimum.rows, temperature * 1.8 + 32);
}

/**
 * The same, from `low` to `high`: one figure where the temperature is known, else from 9.1 V at
 * freezing to 9.6 V at 21 Cel.
 */
export function loadTestRange(
  temperature: number | undefined,
): Readonly<Record<'low' | 'high', number>> {
  if (temperature === undefined) {
    return { low: 9.1, high: 9.6 };
  }
  const volts = loadTestVoltage(temperature);
  return { low: volts, high: volts };
}

const allLampsOn = commonPractice('all lamps and windows on: near 12 V is good, below 11 V is not');

/** With all lamps on below 11 V: the battery has failed. */
export function lampsFailed(context: LimitContext): LimitResult {
  return knownLimit(sharpBound(11 * batteriesInSeries(context), 'V', allLampsOn));
}

/** With all lamps on near 12 V or above: the battery holds. "Near" is a zone. */
export function lampsGood(context: LimitContext): LimitResult {
  const bound: Bound = { low: 11.7, high: 11.9, unit: 'V', source: allLampsOn };
  return knownLimit(scaleBound(bound, batteriesInSeries(context)));
}

// The end of the table, 0 degF.
const coldestLoadTest = -18;

/** Below it a battery is not load-tested but warmed first: -18 Cel. */
export function loadTestColdest(): LimitResult {
  const source = commonPractice('where the load-test table of the battery trade ends, -18 °C');
  return knownLimit(sharpBound(coldestLoadTest, 'Cel', source));
}

/**
 * Below it the load test has failed. Without a temperature it is the zone from freezing (9.1 V) to
 * 21 Cel (9.6 V). Below -18 Cel a battery is not load-tested but warmed first, so it is unknown.
 */
export function loadTestLimit(context: LimitContext): LimitResult {
  const { temperature } = context;
  if (temperature !== undefined && temperature < coldestLoadTest) {
    return unknownLimit(`battery warmer than ${coldestLoadTest} Cel`);
  }
  const bound: Bound = { ...loadTestRange(temperature), unit: 'V', source: loadTestMinimum.source };
  return knownLimit(scaleBound(bound, batteriesInSeries(context)));
}

/**
 * A part of the label's cold-cranking current, in A. Two batteries in series crank with the current
 * of one. Without the label's standard it is a zone of ±10 %, since SAE and EN figures of one
 * battery differ by that much, and no standard converts them.
 */
function partOfRating(part: number, source: Source, context: LimitContext): LimitResult {
  if (context.rating === undefined) {
    return unknownLimit('rating');
  }
  const value = part * context.rating;
  const spread = context.ratingStandard === undefined ? 0.1 : 0;
  return knownLimit({ low: value * (1 - spread), high: value * (1 + spread), unit: 'A', source });
}

/** An electronic tester's figure below it is poor: 60 % of the label. */
export function testerPoor(context: LimitContext): LimitResult {
  const source = published(
    "parts supplier's battery warranty guidance: below 60 % of the label after charging",
  );
  return partOfRating(0.6, source, context);
}

/** An electronic tester's figure from it on is strong: 80 % of the label. */
export function testerStrong(context: LimitContext): LimitResult {
  return partOfRating(0.8, commonPractice('80 % of the label'), context);
}
