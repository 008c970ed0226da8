import { ElectricsError } from './electrics-error.ts';
import type { LimitContext } from './limit-context.ts';
import type { LimitResult } from './limit-result.ts';
import { crankCollapsed, crankLow } from './limits/battery-crank.ts';
import {
  lampsFailed,
  lampsGood,
  loadTestLimit,
  testerPoor,
  testerStrong,
} from './limits/battery-load.ts';
import { halvesEqual, rechargedCellDown, rechargedFull } from './limits/battery-recharged.ts';
import { resistanceWorn } from './limits/battery-resistance.ts';
import {
  restCharging,
  restFlat,
  restFrozen,
  restFull,
  restSurface,
} from './limits/battery-rest.ts';
import { chargingLow, chargingNone, chargingRight } from './limits/charging.ts';
import { crankCurrentHigh, crankCurrentLow, crankCurrentNone } from './limits/crank-current.ts';
import { contactsHigh, contactsOpen, dropClamp, dropGround, dropPositive } from './limits/drop.ts';
import { controlLow, relayCommandLow, relayFeedLow, signalAbsent } from './limits/signal.ts';

/**
 * Every limit that a flow may name. Each is the bound between two bands of one reading; of several
 * with one beginning the order here is ascending, `battery.rest.frozen` apart.
 */
export const limitNames = [
  'battery.rest.flat',
  'battery.rest.full',
  'battery.rest.surface',
  'battery.rest.charging',
  'battery.rest.frozen',
  'battery.lamps.failed',
  'battery.lamps.good',
  'battery.load-test.minimum',
  'battery.tester.poor',
  'battery.tester.strong',
  'battery.recharged.cell-down',
  'battery.recharged.full',
  'battery.halves.equal',
  'battery.crank.collapsed',
  'battery.crank.low',
  'battery.resistance.worn',
  'drop.clamp',
  'drop.positive',
  'drop.ground',
  'contacts.high',
  'contacts.open',
  'control.absent',
  'control.low',
  'relay.feed.absent',
  'relay.feed.low',
  'relay.command.absent',
  'relay.command.low',
  'crank-current.none',
  'crank-current.low',
  'crank-current.high',
  'charging.none',
  'charging.low',
  'charging.right',
] as const;

/** The name of a limit. */
export type LimitName = (typeof limitNames)[number];

const limits: Readonly<Record<LimitName, (context: LimitContext) => LimitResult>> = {
  'battery.rest.flat': restFlat,
  'battery.rest.full': restFull,
  'battery.rest.surface': restSurface,
  'battery.rest.charging': restCharging,
  'battery.rest.frozen': restFrozen,
  'battery.lamps.failed': lampsFailed,
  'battery.lamps.good': lampsGood,
  'battery.load-test.minimum': loadTestLimit,
  'battery.tester.poor': testerPoor,
  'battery.tester.strong': testerStrong,
  'battery.recharged.cell-down': rechargedCellDown,
  'battery.recharged.full': rechargedFull,
  'battery.halves.equal': halvesEqual,
  'battery.crank.collapsed': crankCollapsed,
  'battery.crank.low': crankLow,
  'battery.resistance.worn': resistanceWorn,
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
};

/** Tells whether a text names a limit. */
export function isLimitName(text: string): text is LimitName {
  return Object.hasOwn(limits, text);
}

/**
 * Computes a limit for a vehicle: its bound, or what is missing to give it.
 *
 * What is not known widens the bound to a zone. Voltages of a 24 V vehicle are those of both
 * batteries in series. Throws `limit-unknown` with the fact `limit`.
 *
 * @example
 * limit('battery.load-test.minimum', { temperature: 10 });
 * // { type: 'bound', bound: { low: 9.4, high: 9.4, unit: 'V', source: 'load-test table of …' } }
 */
export function limit(name: LimitName, context: LimitContext): LimitResult {
  if (!isLimitName(name)) {
    throw new ElectricsError('limit-unknown', { limit: String(name) });
  }
  return limits[name](context);
}
