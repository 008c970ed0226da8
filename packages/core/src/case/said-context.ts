/**
 * The context of a case: what was given with it, and what answers say of it since.
 */
import type { Check, Flow } from '../flow/flow.ts';
import type { Context, ContextValue } from './context.ts';
import { measuredValue } from './limit-context.ts';
import { isReading, isSaid, type CaseState } from './state.ts';

/** True for a check whose answer fills fields of the context. */
export function fillsContext(check: Check | undefined): boolean {
  return check !== undefined && (check.writes !== undefined || Object.keys(check.sets).length > 0);
}

/** What was given, and over it what was answered. */
export function contextOf(flow: Flow, state: CaseState): Context {
  return state.order.reduce<Context>(
    (context, id) => ({ ...context, ...contextSaid(flow, state, id) }),
    state.given,
  );
}

/** The answered checks that say something of any of the given fields. */
export function saysOf(flow: Flow, state: CaseState, fields: readonly string[]): readonly string[] {
  return state.order.filter((id) =>
    Object.keys(contextSaid(flow, state, id)).some((field) => fields.includes(field)),
  );
}

/** A figure, or a list of choices; a band by its name is no figure, and `none` is an empty list. */
function valueSaid(flow: Flow, state: CaseState, id: string): ContextValue | undefined {
  const answer = state.answers[id]?.at(-1);
  if (flow.checks[id]?.form.kind === 'reading') {
    return isReading(answer) ? measuredValue(flow, state, id) : undefined;
  }
  return isSaid(answer) && !isReading(answer) ? answer.filter((one) => one !== 'none') : undefined;
}

/** What the latest answer of a check says of the context. */
function contextSaid(flow: Flow, state: CaseState, id: string): Context {
  const check = flow.checks[id];
  const answer = state.answers[id]?.at(-1);
  if (check === undefined || !fillsContext(check) || !isSaid(answer)) return {};
  if (check.writes !== undefined) {
    const value = valueSaid(flow, state, id);
    return value === undefined ? {} : { [check.writes]: value };
  }
  if (isReading(answer)) return {};
  return Object.assign({}, ...answer.map((choice) => check.sets[choice])) as Record<
    string,
    ContextValue
  >;
}
