/**
 * How a battery change is proved, written out a second time and apart from the flow, so that the
 * flow can be held against it over any number of combinations. Common practice, no source.
 *
 * Answers are the ids of choices and bands, and three words beside them: `low~normal` is a reading
 * too near the bound between two bands to be told, `unanswered` a step that was not done or could
 * not be, `no-bound` a reading for which there is no figure to hold it to.
 */
import type { FittingOutcome } from './counter-rules.ts';

/** Every step of a battery change that is answered once, with the answers that it may come to. */
export const batteryFittingAnswers = {
  'fault-proved': ['proved', 'not-proved'],
  secured: ['done'],
  'settings-kept': ['done'],
  'ignition-off': ['done'],
  'battery-look': ['sound', 'frozen', 'swollen', 'cracked', 'leaking'],
  'part-compare': ['same', 'different'],
  polarity: ['same-side', 'reversed'],
  'rating-compare': ['enough', 'too-small'],
  technology: ['as-needed', 'too-weak'],
  'ground-lead-off': ['done'],
  'positive-lead-off': ['done'],
  'battery-out': ['done'],
  tray: ['sound', 'eaten'],
  'battery-in': ['done'],
  'positive-lead-on': ['done'],
  'leads-clear': ['clear', 'touching'],
  'ground-lead-on': ['done'],
  registration: ['done', 'not-needed', 'not-done'],
  'battery-halves': ['equal', 'equal~unequal', 'unequal'],
  'ready-lamp': ['ready', 'not-ready'],
  'first-crank': ['even', 'slow', 'clicks', 'silent'],
  'battery-crank': ['collapsed', 'low', 'low~good', 'good'],
  'drop-clamps': ['good', 'good~high', 'high'],
  'lamps-clear': ['clear', 'warning-remains'],
} as const;

/** The steps that are answered again: put right, or charged first. */
export const batteryFittingRepeated = {
  'hold-down': ['tight', 'loose'],
  'vent-tube': ['connected', 'not-needed', 'missing'],
  'clamps-tight': ['under', 'under~right', 'right', 'right~over', 'over', 'no-bound'],
  'battery-rest': [
    'flat',
    'flat~discharged',
    'discharged',
    'discharged~ready',
    'ready',
    'ready~surface-charged',
    'surface-charged',
    'surface-charged~over',
    'over',
  ],
  charging: ['none', 'none~low', 'low', 'low~right', 'right', 'right~high', 'high', 'no-bound'],
} as const;

type Once = typeof batteryFittingAnswers;
type Repeated = typeof batteryFittingRepeated;

/** A battery change. Of a repeated step every answer in order, the latest last; none: unanswered. */
export type BatteryFitting = {
  readonly [Step in keyof Once]: Once[Step][number] | 'unanswered';
} & {
  readonly [Step in keyof Repeated]: readonly Repeated[Step][number][];
};

/** What the vehicle needs, as far as it is known; `kind` is that of the new battery. */
export interface BatteryVehicle {
  readonly nominal?: 12 | 24;
  readonly hybrid?: 'none' | 'mild' | 'full';
  readonly startStop?: boolean;
  readonly oldKind?: 'flooded' | 'efb' | 'agm' | 'gel';
  readonly kind?: 'flooded' | 'efb' | 'agm' | 'gel';
  readonly location?: 'engine-bay' | 'boot' | 'seat';
}

/** What each step must come to where anything else, undone and unmeasured included, stops. */
const neededFirst = [
  ['fault-proved', 'proved'],
  ['secured', 'done'],
  ['ignition-off', 'done'],
  ['battery-look', 'sound'],
] as const;

/** True where the new battery's kind will not do on this vehicle, whatever was said of it. */
function isLesserKind({ oldKind, kind, startStop }: BatteryVehicle): boolean {
  if (kind === 'flooded' && (startStop === true || oldKind === 'efb' || oldKind === 'agm')) {
    return true;
  }
  return kind === 'efb' && oldKind === 'agm';
}

/** True where a battery that gives off gas stands among the people in the vehicle. */
function gathersGas({ kind, location }: BatteryVehicle): boolean {
  const isWet = kind === 'flooded' || kind === 'efb';
  return isWet && (location === 'boot' || location === 'seat');
}

/** The step that stops before the battery is read; `undefined`: none does. */
function stoppedBeforeProof(fitting: BatteryFitting, vehicle: BatteryVehicle): string | undefined {
  const undone = neededFirst.find(([step, right]) => fitting[step] !== right);
  if (undone) return undone[0];
  if (fitting['part-compare'] === 'different') return 'part-compare';
  if (fitting.polarity !== 'same-side') return 'polarity';
  if (fitting['rating-compare'] === 'too-small') return 'rating-compare';
  if (fitting.technology === 'too-weak' || isLesserKind(vehicle)) return 'technology';
  if (fitting['ground-lead-off'] !== 'done') return 'ground-lead-off';
  if (fitting.tray === 'eaten') return 'tray';
  if (fitting['hold-down'].at(-1) === 'loose') return 'hold-down';
  const vent = fitting['vent-tube'].at(-1);
  if (vent === 'missing' || (vent === 'not-needed' && gathersGas(vehicle))) return 'vent-tube';
  const torques: readonly string[] = fitting['clamps-tight'];
  if (torques.includes('over') || torques.at(-1) === 'under') return 'clamps-tight';
  return fitting['leads-clear'] === 'touching' ? 'leads-clear' : undefined;
}

/** True where the battery rested ready or above. */
function isRested(fitting: BatteryFitting): boolean {
  const rest: string = fitting['battery-rest'].at(-1) ?? 'unanswered';
  return [
    'ready',
    'ready~surface-charged',
    'surface-charged',
    'surface-charged~over',
    'over',
  ].includes(rest);
}

/** True where what the vehicle does shows the battery good: it starts, or a full hybrid gets ready. */
function isShownGood(fitting: BatteryFitting, { hybrid }: BatteryVehicle): boolean {
  if (hybrid === 'full') return fitting['ready-lamp'] === 'ready';
  return (
    fitting['first-crank'] === 'even' &&
    fitting['battery-crank'] === 'good' &&
    fitting['drop-clamps'] === 'good'
  );
}

/**
 * Judges a battery change. A battery that is not ready ends it unproved before anything is started.
 * Charging without a bound counts as right where it was read.
 */
export function judgeBatteryFitting(
  fitting: BatteryFitting,
  vehicle: BatteryVehicle = {},
): FittingOutcome {
  const before = stoppedBeforeProof(fitting, vehicle);
  if (before !== undefined) return { outcome: 'stopped', reason: before };
  if (!isRested(fitting)) return { outcome: 'unproved' };
  const dead = fitting['first-crank'] === 'clicks' || fitting['first-crank'] === 'silent';
  if (vehicle.hybrid !== 'full' && dead) return { outcome: 'stopped', reason: 'first-crank' };
  const vented: string = fitting['vent-tube'].at(-1) ?? 'unanswered';
  const charging: string = fitting.charging.at(-1) ?? 'unanswered';
  const proved =
    fitting['hold-down'].at(-1) === 'tight' &&
    ['connected', 'not-needed'].includes(vented) &&
    fitting.technology === 'as-needed' &&
    ['done', 'not-needed'].includes(fitting.registration) &&
    (vehicle.nominal !== 24 || fitting['battery-halves'] === 'equal') &&
    isShownGood(fitting, vehicle) &&
    ['right', 'no-bound'].includes(charging) &&
    fitting['lamps-clear'] === 'clear';
  return { outcome: proved ? 'proved' : 'unproved' };
}
