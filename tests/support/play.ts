/**
 * A case of the shipped flow played turn by turn, as any channel plays it.
 */
import {
  openCase,
  positionOf,
  turn,
  type AnswerInput,
  type AskMessage,
  type Case,
  type Input,
  type Message,
  type Step,
} from '@keyturn/core';
import { noStart } from './no-start.ts';

const { chart } = noStart;

/** A choice, several, a figure in the check's own unit, or a whole quantity. */
type Value =
  | string
  | readonly string[]
  | number
  | { readonly value: number; readonly unit: string; readonly resolution?: number };

/** Check to what is answered. */
export type Answers = Readonly<Record<string, Value>>;

/** When every case here begins. */
export const start = '2026-01-01T08:00:00.000Z';

/** Opens a case. */
export function open(context: Record<string, unknown> = {}): Step {
  return openCase(chart, { id: 'k1', at: start, context });
}

/** One turn, at the time of the one before unless another is given. */
export function next(kase: Case, input: unknown, at: string = kase.state.at): Step {
  return turn(chart, kase, { at, input });
}

/** Several turns. */
export function take(step: Step, ...inputs: readonly Input[]): Step {
  return inputs.reduce<Step>((before, input) => next(before.case, input), step);
}

/** Answers given all at once. */
export function answers(given: Answers): Input {
  return { type: 'answers', answers: listed(given) };
}

/** Earlier answers put right. */
export function correct(given: Answers): Input {
  return { type: 'correction', answers: listed(given) };
}

function listed(given: Answers): readonly AnswerInput[] {
  return Object.entries(given).map(([check, value]) => ({
    check,
    value: inputValue(check, value),
  }));
}

function inputValue(check: string, value: Value): AnswerInput['value'] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'number') return value;
  const form = chart.flow.checks[check]?.form;
  return { value, unit: form?.kind === 'reading' ? form.unit : 'V' };
}

/** What the case waits for: `answer complaint`, `confirm dash`, `nothing`. */
export function awaits({ case: kase }: Step): string {
  return Object.values(positionOf(kase)).join(' ');
}

/** The messages of one kind. */
export function messagesOf<Kind extends Message['kind']>(
  step: Step,
  kind: Kind,
): readonly Extract<Message, { kind: Kind }>[] {
  return step.messages.filter(
    (message): message is Extract<Message, { kind: Kind }> => message.kind === kind,
  );
}

/** A case played to its end. */
export interface Played {
  readonly step: Step;
  readonly asked: readonly AskMessage[];
  readonly turns: number;
}

/**
 * Plays a case on to its end: cautions are confirmed, waits waited, and a question without an
 * answer among those given is declined.
 */
export function playOut(from: Step, given: Answers = {}, most = 200): Played {
  let step = from;
  const asked = [...messagesOf(step, 'ask')];
  for (let turns = 0; turns < most; turns += 1) {
    const position = positionOf(step.case);
    if (position.awaiting === 'nothing') return { step, asked, turns };
    step = next(step.case, inputFor(position, given));
    asked.push(...messagesOf(step, 'ask'));
  }
  throw new Error(`the case is not closed after ${String(most)} turns`);
}

function inputFor(position: ReturnType<typeof positionOf>, given: Answers): Input {
  switch (position.awaiting) {
    case 'confirm':
      return { type: 'confirm' };
    case 'wait':
      return { type: 'waited' };
    case 'resume':
      return { type: 'resume' };
    case 'nothing':
      return { type: 'tick' };
    case 'answer': {
      const value = given[position.check];
      return value === undefined
        ? { type: 'talk', talk: 'cannot' }
        : answers({ [position.check]: value });
    }
  }
}
