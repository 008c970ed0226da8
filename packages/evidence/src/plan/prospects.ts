import { EvidenceError } from '../evidence-error.ts';
import { actCost } from './act-cost.ts';
import type { DiagnosisProblem } from './diagnosis-problem.ts';
import { positionOf } from './diagnosis-state.ts';
import type { DiagnosisState } from './diagnosis-state.ts';
import { frameOf } from './frame.ts';

/** One outcome that a check may have. */
export interface OutcomeProspect {
  readonly id: string;
  /** P(outcome) at the present belief, 0 to 1. */
  readonly probability: number;
  /** Belief after it, in the order of the problem's faults, sum 1; all 0 where it cannot occur. */
  readonly posterior: Float64Array;
  /** Expected cost of acting at once after it; 0 where it cannot occur. */
  readonly act: number;
}

/** What a check may bring, for explaining why it is asked. */
export interface Prospects {
  /** In the order of the check's outcomes. */
  readonly outcomes: readonly OutcomeProspect[];
  /** Cost of the check now, with the setups not yet paid. */
  readonly cost: number;
  /** Expected information about the fault, bits, 0 to the entropy of the belief. */
  readonly informationBits: number;
  /** Expected cost of doing this check and then acting. */
  readonly oneStepValue: number;
  /** Whether every check that it requires is done with an outcome that will do. */
  readonly isPossible: boolean;
}

/**
 * What a check may bring at a state: its outcomes, what each would mean, and what it is worth.
 * No side effects.
 *
 * @param check - id of a check of the problem
 * @throws EvidenceError `unknown-id`; otherwise as `planNext` does
 */
export function prospects(
  problem: DiagnosisProblem,
  state: DiagnosisState,
  check: string,
): Prospects {
  const index = problem.checks.indexOf(check);
  if (index < 0) {
    throw new EvidenceError('unknown-id', `the problem has no check "${check}"`, {
      what: 'check',
      id: check,
    });
  }
  const position = positionOf(problem, state);
  const whole = frameOf(problem, position);
  const { belief } = position;
  const width = belief.length;
  const likelihoods = problem.likelihoods[index] as Float64Array;
  let cost = problem.checkCost[index] as number;
  problem.setupCost.forEach((setup, bit) => {
    const needed = (problem.checkSetups[index] as number) & ~position.paid;
    if ((needed & (1 << bit)) !== 0) cost += setup;
  });
  let informationBits = entropyBits(belief);
  let oneStepValue = cost;
  const outcomes = (problem.outcomes[index] ?? []).map((id, outcome): OutcomeProspect => {
    const row = likelihoods.subarray(outcome * width, (outcome + 1) * width);
    const after = belief.map((share, fault) => share * (row[fault] as number));
    let probability = 0;
    for (const share of after) probability += share;
    if (probability <= 0) return { id, probability: 0, posterior: after.fill(0), act: 0 };
    const posterior = after.map((share) => share / probability);
    const live = Float64Array.from(whole.faults, (fault) => posterior[fault] as number);
    const act = actCost(whole, live, sum(live));
    informationBits -= probability * entropyBits(posterior);
    oneStepValue += probability * act;
    return { id, probability, posterior, act };
  });
  const isPossible = (problem.checkRequires[index] ?? []).every(
    (required) => required.allowed[position.outcomes[required.check] as number] === 1,
  );
  return {
    outcomes,
    cost,
    informationBits: Math.max(0, informationBits),
    oneStepValue,
    isPossible,
  };
}

function entropyBits(belief: Float64Array): number {
  let bits = 0;
  for (const share of belief) if (share > 0) bits -= share * Math.log2(share);
  return bits;
}

function sum(weights: Float64Array): number {
  let total = 0;
  for (const weight of weights) total += weight;
  return total;
}
