/**
 * Answers that are asked once more because they do not fit the others.
 */
import type { Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { isSaid, type CaseState } from './state.ts';

/** True for an answered check that is to be asked once more, since its answer fits least. */
export function isDoubted(flow: Flow, state: CaseState, check: string): boolean {
  return (
    flow.byWorth.length > 0 &&
    state.verdict === null &&
    !state.doubted.includes(check) &&
    state.answers[check]?.some(isSaid) === true &&
    assess(flow, state).suspect === check
  );
}
