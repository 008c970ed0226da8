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

/** A limit as it is defined: what it parts, in the words of the trade, and how it is computed. */
type LimitDefinition = {
  readonly parts: string;
  readonly compute: (context: LimitContext) => LimitResult;
};

/**
 * Every limit that a flow may name. Each is the bound between two bands of one reading; of several
 * with one beginning and one unit the order here is ascending, `battery.rest.frozen` apart.
 */
const definitions = {
  'battery.rest.flat': {
    parts: 'Below it a rested battery is flat, from it on partly charged.',
    compute: restFlat,
  },
  'battery.rest.full': {
    parts: 'From it on a rested battery is ready to be cranked and load-tested.',
    compute: restFull,
  },
  'battery.rest.surface': {
    parts: 'Above it a battery carries a surface charge and is not yet at rest.',
    compute: restSurface,
  },
  'battery.rest.charging': {
    parts: 'Above it something charges the battery: it is not at rest.',
    compute: restCharging,
  },
  'battery.rest.frozen': {
    parts: 'Below it, after frost, a battery counts as frozen until it was looked at.',
    compute: restFrozen,
  },
  'battery.lamps.failed': {
    parts: 'Below it, with all lamps on, the battery has failed.',
    compute: lampsFailed,
  },
  'battery.lamps.good': {
    parts: 'From it on, with all lamps on, the battery holds.',
    compute: lampsGood,
  },
  'battery.load-test.minimum': {
    parts: 'Below it, after 15 s at half of the cold-cranking current, the battery has failed.',
    compute: loadTestLimit,
  },
  'battery.load-test.coldest': {
    parts: 'Below it a battery is not load-tested but warmed first.',
    compute: loadTestColdest,
  },
  'battery.tester.poor': {
    parts: 'Below it the cranking current that a tester finds is poor.',
    compute: testerPoor,
  },
  'battery.tester.strong': {
    parts: 'From it on the cranking current that a tester finds is strong.',
    compute: testerStrong,
  },
  'battery.recharged.cell-down': {
    parts: 'Below it, two hours after a full charge, a cell is down.',
    compute: rechargedCellDown,
  },
  'battery.recharged.full': {
    parts: 'From it on, two hours after a full charge, the battery took the charge.',
    compute: rechargedFull,
  },
  'battery.halves.equal': {
    parts: 'Up to this difference the two batteries of a 24 V pair are equal.',
    compute: halvesEqual,
  },
  'battery.crank.collapsed': {
    parts: 'Below it, while start is held, the battery has collapsed.',
    compute: crankCollapsed,
  },
  'battery.crank.low': {
    parts: 'Below it, while start is held, the battery voltage is low.',
    compute: crankLow,
  },
  'battery.resistance.worn': {
    parts: 'Up to it the internal resistance is that of a sound battery, above it of a worn one.',
    compute: resistanceWorn,
  },
  'battery.resistance.spent': {
    parts: 'Above it even a battery at half of its charge is worn.',
    compute: resistanceSpent,
  },
  'battery.frost': {
    parts: 'At it and below a discharged battery may have frozen.',
    compute: batteryFrost,
  },
  'battery.age.new': {
    parts: 'Below it a battery is new.',
    compute: ageNew,
  },
  'battery.age.middle': {
    parts: 'Below it a battery is of middle age, from it on old enough to be worn by age alone.',
    compute: ageMiddle,
  },
  'drop.clamp': {
    parts: 'Above it the joint of battery post and clamp is bad.',
    compute: dropClamp,
  },
  'drop.positive': {
    parts: 'Above it the positive side, from the battery to the starter, loses too much.',
    compute: dropPositive,
  },
  'drop.ground': {
    parts: 'Above it the ground side, from the battery to the starter, loses too much.',
    compute: dropGround,
  },
  'contacts.high': {
    parts: 'Above it the contacts of the solenoid are burnt.',
    compute: contactsHigh,
  },
  'contacts.open': {
    parts: 'Above it the contacts of the solenoid are open.',
    compute: contactsOpen,
  },
  'control.absent': {
    parts: 'Below it no start signal arrives at the solenoid.',
    compute: signalAbsent,
  },
  'control.low': {
    parts: 'Below it the start signal at the solenoid is low.',
    compute: controlLow,
  },
  'relay.feed.absent': {
    parts: 'Below it no supply arrives at the start relay.',
    compute: signalAbsent,
  },
  'relay.feed.low': {
    parts: 'Below it the supply at the start relay is low.',
    compute: relayFeedLow,
  },
  'relay.command.absent': {
    parts: 'Below it no command arrives at the coil of the start relay.',
    compute: signalAbsent,
  },
  'relay.command.low': {
    parts: 'Below it the command at the coil of the start relay is low.',
    compute: relayCommandLow,
  },
  'crank-current.none': {
    parts: 'Below it, while start is held, the starter draws nothing.',
    compute: crankCurrentNone,
  },
  'crank-current.low': {
    parts: 'Below it the cranking current is low: resistance in the circuit.',
    compute: crankCurrentLow,
  },
  'crank-current.high': {
    parts: 'Above it the cranking current is high: drag, or a fault inside the starter.',
    compute: crankCurrentHigh,
  },
  'charging.none': {
    parts: 'Below it, with the engine running, nothing charges the battery.',
    compute: chargingNone,
  },
  'charging.low': {
    parts: 'Below it, with the engine running, charging is low.',
    compute: chargingLow,
  },
  'charging.right': {
    parts: 'Up to it charging is right, above it the battery is overcharged.',
    compute: chargingRight,
  },
  'temperature.freezing': {
    parts: 'Below it the air is cold, from it on mild.',
    compute: temperatureFreezing,
  },
  'temperature.mild': {
    parts: 'Below it the air is mild, from it on warm.',
    compute: temperatureMild,
  },
  'battery.received.reversed': {
    parts: 'Below it a battery that comes back is charged the wrong way round.',
    compute: receivedReversed,
  },
  'battery.received.deep': {
    parts: 'Below it a battery that comes back was discharged so deeply that it is harmed.',
    compute: receivedDeep,
  },
  'battery.case.cold': {
    parts: 'Below it a battery is too cold to be judged at the counter.',
    compute: caseCold,
  },
  'battery.case.hot': {
    parts: 'Above it a battery is too hot to be judged at the counter.',
    compute: caseHot,
  },
  'battery.cells.even': {
    parts: 'Up to this difference of density the cells of a battery are even.',
    compute: cellsEven,
  },
  'battery.cells.recheck': {
    parts: 'Up to this difference of density a battery is charged and its cells are read again.',
    compute: cellsRecheck,
  },
  'battery.stand-loss': {
    parts: 'Up to it a charged battery stands well, above it the battery empties itself.',
    compute: standLoss,
  },
  'starter.bench.supply': {
    parts: 'Below it, at a starter that runs free, the bench does not supply enough.',
    compute: freeRunSupply,
  },
  'starter.bench.none': {
    parts: 'Below it a starter on the bench draws nothing.',
    compute: freeRunNone,
  },
  'starter.bench.low': {
    parts: 'Below it a starter that runs free draws too little: resistance inside.',
    compute: freeRunLow,
  },
  'starter.bench.high': {
    parts: 'Above it a starter that runs free draws too much: drag or a short inside.',
    compute: freeRunHigh,
  },
  'starter.bench.speed': {
    parts: 'Below it the pinion of a starter that runs free turns too slowly.',
    compute: freeRunSpeed,
  },
  'torque.bolt.under': {
    parts: 'Below it a bolt that holds a starter is not tight yet.',
    compute: boltUnder,
  },
  'torque.bolt.right': {
    parts: 'Up to it a bolt that holds a starter is tight, above it bolt or thread is harmed.',
    compute: boltRight,
  },
  'torque.stud.under': {
    parts: "Below it the nut on a starter's stud is not tight yet.",
    compute: studUnder,
  },
  'torque.stud.right': {
    parts: "Up to it the nut on a starter's stud is tight, above it the stud is harmed.",
    compute: studRight,
  },
  'torque.post.under': {
    parts: "Below it a lead at the battery's terminal is not tight yet.",
    compute: postUnder,
  },
  'torque.post.right': {
    parts: "Up to it a lead at the battery's terminal is tight, above it the terminal is harmed.",
    compute: postRight,
  },
  'stud.dead': {
    parts: "Up to it a starter's stud is dead, above it some battery still feeds it.",
    compute: studDead,
  },
} satisfies Readonly<Record<string, LimitDefinition>>;

/** The name of a limit. */
export type LimitName = keyof typeof definitions;

/** The names of all limits; of several with one beginning and one unit in ascending order. */
export const limitNames: readonly LimitName[] = Object.keys(definitions) as LimitName[];

/** Tells whether a text names a limit. */
export function isLimitName(text: string): text is LimitName {
  return Object.hasOwn(definitions, text);
}

function definitionOf(name: LimitName): LimitDefinition {
  if (!isLimitName(name)) {
    throw new ElectricsError('limit-unknown', { limit: String(name) });
  }
  return definitions[name];
}

/**
 * Says in one sentence what lies below and above a limit, in the words of the trade. Throws
 * `limit-unknown`.
 */
export function limitParts(name: LimitName): string {
  return definitionOf(name).parts;
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
  return definitionOf(name).compute(context);
}
