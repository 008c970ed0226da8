import { EvidenceError } from '../evidence-error.ts';
import type { DiagnosisProblem } from './diagnosis-problem.ts';
import { NOT_DONE, positionOf } from './diagnosis-state.ts';
import type { DiagnosisState, DoneCheck } from './diagnosis-state.ts';

/** What a policy does at one state. */
export interface PolicyChoice {
  readonly type: 'check' | 'verdict';
  /** Position in the problem's checks or verdicts. */
  readonly index: number;
}

/** A way of choosing; asked once for every set of findings that it comes to. */
export type Policy = (problem: DiagnosisProblem, state: DiagnosisState) => PolicyChoice;

/**
 * The exact expected cost of a way of choosing, from the start of a case: the sum over every case
 * that it can come to. The time it takes is that of as many choices.
 *
 * @throws EvidenceError `no-way-out` where the policy repeats a check or, where cases go on, a
 *   verdict that can fix nothing any more
 */
export function policyCost(problem: DiagnosisProblem, policy: Policy): number {
  const { belief } = positionOf(problem, {});
  const walk: Walk = { problem, policy, values: new Map() };
  return costFrom(walk, {
    belief,
    done: new Int32Array(problem.checks.length).fill(NOT_DONE),
    paid: 0,
  });
}

interface Walk {
  readonly problem: DiagnosisProblem;
  readonly policy: Policy;
  readonly values: Map<string, number>;
}

interface Place {
  /** Sum 1. */
  readonly belief: Float64Array;
  readonly done: Int32Array;
  readonly paid: number;
}

function costFrom(walk: Walk, place: Place): number {
  const { problem, policy, values } = walk;
  // Findings in another order are the same findings; a fault ruled out has no belief left.
  const key = `${place.done.join()} ${place.belief.map((share) => (share > 0 ? 1 : 0)).join('')}`;
  const known = values.get(key);
  if (known !== undefined) return known;
  const { type, index } = policy(problem, stateOf(problem, place));
  const cost = type === 'check' ? checkCost(walk, place, index) : verdictCost(walk, place, index);
  values.set(key, cost);
  return cost;
}

function stateOf(problem: DiagnosisProblem, { belief, done }: Place): DiagnosisState {
  const findings: DoneCheck[] = [];
  done.forEach((outcome, check) => {
    if (outcome === NOT_DONE) return;
    const id = problem.outcomes[check]?.[outcome] ?? '';
    findings.push({ check: problem.checks[check] ?? '', outcome: id });
  });
  return { belief, done: findings };
}

function checkCost(walk: Walk, place: Place, check: number): number {
  const { problem } = walk;
  if (place.done[check] !== NOT_DONE) throw endless(problem.checks[check] ?? '');
  const likelihoods = problem.likelihoods[check] as Float64Array;
  const width = problem.faults.length;
  const needed = problem.checkSetups[check] as number;
  let cost = problem.checkCost[check] as number;
  problem.setupCost.forEach((setup, bit) => {
    if ((needed & ~place.paid & (1 << bit)) !== 0) cost += setup;
  });
  for (let outcome = 0; outcome * width < likelihoods.length; outcome += 1) {
    const row = likelihoods.subarray(outcome * width, (outcome + 1) * width);
    const after = place.belief.map((share, fault) => share * (row[fault] as number));
    const probability = normalise(after);
    if (probability <= 0) continue;
    const done = place.done.slice();
    done[check] = outcome;
    cost += probability * costFrom(walk, { belief: after, done, paid: place.paid | needed });
  }
  return cost;
}

function verdictCost(walk: Walk, place: Place, verdict: number): number {
  const { problem } = walk;
  const width = problem.faults.length;
  const after = place.belief.map((share, fault) =>
    problem.fixes[verdict * width + fault] === 1 ? 0 : share,
  );
  const right = problem.verdictCost[verdict] as number;
  const wrong = normalise(after);
  if (wrong <= 0) return right;
  const penalty = problem.wrongPenalty[verdict] as number;
  if (problem.mode === 'terminal') return right + wrong * penalty;
  if (after.every((share, fault) => share > 0 === (place.belief[fault] as number) > 0)) {
    throw endless(problem.verdicts[verdict] ?? '');
  }
  return right + wrong * (penalty + costFrom(walk, { ...place, belief: after }));
}

/** Brings weights to a sum of 1, in place, and gives what it was. */
function normalise(weights: Float64Array): number {
  let total = 0;
  for (const weight of weights) total += weight;
  for (let index = 0; index < weights.length && total > 0; index += 1) {
    weights[index] = (weights[index] as number) / total;
  }
  return total;
}

function endless(id: string): EvidenceError {
  return new EvidenceError(
    'no-way-out',
    `the policy chooses ${id}, which changes nothing any more`,
    {
      id,
    },
  );
}
