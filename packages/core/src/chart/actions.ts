/**
 * The actions of a compiled flow: each gives a new state, and none does anything else.
 */
import { assign } from 'xstate';
import { chooseNext } from '../case/choose.ts';
import { lapsingFields } from '../case/cautions.ts';
import type { CaseEvent } from '../case/event.ts';
import { pendingCautions } from '../case/pending.ts';
import { withAnswer, withCorrection, withoutCheck, withoutLatest } from '../case/record.ts';
import type { CaseState } from '../case/state.ts';
import { verdictOf } from '../case/verdict.ts';
import type { Flow } from '../flow/flow.ts';

type Change = (state: CaseState, event: CaseEvent, params: { check: string }) => CaseState;

/** The actions by name. */
export function actionsOf(flow: Flow): Readonly<Record<string, unknown>> {
  const changes: Record<string, Change> = {
    stamp: (state, event) => ({ ...state, at: event.at }),
    record: (state, event) => (event.type === 'answered' ? withAnswer(flow, state, event) : state),
    correct: (state, event) =>
      event.type === 'corrected' ? withCorrection(flow, state, event) : state,
    goBack: (state) => withoutLatest(flow, state),
    confirm: (state, event) =>
      event.type === 'confirmed'
        ? { ...state, cautioned: [...new Set([...state.cautioned, ...event.cautions])] }
        : state,
    raise: (state, event) =>
      event.type === 'interrupted'
        ? { ...state, cautioned: [], raised: [...new Set([...state.raised, event.interrupt])] }
        : state,
    changeContext: (state, event) =>
      event.type === 'context-changed' ? withContext(flow, state, event.context) : state,
    choose: (state) => ({ ...state, next: chooseNext(flow, state) }),
    decide: (state) => ({ ...state, verdict: verdictOf(flow, state) }),
    startWait: (state, _event, { check }) => withWait(flow, state, check),
    endWait: (state, event) =>
      event.type === 'waited'
        ? { ...state, due: { ...state.due, [event.check]: event.at } }
        : state,
    ask: (state, _event, { check }) => ({
      ...state,
      asked: state.asked.includes(check) ? state.asked : [...state.asked, check],
      cautioned: [...state.cautioned, ...pendingCautions(flow, state, check).map(({ id }) => id)],
    }),
    close: (state) => ({
      ...state,
      outcome: state.next?.to === 'closed' ? state.next.outcome : state.outcome,
    }),
  };
  return Object.fromEntries(
    Object.entries(changes).map(([name, change]) => [
      name,
      assign(({ context, event }: { context: CaseState; event: CaseEvent }, params) =>
        change(context, event, params as { check: string }),
      ),
    ]),
  );
}

/** New facts: what they could not have been asked before is open again. */
function withContext(flow: Flow, state: CaseState, patch: CaseState['context']): CaseState {
  const context = { ...state.context, ...patch };
  const gained = kitIn(context).filter((item) => !kitIn(state.context).includes(item));
  const lapses = lapsingFields.some((field) => context[field] !== state.context[field]);
  const openAgain = state.order.filter((id) => {
    const latest = state.answers[id]?.at(-1);
    const needs = flow.checks[id]?.needs.flat() ?? [];
    return latest?.status === 'cannot' && gained.some((item) => needs.includes(item));
  });
  const isProved = state.verdict?.strength === 'proved';
  return openAgain.reduce((before, id) => withoutCheck(flow, before, id), {
    ...state,
    context,
    cautioned: lapses ? [] : state.cautioned,
    verdict: isProved ? state.verdict : null,
  });
}

function kitIn(context: CaseState['context']): readonly string[] {
  const { kit } = context;
  return Array.isArray(kit) ? (kit as readonly string[]) : [];
}

function withWait(flow: Flow, state: CaseState, check: string): CaseState {
  const minutes = flow.checks[check]?.waitMinutes;
  if (minutes === undefined || state.due[check] !== undefined) return state;
  const due = new Date(Date.parse(state.at) + minutes * 60_000).toISOString();
  return { ...state, due: { ...state.due, [check]: due } };
}
