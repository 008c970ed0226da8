/**
 * Answers put into the state, and taken out again: an answer, a step back, a correction.
 */
import type { Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { saidWithQuestion } from './cautions.ts';
import type { Context } from './context.ts';
import { withMentioned } from './in-passing.ts';
import { planOf } from './plan.ts';
import { bearsOn, coversAll } from './possible.ts';
import { contextOf, fillsContext, saysOf } from './said-context.ts';
import { isReading, isSaid, type Answer, type CaseState } from './state.ts';

/** The state with one more answer. */
export function withAnswer(
  flow: Flow,
  before: CaseState,
  given: { readonly check: string; readonly answer: Answer; readonly isPart?: true },
): CaseState {
  const { check, answer } = given;
  const state = withCorrectionKept(before);
  if (given.isPart && isSaid(answer) && !isReading(answer)) {
    return withMentioned(state, { check, told: answer });
  }
  const counting = withoutVoid(flow, state, given);
  if (counting !== state) return withAnswer(flow, counting, given);
  // V8 keeps garbage for long after a spread that gains a key; not so after an assignment.
  const answers = Object.assign({}, state.answers, {
    [check]: [...(state.answers[check] ?? []), answer],
  });
  const next: CaseState = {
    ...undecided(flow, state, answer),
    answers,
    order: [...state.order.filter((id) => id !== check), check],
    wanted: state.wanted === check ? null : state.wanted,
    doubted: isAskedAnew(state, check) ? [...state.doubted, check] : state.doubted,
    cautioned: flow.checks[check]?.lapses === true ? [] : saidWith(flow, state, check),
  };
  const told = unsettled(flow, next, check);
  return fillsContext(flow.checks[check]) ? refilled(flow, told) : told;
}

/** What a decision voids goes with the first answer that it asks for once more. */
function withoutVoid(
  flow: Flow,
  state: CaseState,
  { check, answer }: { readonly check: string; readonly answer: Answer },
): CaseState {
  const { decision } = state;
  if (decision === null || !decision.again.includes(check) || !isSaid(answer)) return state;
  const { voids = [] } = decision;
  return voids.reduce((before, id) => withoutCheck(flow, before, id), state);
}

/** A decision gives way to what is found after it; that nothing is known leaves it as it is. */
function undecided(flow: Flow, state: CaseState, answer: Answer): CaseState {
  return flow.decisions.length > 0 && isSaid(answer)
    ? { ...state, decision: null, outcome: null }
    : state;
}

/** True for a check in hand that was answered before. */
function isAskedAnew(state: CaseState, check: string): boolean {
  const isInHand = state.next?.to === 'check' && state.next.check === check;
  return isInHand && state.answers[check] !== undefined;
}

/** A verdict gives way to what is found after it, until it is acted on. */
function unsettled(flow: Flow, state: CaseState, check: string): CaseState {
  const { diagnosing } = planOf(flow);
  if (state.verdict === null || isActedOn(flow, state) || hasStarted(flow, state)) return state;
  return diagnosing.some((planned) => planned.check.id === check)
    ? { ...state, verdict: null, outcome: null }
    : state;
}

/** The state with its context worked out anew; where person or place changed, cautions lapse. */
function refilled(flow: Flow, state: CaseState): CaseState {
  const context = contextOf(flow, state);
  const lapses = lapsingFields.some((field) => context[field] !== state.context[field]);
  return { ...state, context, cautioned: lapses ? [] : state.cautioned };
}

/** Fields of the context after whose change every confirmation lapses. */
const lapsingFields: readonly string[] = ['place', 'role'];

/** New facts take the place of what was said of them; what could not be asked is open again. */
export function withContext(flow: Flow, before: CaseState, patch: Context): CaseState {
  const state = withCorrectionKept(before);
  const overruled = saysOf(flow, state, Object.keys(patch));
  const cleared = overruled.reduce((one, id) => withoutCheck(flow, one, id), state);
  const next = refilled(flow, { ...cleared, given: { ...cleared.given, ...patch } });
  const gained = kitIn(next).filter((item) => !kitIn(state).includes(item));
  const openAgain = state.order.filter((id) => {
    const needs = flow.checks[id]?.needs.flat() ?? [];
    return state.answers[id]?.at(-1) === 'cannot' && gained.some((item) => needs.includes(item));
  });
  const opened = openAgain.reduce((one, id) => withoutCheck(flow, one, id), next);
  const verdict = isSettled(flow, state) ? opened.verdict : null;
  return { ...opened, outcome: null, verdict, decision: null };
}

/** The state after the latest interrupt, whose checks are asked again. */
export function withInterruptOver(flow: Flow, state: CaseState): CaseState {
  const reopens = flow.interrupts[state.raised.at(-1) ?? '']?.reopens ?? [];
  return reopens.reduce((before, id) => withoutCheck(flow, before, id), state);
}

/** A proved verdict stands, and so does one that was acted on. */
function isSettled(flow: Flow, state: CaseState): boolean {
  return isActedOn(flow, state) || state.verdict?.strength === 'proved' || hasStarted(flow, state);
}

function isActedOn(flow: Flow, state: CaseState): boolean {
  return planOf(flow).afterwards.some(({ check }) => state.answers[check.id]);
}

/** True where the vehicle is known to run meanwhile. */
function hasStarted(flow: Flow, state: CaseState): boolean {
  return state.raised.some((id) => flow.interrupts[id]?.then === 'prove');
}

function kitIn({ context }: CaseState): readonly string[] {
  const { kit } = context;
  return Array.isArray(kit) ? (kit as readonly string[]) : [];
}

/** The cautions said by now: those of the question that is being answered were said with it. */
function saidWith(flow: Flow, state: CaseState, check: string): readonly string[] {
  // What was volunteered was not asked, and nothing was said with it.
  if (state.next?.to !== 'check' || state.next.check !== check) return state.cautioned;
  const said = saidWithQuestion(flow, state, check);
  return said.length === 0 ? state.cautioned : [...state.cautioned, ...said.map(({ id }) => id)];
}

/** The state before the latest correction or, where it was followed by more, the latest answer. */
export function withoutLatest(flow: Flow, state: CaseState): CaseState {
  return state.corrected
    ? { ...state.corrected, at: state.at, corrected: null }
    : withoutLatestAnswer(flow, state);
}

/** The state before the latest answer, whose check is wanted again. */
function withoutLatestAnswer(flow: Flow, state: CaseState): CaseState {
  const check = state.order.at(-1);
  if (check === undefined) return state;
  const left = (state.answers[check] ?? []).slice(0, -1);
  const cleared = withoutCheck(flow, state, check);
  const restored =
    left.length === 0
      ? cleared
      : left.reduce((before, answer) => withAnswer(flow, before, { check, answer }), cleared);
  // A wait that is over is not waited again.
  return { ...reopened(flow, restored, check), wanted: check, due: state.due };
}

/** The state with an earlier answer replaced; answers that no longer hold are set aside. */
export function withCorrection(
  flow: Flow,
  state: CaseState,
  given: { readonly check: string; readonly answer: Answer },
): CaseState {
  const replaced: CaseState = {
    ...withAnswer(flow, withoutCheck(flow, state, given.check), given),
    doubted: isAskedAnew(state, given.check) ? [...state.doubted, given.check] : state.doubted,
  };
  // The corrected answer keeps its place among the others.
  const place = state.order.indexOf(given.check);
  const order = [...replaced.order.slice(0, -1)];
  order.splice(place < 0 ? order.length : place, 0, given.check);
  const corrected = setAside(
    flow,
    reopened(flow, { ...replaced, order, cautioned: ofEverything(flow, replaced) }, given.check),
    given.check,
  );
  const { corrected: _, ...before } = state;
  return { ...corrected, corrected: before };
}

/** The state with its latest correction no longer to be undone. */
export function withCorrectionKept(state: CaseState): CaseState {
  return state.corrected ? { ...state, corrected: null } : state;
}

/**
 * The cautions that still stand after a correction: what holds wherever one goes on, such as traffic
 * close by, was read; that the lever is in neutral may no longer be so.
 */
function ofEverything(flow: Flow, { cautioned }: CaseState): readonly string[] {
  return cautioned.filter((id) => flow.cautions[id]?.before.some(coversAll));
}

/** Takes out, one after another, answers to checks that no longer bear on the case. */
function setAside(flow: Flow, state: CaseState, kept: string): CaseState {
  const gone = state.order.find((id) => id !== kept && !stillBears(flow, state, id));
  return gone === undefined ? state : setAside(flow, withoutCheck(flow, state, gone), kept);
}

/** True where a check would still be asked if it had not been answered. */
function stillBears(flow: Flow, state: CaseState, id: string): boolean {
  const check = flow.checks[id];
  const without = withoutCheck(flow, state, id);
  return check !== undefined && bearsOn(check, assess(flow, without).findings.known);
}

/** A verdict falls with an answer that it rested on, and the work done on it with the verdict. */
function reopened(flow: Flow, state: CaseState, check: string): CaseState {
  if (flow.decisions.length > 0) return { ...state, decision: null, outcome: null };
  if (state.verdict === null) return state;
  const after = flow.stages.findIndex(({ id }) => id === flow.verdictAfter) + 1;
  const later = flow.stages.slice(after).flatMap(({ checks }) => checks);
  if (later.includes(check)) return { ...state, outcome: null };
  return later.reduce<CaseState>((before, id) => withoutCheck(flow, before, id), {
    ...state,
    verdict: null,
    outcome: null,
  });
}

/** The state as if a check had never been answered. */
function withoutCheck(flow: Flow, state: CaseState, check: string): CaseState {
  if (state.answers[check] === undefined) return state;
  const next = {
    ...state,
    answers: omit(state.answers, [check]),
    order: state.order.filter((id) => id !== check),
    due: omit(state.due, [check]),
  };
  return fillsContext(flow.checks[check]) ? refilled(flow, next) : next;
}

function omit<Value>(
  record: Readonly<Record<string, Value>>,
  keys: readonly string[],
): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => !keys.includes(key)));
}
