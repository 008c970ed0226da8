/**
 * What stands between a person and a check: cautions to be said, and time to be waited.
 */
import type { Caution, Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { cautionsFor } from './cautions.ts';
import { wayToAsk } from './possible.ts';
import type { CaseState } from './state.ts';

/** True where a check may only be answered from memory as things stand. */
export function isRemembered(flow: Flow, state: CaseState, check: string): boolean {
  const asked = flow.checks[check];
  return asked !== undefined && wayToAsk(asked, assess(flow, state).stops) === 'remember';
}

/** The cautions of a check that have not been said yet, or have lapsed; gravest first. */
export function pendingCautions(flow: Flow, state: CaseState, check: string): readonly Caution[] {
  const asked = flow.checks[check];
  if (asked === undefined) return [];
  return cautionsFor(flow, asked, {
    known: assess(flow, state).findings.known,
    remembered: isRemembered(flow, state, check),
  }).filter(({ id }) => !state.cautioned.includes(id));
}

/** True when the wait before a check is over, or there is none. */
export function isDue(flow: Flow, state: CaseState, check: string): boolean {
  if (flow.checks[check]?.waitMinutes === undefined) return true;
  const due = state.due[check];
  return due !== undefined && Date.parse(due) <= Date.parse(state.at);
}
