/**
 * What can keep a virtual vehicle from starting, and how often the trade meets it.
 *
 * The shares of the groups are a club's yearly ratios (JAF, FY2001) as a roadside patrol sees them:
 * of 100 no-starts some 50 empty batteries (5 of them through a charging fault), 28 worn ones, 5
 * terminals and cables, 7 fuel, 2.5 starters, 3 keys and immobilisers, 3 spark, sensors and engine, 2
 * fuses, relays and switches. How a group divides, and every pair, is common practice, no source.
 */
import type { Setting } from './setting.ts';

/** What the cause does to the circuit while start is held. */
export type Electrics =
  | 'sound'
  | 'discharged'
  | 'worn'
  | 'dead-cell'
  | 'positive-clamp'
  | 'negative-clamp'
  | 'positive-cable'
  | 'ground-cable'
  | 'burnt-contacts'
  | 'open-contacts'
  | 'hold-in-open'
  | 'worn-brushes'
  | 'open-brushes'
  | 'dragging-armature'
  | 'control-resistance'
  | 'hard-engine'
  | 'locked-engine'
  | 'no-compression'
  | 'slipping-drive'
  | 'worn-and-clamp'
  | 'discharged-and-clamp'
  | 'worn-and-ground'
  | 'worn-and-armature';

/** How far the start command gets; `none`: to the solenoid. */
type Break =
  | 'none'
  | 'no-supply'
  | 'no-ignition'
  | 'key-held'
  | 'ignition-switch'
  | 'position-switch'
  | 'refused'
  | 'starter-fuse'
  | 'relay'
  | 'wire'
  | 'winding';

type Root = 'left-on-load' | 'parasitic-drain' | 'charging-fault' | 'age' | 'cold';

/** One way in which a vehicle fails: one fault or two at once, and what the circuit has of it. */
export type Cause = {
  readonly id: string;
  readonly faults: readonly [string, ...string[]];
  readonly mode: string;
  readonly electrics: Electrics;
  readonly ends: Break;
  /** Cases in a hundred, before the setting is looked at. */
  readonly share: number;
  readonly root?: Root;
};

type Row = readonly [
  faults: string,
  mode: string,
  electrics: Electrics,
  ends: Break,
  share: number,
  root?: Root,
];

