import { actVerdict } from './act-cost.ts';
import type { DiagnosisProblem } from './diagnosis-problem.ts';
import { requireInRange } from '../require-numbers.ts';
import { positionOf } from './diagnosis-state.ts';
import type { DiagnosisState } from './diagnosis-state.ts';
import { findStep } from './find-step.ts';
import type { Proof } from './found.ts';
import { frameOf } from './frame.ts';
import { createSearch, levelAt } from './search.ts';

/** What to do next, and what the case is then expected to cost from here. */
export interface Plan {
  /** `check`: do this check next. `verdict`: act on this verdict now. */
  readonly type: 'check' | 'verdict';
  /** Id of the check or verdict. */
  readonly id: string;
  /** Its position in the problem's checks or verdicts. */
  readonly index: number;
  /** Expected cost from here to the end, in the unit of the problem's costs; see `proof`. */
  readonly value: number;
  /** Expected cost of acting at once: the best verdict, or where cases go on, the best order. */
  readonly act: number;
  readonly proof: Proof;
}

/**
 * Chooses what makes the case cheapest to its end: a check, or acting now.
 *
 * Small cases are solved exactly, larger ones searched within a fixed amount of work. Of plans
 * that cost the same to 1e-9, acting goes before checking, then the safer, then the first written.
 * The same input gives the same choice; no side effects.
 *
 * @param effort - the share of the usual work that searching may take, above 0 to 1: less where the
 *   likelihoods are hardly as exact as the search
 * @throws EvidenceError as `positionOf` does, for a state that does not fit the problem
 * @example
 * const plan = planNext(problem, { done: [{ check: 'lamps', outcome: 'dim' }] });
 * plan.type === 'check' ? `ask ${plan.id}` : `act on ${plan.id}`;
 */
export function planNext(problem: DiagnosisProblem, state: DiagnosisState = {}, effort = 1): Plan {
  requireInRange(effort, { what: 'an effort', least: Number.MIN_VALUE, greatest: 1 });
  const position = positionOf(problem, state);
  const frame = frameOf(problem, position);
  const { act: acting, total } = levelAt(createSearch(frame), 0);
  const found = findStep(problem, position, { frame, effort });
  const act = acting / total;
  const value = found.value / total;
  const { proof } = found;
  if (found.type === 'check') {
    const { index } = found;
    return { type: 'check', id: problem.checks[index] ?? '', index, value, act, proof };
  }
  const index = found.type === 'verdict' ? found.index : actVerdict(frame, frame.weights, total);
  return { type: 'verdict', id: problem.verdicts[index] ?? '', index, value, act, proof };
}
