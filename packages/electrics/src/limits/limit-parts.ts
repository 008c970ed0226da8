import { ElectricsError } from '../electrics-error.ts';
import { isLimitName, type LimitName } from './limit.ts';

/** What each limit parts, in the words of the trade: for tables and authors, not for a page. */
const parts: Readonly<Record<LimitName, string>> = {
  'battery.rest.flat': 'Below it a rested battery is flat, from it on partly charged.',
  'battery.rest.full': 'From it on a rested battery is ready to be cranked and load-tested.',
  'battery.rest.surface': 'Above it a battery carries a surface charge and is not yet at rest.',
  'battery.rest.charging': 'Above it something charges the battery: it is not at rest.',
  'battery.rest.frozen':
    'Below it, after frost, a battery counts as frozen until it was looked at.',
  'battery.lamps.failed': 'Below it, with all lamps on, the battery has failed.',
  'battery.lamps.good': 'From it on, with all lamps on, the battery holds.',
  'battery.load-test.minimum':
    'Below it, after 15 s at half of the cold-cranking current, the battery has failed.',
  'battery.load-test.coldest': 'Below it a battery is not load-tested but warmed first.',
  'battery.tester.poor': 'Below it the cranking current that a tester finds is poor.',
  'battery.tester.strong': 'From it on the cranking current that a tester finds is strong.',
  'battery.recharged.cell-down': 'Below it, two hours after a full charge, a cell is down.',
  'battery.recharged.full':
    'From it on, two hours after a full charge, the battery took the charge.',
  'battery.halves.equal': 'Up to this difference the two batteries of a 24 V pair are equal.',
  'battery.crank.collapsed': 'Below it, while start is held, the battery has collapsed.',
  'battery.crank.low': 'Below it, while start is held, the battery voltage is low.',
  'battery.resistance.worn':
    'Up to it the internal resistance is that of a sound battery, above it of a worn one.',
  'battery.resistance.spent': 'Above it even a battery at half of its charge is worn.',
  'battery.frost': 'At it and below a discharged battery may have frozen.',
  'battery.age.new': 'Below it a battery is new.',
  'battery.age.middle':
    'Below it a battery is of middle age, from it on old enough to be worn by age alone.',
  'drop.clamp': 'Above it the joint of battery post and clamp is bad.',
  'drop.positive': 'Above it the positive side, from the battery to the starter, loses too much.',
  'drop.ground': 'Above it the ground side, from the battery to the starter, loses too much.',
  'contacts.high': 'Above it the contacts of the solenoid are burnt.',
  'contacts.open': 'Above it the contacts of the solenoid are open.',
  'control.absent': 'Below it no start signal arrives at the solenoid.',
  'control.low': 'Below it the start signal at the solenoid is low.',
  'relay.feed.absent': 'Below it no supply arrives at the start relay.',
  'relay.feed.low': 'Below it the supply at the start relay is low.',
  'relay.command.absent': 'Below it no command arrives at the coil of the start relay.',
  'relay.command.low': 'Below it the command at the coil of the start relay is low.',
  'crank-current.none': 'Below it, while start is held, the starter draws nothing.',
  'crank-current.low': 'Below it the cranking current is low: resistance in the circuit.',
  'crank-current.high':
    'Above it the cranking current is high: drag, or a fault inside the starter.',
  'charging.none': 'Below it, with the engine running, nothing charges the battery.',
  'charging.low': 'Below it, with the engine running, charging is low.',
  'charging.right': 'Up to it charging is right, above it the battery is overcharged.',
  'temperature.freezing': 'Below it the air is cold, from it on mild.',
  'temperature.mild': 'Below it the air is mild, from it on warm.',
  'battery.received.reversed': 'Below it a battery that comes back is charged the wrong way round.',
  'battery.received.deep':
    'Below it a battery that comes back was discharged so deeply that it is harmed.',
  'battery.case.cold': 'Below it a battery is too cold to be judged at the counter.',
  'battery.case.hot': 'Above it a battery is too hot to be judged at the counter.',
  'battery.cells.even': 'Up to this difference of density the cells of a battery are even.',
  'battery.cells.recheck':
    'Up to this difference of density a battery is charged and its cells are read again.',
  'battery.stand-loss':
    'Up to it a charged battery stands well, above it the battery empties itself.',
  'starter.bench.supply':
    'Below it, at a starter that runs free, the bench does not supply enough.',
  'starter.bench.none': 'Below it a starter on the bench draws nothing.',
  'starter.bench.low': 'Below it a starter that runs free draws too little: resistance inside.',
  'starter.bench.high': 'Above it a starter that runs free draws too much: drag or a short inside.',
  'starter.bench.speed': 'Below it the pinion of a starter that runs free turns too slowly.',
  'torque.bolt.under': 'Below it a bolt that holds a starter is not tight yet.',
  'torque.bolt.right':
    'Up to it a bolt that holds a starter is tight, above it bolt or thread is harmed.',
  'torque.stud.under': "Below it the nut on a starter's stud is not tight yet.",
  'torque.stud.right':
    "Up to it the nut on a starter's stud is tight, above it the stud is harmed.",
  'torque.post.under': "Below it a lead at the battery's terminal is not tight yet.",
  'torque.post.right':
    "Up to it a lead at the battery's terminal is tight, above it the terminal is harmed.",
  'stud.dead': "Up to it a starter's stud is dead, above it some battery still feeds it.",
};

/**
 * Says in one sentence what lies below and above a limit, in the words of the trade. Throws
 * `limit-unknown`.
 */
export function limitParts(name: LimitName): string {
  if (!isLimitName(name)) {
    throw new ElectricsError('limit-unknown', { limit: String(name) });
  }
  return parts[name];
}
