/**
 * Which checks are still open in a case, and may be asked at this moment.
 */
import type { Check, Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import type { Findings } from './findings.ts';
import type { PlannedCheck } from './plan.ts';
import { bearsOn, hasKit, wayToAsk } from './possible.ts';
import { isReading, isSaid, type CaseState, type Said } from './state.ts';
import { certain } from '../flow/condition.ts';

/** The planned checks that are open and may be asked, in the written order. */
export function openChecks(
  flow: Flow,
  state: CaseState,
  planned: readonly PlannedCheck[],
): readonly PlannedCheck[] {
  return planned.filter(({ check }) => isAskable(flow, state, check));
}

/** The first of the planned checks that is open and may be asked. */
export function firstOpen(
  flow: Flow,
  state: CaseState,
  planned: readonly PlannedCheck[],
): PlannedCheck | undefined {
  // A set, since it is asked for every check of the flow.
  const answered = new Set(Object.keys(state.answers));
  return planned.find(
    ({ check }) =>
      (!answered.has(check.id) || isAskedAgain(state, check, assess(flow, state).findings)) &&
      isPossible(flow, state, check),
  );
}

/** True for a check that is open and may be asked now. */
export function isAskable(flow: Flow, state: CaseState, check: Check): boolean {
  const isOpen =
    state.answers[check.id] === undefined ||
    isAskedAgain(state, check, assess(flow, state).findings);
  return isOpen && isPossible(flow, state, check);
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

/** Answered once, and to be asked once more after something was put right. */
export function isAskedAgain(state: CaseState, check: Check, findings: Findings): boolean {
  const [first, second] = state.answers[check.id] ?? [];
  if (second !== undefined || !isSaid(first)) return false;
  if (check.form.kind === 'choice') return isAgain(check, first);
  return isToPutRight(check, findings) || isCoarse(check, findings);
}

/** True for a reading that was taken once and is to be read again. */
export function isToReadAgain(flow: Flow, state: CaseState, check: Check): boolean {
  return check.form.kind === 'reading' && isAskedAgain(state, check, assess(flow, state).findings);
}

function isAgain(check: Check, said: Said): boolean {
  return (
    check.again.length > 0 && !isReading(said) && said.some((one) => check.again.includes(one))
  );
}

/** A reading that is, or may be, in a band after which something is put right and it is read again. */
function isToPutRight(check: Check, { known }: Findings): boolean {
  const { weights = {} } = known.finding(check.id) ?? {};
  let share = 0;
  for (const band of check.again) share += weights[band] ?? 0;
  return share > 1 - certain;
}

/**
 * A reading too near a bound is worth a second look only where the figure is coarse, a tenth of a
 * volt say: the same meter repeats its own error. Nobody waits for hours a second time for it.
 */
function isCoarse(check: Check, findings: Findings): boolean {
  const placed = findings.placed.get(check.id);
  if (placed?.bounds === undefined || placed.quantity.unit !== 'V') return false;
  if (check.waitMinutes !== undefined) return false;
  const { value, resolution = 0 } = placed.quantity;
  return (
    resolution >= 0.1 &&
    placed.bounds.some(({ low, high }) => value > low - resolution && value < high + resolution)
  );
}