const rows: readonly Row[] = [
  ['battery-discharged', 'lamp', 'discharged', 'none', 20, 'left-on-load'],
  ['battery-discharged', 'drain', 'discharged', 'none', 14, 'parasitic-drain'],
  ['battery-discharged', 'charging', 'discharged', 'none', 4.5, 'charging-fault'],
  ['battery-discharged', 'short-trips', 'discharged', 'none', 11, 'cold'],
  ['battery-worn', 'resistance', 'worn', 'none', 22, 'age'],
  ['battery-worn', 'cell', 'dead-cell', 'none', 6, 'age'],
  ['battery-connection', 'positive', 'positive-clamp', 'none', 1.4],
  ['battery-connection', 'negative', 'negative-clamp', 'none', 1.8],
  ['positive-cable', 'far-end', 'positive-cable', 'none', 0.4],
  ['ground-cable', 'far-end', 'ground-cable', 'none', 1],
  ['main-fuse', 'open', 'sound', 'no-supply', 0.35],
  ['fuel-empty', 'dry', 'sound', 'none', 3],
  ['fuel-wrong', 'filled', 'sound', 'none', 0.6],
  ['fuel-delivery', 'pump', 'sound', 'none', 1.9],
  ['fuel-delivery', 'blocked', 'sound', 'none', 1.2],
  ['starter-motor', 'brushes', 'worn-brushes', 'none', 0.35],
  ['starter-motor', 'open', 'open-brushes', 'none', 0.6],
  ['starter-motor', 'armature', 'dragging-armature', 'none', 0.4],
  ['solenoid', 'contacts', 'burnt-contacts', 'none', 0.25],
  ['solenoid', 'contacts-open', 'open-contacts', 'none', 0.3],
  ['solenoid', 'winding', 'sound', 'winding', 0.2],
  ['solenoid', 'hold-in', 'hold-in-open', 'none', 0.1],
  ['starter-drive', 'slips', 'slipping-drive', 'none', 0.25],
  ['ring-gear', 'teeth', 'slipping-drive', 'none', 0.1],
  ['immobiliser', 'no-command', 'sound', 'refused', 0.6],
  ['immobiliser', 'stalls', 'sound', 'none', 0.25],
  ['immobiliser', 'no-fuel', 'sound', 'none', 0.25],
  ['key-fob', 'cell', 'sound', 'no-ignition', 1.2],
  ['steering-lock', 'held', 'sound', 'key-held', 0.7],
  ['ignition-spark', 'coil', 'sound', 'none', 0.9],
  ['position-sensor', 'crankshaft', 'sound', 'none', 0.8],
  ['timing-lost', 'belt', 'no-compression', 'none', 0.4],
  ['engine-drag', 'tight', 'hard-engine', 'none', 0.2],
  ['engine-locked', 'seized', 'locked-engine', 'none', 0.15],
  ['engine-locked', 'liquid', 'locked-engine', 'none', 0.08],
  ['flooded-engine', 'tries', 'sound', 'none', 0.5],
  ['glow-plugs', 'plugs', 'sound', 'none', 0.5],
  ['glow-plugs', 'relay', 'sound', 'none', 0.3],
  ['starter-fuse', 'blown', 'sound', 'starter-fuse', 0.25],
  ['starter-relay', 'coil', 'sound', 'relay', 0.3],
  ['starter-relay', 'contacts', 'sound', 'relay', 0.2],
  ['ignition-switch', 'start-contact', 'sound', 'ignition-switch', 0.4],
  ['selector-switch', 'position', 'sound', 'position-switch', 0.5],
  ['clutch-switch', 'pedal', 'sound', 'position-switch', 0.3],
  ['brake-switch', 'pedal', 'sound', 'no-ignition', 0.35],
  ['control-wiring', 'open', 'sound', 'wire', 0.2],
  ['control-wiring', 'resistance', 'control-resistance', 'none', 0.15],
  ['operator', 'gear', 'sound', 'position-switch', 1.2],
  ['operator', 'clutch', 'sound', 'position-switch', 0.9],
  ['operator', 'isolator', 'sound', 'no-supply', 3],
  ['operator', 'routine', 'sound', 'no-ignition', 0.8],
  ['hybrid-not-ready', 'drive', 'sound', 'refused', 12],
  ['unlisted', 'silent', 'sound', 'refused', 0.7],
  ['unlisted', 'cranks', 'sound', 'none', 1],
  ['unlisted', 'stops', 'sound', 'none', 0.3],
  ['battery-connection battery-worn', 'both', 'worn-and-clamp', 'none', 1.2, 'age'],
  ['battery-connection battery-discharged', 'both', 'discharged-and-clamp', 'none', 0.7],
  ['ground-cable battery-worn', 'both', 'worn-and-ground', 'none', 0.2, 'age'],
  ['starter-motor battery-worn', 'armature', 'worn-and-armature', 'none', 0.2, 'age'],
  ['ignition-spark battery-discharged', 'cranked-flat', 'discharged', 'none', 0.4],
  ['fuel-delivery battery-discharged', 'cranked-flat', 'discharged', 'none', 0.4],
  ['fuel-empty battery-discharged', 'cranked-flat', 'discharged', 'none', 0.3],
];

/** Every cause. */
export const causes: readonly Cause[] = rows.map(
  ([faults, mode, electrics, ends, share, root]): Cause => ({
    id: `${faults.replace(' ', '+')}/${mode}`,
    faults: faults.split(' ') as [string, ...string[]],
    mode,
    electrics,
    ends,
    share,
    ...(root === undefined ? {} : { root }),
  }),
);

const starterFaults = ['starter-motor', 'solenoid', 'starter-drive', 'ring-gear'];
const hybridFaults = [
  'battery-discharged',
  'battery-worn',
  'battery-connection',
  'main-fuse',
  'key-fob',
  'brake-switch',
  'immobiliser',
  'hybrid-not-ready',
  'operator',
  'unlisted',
];

