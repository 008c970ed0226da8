/**
 * How likely each fault is, given some of a virtual vehicle's answers: as good as those answers
 * allow, since it knows how the vehicles are made. It shares nothing with a flow's likelihoods.
 *
 * For each kind of circuit, hidden states are drawn, at first as the vehicles are and then where the
 * readings point to, and each is weighted with the chances of every answer.
 */
import {
  causeLog,
  places,
  settingFrom,
  sortedEvidence,
  type Evidence,
} from './answer-likelihood.ts';
import { causeChances, causes } from './causes.ts';
import { CircuitKind, type Member } from './circuit-kind.ts';
import { circuitState } from './circuit-state.ts';
import { Random } from './random.ts';

/** Shares of the faults, together 1; of two at once each has half. */
export type IndependentPosterior = {
  readonly shares: Readonly<Record<string, number>>;
  readonly ranking: readonly (readonly [fault: string, share: number])[];
  /** Standard error of the first share, by the drawing alone. */
  readonly error: number;
};

const draws = { pilot: 40, first: 60, later: 70, rounds: 6, tries: 500 };
/** A kind of circuit whose best state is so far behind, in nats, is not gone into. */
const hopeless = 6;
/** So far behind before any reading is looked at, it is left at the pilot. */
const unlikely = 10;

/** A cause so far behind by what hangs on it alone is left out. */
const leftOut = 11;

/** Works out the posterior; the seed decides what is drawn. */
export function independentPosterior(evidence: Evidence, seed = 1): IndependentPosterior {
  const random = new Random(seed);
  const sorted = sortedEvidence(evidence);
  const members = possibleMembers(evidence, random);
  const kinds = [...new Set(members.map(({ cause }) => cause.electrics))].map(
    (electrics) =>
      new CircuitKind(
        electrics,
        members.filter(({ cause }) => cause.electrics === electrics),
        { evidence: sorted, random },
      ),
  );
  for (const kind of kinds) kind.begin(draws.pilot);
  const likeliest = Math.max(...kinds.map(({ mostByChoices }) => mostByChoices));
  const live = kinds.filter(({ mostByChoices }) => mostByChoices > likeliest - unlikely);
  for (const kind of live) kind.go(draws.first, draws.tries);
  for (let round = 0; round < draws.rounds; round += 1) {
    const reached = Math.max(...live.map(({ most }) => most));
    // Until states are sought by the readings, a kind may have met none of them.
    const behind =
      sorted.figures.length > 0 && round < 2 ? Infinity : hopeless * (round < 4 ? 3 : 1);
    for (const kind of live) if (kind.most > reached - behind) kind.improve(draws.later);
  }
  return sharesOf(kinds);
}

function possibleMembers(evidence: Evidence, random: Random): readonly Member[] {
  const settings = Array.from({ length: 6 }, () => settingFrom(evidence, random.normals(places)));
  const any = circuitState(settings[0]!, 'sound', new Float64Array(places));
  const possible = causes.flatMap((cause, index) => {
    const chance = Math.max(...settings.map((setting) => causeChances(setting)[index]!));
    if (chance === 0) return [];
    const log = causeLog(evidence, { cause, state: any });
    return [{ cause, index, log, alone: log + Math.log(chance) }];
  });
  const best = Math.max(...possible.map(({ alone }) => alone));
  return possible.filter(({ alone }) => alone > best - leftOut);
}

function sharesOf(kinds: readonly CircuitKind[]): IndependentPosterior {
  const scale = Math.max(...kinds.map(({ most }) => most));
  const byKind = kinds.map((kind) => ({ kind, rows: kind.contributions(scale) }));
  const sums: Record<string, number> = {};
  let total = 0;
  for (const { kind, rows } of byKind) {
    for (const row of rows) {
      for (const [index, { cause }] of kind.members.entries()) {
        const mass = row[index]!;
        total += mass;
        for (const fault of cause.faults) {
          sums[fault] = (sums[fault] ?? 0) + mass / cause.faults.length;
        }
      }
    }
  }
  const shares = Object.fromEntries(
    Object.entries(sums).map(([fault, sum]) => [fault, sum / total]),
  );
  const ranking = Object.entries(shares).sort(([, one], [, other]) => other - one);
  const [first, share] = ranking[0]!;
  // Each state's pull on the first share, by the rule for a ratio.
  let variance = 0;
  for (const { kind, rows } of byKind) {
    let sum = 0;
    let squares = 0;
    for (const row of rows) {
      let pull = 0;
      for (const [index, { cause }] of kind.members.entries()) {
        const part = cause.faults.includes(first) ? 1 / cause.faults.length : 0;
        pull += (row[index]! * (part - share)) / total;
      }
      sum += pull;
      squares += pull * pull;
    }
    variance += squares - (sum * sum) / kind.drawn + sum * sum * kind.startError;
  }
  return { shares, ranking, error: Math.sqrt(variance) };
}
