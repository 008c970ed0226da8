import type { EvidenceModel } from './evidence-model.ts';
import { membership } from './proposition.ts';
import type { Proposition } from './proposition.ts';
import { requireLength } from './require-numbers.ts';

/**
 * The probability of a proposition: the sum over the hypotheses that are part of it.
 *
 * @param probabilities - one for each hypothesis, as `posterior` returns
 * @returns 0 to 1; 0 for a predicate that accepts no hypothesis
 * @throws EvidenceError `length-mismatch`, `unknown-hypothesis`
 */
export function marginal(
  model: EvidenceModel,
  probabilities: ArrayLike<number>,
  proposition: Proposition,
): number {
  requireLength(probabilities, model.hypotheses.length, { what: 'the row of probabilities' });
  let sum = 0;
  membership(model, proposition).forEach((member, index) => {
    if (member) sum += probabilities[index] ?? 0;
  });
  return sum;
}
