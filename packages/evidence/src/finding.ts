import { EvidenceError } from './evidence-error.ts';
import type { EvidenceModel } from './evidence-model.ts';
import { requireInRange, requireLength } from './require-numbers.ts';

/** What was seen, as its likelihood under each hypothesis. */
export interface LikelihoodFinding {
  /** Names the finding in errors. */
  readonly id: string;
  /**
   * P(what was seen | hypothesis), in the order of the model's hypotheses: finite, 0 or more.
   * Only the ratios count, so a reading may give densities, all in one unit, which may exceed 1.
   * 0 says that physics forbids it: no later finding can bring that hypothesis back.
   */
  readonly likelihoods: readonly number[];
  /**
   * Power to which the likelihoods are raised, above 0 to 1: less than 1 where several findings
   * measure one cause, see `temperedExponent`.
   *
   * @defaultValue 1
   */
  readonly exponent?: number;
}

/** A finding checked and put into logarithms, for callers that weigh it many times. */
export interface PreparedFinding {
  /** Names the finding in errors. */
  readonly id: string;
  /** Natural logarithms of the tempered likelihoods; minus infinity where physics forbids. */
  readonly logLikelihoods: Float64Array;
}

/** A finding in either form; both give the same posterior, bit for bit. */
export type Finding = LikelihoodFinding | PreparedFinding;

/**
 * Checks a finding against the model and takes its logarithms once. No side effects.
 *
 * @throws EvidenceError `length-mismatch` or `out-of-range`, naming the finding and, for a
 *   likelihood, the hypothesis
 */
export function prepareFinding(model: EvidenceModel, finding: LikelihoodFinding): PreparedFinding {
  const { id, likelihoods, exponent = 1 } = finding;
  requireLength(likelihoods, model.hypotheses.length, {
    what: 'the row of likelihoods',
    facts: { finding: id },
  });
  // An exponent of 0 would turn a forbidden outcome into NaN; a finding to ignore is left out.
  requireInRange(exponent, {
    what: 'an exponent',
    least: Number.MIN_VALUE,
    greatest: 1,
    facts: { finding: id },
  });
  const logLikelihoods = new Float64Array(likelihoods.length);
  for (let index = 0; index < logLikelihoods.length; index += 1) {
    const likelihood = likelihoods[index] ?? Number.NaN;
    if (!(likelihood >= 0 && likelihood < Number.POSITIVE_INFINITY)) {
      throw badLikelihood(likelihood, id, model.hypotheses[index] ?? '');
    }
    logLikelihoods[index] = exponent * Math.log(likelihood);
  }
  return { id, logLikelihoods };
}

/**
 * The finding in its prepared form, checked against the model.
 *
 * @throws EvidenceError as `prepareFinding` does, or `length-mismatch` for a finding that was
 *   prepared for another model
 */
export function asPrepared(model: EvidenceModel, finding: Finding): PreparedFinding {
  if (!('logLikelihoods' in finding)) return prepareFinding(model, finding);
  requireLength(finding.logLikelihoods, model.hypotheses.length, {
    what: 'the row of likelihoods',
    facts: { finding: finding.id },
  });
  return finding;
}

/** Built only for a bad value: facts for each good one would double the time of preparing. */
function badLikelihood(value: number, finding: string, hypothesis: string): EvidenceError {
  return new EvidenceError(
    'out-of-range',
    'a likelihood must be finite and 0 or more: ' +
      `finding ${finding}, hypothesis ${hypothesis}, value ${value}`,
    { finding, hypothesis, value },
  );
}
