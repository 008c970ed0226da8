import type { EvidenceModel } from './evidence-model.ts';
import { requireLength } from './require-numbers.ts';

/** A hypothesis and its probability, 0 to 1. */
export type RankedHypothesis = readonly [hypothesis: string, probability: number];

/**
 * The hypotheses from the likeliest to the least; equals keep the order of the model.
 *
 * @param probabilities - one for each hypothesis, as `posterior` returns
 * @throws EvidenceError `length-mismatch`
 */
export function rank(
  model: EvidenceModel,
  probabilities: ArrayLike<number>,
): readonly RankedHypothesis[] {
  requireLength(probabilities, model.hypotheses.length, { what: 'the row of probabilities' });
  return model.hypotheses
    .map((hypothesis, index): RankedHypothesis => [hypothesis, probabilities[index] ?? 0])
    .sort((left, right) => right[1] - left[1]);
}
