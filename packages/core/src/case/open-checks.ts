/**
 * Which checks are still open in a case, and may be asked at this moment.
 */
import type { Check, Flow } from '../flow/flow.ts';
import { assess, type Assessment } from './assessment.ts';
import type { PlannedCheck } from './plan.ts';
import { bearsOn, hasKit, wayToAsk } from './possible.ts';
import { isReading, isSaid, type CaseState, type Said } from './state.ts';

/** The first of the planned checks that is open and may be asked. */
export function firstOpen(
  flow: Flow,
  state: CaseState,
  planned: readonly PlannedCheck[],
): PlannedCheck | undefined {
  const { answers } = state;
  for (const one of planned) {
    // Most checks are asked once, so that those answered are passed over without another look.
    if (answers[one.check.id] !== undefined && one.isOnce) continue;
    if (isAskable(flow, state, one.check)) return one;
  }
  return undefined;
}

/** True for a check that is open and may be asked now. */
export function isAskable(flow: Flow, state: CaseState, check: Check): boolean {
  return isOpen(flow, state, check) && isPossible(flow, state, check);
}

/** True where kit, place, preconditions and hard stops allow a check. */
export function isPossible(flow: Flow, state: CaseState, check: Check): boolean {
  const { stops, findings } = assess(flow, state);
  return (
    wayToAsk(check, stops) !== 'never' &&
    hasKit(flow, check, state) &&
    bearsOn(check, findings.known)
  );
}

/** Not answered yet, or to be asked once more after something was put right. */
function isOpen(flow: Flow, state: CaseState, check: Check): boolean {
  const answers = state.answers[check.id];
  const first = answers?.[0];
  if (answers === undefined || first === undefined) return true;
  if (answers.length > 1 || !isSaid(first)) return false;
  if (check.form.kind === 'choice') return isAgain(check, first);
  return isCoarse(check, assess(flow, state));
}

function isAgain(check: Check, said: Said): boolean {
  return (
    check.again.length > 0 && !isReading(said) && said.some((one) => check.again.includes(one))
  );
}

/**
 * A reading too near a bound is worth a second look only where the figure is coarse, a tenth of a
 * volt say: the same meter repeats its own error.
 */
function isCoarse(check: Check, assessment: Assessment): boolean {
  const placed = assessment.findings.placed.get(check.id);
  if (placed?.bounds === undefined || placed.quantity.unit !== 'V') return false;
  const { value, resolution = 0 } = placed.quantity;
  return (
    resolution >= 0.1 &&
    placed.bounds.some(({ low, high }) => value > low - resolution && value < high + resolution)
  );
}
