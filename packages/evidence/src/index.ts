// The hypotheses, and what is claimed of them.
export { defineModel } from './evidence-model.ts';
export type { EvidenceModel } from './evidence-model.ts';
export type { Proposition } from './proposition.ts';

// What was seen.
export { prepareFinding } from './finding.ts';
export type { Finding, LikelihoodFinding, PreparedFinding } from './finding.ts';

// Honest likelihoods: floors, readings near a bound, mistaken people, one cause measured twice.
export { floorLikelihoods, LIKELIHOOD_FLOOR } from './floor-likelihoods.ts';
export { mixLikelihoods } from './mix-likelihoods.ts';
export { noisyLikelihoods } from './noisy-likelihoods.ts';
export { temperedExponent } from './tempered-exponent.ts';

// What follows from it.
export { posterior } from './posterior.ts';
export { marginal } from './marginal.ts';
export { rank } from './rank.ts';
export type { RankedHypothesis } from './rank.ts';
export { weightOfEvidence } from './weight-of-evidence.ts';
export type { FindingWeight } from './weight-of-evidence.ts';

// The one error.
export { EvidenceError } from './evidence-error.ts';
export type { EvidenceErrorCode, EvidenceErrorFacts } from './evidence-error.ts';
