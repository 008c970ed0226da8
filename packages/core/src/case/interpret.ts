/**
 * An input turned into events, or refused with what was wrong and what is possible. Nothing of a
 * refused input is taken.
 */
import { isUnit, type Quantity } from '@keyturn/electrics';
import type { Chart } from '../chart/compile.ts';
import type { Check, Flow } from '../flow/flow.ts';
import { optionsOf } from '../flow/options-of.ts';
import type { Case } from './case.ts';
import { readContext } from './context.ts';
import { isDoubted } from './doubt.ts';
import type { LaterEvent } from './event.ts';
import type { AnswerInput, Input } from './input.ts';
import { addedTo, isPart } from './in-passing.ts';
import { judgeFigure } from './judge-figure.ts';
import type { RefusedMessage } from './message.ts';
import { nominalOf } from './limit-context.ts';
import { meterFor } from './meter.ts';
import { limitFaults } from './part-limits.ts';
import { daysLater, isDay, looksLikeDay, looksLikeMonth, monthsLater } from '../policy/calendar.ts';
import { shopDay } from '../policy/term.ts';
import { dateBand } from './findings.ts';
import { pendingCautions } from './cautions.ts';
import { planOf } from './plan.ts';
import { positionOf, type Position } from './position.ts';
import { wrongLoad } from './wrong-load.ts';
import { isReading, isSaid, latestAnswer, type Answer, type CaseState } from './state.ts';

/** The events of an input, or why it is refused. */
export type Interpretation =
  | { readonly type: 'events'; readonly events: readonly LaterEvent[] }
  | { readonly type: 'refused'; readonly refusal: RefusedMessage };

/** Interprets an input in a case. No side effects. */
export function interpret(
  chart: Chart,
  kase: Case,
  given: { readonly at: string; readonly input: Input },
): Interpretation {
  const { at, input } = given;
  const { flow } = chart;
  const position = positionOf(kase);
  if (Date.parse(at) < Date.parse(kase.state.at)) return refuse('clock-back', at);
  if (position.awaiting === 'nothing' && !reopens(flow, input)) {
    return refuse('closed', input.type);
  }
  if (position.awaiting === 'resume' && !isTakenWhileInterrupted(input)) {
    // That it runs may have been misheard, or it has stopped again; a danger is over when it is over.
    return isBack(input) && flow.interrupts[position.interrupt]?.then === 'prove'
      ? events({ type: 'went-back', at })
      : refuse('resume-first', input.type);
  }
  switch (input.type) {
    case 'answers':
    case 'correction':
      return answerEvents(flow, kase.state, { at, input });
    case 'unanswered':
      return unansweredEvents(flow, kase.state, { ...input, at });
    case 'talk':
      return talkEvents(kase.state, position, { at, talk: input.talk });
    case 'confirm': {
      if (position.awaiting !== 'confirm') return refuse('nothing-to-confirm', 'confirm');
      const cautions = pendingCautions(flow, kase.state, position.check).map(({ id }) => id);
      return events({ type: 'confirmed', at, cautions });
    }
    case 'interrupt':
      return flow.interrupts[input.interrupt] === undefined
        ? refuse('unknown-interrupt', input.interrupt, { possible: Object.keys(flow.interrupts) })
        : events({ type: 'interrupted', at, interrupt: input.interrupt });
    case 'resume':
      return position.awaiting === 'resume'
        ? events({ type: 'resumed', at })
        : refuse('nothing-to-resume', 'resume');
    case 'withdraw':
      return flow.interrupts[input.interrupt]?.then === 'return' &&
        kase.state.raised.includes(input.interrupt)
        ? events({ type: 'withdrawn', at, interrupt: input.interrupt })
        : refuse('nothing-to-resume', 'withdraw');
    case 'context': {
      const read = readContext(input.set);
      const faults = read.type === 'faults' ? read.faults : limitFaults(flow, read.context);
      if (read.type === 'context' && faults.length === 0)
        return events({ type: 'context-changed', at, context: read.context });
      const [fault] = faults;
      return refuse('unknown-context', `${fault?.path ?? ''} ${shown(fault?.given)}`, {
        possible: fault?.possible ?? [],
      });
    }
    case 'tick':
      return events({ type: 'time-passed', at });
    case 'waited':
      return position.awaiting === 'wait'
        ? events({ type: 'waited', at, check: position.check })
        : refuse('nothing-to-resume', 'waited');
  }
}

/** What is taken of a closed case: a wrong answer put right, new facts, and what a table weighs anew. */
function reopens(flow: Flow, input: Input): boolean {
  return (
    (input.type === 'answers' && flow.decisions.length > 0) ||
    input.type === 'correction' ||
    input.type === 'unanswered' ||
    input.type === 'context' ||
    input.type === 'interrupt' ||
    input.type === 'withdraw' ||
    isBack(input)
  );
}

function isBack(input: Input): boolean {
  return input.type === 'talk' && input.talk === 'back';
}

function isTakenWhileInterrupted(input: Input): boolean {
  return (
    ['resume', 'withdraw', 'interrupt', 'context', 'tick'].includes(input.type) ||
    changesNothing(input)
  );
}