/** Whether a vehicle like this can have the cause at all. */
function isPossible({ faults, mode, electrics, ends }: Cause, setting: Setting): boolean {
  const has = (...some: readonly string[]): boolean => faults.some((fault) => some.includes(fault));
  const { fuel, transmission, ignition, nominal, isFullHybrid } = setting;
  if (has('hybrid-not-ready')) return isFullHybrid;
  if (isFullHybrid) {
    const isQuiet = ends !== 'none' || electrics !== 'sound';
    return (
      faults.length === 1 &&
      faults.every((fault) => hybridFaults.includes(fault)) &&
      isQuiet &&
      !(has('operator') && (mode === 'isolator' || mode === 'clutch'))
    );
  }
  if (has('ignition-spark', 'flooded-engine')) return fuel === 'petrol';
  if (has('glow-plugs')) return fuel === 'diesel';
  if (has('selector-switch')) return transmission === 'automatic';
  if (has('clutch-switch')) return transmission === 'manual';
  if (has('brake-switch', 'key-fob')) return ignition === 'button';
  if (has('steering-lock')) return ignition === 'key' && nominal === 12;
  if (!has('operator')) return true;
  if (mode === 'gear') return transmission === 'automatic';
  if (mode === 'clutch') return transmission === 'manual';
  return mode === 'isolator' ? nominal === 24 : ignition === 'button';
}

/** Of a hundred battery cases, how many are worn, by the battery's age in years. */
function wornShare(ageA: number): number {
  // Five to one under two years; three to two over all; common practice beyond.
  const points: readonly (readonly [number, number])[] = [
    [0, 0.12],
    [2, 0.17],
    [4, 0.34],
    [6, 0.5],
    [8, 0.6],
    [14, 0.72],
  ];
  for (const [index, [age, share]] of points.entries()) {
    const [before, less] = points[index - 1] ?? [age, share];
    if (ageA <= age)
      return index === 0 ? share : less + ((share - less) * (ageA - before)) / (age - before);
  }
  return 0.72;
}

function multiplier(cause: Cause, setting: Setting): number {
  const { temperatureC, place, role, ageA, fuel } = setting;
  const has = (...some: readonly string[]): boolean =>
    cause.faults.some((one) => some.includes(one));
  const isWorkshop = place === 'workshop' && role === 'mechanic';
  const isCold = temperatureC < 0;
  let factor = 1;
  if (has('battery-discharged', 'battery-worn')) {
    const worn = wornShare(ageA);
    factor *= has('battery-worn') ? worn / 0.362 : (1 - worn) / 0.638;
    if (isCold) factor *= 1.5;
    if (isWorkshop) factor *= has('battery-worn') ? 0.7 : 0.35;
  } else if (isWorkshop) {
    factor *= has(...starterFaults) ? 4 : has('operator', 'fuel-empty', 'steering-lock') ? 0.3 : 2;
  }
  if (cause.mode === 'short-trips') factor *= isCold ? 2 : temperatureC < 8 ? 1.2 : 0.6;
  if (has('glow-plugs')) factor *= isCold ? 3 : temperatureC < 8 ? 1.2 : 0.1;
  if (has('flooded-engine', 'engine-drag')) factor *= isCold ? 2 : 0.8;
  if (cause.mode === 'blocked') factor *= fuel === 'diesel' && temperatureC < -8 ? 6 : 1;
  return factor;
}

const known = new Map<string, Float64Array>();

/** How likely each cause is in a setting, before anything is asked; in the order of `causes`. */
export function causeChances(setting: Setting): Float64Array {
  const { role, place, fuel, transmission, ignition, nominal, isFullHybrid, ageA } = setting;
  const age = Math.round(ageA * 2) / 2;
  const temperatureC = Math.round(setting.temperatureC);
  const key = [
    role,
    place,
    fuel,
    transmission,
    ignition,
    nominal,
    isFullHybrid,
    age,
    temperatureC,
  ].join();
  const before = known.get(key);
  if (before !== undefined) return before;
  const chances = chancesIn({ ...setting, ageA: age, temperatureC });
  known.set(key, chances);
  return chances;
}

function chancesIn(setting: Setting): Float64Array {
  const chances = Float64Array.from(causes, (cause) =>
    isPossible(cause, setting) ? cause.share * multiplier(cause, setting) : 0,
  );
  const sum = chances.reduce((total, one) => total + one, 0);
  return chances.map((one) => one / sum);
}
