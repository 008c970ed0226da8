import { ElectricsError } from '../electrics-error.ts';
import type { LimitContext } from './limit-context.ts';
import type { LimitResult } from './limit-result.ts';
import { ageMiddle, ageNew } from './battery-age.ts';
import { crankCollapsed, crankLow } from './battery-crank.ts';
import {
  lampsFailed,
  lampsGood,
  loadTestColdest,
  loadTestLimit,
  testerPoor,
  testerStrong,
} from './battery-load.ts';
import { halvesEqual, rechargedCellDown, rechargedFull } from './battery-recharged.ts';
import { resistanceSpent, resistanceWorn } from './battery-resistance.ts';
import {
  batteryFrost,
  restCharging,
  restFlat,
  restFrozen,
  restFull,
  restSurface,
} from './battery-rest.ts';
import { chargingLow, chargingNone, chargingRight } from './charging.ts';
import { crankCurrentHigh, crankCurrentLow, crankCurrentNone } from './crank-current.ts';
import { contactsHigh, contactsOpen, dropClamp, dropGround, dropPositive } from './drop.ts';
import { controlLow, relayCommandLow, relayFeedLow, signalAbsent } from './signal.ts';
import {
  caseCold,
  caseHot,
  cellsEven,
  cellsRecheck,
  receivedDeep,
  receivedReversed,
  standLoss,
} from './battery-return.ts';
import {
  freeRunHigh,
  freeRunLow,
  freeRunNone,
  freeRunSpeed,
  freeRunSupply,
} from './starter-bench.ts';
import { temperatureFreezing, temperatureMild } from './temperature.ts';
import {
  boltRight,
  boltUnder,
  postRight,
  postUnder,
  studDead,
  studRight,
  studUnder,
} from './torque.ts';

/**
 * Every limit that a flow may name, and how it is computed. Each is the bound between two bands of
 * one reading, in the words of `limit-parts.ts`; of several with one beginning and one unit the
 * order here is ascending, `battery.rest.frozen` apart.
 */
const computations = {
  'battery.rest.flat': restFlat,
  'battery.rest.full': restFull,
  'battery.rest.surface': restSurface,
  'battery.rest.charging': restCharging,
  'battery.rest.frozen': restFrozen,
  'battery.lamps.failed': lampsFailed,
  'battery.lamps.good': lampsGood,
  'battery.load-test.minimum': loadTestLimit,
  'battery.load-test.coldest': loadTestColdest,
  'battery.tester.poor': testerPoor,
  'battery.tester.strong': testerStrong,
  'battery.recharged.cell-down': rechargedCellDown,
  'battery.recharged.full': rechargedFull,
  'battery.halves.equal': halvesEqual,
  'battery.crank.collapsed': crankCollapsed,
  'battery.crank.low': crankLow,
  'battery.resistance.worn': resistanceWorn,
  'battery.resistance.spent': resistanceSpent,
  'battery.frost': batteryFrost,
  'battery.age.new': ageNew,
  'battery.age.middle': ageMiddle,
  'drop.clamp': dropClamp,
  'drop.positive': dropPositive,
  'drop.ground': dropGround,
  'contacts.high': contactsHigh,
  'contacts.open': contactsOpen,
  'control.absent': signalAbsent,
  'control.low': controlLow,
  'relay.feed.absent': signalAbsent,
  'relay.feed.low': relayFeedLow,
  'relay.command.absent': signalAbsent,
  'relay.command.low': relayCommandLow,
  'crank-current.none': crankCurrentNone,
  'crank-current.low': crankCurrentLow,
  'crank-current.high': crankCurrentHigh,
  'charging.none': chargingNone,
  'charging.low': chargingLow,
  'charging.right': chargingRight,
  'temperature.freezing': temperatureFreezing,
  'temperature.mild': temperatureMild,
  'battery.received.reversed': receivedReversed,
  'battery.received.deep': receivedDeep,
  'battery.case.cold': caseCold,
  'battery.case.hot': caseHot,
  'battery.cells.even': cellsEven,
  'battery.cells.recheck': cellsRecheck,
  'battery.stand-loss': standLoss,
  'starter.bench.supply': freeRunSupply,
  'starter.bench.none': freeRunNone,
  'starter.bench.low': freeRunLow,
  'starter.bench.high': freeRunHigh,
  'starter.bench.speed': freeRunSpeed,
  'torque.bolt.under': boltUnder,
  'torque.bolt.right': boltRight,
  'torque.stud.under': studUnder,
  'torque.stud.right': studRight,
  'torque.post.under': postUnder,
  'torque.post.right': postRight,
  'stud.dead': studDead,
} satisfies Readonly<Record<string, (context: LimitContext) => LimitResult>>;

/** The name of a limit. */
export type LimitName = keyof typeof computations;

/** The names of all limits; of several with one beginning and one unit in ascending order. */
export const limitNames: readonly LimitName[] = Object.keys(computations) as LimitName[];

/** Tells whether a text names a limit. */
export function isLimitName(text: string): text is LimitName {
  return Object.hasOwn(computations, text);
}

/**
 * Computes a limit for a vehicle: its bound, or what is missing to give it.
 *
 * What is not known widens the bound to a zone. Voltages of a 24 V vehicle are those of both
 * batteries in series. Throws `limit-unknown` with the fact `limit`.
 *
 * @example
 * limit('battery.load-test.minimum', { temperature: 10 });
 * // { type: 'bound', bound: { low: 9.4, high: 9.4, unit: 'V', source: { provenance: 'published', … } } }
 */
export function limit(name: LimitName, context: LimitContext): LimitResult {
  if (!isLimitName(name)) {
    throw new ElectricsError('limit-unknown', { limit: String(name) });
  }
  return computations[name](context);
}
