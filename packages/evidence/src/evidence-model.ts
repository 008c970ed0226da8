import { EvidenceError } from './evidence-error.ts';
import { requireInRange, requireLength } from './require-numbers.ts';

/**
 * The hypotheses of which exactly one holds, and how likely each is before any finding.
 * A hypothesis may be a fault, or a fault with a hidden state (such as a step of charge), so that
 * findings that share a cause stay independent given the hypothesis.
 */
export interface EvidenceModel {
  /** Names, each once, at least one; their order settles ties. */
  readonly hypotheses: readonly string[];
  /** Probabilities in the order of the hypotheses, each 0 to 1, sum 1. */
  readonly priors: readonly number[];
}

/**
 * Makes a model from names and prior weights.
 *
 * @param hypotheses - names, each once, at least one
 * @param priors - one weight for each name, finite, 0 or more, at least one above 0; any scale
 * @returns a frozen model whose priors sum to 1
 * @throws EvidenceError `no-hypotheses`, `duplicate-hypothesis`, `length-mismatch`, `out-of-range`
 *   (naming the hypothesis), `not-a-distribution` when the weights have no finite sum above 0
 */
export function defineModel(
  hypotheses: readonly string[],
  priors: readonly number[],
): EvidenceModel {
  if (hypotheses.length === 0) {
    throw new EvidenceError('no-hypotheses', 'a model needs at least one hypothesis', {});
  }
  const seen = new Set<string>();
  for (const hypothesis of hypotheses) {
    if (seen.has(hypothesis)) {
      throw new EvidenceError(
        'duplicate-hypothesis',
        `hypothesis "${hypothesis}" is named twice: give each its own name`,
        { hypothesis },
      );
    }
    seen.add(hypothesis);
  }
  requireLength(priors, hypotheses.length, { what: 'the row of priors' });
  let total = 0;
  hypotheses.forEach((hypothesis, index) => {
    const prior = priors[index] ?? Number.NaN;
    requireInRange(prior, {
      what: 'a prior',
      least: 0,
      greatest: Number.POSITIVE_INFINITY,
      facts: { hypothesis },
    });
    total += prior;
  });
  if (!(total > 0 && Number.isFinite(total))) {
    throw new EvidenceError(
      'not-a-distribution',
      `the priors sum to ${total}: their sum must be finite and above 0`,
      { total },
    );
  }
  return Object.freeze({
    hypotheses: Object.freeze([...hypotheses]),
    priors: Object.freeze(priors.map((prior) => prior / total)),
  });
}
