import { EvidenceError } from '../evidence-error.ts';
import { defineModel } from '../evidence-model.ts';
import { posterior } from '../posterior.ts';
import { requireInRange, requireLength } from '../require-numbers.ts';
import type { DiagnosisProblem } from './diagnosis-problem.ts';

/** A check that is done. */
export interface DoneCheck {
  readonly check: string;
  /** What came of it; absent where it said nothing ("don't know"): it is not asked again. */
  readonly outcome?: string;
}

/** Where a case stands. */
export interface DiagnosisState {
  /**
   * Present belief, one weight for each fault in the order of the problem, 0 or more, any scale.
   * The findings of `done` are taken to be in it already. When absent: the priors and `done`.
   */
  readonly belief?: ArrayLike<number>;
  /** Checks done so far; their setups count as paid. */
  readonly done?: readonly DoneCheck[];
  /** Setups paid besides. */
  readonly setupsPaid?: readonly string[];
  /** Faults that are excluded, such as by a verdict that failed. */
  readonly ruledOut?: readonly string[];
}

/** A check that has not been done. */
export const NOT_DONE = -1;

/** A check that was done and said nothing. */
const NO_OUTCOME = -2;

/** A state by positions. */
export interface Position {
  /** Belief in the order of the faults, sum 1; ruled-out faults are 0. */
  readonly belief: Float64Array;
  /** For each check the position of its outcome, or `NOT_DONE`, or below that where it said nothing. */
  readonly outcomes: Int32Array;
  /** A bit for each setup that is paid. */
  readonly paid: number;
}

/**
 * Reads a state against its problem.
 *
 * @throws EvidenceError `unknown-id`, `duplicate-id` for a check done twice; `length-mismatch`,
 *   `out-of-range` for the belief; `impossible-finding` when no fault is left
 */
export function positionOf(problem: DiagnosisProblem, state: DiagnosisState): Position {
  const outcomes = new Int32Array(problem.checks.length).fill(NOT_DONE);
  let paid = 0;
  for (const { check, outcome } of state.done ?? []) {
    const index = indexIn(problem.checks, check, 'check');
    if (outcomes[index] !== NOT_DONE) {
      throw new EvidenceError('duplicate-id', `check "${check}" is done twice`, {
        what: 'check',
        id: check,
      });
    }
    outcomes[index] =
      outcome === undefined
        ? NO_OUTCOME
        : indexIn(problem.outcomes[index] ?? [], outcome, `outcome of ${check}`);
    paid |= problem.checkSetups[index] as number;
  }
  for (const setup of state.setupsPaid ?? []) {
    paid |= 1 << indexIn(problem.setups, setup, 'setup');
  }
  const belief =
    state.belief === undefined
      ? beliefFrom(problem, outcomes)
      : checkedBelief(problem, state.belief);
  for (const fault of state.ruledOut ?? []) belief[indexIn(problem.faults, fault, 'fault')] = 0;
  let total = 0;
  for (const weight of belief) total += weight;
  if (!(total > 0 && Number.isFinite(total))) {
    throw new EvidenceError('impossible-finding', 'no fault is left: something was misread', {
      findings: (state.done ?? []).map(({ check }) => check),
    });
  }
  for (let fault = 0; fault < belief.length; fault += 1) {
    belief[fault] = (belief[fault] as number) / total;
  }
  return { belief, outcomes, paid };
}

function indexIn(names: readonly string[], id: string, what: string): number {
  const index = names.indexOf(id);
  if (index >= 0) return index;
  throw new EvidenceError(
    'unknown-id',
    `the state names the ${what} "${id}", which does not exist`,
    {
      what,
      id,
      where: 'state',
    },
  );
}

function checkedBelief(problem: DiagnosisProblem, given: ArrayLike<number>): Float64Array {
  requireLength(given, problem.faults.length, { what: 'the belief' });
  return Float64Array.from(given, (weight, fault) => {
    requireInRange(weight, {
      what: 'a belief',
      least: 0,
      greatest: Number.MAX_VALUE,
      facts: { fault: problem.faults[fault] ?? '' },
    });
    return weight;
  });
}

function beliefFrom(problem: DiagnosisProblem, outcomes: Int32Array): Float64Array {
  const width = problem.faults.length;
  const findings = problem.checks.flatMap((id, check) => {
    const outcome = outcomes[check] as number;
    if (outcome < 0) return [];
    const flat = problem.likelihoods[check] as Float64Array;
    return [{ id, likelihoods: [...flat.subarray(outcome * width, (outcome + 1) * width)] }];
  });
  return posterior(defineModel(problem.faults, [...problem.priors]), findings);
}
