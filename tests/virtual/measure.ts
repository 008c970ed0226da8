/**
 * Plays virtual vehicles through a way of finding the fault, and sums what came of it.
 */
import type { Chart } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import { replayCard, type Replayed } from '@keyturn/terminal';
import { outcomeOf, usualPart, type Outcome } from './consequences.ts';
import { independentPosterior } from './independent-posterior.ts';
import type { Role } from './setting.ts';
import { virtualVehicle, type VirtualVehicle } from './vehicle.ts';

/** What a way of finding the fault says in the end, and what it asked for that. */
type Found = Pick<
  Replayed,
  'fault' | 'strength' | 'remedy' | 'send' | 'ranking' | 'asked' | 'minutes'
>;

/** A way of finding the fault. */
export type Chooser = (vehicle: VirtualVehicle) => Found;

/** One vehicle played: small enough to be sent from one process to another. */
export type PlayedVehicle = Outcome & {
  readonly seed: number;
  readonly role: Role;
  readonly cause: string;
  readonly faults: readonly string[];
  readonly found: Found;
  /** Probability of the first, and of the truth (both of two faults together). */
  readonly first: number;
  readonly ours: number;
  readonly independent: number;
  readonly independentFirst: readonly [fault: string, share: number];
  readonly independentError: number;
};

/** The shipped way: the flow as it is compiled. */
export function flowChooser(chart: Chart, speaker: Speaker): Chooser {
  return ({ card }) => replayCard(chart, speaker, card);
}

/** "Replace the usual part first": nothing but the complaint is asked, and nothing is sure. */
export const usualPartFirst: Chooser = ({ given }) => {
  const complaint = given.get('complaint');
  const usual = usualPart(complaint?.kind === 'choice' ? complaint.choice : 'silent');
  return {
    ...usual,
    strength: 'open',
    ranking: [[usual.fault, 1]],
    asked: ['complaint'],
    minutes: 0.5,
  };
};

const faultsInAll = 34;
// What a ranking leaves out still has some chance.
const leastShare = 0.001;

/** What a ranking gives to some faults; what it does not name shares the rest evenly. */
function shareOf(ranking: Found['ranking'], faults: readonly string[]): number {
  const named = ranking.reduce((sum, [, share]) => sum + share, 0);
  const each = Math.max(0, 1 - named) / Math.max(1, faultsInAll - ranking.length);
  return faults.reduce((sum, fault) => {
    const known = ranking.find(([id]) => id === fault);
    return sum + (known === undefined ? each : known[1]);
  }, 0);
}

/** Plays the vehicle of a seed. */
export function playVehicle(seed: number, choose: Chooser): PlayedVehicle {
  const vehicle = virtualVehicle(seed);
  const { cause, setting } = vehicle;
  const { faults } = cause;
  const { fault, strength, remedy, send, ranking, asked, minutes } = choose(vehicle);
  const found: Found = { fault, strength, remedy, send, ranking, asked, minutes };
  const given = new Map([...vehicle.given].filter(([check]) => asked.includes(check)));
  const best = independentPosterior({ ...vehicle, given }, seed);
  return {
    seed,
    role: setting.role,
    cause: cause.id,
    faults,
    found,
    first: ranking[0]?.[1] ?? 0,
    ours: Math.max(leastShare, shareOf(ranking, faults)),
    independent: Math.max(leastShare, shareOf(best.ranking, faults)),
    independentFirst: best.ranking[0] ?? ['unlisted', 0],
    independentError: best.error,
    ...outcomeOf({ remedy, send, minutes }, { faults, role: setting.role }),
  };
}

/** Forecasts of about one height, and how often they came true. */
export type CalibrationBin = {
  readonly count: number;
  readonly forecast: number;
  readonly frequency: number;
};

/** Sums over vehicles; shares are from 0 to 1, costs and minutes are means. */
export type Figures = {
  readonly vehicles: number;
  /** The first-ranked fault is one of those the vehicle has. */
  readonly accuracy: number;
  /** The same of the independent posterior after the same answers: the most that they allow. */
  readonly attainable: number;
  /** The same where that posterior gives the truth 0.9 or more. */
  readonly accuracyWhereSure: number;
  readonly whereSure: number;
  readonly proved: number;
  readonly provedRight: number;
  readonly minutes: number;
  readonly checks: number;
  readonly wrongParts: number;
  /** Of the dispatchers' cases. */
  readonly wrongHelp: number;
  readonly cost: number;
  readonly logLoss: number;
  readonly independentLogLoss: number;
  readonly independentError: number;
};