/** Talk that changes nothing. */
function changesNothing(input: Input): boolean {
  return (
    input.type === 'talk' && ['why', 'numbers', 'repeat', 'person', 'stop'].includes(input.talk)
  );
}

function talkEvents(
  state: CaseState,
  position: Position,
  given: { readonly at: string; readonly talk: string },
): Interpretation {
  const { at, talk } = given;
  if (talk === 'back') {
    return state.order.length === 0
      ? refuse('nothing-before', 'back')
      : events({ type: 'went-back', at });
  }
  if (talk !== 'dont-know' && talk !== 'cannot') return { type: 'events', events: [] };
  if (!('check' in position)) return refuse('closed', talk);
  return events({ type: 'answered', at, check: position.check, answer: answerOf(talk) });
}

function answerOf(talk: 'dont-know' | 'cannot'): 'unknown' | 'cannot' {
  return talk === 'dont-know' ? 'unknown' : 'cannot';
}

function unansweredEvents(
  flow: Flow,
  state: CaseState,
  given: { readonly at: string; readonly check: string; readonly talk: 'dont-know' | 'cannot' },
): Interpretation {
  const { at, check, talk } = given;
  if (flow.checks[check] === undefined) {
    return refuse('unknown-check', check, { possible: Object.keys(flow.checks) });
  }
  if (state.verdict === null && isAfterVerdict(flow, check)) {
    return refuse('too-early', check, { check });
  }
  const type = latestAnswer(state, check) === undefined ? 'answered' : 'corrected';
  return events({ type, at, check, answer: answerOf(talk) });
}

function answerEvents(
  flow: Flow,
  state: CaseState,
  given: { readonly at: string; readonly input: Extract<Input, { answers: unknown }> },
): Interpretation {
  const { at, input } = given;
  const taken: LaterEvent[] = [];
  // What is found anew may take a verdict away, and a proof beside it would prove nothing.
  const isProofOnly = input.answers.every(({ check }) => isAfterVerdict(flow, check));
  for (const one of input.answers) {
    if ((state.verdict === null || !isProofOnly) && isAfterVerdict(flow, one.check)) {
      return refuse('too-early', one.check, { check: one.check });
    }
    const answer = readAnswer(flow, state, { given: one, beside: input.answers });
    if ('refusal' in answer) return { type: 'refused', refusal: answer.refusal };
    if (input.type === 'correction') {
      if (latestAnswer(state, one.check) === undefined) {
        return refuse('not-answered-yet', one.check, { check: one.check, possible: state.order });
      }
      taken.push({ type: 'corrected', at, check: one.check, answer: answer.answer });
    } else {
      taken.push({
        type:
          isSaidAlready(state, one.check) || isDoubted(flow, state, one.check)
            ? 'corrected'
            : 'answered',
        at,
        check: one.check,
        ...inPassing(flow, state, { check: one.check, answer: answer.answer }),
      });
    }
  }
  return { type: 'events', events: taken };
}

/** An answer as it is taken where a list may be told of in passing. */
function inPassing(
  flow: Flow,
  state: CaseState,
  { check: id, answer }: { readonly check: string; readonly answer: Answer },
): { readonly answer: Answer; readonly isPart?: true } {
  const check = flow.checks[id];
  if (check === undefined || !isSaid(answer) || isReading(answer)) return { answer };
  return isPart(state, check, answer)
    ? { answer, isPart: true }
    : { answer: addedTo(state, check, answer) };
}

/** A choice that was made before, and is not asked once more, is being corrected. */
function isSaidAlready(state: CaseState, check: string): boolean {
  const isAsked = state.next?.to === 'check' && state.next.check === check;
  const latest = latestAnswer(state, check);
  return !isAsked && isSaid(latest) && !isReading(latest);
}

/** A repair cannot be proved before there is a verdict. */
/** Whether a check is asked only once there is a verdict, to prove that the vehicle starts. */
export function isAfterVerdict(flow: Flow, check: string): boolean {
  return planOf(flow).afterwards.some((planned) => planned.check.id === check);
}

type AnswerResult = { readonly answer: Answer } | { readonly refusal: RefusedMessage };

function readAnswer(
  flow: Flow,
  state: CaseState,
  { given, beside }: { readonly given: AnswerInput; readonly beside: readonly AnswerInput[] },
): AnswerResult {
  const check = flow.checks[given.check];
  if (check === undefined) {
    return refusal('unknown-check', given.check, { possible: Object.keys(flow.checks) });
  }
  if ('unit' in given.value) {
    const load = wrongLoad(flow, state, { reading: given, beside });
    return load === undefined
      ? readReading(check, state, given.value)
      : refusal('wrong-load', `${String(load.told)} A`, { check: check.id, load });
  }
  const [day = ''] = given.value;
  if (check.form.kind === 'date' && looksLikeDay(day)) return readDay(check, state, day);
  if (check.form.kind === 'date' && looksLikeMonth(day))
    return readMonth(check, state, { month: day, part: flow.part });
  return readChoices(check, given.value);
}

