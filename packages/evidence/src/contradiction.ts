/** A check that was made: how likely each outcome is with each hypothesis, and what came of it. */
export interface MadeCheck {
  readonly id: string;
  /** Outcome by outcome, P(outcome | hypothesis) in the order of the hypotheses. */
  readonly rows: readonly ArrayLike<number>[];
  /** The share of each outcome, sum 1: one of them 1, or several where a reading is borderline. */
  readonly shares: readonly number[];
}

/** How badly findings fit together. */
export interface Contradiction {
  /** -ln P(findings), nats. */
  readonly surprise: number;
  /** The check whose finding surprises most, given all the others, against what it might have. */
  readonly suspect: string;
}

/** A check with P(its finding | hypothesis), in the order of the hypotheses. */
interface Weighed {
  readonly check: MadeCheck;
  readonly likelihoods: Float64Array;
}

const draws = 2000;

/** With so many of the draws at least as surprising, one case in a hundred and more is. */
const oneInHundred = draws / 100 + 1;

/** A generator of numbers from 0 to 1, 1 excluded, the same for the same seed (mulberry32). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

function weighed(check: MadeCheck, hypotheses: number): Weighed {
  const likelihoods = new Float64Array(hypotheses);
  for (const [outcome, share] of check.shares.entries()) {
    const row = check.rows[outcome];
    if (!(share > 0) || row === undefined) continue;
    for (let index = 0; index < hypotheses; index += 1) {
      likelihoods[index] = (likelihoods[index] as number) + share * (row[index] as number);
    }
  }
  return { check, likelihoods };
}

/** P(hypothesis and every finding), or every one but `left`. */
function jointOf(priors: Float64Array, checks: readonly Weighed[], left?: Weighed): Float64Array {
  const joint = Float64Array.from(priors);
  for (const one of checks) {
    if (one === left) continue;
    const { likelihoods } = one;
    for (let index = 0; index < joint.length; index += 1) {
      joint[index] = (joint[index] as number) * (likelihoods[index] as number);
    }
  }
  return joint;
}

function total(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}

/** The first place up to which more than `share` of a whole is summed. */
function placeIn(sums: Float64Array, share: number): number {
  let low = 0;
  let high = sums.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sums[middle] as number) > share) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * True where one case in a hundred and more of the model, with the same checks made, is no likelier
 * than `chance`. A draw is only summed until it is seen to be likelier, from the hypothesis on that it
 * was drawn from.
 */
function isUsual(priors: Float64Array, checks: readonly MadeCheck[], chance: number): boolean {
  const random = randomFrom(checks.length);
  const count = priors.length;
  const sums = new Float64Array(count);
  let sum = 0;
  for (let index = 0; index < count; index += 1) {
    sum += priors[index] as number;
    sums[index] = sum;
  }
  let rare = 0;
  const drawn: ArrayLike<number>[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    const from = placeIn(sums, random());
    for (const [position, { rows }] of checks.entries()) {
      let left = random();
      let outcome = 0;
      while (outcome < rows.length - 1) {
        left -= rows[outcome]?.[from] ?? 0;
        if (left < 0) break;
        outcome += 1;
      }
      drawn[position] = rows[outcome] ?? [];
    }
    let likely = 0;
    for (let step = 0; step < count && likely <= chance; step += 1) {
      const index = from + step < count ? from + step : from + step - count;
      let product = priors[index] as number;
      for (const row of drawn) product *= row[index] as number;
      likely += product;
    }
    if (likely <= chance) rare += 1;
    if (rare >= oneInHundred) return true;
  }
  return false;
}

/** How much more a finding surprises, given the others, than its check does on the average. */
function excess(priors: Float64Array, checks: readonly Weighed[], one: Weighed): number {
  const joint = jointOf(priors, checks, one);
  const whole = total(joint);
  let entropy = 0;
  let found = 0;
  for (const [outcome, row] of one.check.rows.entries()) {
    let sum = 0;
    for (let index = 0; index < joint.length; index += 1) {
      sum += (joint[index] as number) * (row[index] as number);
    }
    const chance = sum / whole;
    if (chance > 0) entropy -= chance * Math.log(chance);
    found += (one.check.shares[outcome] ?? 0) * chance;
  }
  return -Math.log(found) - entropy;
}

/**
 * Whether findings contradict each other: undefined where chance explains them, as in 99 of 100
 * cases of the model in which the same checks are made, or where the likeliest hypothesis does.
 *
 * Up to 2,000 cases are drawn with a fixed seed, so that the same findings always give the same
 * result. The suspect is the check whose own finding, given all the others, surprises most beyond what
 * it does on the average. `priors`: of the hypotheses before any of the checks, sum 1. Surprise: -ln P
 * (from memory: I. J. Good). No side effects.
 */
export function contradictionIn(
  checks: readonly MadeCheck[],
  priors: Float64Array,
): Contradiction | undefined {
  if (checks.length < 2) return undefined;
  const all = checks.map((check) => weighed(check, priors.length));
  const joint = jointOf(priors, all);
  if (isExplained(joint, all)) return undefined;
  const chance = total(joint);
  if (isUsual(priors, checks, chance)) return undefined;
  const [suspect] = all
    .map((one) => ({ id: one.check.id, excess: excess(priors, all, one) }))
    .sort((one, other) => other.excess - one.excess);
  return suspect && { surprise: -Math.log(chance), suspect: suspect.id };
}

/** How many deviations of the surprise leave one case in a hundred above. */
const deviations = 2.33;

/**
 * True where the likeliest hypothesis gives such findings often enough, however rare it is itself:
 * then they fit together, and no cases need be drawn.
 */
function isExplained(joint: Float64Array, checks: readonly Weighed[]): boolean {
  let leader = 0;
  for (let index = 1; index < joint.length; index += 1) {
    if ((joint[index] as number) > (joint[leader] as number)) leader = index;
  }
  let surprise = 0;
  let mean = 0;
  let variance = 0;
  for (const { check, likelihoods } of checks) {
    surprise -= Math.log(likelihoods[leader] as number);
    let first = 0;
    let second = 0;
    for (const row of check.rows) {
      const chance = row[leader] ?? 0;
      if (chance <= 0) continue;
      first -= chance * Math.log(chance);
      second += chance * Math.log(chance) ** 2;
    }
    mean += first;
    variance += second - first ** 2;
  }
  return surprise <= mean + deviations * Math.sqrt(variance);
}
