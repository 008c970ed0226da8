/** A check that was made: how likely each outcome is with each hypothesis, and what came of it. */
export interface MadeCheck {
  readonly id: string;
  /** Outcome by outcome, P(outcome | hypothesis) in the order of the hypotheses. */
  readonly rows: readonly ArrayLike<number>[];
  /** The share of each outcome, sum 1: one of them 1, or several where a reading is borderline. */
  readonly shares: readonly number[];
}

/** How badly findings fit together: their surprise, and the greatest that chance explains. */
export interface Contradiction {
  /** -ln P(findings), nats. */
  readonly surprise: number;
  /** The 99th percentile of the surprise of such checks under the model. */
  readonly usual: number;
  /** The check whose finding surprises most, given all the others, against what it might have. */
  readonly suspect: string;
}

const draws = 2000;
const percentile = 0.99;

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

/** P(finding | hypothesis) of a made check. */
function likelihood({ rows, shares }: MadeCheck, hypothesis: number): number {
  let sum = 0;
  for (const [outcome, share] of shares.entries()) {
    if (share > 0) sum += share * (rows[outcome]?.[hypothesis] ?? 0);
  }
  return sum;
}

/** Belief after all checks but one, which may be none of them; sum 1. */
function beliefWithout(
  priors: Float64Array,
  checks: readonly MadeCheck[],
  left: MadeCheck | undefined,
): Float64Array {
  const weights = priors.map(Math.log);
  for (const check of checks) {
    if (check === left) continue;
    for (let index = 0; index < weights.length; index += 1) {
      weights[index] = (weights[index] ?? 0) + Math.log(likelihood(check, index));
    }
  }
  const greatest = weights.reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY);
  const scaled = weights.map((one) => Math.exp(one - greatest));
  const total = scaled.reduce((sum, one) => sum + one, 0);
  return scaled.map((one) => one / total);
}

/** -ln of the chance that the model gives what was drawn or found. */
function surpriseOf(priors: Float64Array, chances: (hypothesis: number) => number): number {
  let total = 0;
  for (let index = 0; index < priors.length; index += 1) {
    total += (priors[index] ?? 0) * chances(index);
  }
  return -Math.log(total);
}

function pick(random: () => number, chance: (index: number) => number, count: number): number {
  let left = random();
  for (let index = 0; index < count - 1; index += 1) {
    left -= chance(index);
    if (left < 0) return index;
  }
  return count - 1;
}

/** The surprise that 99 in 100 cases with these checks stay below. */
function usualSurprise(priors: Float64Array, checks: readonly MadeCheck[]): number {
  const random = randomFrom(checks.length);
  const surprises = new Float64Array(draws);
  const drawn: (ArrayLike<number> | undefined)[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    const hypothesis = pick(random, (index) => priors[index] ?? 0, priors.length);
    for (const [position, { rows }] of checks.entries()) {
      drawn[position] =
        rows[pick(random, (outcome) => rows[outcome]?.[hypothesis] ?? 0, rows.length)];
    }
    surprises[draw] = surpriseOf(priors, (index) => {
      let product = 1;
      for (const row of drawn) product *= row?.[index] ?? 0;
      return product;
    });
  }
  return surprises.sort()[Math.ceil(percentile * draws) - 1] ?? 0;
}

/** How much more a finding surprises, given the others, than its check does on the average. */
function excess(priors: Float64Array, checks: readonly MadeCheck[], check: MadeCheck): number {
  const belief = beliefWithout(priors, checks, check);
  const chanceOf = (row: ArrayLike<number>): number =>
    belief.reduce((sum, share, index) => sum + share * (row[index] ?? 0), 0);
  let entropy = 0;
  let found = 0;
  for (const [outcome, row] of check.rows.entries()) {
    const chance = chanceOf(row);
    if (chance > 0) entropy -= chance * Math.log(chance);
    found += (check.shares[outcome] ?? 0) * chance;
  }
  return -Math.log(found) - entropy;
}

/**
 * Whether findings contradict each other: undefined where chance explains them, as in 99 of 100
 * cases of the model in which the same checks are made, or where the likeliest hypothesis does.
 *
 * 2,000 cases are drawn with a fixed seed, so that the same findings always give the same result.
 * The suspect is the check whose own finding, given all the others, surprises most beyond what it
 * does on the average. `priors`: of the hypotheses before any of the checks, sum 1. Surprise: -ln P (from memory: I. J. Good). No side effects.
 */
export function contradictionIn(
  checks: readonly MadeCheck[],
  priors: Float64Array,
): Contradiction | undefined {
  const surprise = surpriseOf(priors, (index) =>
    checks.reduce((product, check) => product * likelihood(check, index), 1),
  );
  if (checks.length < 2 || isExplained(priors, checks)) return undefined;
  const usual = usualSurprise(priors, checks);
  if (surprise <= usual) return undefined;
  const [suspect] = checks
    .map((check) => ({ id: check.id, excess: excess(priors, checks, check) }))
    .sort((one, other) => other.excess - one.excess);
  return suspect === undefined ? undefined : { surprise, usual, suspect: suspect.id };
}

/** How many deviations of the surprise leave one case in a hundred above. */
const deviations = 2.33;

/**
 * True where the likeliest hypothesis gives such findings often enough, however rare it is itself:
 * then they fit together, and no cases need be drawn.
 */
function isExplained(priors: Float64Array, checks: readonly MadeCheck[]): boolean {
  const belief = beliefWithout(priors, checks, undefined);
  const leader = belief.reduce(
    (best, share, index) => (share > (belief[best] ?? 0) ? index : best),
    0,
  );
  let surprise = 0;
  let mean = 0;
  let variance = 0;
  for (const check of checks) {
    surprise -= Math.log(likelihood(check, leader));
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
