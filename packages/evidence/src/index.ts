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

// What confirmed outcomes teach: counts of them, and priors and likelihoods drawn from counts.
export {
  addOutcome,
  countsFormat,
  emptyCounts,
  mergeCounts,
  refuseOtherFlow,
  removeOutcome,
} from './learn/counts.ts';
export type {
  AnswerCounts,
  Counts,
  CountsRefusal,
  CountsResult,
  FaultCounts,
} from './learn/counts.ts';
export { isId } from './learn/outcome.ts';
export type { FlowKey, Outcome } from './learn/outcome.ts';
export { answerCountsOf, pooledCounts } from './learn/pooled-counts.ts';
export type { CountsGroup } from './learn/pooled-counts.ts';
export { readCounts } from './learn/read-counts.ts';
export type { CountsProblem, ReadCounts } from './learn/read-counts.ts';
export { learnedPriors } from './learn/learned-priors.ts';
export type { PriorWeights } from './learn/learned-priors.ts';
export { learnedRow } from './learn/learned-row.ts';

// How far stated probabilities can be taken at their word.
export { brierScore, logScore } from './learn/forecast-scores.ts';
export { forecastRecord, verdictTable } from './learn/forecast-outcome.ts';
export type { Forecast, ForecastOutcome, ForecastRecord } from './learn/forecast-outcome.ts';
export { reliabilityTable } from './learn/reliability-table.ts';
export type { Claim, ReliabilityBin } from './learn/reliability-table.ts';
export { reliabilityDiagram } from './learn/reliability-diagram.ts';

// Whether findings fit together.
export { contradictionIn } from './contradiction.ts';
export type { Contradiction, MadeCheck } from './contradiction.ts';

// Hypotheses with hidden states that findings have in common.
export { defineLatentSpace, latentPosterior, predicted } from './latent.ts';
export type { LatentPosterior, LatentSpace } from './latent.ts';

// The one error.
export { EvidenceError } from './evidence-error.ts';
export type { EvidenceErrorCode, EvidenceErrorFacts } from './evidence-error.ts';

// What to do next: the problem, where a case stands, and the plan that costs least to its end.
export { defineProblem } from './plan/diagnosis-problem.ts';
export type {
  CheckDefinition,
  DiagnosisProblem,
  FaultDefinition,
  ProblemDefinition,
  Requirement,
  RequirementDefinition,
  SetupDefinition,
  VerdictDefinition,
  VerdictMode,
} from './plan/diagnosis-problem.ts';
export type { DiagnosisState, DoneCheck } from './plan/diagnosis-state.ts';
export { planNext } from './plan/plan-next.ts';
export type { Plan } from './plan/plan-next.ts';
export type { Proof } from './plan/found.ts';
export { policyCost } from './plan/policy-cost.ts';
export type { Policy, PolicyChoice } from './plan/policy-cost.ts';
export { prospects } from './plan/prospects.ts';
export type { OutcomeProspect, Prospects } from './plan/prospects.ts';
