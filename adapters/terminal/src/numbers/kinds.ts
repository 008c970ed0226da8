import { charge, loadTestMinimum } from './battery.ts';
import { cableDrop, cableGauge, cableResistance, cableSize, causeOfDrop } from './cable.ts';
import { regulatedVoltage, ripple } from './charging.ts';
import { unitConversion } from './unit-conversion.ts';
import { decision, uncertainty } from './decision.ts';
import { drainDays, keyOff } from './drain.ts';
import { freezing, hydrometer } from './electrolyte.ts';
import { compressions } from './compressions.ts';
import { colourOfFuse, currentOfFuse, openingOfFuse } from './fuse.ts';
import { internalResistance } from './internal-resistance.ts';
import type { Group, Kind } from './kind.ts';
import { expected, limitByName, limitList } from './vehicle-reading.ts';
import { loadTestLoad, ratingInAnother } from './rating.ts';
import { coil, contacts, terminal, winding } from './relay.ts';
import { startAttempt } from './start-attempt.ts';
import { switchedOn } from './switched-on.ts';
import { loadOfBolt, torqueOfBolt, torqueOfStud, torqueOfTerminal } from './torque.ts';

/**
 * Every kind of question, in the order in which they are tried: what names its subject outright
 * goes before what is told by its figures alone.
 */
export const kinds: readonly Kind[] = [
  limitList,
  startAttempt,
  expected,
  limitByName,
  loadTestMinimum,
  loadTestLoad,
  coil,
  uncertainty,
  decision,
  torqueOfTerminal,
  torqueOfStud,
  loadOfBolt,
  torqueOfBolt,
  colourOfFuse,
  openingOfFuse,
  currentOfFuse,
  winding,
  contacts,
  terminal,
  ripple,
  regulatedVoltage,
  freezing,
  charge,
  hydrometer,
  drainDays,
  keyOff,
  causeOfDrop,
  cableSize,
  cableDrop,
  cableResistance,
  internalResistance,
  switchedOn,
  ratingInAnother,
  cableGauge,
  compressions,
  unitConversion,
];

/** The headings of the help, in their order. */
export const groups: readonly Group[] = [
  'Cables',
  'Bolts and studs',
  'Battery',
  'Charging and drain',
  'Limits and readings',
  'The engine and its starter',
  'Fuses, relays, terminals',
  'Units',
];
