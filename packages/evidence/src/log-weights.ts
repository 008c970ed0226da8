import type { EvidenceModel } from './evidence-model.ts';
import { asPrepared } from './finding.ts';
import type { Finding } from './finding.ts';

/** A model is frozen, so its logarithms are taken once. */
const taken = new WeakMap<EvidenceModel, Float64Array>();

/** The natural logarithms of the priors, the caller's own; minus infinity where a prior is 0. */
export function logPriors(model: EvidenceModel): Float64Array {
  let logs = taken.get(model);
  if (logs === undefined) {
    logs = new Float64Array(model.priors).map(Math.log);
    taken.set(model, logs);
  }
  return logs.slice();
}

/**
 * Adds one finding to unnormalised log weights, in place, hypothesis by hypothesis in order.
 *
 * @throws EvidenceError as `asPrepared` does
 */
export function addFinding(logWeights: Float64Array, model: EvidenceModel, finding: Finding): void {
  const { logLikelihoods } = asPrepared(model, finding);
  for (let index = 0; index < logWeights.length; index += 1) {
    logWeights[index] = (logWeights[index] as number) + (logLikelihoods[index] as number);
  }
}
