/**
 * The public way through a case: opened once, then a turn for everything that comes in. Pure: the
 * time comes with the input, and nothing is read or written.
 */
import type { Chart } from '../chart/compile.ts';
import type { Policy } from '../policy/policy.ts';
import { foldEvent, foldOpening, requireFit, type Case } from './case.ts';
import { readContext } from './context.ts';
import type { CaseEvent } from './event.ts';
import { eventFormat } from './event.ts';
import { inputSchema, type AnswerInput, type Input } from './input.ts';
import { interpret, refusal } from './interpret.ts';
import type { Message } from './message.ts';
import { limitFaults } from './part-limits.ts';
import { tellEvents, tellPosition, tellWhy } from './tell.ts';
import { numbersMessage } from './tell-reading.ts';

/** What a turn gives: the case after it, the events to append to its log, and what to say. */
export interface Step {
  readonly case: Case;
  readonly events: readonly CaseEvent[];
  readonly messages: readonly Message[];
}

/** How a case begins. */
export interface Opening {
  readonly id: string;
  /** ISO 8601. */
  readonly at: string;
  /** Nested or by dotted path; quantities as `{ value, unit }` or numbers in the field's unit. */
  readonly context?: Readonly<Record<string, unknown>>;
  /** The terms of the shop, where a part is taken back. */
  readonly policy?: Policy;
  /** Answers that are known before the first question. */
  readonly answers?: readonly AnswerInput[];
  /** Checks not to be put, since nobody is there to answer them. */
  readonly notAsked?: readonly string[];
}

/** The context given at the opening is not one. */
export class ContextError extends Error {
  /** Which field is wrong. */
  readonly path: string;

  constructor(path: string, given: unknown, possible: readonly string[]) {
    super(
      `the context has ${path}: ${JSON.stringify(given)}; expected ${possible.slice(0, 20).join(', ')}`,
    );
    this.name = 'ContextError';
    this.path = path;
  }
}

/**
 * Opens a case and says its first question.
 *
 * @throws ContextError when the context holds an unknown field or a value that the field cannot
 *   have, when an answer cannot be taken, or when `at` is no instant.
 */
export function openCase(chart: Chart, opening: Opening): Step {
  if (!isInstant(opening.at)) {
    throw new ContextError('at', opening.at, ['an instant like 2026-01-01T08:00:00Z']);
  }
  const read = readContext(opening.context ?? {});
  const [fault] = read.type === 'faults' ? read.faults : limitFaults(chart.flow, read.context);
  if (read.type === 'faults' || fault !== undefined) {
    throw new ContextError(fault?.path ?? '', fault?.given, fault?.possible ?? []);
  }
  const event: CaseEvent = {
    type: 'opened',
    format: eventFormat,
    at: opening.at,
    id: opening.id,
    flow: { id: chart.flow.id, version: chart.flow.version },
    context: read.context,
    notAsked: opening.notAsked ?? [],
    ...(opening.policy === undefined ? {} : { policy: opening.policy }),
  };
  const kase = foldOpening(chart, event);
  const greeting: Message = { kind: 'tell', tell: 'opening' };
  const { at, answers = [] } = opening;
  if (answers.length === 0) {
    return { case: kase, events: [event], messages: [greeting, ...tellPosition(chart, kase)] };
  }
  const told = turn(chart, kase, { at, input: { type: 'answers', answers } });
  const [first] = told.messages;
  if (first?.kind === 'refused') throw new ContextError('answers', first.given, first.possible);
  return { ...told, events: [event, ...told.events], messages: [greeting, ...told.messages] };
}

/**
 * One turn: the case as the turn before left it, an input, and when it came (ISO 8601). An input
 * that cannot be taken leaves the case as it is, and the message says what was wrong and what is
 * possible.
 *
 * @throws CaseError when the case belongs to another flow, version or format. Never throws for an
 *   input, whatever it is.
 */
export function turn(
  chart: Chart,
  kase: Case,
  given: { readonly at: string; readonly input: unknown },
): Step {
  requireFit(chart, kase);
  const parsed = inputSchema.safeParse(given.input);
  if (!parsed.success || !isInstant(given.at)) {
    return refused(kase, refusal('not-an-input', given.input).refusal);
  }
  const input: Input = parsed.data;
  const meant = interpret(chart, kase, { at: given.at, input });
  if (meant.type === 'refused') return refused(kase, meant.refusal);
  const after = meant.events.reduce((before, event) => foldEvent(chart, before, event), kase);
  return {
    case: after,
    events: meant.events,
    messages: [
      ...said(chart, after, input),
      ...tellEvents(chart, { before: kase, after }, meant.events),
      ...tellPosition(chart, after, kase),
    ],
  };
}

/** What stands before a case now, said again. */
export function repeat(chart: Chart, kase: Case): readonly Message[] {
  return tellPosition(chart, kase);
}

function said(chart: Chart, kase: Case, input: Input): readonly Message[] {
  if (input.type !== 'talk') return [];
  switch (input.talk) {
    case 'why':
      return tellWhy(chart, kase);
    case 'numbers':
      return [numbersMessage(chart.flow, kase.state)];
    case 'person':
      return [{ kind: 'tell', tell: 'person' }];
    case 'stop':
      return [{ kind: 'tell', tell: 'stopped' }];
    default:
      return [];
  }
}

/** ISO 8601 with its zone: without one, every machine would read another time. */
function isInstant(text: string): boolean {
  return (
    /^\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:\d\d)$/u.test(text) &&
    !Number.isNaN(Date.parse(text))
  );
}

function refused(kase: Case, refusal: Message): Step {
  return { case: kase, events: [], messages: [refusal] };
}
