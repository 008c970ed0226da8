import { scaleBound, sharpBound, type Bound } from '../conformance/bound.ts';
import { interpolate } from '../interpolate.ts';
import { batteriesInSeries, type LimitContext } from './limit-context.ts';
import { commonPractice, published, type Source } from '../source.ts';
import { knownLimit, type LimitResult } from './limit-result.ts';

const controlSource = published(
  'TM 5-2420-230-24-2 p. 13-33: at most 1.0 V lost in the control circuit (24 V: 2.0)',
);

const relaySource = published('relay data sheets: operate voltage 6.5 to 8.0 V');

/** Voltages of the battery brought to one 12 V battery, so that rules are written once. */
function perBattery(context: LimitContext): Readonly<Record<'crank' | 'rest', number | undefined>> {
  const series = batteriesInSeries(context);
  const { crankVoltage, restVoltage, turning } = context;
  return {
    crank: crankVoltage === undefined ? undefined : crankVoltage / series,
    // Once the engine turns the battery is far below its rest voltage, which then says nothing.
    rest: restVoltage === undefined || turning === true ? undefined : restVoltage / series,
  };
}

function zone(low: number, high: number, source: Source): Bound {
  return { low, high, unit: 'V', source };
}

/** Below it nothing arrives: 1 to 2 V, the release voltage of a relay (data sheets: 1.0 to 1.5 V). */
export function signalAbsent(context: LimitContext): LimitResult {
  const source = published(
    'relay data sheets: release voltage 1.0 to 1.5 V; 2 V is common practice',
  );
  return knownLimit(scaleBound(zone(1, 2, source), batteriesInSeries(context)));
}

/**
 * The zone where the battery's voltage while start is held is not known: a flat battery alone
 * gives 5 to 7 V, and must not blame the wiring.
 */
const unknownBattery: Bound = zone(
  2,
  7,
  commonPractice('the battery while start is held is not known, and a flat one gives 5 to 7 V'),
);

/**
 * Below it the signal at the solenoid is low: more than 1.0 V (24 V: 2.0) below the battery's own
 * voltage while start is held.
 *
 * Without that voltage, and where the engine does not turn, a rested battery of 12.4 V and above
 * gives the zone from 5 V to a volt below it; a flat one, 12.0 V and below, the zone from 2 to 6 V,
 * since it alone brings the signal to 5 to 7 V; between them in proportion. Without either it is
 * 2 to 7 V.
 */
export function controlLow(context: LimitContext): LimitResult {
  const { crank, rest } = perBattery(context);
  const series = batteriesInSeries(context);
  if (crank !== undefined) {
    return knownLimit(sharpBound((crank - 1) * series, 'V', controlSource));
  }
  if (rest === undefined) {
    return knownLimit(scaleBound(unknownBattery, series));
  }
  const source = commonPractice(`${controlSource.text}, here against the rest voltage`);
  const low = interpolate(
    [
      [12, 2],
      [12.4, 5],
    ],
    rest,
  );
  const high = interpolate(
    [
      [12, 6],
      [12.4, rest - 1],
    ],
    rest,
  );
  return knownLimit(scaleBound(zone(low, high, source), series));
}

const underNoLoad = commonPractice(
  '0.5 to 1 V below the rested battery: nothing heavy flows there',
);

/**
 * Below it the supply at the relay's socket is low: 0.5 to 1 V below the rested battery, since
 * nothing heavy flows there; without the rest voltage the 6.5 to 8 V at which relays pull in.
 */
export function relayFeedLow(context: LimitContext): LimitResult {
  const series = batteriesInSeries(context);
  const { restVoltage } = context;
  const bound: Bound =
    restVoltage === undefined
      ? scaleBound(zone(6.5, 8, relaySource), series)
      : zone(restVoltage - series, restVoltage - 0.5 * series, underNoLoad);
  return knownLimit(bound);
}

/**
 * Below it the command at the relay's coil is low: less than a relay needs to pull in (6.5 V), up
 * to a volt below the battery while start is held. Where the battery's voltage is not known or it
 * is flat, its own weakness must not blame the wiring: 2 to 7 V.
 */
export function relayCommandLow(context: LimitContext): LimitResult {
  const { crank, rest } = perBattery(context);
  const series = batteriesInSeries(context);
  const battery = crank ?? (rest !== undefined && rest >= 12 ? rest : undefined);
  if (battery === undefined) {
    return knownLimit(scaleBound(unknownBattery, series));
  }
  const high = battery - 1;
  const source = published(`${relaySource.text}; ${controlSource.text}`);
  return knownLimit(scaleBound(zone(Math.min(6.5, high - 1), high, source), series));
}
