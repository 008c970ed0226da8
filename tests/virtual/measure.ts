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
  /** The independent posterior after the same answers; null where it was not asked for. */
  readonly best: Best | null;
};

/** What the independent posterior makes of the answers. */
type Best = {
  readonly truth: number;
  readonly first: readonly [fault: string, share: number];
  readonly error: number;
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

/** Plays the vehicle of a seed; with `withBest` the independent posterior is worked out too. */
export function playVehicle(seed: number, choose: Chooser, withBest: boolean): PlayedVehicle {
  const vehicle = virtualVehicle(seed);
  const { cause, setting } = vehicle;
  const { faults } = cause;
  const { fault, strength, remedy, send, ranking, asked, minutes } = choose(vehicle);
  const found: Found = { fault, strength, remedy, send, ranking, asked, minutes };
  return {
    seed,
    role: setting.role,
    cause: cause.id,
    faults,
    found,
    first: ranking[0]?.[1] ?? 0,
    ours: Math.max(leastShare, shareOf(ranking, faults)),
    best: withBest ? bestOf(vehicle, asked) : null,
    ...outcomeOf({ remedy, send, minutes }, { faults, role: setting.role }),
  };
}

function bestOf(vehicle: VirtualVehicle, asked: readonly string[]): Best {
  const given = new Map([...vehicle.given].filter(([check]) => asked.includes(check)));
  const { ranking, error } = independentPosterior({ ...vehicle, given }, vehicle.seed);
  return {
    truth: Math.max(leastShare, shareOf(ranking, vehicle.cause.faults)),
    first: ranking[0] ?? ['unlisted', 0],
    error,
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
  readonly proved: number;
  readonly provedRight: number;
  readonly minutes: number;
  readonly checks: number;
  readonly wrongParts: number;
  /** Of the dispatchers' cases. */
  readonly wrongHelp: number;
  readonly cost: number;
  /** The least that anything right costs, were every fault known at once. */
  readonly least: number;
  readonly logLoss: number;
  /** The same answers by the independent posterior; null where it was not asked for. */
  readonly best: BestFigures | null;
};

/** What the answers allow, by the independent posterior. */
type BestFigures = {
  /** Its first-ranked fault is right: the most that the answers allow. */
  readonly accuracy: number;
  readonly logLoss: number;
  /** Standard error by its own drawing, of the first share. */
  readonly error: number;
  /** Share of the vehicles where it gives the truth 0.9 or more, and how often ours is right there. */
  readonly whereSure: number;
  readonly accuracyWhereSure: number;
};

/** The whole of it: over all, by role, and how well forecasts came true. */
export type Report = {
  readonly all: Figures;
  readonly byRole: Readonly<Partial<Record<Role, Figures>>>;
  readonly calibration: readonly CalibrationBin[];
  readonly bestCalibration: readonly CalibrationBin[];
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
  const proved = played.filter(({ found }) => found.strength === 'proved');
  const dispatched = played.filter(({ role }) => role === 'dispatcher');
  const hands = played.filter(({ role }) => role !== 'dispatcher');
  return {
    vehicles: played.length,
    accuracy: shareWhere(played, isRight),
    proved: proved.length / played.length,
    provedRight: shareWhere(proved, isRight),
    minutes: mean(played.map(({ found }) => found.minutes)),
    checks: mean(played.map(({ found }) => found.asked.length)),
    wrongParts: shareWhere(hands, ({ isWrongPart }) => isWrongPart),
    wrongHelp: shareWhere(dispatched, ({ isWrongHelp }) => isWrongHelp),
    cost: mean(played.map(({ cost }) => cost)),
    least: mean(played.map(({ least }) => least)),
    logLoss: mean(played.map(({ ours }) => -Math.log(ours))),
    best: bestFiguresOf(played),
  };
}

function judged(played: readonly PlayedVehicle[]): readonly (PlayedVehicle & { best: Best })[] {
  return played.flatMap((one) => (one.best === null ? [] : [{ ...one, best: one.best }]));
}

function bestFiguresOf(played: readonly PlayedVehicle[]): BestFigures | null {
  const all = judged(played);
  if (all.length === 0) return null;
  const clear = all.filter(({ best }) => best.truth >= sure);
  return {
    accuracy: shareWhere(all, ({ faults, best }) => faults.includes(best.first[0])),
    logLoss: mean(all.map(({ best }) => -Math.log(best.truth))),
    error: mean(all.map(({ best }) => best.error)),
    whereSure: clear.length / all.length,
    accuracyWhereSure: shareWhere(clear, isRight),
  };
}

function calibrationOf<One>(
  played: readonly One[],
  read: (one: One) => readonly [forecast: number, isTrue: boolean],
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
    bestCalibration: calibrationOf(judged(played), ({ best: { first }, faults }) => [
      first[1],
      faults.includes(first[0]),
    ]),
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
  const groups = new Map<string, (PlayedVehicle & { best: Best })[]>();
  for (const one of judged(played)) {
    if (isRight(one)) continue;
    const key = `${one.cause} ${one.found.fault}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()]
    .map((group) => ({
      cause: group[0]!.cause,
      said: group[0]!.found.fault,
      seeds: group.map(({ seed }) => seed),
      excess: group.reduce((sum, { ours, best }) => sum + Math.log(best.truth / ours), 0),
    }))
    .sort((one, other) => other.excess - one.excess);
}
