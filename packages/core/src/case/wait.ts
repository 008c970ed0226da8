/**
 * Waits: their due time is part of the case, since a timer does not outlive a restart.
 */
import type { Flow } from '../flow/flow.ts';
import type { CaseState } from './state.ts';

/** True when the wait before a check has begun and is over. */
export function isWaitOver(state: CaseState, check: string): boolean {
  const due = state.due[check];
  return due !== undefined && Date.parse(due) <= Date.parse(state.at);
}

/** The state with the wait before a check begun, unless it has been already. */
export function withWait(flow: Flow, state: CaseState, check: string): CaseState {
  const minutes = flow.checks[check]?.waitMinutes;
  if (minutes === undefined || state.due[check] !== undefined) return state;
  const due = new Date(Date.parse(state.at) + minutes * 60_000).toISOString();
  return { ...state, due: { ...state.due, [check]: due } };
}