/** A sale further back is a slip of the hand: no shop's terms reach as far. */
const mostMonths = 720;

/** A day of the calendar up to that of the case, where the shop's terms say what it means. */
function readDay(check: Check, state: CaseState, day: string): AnswerResult {
  const facts = { check: check.id, possible: optionsOf(check) };
  const { policy, opened } = state;
  if (!isDay(day)) return refusal('no-such-day', day, facts);
  const today = shopDay(policy, opened);
  if (day > today) return refusal('day-to-come', day, facts);
  if (day < monthsLater(today, -mostMonths)) return refusal('day-long-ago', day, facts);
  return policy === null ? refusal('no-terms', day, facts) : { answer: [day] };
}

/** A month of the calendar that lies in one term of the shop, whichever of its days it was: that term. */
function readMonth(
  check: Check,
  state: CaseState,
  { month, part }: { readonly month: string; readonly part: Flow['part'] },
): AnswerResult {
  const first = `${month}-01`;
  const read = readDay(check, state, first);
  if ('refusal' in read) return { refusal: { ...read.refusal, given: month } };
  const bands = check.form.kind === 'date' ? check.form.bands : [];
  const today = shopDay(state.policy, state.opened);
  const last = daysLater(monthsLater(first, 1), -1);
  const [term, other] = [first, last < today ? last : today].map((day) =>
    dateBand(bands, { part, state, day }),
  );
  return term === undefined || term !== other
    ? refusal('no-such-day', month, { check: check.id, possible: optionsOf(check) })
    : { answer: [term] };
}

function readChoices(check: Check, given: readonly string[]): AnswerResult {
  const options = namesOf(check);
  const unknown = given.find((choice) => !options.includes(choice));
  if (unknown !== undefined) {
    const code = check.form.kind === 'reading' ? 'not-a-number' : 'unknown-choice';
    return refusal(code, unknown, { check: check.id, possible: options });
  }
  const several = check.form.kind === 'choice' && check.form.several;
  const value = [...new Set(given)];
  // "None of these" and one of them cannot both hold.
  if (value.length > 1 && (!several || value.includes('none'))) {
    return refusal('one-choice', given.join(', '), { check: check.id, possible: options });
  }
  return { answer: value };
}

/** What may be said in place of a figure: bands by their ids, and a test lamp's answers. */
function namesOf(check: Check): readonly string[] {
  const lamp = check.form.kind === 'reading' ? Object.keys(check.form.lamp) : [];
  return [...optionsOf(check), ...lamp];
}

function readReading(
  check: Check,
  state: CaseState,
  given: Exclude<AnswerInput['value'], readonly string[]>,
): AnswerResult {
  const { form } = check;
  const shownValue = `${String(given.value)} ${given.unit}`;
  if (form.kind !== 'reading') {
    return refusal('not-this-kind', shownValue, { check: check.id, possible: optionsOf(check) });
  }
  if (!Number.isFinite(given.value)) {
    return refusal('not-a-number', shownValue, { check: check.id, possible: [form.unit] });
  }
  if (!isUnit(given.unit)) {
    return refusal('unknown-unit', given.unit, { check: check.id, possible: [form.unit] });
  }
  const meter = given.meter ?? meterFor(state.context, given.unit);
  const quantity: Quantity = {
    value: given.value,
    unit: given.unit,
    ...(given.resolution === undefined ? {} : { resolution: given.resolution }),
    ...(meter === undefined ? {} : { meter }),
  };
  const nominal = nominalOf(state.context);
  const judged = judgeFigure(quantity, form, nominal);
  switch (judged.type) {
    case 'plausible':
      return { answer: quantity };
    case 'unknown-unit':
    case 'wrong-unit':
      return refusal(judged.type, given.unit, { check: check.id, possible: [form.unit] });
    case 'implausible':
      return refusal('implausible', shownValue, {
        check: check.id,
        range: judged.range,
        ...(judged.likely === undefined ? {} : { likely: judged.likely }),
        ...(judged.isRightAt24 ? { hint: 'nominal-24' as const } : {}),
      });
  }
}

function events(...list: readonly LaterEvent[]): Interpretation {
  return { type: 'events', events: list };
}

type Facts = Partial<Omit<RefusedMessage, 'kind' | 'code' | 'given'>>;

function refuse(code: RefusedMessage['code'], given: string, facts: Facts = {}): Interpretation {
  return { type: 'refused', ...refusal(code, given, facts) };
}

/** A refusal with what was given, cut to 80 characters. */
export function refusal(
  code: RefusedMessage['code'],
  given: unknown,
  facts: Facts = {},
): { readonly refusal: RefusedMessage } {
  return { refusal: { kind: 'refused', code, given: shown(given), possible: [], ...facts } };
}

function shown(value: unknown): string {
  const text = typeof value === 'string' ? value : asText(value);
  return text.length > 80 ? `${text.slice(0, 79)}…` : text;
}

/** JSON where there is any; what has none, a cycle say, is named by its type. */
function asText(value: unknown): string {
  try {
    // Within a list even a function has a text.
    return JSON.stringify([value]).slice(1, -1);
  } catch {
    return typeof value;
  }
}
