import { EvidenceError } from './evidence-error.ts';
import { requireInRange, requireLength } from './require-numbers.ts';

/**
 * The likelihoods of a soft finding: a reading near a bound carries both branches by weight.
 *
 * @param rows - one row of likelihoods for each branch, all over the same hypotheses
 * @param weights - how far the reading speaks for each branch: 0 or more, at least one above 0;
 *   only their ratios count
 * @returns for each hypothesis the weighted mean of its likelihoods
 * @throws EvidenceError `length-mismatch`, `out-of-range`, or `not-a-distribution` when the
 *   weights have no finite sum above 0
 */
export function mixLikelihoods(
  rows: readonly (readonly number[])[],
  weights: readonly number[],
): readonly number[] {
  requireLength(weights, rows.length, { what: 'the row of weights' });
  weights.forEach((weight, branch) => {
    requireInRange(weight, {
      what: 'a weight',
      least: 0,
      greatest: Number.POSITIVE_INFINITY,
      facts: { branch },
    });
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (!(total > 0 && Number.isFinite(total))) {
    throw new EvidenceError(
      'not-a-distribution',
      `the weights of the branches sum to ${total}: their sum must be finite and above 0`,
      { total },
    );
  }
  const width = rows[0]?.length ?? 0;
  const mixed = new Array<number>(width).fill(0);
  rows.forEach((row, branch) => {
    requireLength(row, width, { what: 'a row of likelihoods', facts: { branch } });
    const share = (weights[branch] ?? 0) / total;
    row.forEach((likelihood, index) => {
      mixed[index] = (mixed[index] ?? 0) + share * likelihood;
    });
  });
  return mixed;
}
