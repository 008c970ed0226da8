import { scaleBound, type Bound } from '../conformance/bound.ts';
import { interpolate } from '../interpolate.ts';
import { published } from '../source.ts';
import { batteriesInSeries, type LimitContext } from './limit-context.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';
import { lowestUsualCrankingVoltage } from '../tables/cranking-voltage.ts';
import { loadTestMinimum } from '../tables/load-test-minimum.ts';
import { loadTestRange } from './battery-load.ts';

/**
 * Below it the battery has collapsed: it no longer holds the solenoid in, which then lets go and
 * pulls in again.
 *
 * The zone is the last volt below the lower end of usual cranking voltages: 7 to 8 V when warm,
 * where one maker's solenoid stops working (8 V) and starter relays do (6.5 to 8 V), and 5 to 6 V
 * at -15 Cel, where sound batteries still crank cold engines with 6 V. Without a temperature it
 * reaches from freezing to warm, 6 to 8 V.
 */
export function crankCollapsed(context: LimitContext): LimitResult {
  const { temperature } = context;
  const cold = interpolate(lowestUsualCrankingVoltage.rows, temperature ?? 1.5);
  const warm = interpolate(lowestUsualCrankingVoltage.rows, temperature ?? 21);
  const source = published(
    `lower end of ${lowestUsualCrankingVoltage.source.text}; the volt below it is common practice`,
  );
  const bound: Bound = { low: cold - 1, high: warm, unit: 'V', source };
  return knownLimit(scaleBound(bound, batteriesInSeries(context)));
}

// The load-test table assumes half of the cold-cranking current. A diesel draws more, and so does
// any engine in frost.
const heavyCrankingAllowance = 0.7;
const frost = -5;

/**
 * Below it the cranking voltage is low: the load-test table's figure for the temperature.
 *
 * For a diesel and below -5 Cel the limit is the zone that reaches 0.7 V lower. Without a
 * temperature it is the zone from freezing to 21 Cel. Judge by resistance where the current is
 * known: 9.7 V at only 180 A is a weak battery.
 */
export function crankLow(context: LimitContext): LimitResult {
  const { temperature, fuel } = context;
  const range = loadTestRange(temperature);
  const heavy = fuel === 'diesel' || (temperature !== undefined && temperature < frost);
  const { text } = loadTestMinimum.source;
  const source = published(
    heavy ? `${text}; the 0.7 V below it for heavy cranking are common practice` : text,
  );
  const low = range.low - (heavy ? heavyCrankingAllowance : 0);
  const bound: Bound = { low, high: range.high, unit: 'V', source };
  return knownLimit(scaleBound(bound, batteriesInSeries(context)));
}
