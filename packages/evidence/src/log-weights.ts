import type { EvidenceModel } from './evidence-model.ts';
import { asPrepared } from './finding.ts';
import type { Finding } from './finding.ts';

/** The natural logarithms of the priors; minus infinity where a prior is 0. */
export function logPriors(model: EvidenceModel): Float64Array {
  // Float64Array.from with a mapper walks an iterator, several times slower than this loop.
  const logs = new Float64Array(model.priors);
  for (let index = 0; index < logs.length; index += 1) {
    logs[index] = Math.log(logs[index] as number);
  }
  return logs;
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