/** The whole of it: over all, by role, and how well forecasts came true. */
export type Report = {
  readonly all: Figures;
  readonly byRole: Readonly<Partial<Record<Role, Figures>>>;
  readonly calibration: readonly CalibrationBin[];
  readonly independentCalibration: readonly CalibrationBin[];
};

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function shareWhere<One>(all: readonly One[], holds: (one: One) => boolean): number {
  return mean(all.map((one) => (holds(one) ? 1 : 0)));
}

const sure = 0.9;
const isRight = ({ faults, found }: PlayedVehicle): boolean => faults.includes(found.fault);

function figuresOf(played: readonly PlayedVehicle[]): Figures {
  const clear = played.filter(({ independent }) => independent >= sure);
  const proved = played.filter(({ found }) => found.strength === 'proved');
  const dispatched = played.filter(({ role }) => role === 'dispatcher');
  const hands = played.filter(({ role }) => role !== 'dispatcher');
  return {
    vehicles: played.length,
    accuracy: shareWhere(played, isRight),
    attainable: shareWhere(played, ({ faults, independentFirst }) =>
      faults.includes(independentFirst[0]),
    ),
    accuracyWhereSure: shareWhere(clear, isRight),
    whereSure: clear.length / played.length,
    proved: proved.length / played.length,
    provedRight: shareWhere(proved, isRight),
    minutes: mean(played.map(({ found }) => found.minutes)),
    checks: mean(played.map(({ found }) => found.asked.length)),
    wrongParts: shareWhere(hands, ({ isWrongPart }) => isWrongPart),
    wrongHelp: shareWhere(dispatched, ({ isWrongHelp }) => isWrongHelp),
    cost: mean(played.map(({ cost }) => cost)),
    logLoss: mean(played.map(({ ours }) => -Math.log(ours))),
    independentLogLoss: mean(played.map(({ independent }) => -Math.log(independent))),
    independentError: mean(played.map(({ independentError }) => independentError)),
  };
}

function calibrationOf(
  played: readonly PlayedVehicle[],
  read: (one: PlayedVehicle) => readonly [forecast: number, isTrue: boolean],
): readonly CalibrationBin[] {
  const forecasts = played.map(read);
  return Array.from({ length: 10 }, (_, bin) => {
    const within = forecasts.filter(([forecast]) => Math.min(9, Math.floor(forecast * 10)) === bin);
    return {
      count: within.length,
      forecast: mean(within.map(([forecast]) => forecast)),
      frequency: shareWhere(within, ([, isTrue]) => isTrue),
    };
  });
}

/** Sums what came of the vehicles. */
export function reportOf(played: readonly PlayedVehicle[]): Report {
  const roles = [...new Set(played.map(({ role }) => role))].sort();
  return {
    all: figuresOf(played),
    byRole: Object.fromEntries(
      roles.map((role) => [role, figuresOf(played.filter((one) => one.role === role))]),
    ),
    calibration: calibrationOf(played, (one) => [one.first, isRight(one)]),
    independentCalibration: calibrationOf(
      played,
      ({ independentFirst: [fault, share], faults }) => [share, faults.includes(fault)],
    ),
  };
}

/** Vehicles of one cause of which the same wrong thing was said. */
export type SystematicError = {
  readonly cause: string;
  readonly said: string;
  readonly seeds: readonly number[];
  /** Nats by which the answers would have allowed to do better, over all of them. */
  readonly excess: number;
};

/** The errors that the answers did not force, the worst first. */
export function systematicErrors(played: readonly PlayedVehicle[]): readonly SystematicError[] {
  const groups = new Map<string, PlayedVehicle[]>();
  for (const one of played) {
    if (isRight(one)) continue;
    const key = `${one.cause} ${one.found.fault}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()]
    .map((group) => ({
      cause: group[0]!.cause,
      said: group[0]!.found.fault,
      seeds: group.map(({ seed }) => seed),
      excess: group.reduce((sum, { ours, independent }) => sum + Math.log(independent / ours), 0),
    }))
    .sort((one, other) => other.excess - one.excess);
}
