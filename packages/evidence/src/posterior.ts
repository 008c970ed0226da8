import type { EvidenceModel } from './evidence-model.ts';
import type { Finding } from './finding.ts';
import { impossibleFinding } from './impossible-finding.ts';
import { addFinding, logPriors } from './log-weights.ts';

/**
 * How likely each hypothesis is, given the findings: Bayes' rule with findings independent given
 * the hypothesis.
 *
 * It is worked out afresh from all findings, so leaving one out restores the former belief
 * exactly. Sums run in the order given; another order of findings moves a probability by less
 * than 1e-12. No side effects.
 *
 * @returns probabilities in the order of the model's hypotheses, sum 1
 * @throws EvidenceError `impossible-finding`, naming the findings, when no hypothesis is left;
 *   `length-mismatch` or `out-of-range` for a bad finding
 * @example
 * const model = defineModel(['battery', 'starter'], [0.5, 0.5]);
 * posterior(model, [{ id: 'lamps-dim', likelihoods: [0.9, 0.1] }]); // 0.9, 0.1
 */
export function posterior(model: EvidenceModel, findings: readonly Finding[]): Float64Array {
  const weights = logPriors(model);
  for (const finding of findings) addFinding(weights, model, finding);
  let greatest = Number.NEGATIVE_INFINITY;
  for (const weight of weights) if (weight > greatest) greatest = weight;
  if (greatest === Number.NEGATIVE_INFINITY) throw impossibleFinding(model, findings);
  let total = 0;
  for (let index = 0; index < weights.length; index += 1) {
    // The greatest is taken off first so that long cases cannot underflow to all zeros.
    const weight = Math.exp((weights[index] as number) - greatest);
    weights[index] = weight;
    total += weight;
  }
  for (let index = 0; index < weights.length; index += 1) {
    weights[index] = (weights[index] as number) / total;
  }
  return weights;
}
