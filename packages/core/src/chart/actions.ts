/**
 * The actions of a compiled flow: each gives a new state, and none does anything else.
 */
import { assign, raise } from 'xstate';
import { decisionOf } from '../case/decision.ts';
import type { CaseEvent } from '../case/event.ts';
import { reckon } from '../case/reckon.ts';
import {
  withAnswer,
  withContext,
  withCorrection,
  withCorrectionKept,
  withInterruptOver,
  withoutLatest,
} from '../case/record.ts';
import type { CaseState } from '../case/state.ts';
import { verdictOf, withPresentRemedy } from '../case/verdict.ts';
import { withWait } from '../case/wait.ts';
import type { Flow } from '../flow/flow.ts';
import { askEvent } from './stage-state.ts';

type Change = (state: CaseState, event: CaseEvent, params: { check: string }) => CaseState;

/** The actions by name. */
export function actionsOf(flow: Flow): Readonly<Record<string, unknown>> {
  const changes: Record<string, Change> = {
    passTime: (state) => state,
    answer: (state, event) =>
      event.type === 'answered' ? withNext(flow, withAnswer(flow, state, event)) : state,
    correct: (state, event) =>
      event.type === 'corrected' ? withNext(flow, withCorrection(flow, state, event)) : state,
    goBack: (state) => withNext(flow, withoutLatest(flow, state)),
    confirm: (state, event) =>
      event.type === 'confirmed'
        ? { ...state, cautioned: [...new Set([...state.cautioned, ...event.cautions])] }
        : state,
    raise: (state, event) =>
      event.type === 'interrupted'
        ? {
            ...withCorrectionKept(state),
            cautioned: [],
            raised: [...state.raised.filter((id) => id !== event.interrupt), event.interrupt],
          }
        : state,
    withdraw: (state, event) =>
      event.type === 'withdrawn'
        ? withNext(flow, {
            ...withCorrectionKept(state),
            raised: state.raised.filter((id) => id !== event.interrupt),
            outcome: null,
          })
        : state,
    takeBack: (state) => withNext(flow, { ...state, raised: state.raised.slice(0, -1) }),
    changeContext: (state, event) =>
      event.type === 'context-changed'
        ? withNext(flow, withContext(flow, state, event.context))
        : state,
    resume: (state) => withNext(flow, withInterruptOver(flow, state)),
    decide: (state) =>
      withNext(
        flow,
        flow.decisions.length > 0
          ? { ...state, decision: decisionOf(flow, state) }
          : { ...state, verdict: verdictOf(flow, state) },
      ),
    startWait: (state, _event, { check }) => withWait(flow, state, check),
    endWait: (state, event) =>
      event.type === 'waited'
        ? { ...state, due: { ...state.due, [event.check]: event.at } }
        : state,
    close: (state) => ({
      ...state,
      outcome: state.next?.to === 'closed' ? state.next.outcome : state.outcome,
    }),
  };
  return {
    // What comes next was chosen with the change; here the case goes there.
    goOn: raise(({ context }: { context: CaseState }) => ({ type: eventTo(context.next) })),
    ...Object.fromEntries(
      Object.entries(changes).map(([name, change]) => [
        name,
        assign(({ context, event }: { context: CaseState; event: CaseEvent }, params) =>
          // Time comes with the events; entering a state at the very beginning has none of its own.
          change(
            'at' in event && event.at !== context.at ? { ...context, at: event.at } : context,
            event,
            params as { check: string },
          ),
        ),
      ]),
    ),
  };
}

function eventTo(next: CaseState['next']): string {
  return next?.to === 'check' ? askEvent(next.check) : (next?.to ?? 'verdict');
}

/** The state with what comes next, and with who leads; a verdict follows the stops in force. */
export function withNext(flow: Flow, state: CaseState): CaseState {
  const verdict = state.verdict && withPresentRemedy(flow, state, state.verdict);
  const next = { ...state, verdict };
  return { ...next, ...reckon(flow, next) };
}
