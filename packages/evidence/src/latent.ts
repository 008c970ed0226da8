import { EvidenceError } from './evidence-error.ts';
import { requireInRange, requireLength } from './require-numbers.ts';

/**
 * Hypotheses with hidden states: what is believed is (hypothesis, state), so that findings which
 * share a cause are independent given both, and are not counted twice.
 */
export interface LatentSpace {
  /** How many hypotheses there are. */
  readonly hypotheses: number;
  /** For each state the position of its hypothesis, ascending; every hypothesis has a state. */
  readonly owner: Int32Array;
  /** ln P(state | hypothesis), in the order of the states. */
  readonly logWeights: Float64Array;
}

/** What is believed of hypotheses, and of the states of each. */
export interface LatentPosterior {
  /** P(hypothesis | findings), sum 1. */
  readonly hypotheses: Float64Array;
  /** P(state | hypothesis, findings): sums to 1 over the states of each hypothesis. */
  readonly states: Float64Array;
}

/**
 * A space from the weights of each hypothesis's states.
 *
 * @param weights - for each hypothesis one weight a state, 0 or more, at least one above 0; only
 *   their ratios within the hypothesis count
 * @throws EvidenceError `out-of-range`, or `not-a-distribution` where a hypothesis has no weight
 */
export function defineLatentSpace(weights: readonly ArrayLike<number>[]): LatentSpace {
  const states = weights.reduce((sum, row) => sum + row.length, 0);
  const owner = new Int32Array(states);
  const logWeights = new Float64Array(states);
  let at = 0;
  for (const [hypothesis, row] of weights.entries()) {
    let total = 0;
    for (let state = 0; state < row.length; state += 1) {
      const weight = row[state] ?? Number.NaN;
      requireInRange(weight, {
        what: 'the weight of a state',
        least: 0,
        greatest: Number.MAX_VALUE,
        facts: { hypothesis: String(hypothesis) },
      });
      total += weight;
    }
    if (!(total > 0)) {
      throw new EvidenceError(
        'not-a-distribution',
        `the states of hypothesis ${String(hypothesis)} weigh ${String(total)}: one must weigh more than 0`,
        { total },
      );
    }
    for (let state = 0; state < row.length; state += 1) {
      owner[at] = hypothesis;
      logWeights[at] = Math.log((row[state] ?? 0) / total);
      at += 1;
    }
  }
  return { hypotheses: weights.length, owner, logWeights };
}

/**
 * How likely each hypothesis is, summed over its states: P(h) sum_z P(z|h) prod_i L_i(x_i|h,z).
 *
 * Worked out afresh from all findings, each greatest logarithm taken off first. No side effects.
 *
 * @param logPriors - ln P(hypothesis), up to one constant
 * @param findings - for each finding ln L in the order of the states
 * @throws EvidenceError `length-mismatch`; `impossible-finding` when no state is left
 */
export function latentPosterior(
  space: LatentSpace,
  logPriors: ArrayLike<number>,
  findings: readonly ArrayLike<number>[],
): LatentPosterior {
  const { hypotheses: count, owner, logWeights } = space;
  requireLength(logPriors, count, { what: 'the row of priors' });
  const states = logWeights.slice();
  for (const logs of findings) {
    requireLength(logs, states.length, { what: 'the row of a finding' });
    for (let state = 0; state < states.length; state += 1) {
      states[state] = (states[state] as number) + (logs[state] as number);
    }
  }
  const greatest = new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
  for (let state = 0; state < states.length; state += 1) {
    const of = owner[state] as number;
    if ((states[state] as number) > (greatest[of] as number)) {
      greatest[of] = states[state] as number;
    }
  }
  const sums = new Float64Array(count);
  for (let state = 0; state < states.length; state += 1) {
    const of = owner[state] as number;
    const most = greatest[of] as number;
    const weight =
      most === Number.NEGATIVE_INFINITY
        ? Math.exp(logWeights[state] as number)
        : Math.exp((states[state] as number) - most);
    states[state] = weight;
    sums[of] = (sums[of] as number) + weight;
  }
  for (let state = 0; state < states.length; state += 1) {
    states[state] = (states[state] as number) / (sums[owner[state] as number] as number);
  }
  return { hypotheses: shares(greatest, sums, logPriors), states };
}

/** Weights of the hypotheses brought to the sum 1. */
function shares(
  greatest: Float64Array,
  sums: Float64Array,
  logPriors: ArrayLike<number>,
): Float64Array {
  const logs = greatest.map(
    (most, of) => most + Math.log(sums[of] as number) + (logPriors[of] as number),
  );
  const top = logs.reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY);
  if (top === Number.NEGATIVE_INFINITY) {
    throw new EvidenceError(
      'impossible-finding',
      'no state of any hypothesis allows what was found',
      {},
    );
  }
  const weights = logs.map((log) => Math.exp(log - top));
  const total = weights.reduce((sum, one) => sum + one, 0);
  return weights.map((weight) => weight / total);
}

/**
 * P(outcome | hypothesis, findings) for each hypothesis: the chance of the outcome in each state,
 * weighed by what has been found of the states so far.
 * `chances` are P(outcome | state), and `places` tells for each state of the space where its chance
 * stands, since hypotheses may share states.
 */
export function predicted(
  space: LatentSpace,
  posterior: Pick<LatentPosterior, 'states'>,
  outcome: { readonly chances: Float64Array; readonly places: Int32Array },
): Float64Array {
  const { hypotheses, owner } = space;
  const { states } = posterior;
  const { chances, places } = outcome;
  requireLength(places, states.length, { what: 'the row of places' });
  const sums = new Float64Array(hypotheses);
  for (let state = 0; state < states.length; state += 1) {
    const of = owner[state] as number;
    sums[of] =
      (sums[of] as number) +
      (states[state] as number) * (chances[places[state] as number] as number);
  }
  return sums;
}
