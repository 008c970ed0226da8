/**
 * A fitting played turn by turn through its flow, as any channel plays it, with the answers of a
 * plain table: ids, and readings as figures.
 */
import {
  openCase,
  positionOf,
  turn,
  type AskMessage,
  type Chart,
  type Input,
  type Message,
  type Step,
} from '@keyturn/core';

/** A choice or work done, by its id; a reading as figure, or with its unit. */
export type Given = string | number;

/** A fitting played to its end. */
export interface PlayedFitting {
  readonly outcome: string;
  readonly reason: string;
  /** Steps as they were asked, one that is asked again twice. */
  readonly asked: readonly AskMessage[];
  /** Before each question, the cautions that had been said by then, in order. */
  readonly saidBefore: ReadonlyMap<string, readonly string[]>;
  readonly messages: readonly Message[];
  readonly end: Step;
}

const at = '2026-01-01T08:00:00.000Z';

/**
 * Plays a fitting: cautions are confirmed, a step without an answer left can't be done. A step
 * that asks again takes the next of its answers.
 */
export function playFitting(
  chart: Chart,
  context: Readonly<Record<string, unknown>>,
  answers: Readonly<Record<string, readonly Given[]>>,
): PlayedFitting {
  const left = new Map(Object.entries(answers).map(([step, given]) => [step, [...given]]));
  const saidBefore = new Map<string, readonly string[]>();
  const said: string[] = [];
  const messages: Message[] = [];
  const take = (step: Step): Step => {
    for (const message of step.messages) {
      messages.push(message);
      if (message.kind === 'caution') said.push(message.caution);
      if (message.kind === 'ask') saidBefore.set(message.check, [...said]);
    }
    return step;
  };
  let step = take(openCase(chart, { id: 'f1', at, context }));
  for (let turns = 0; step.case.state.outcome === null; turns += 1) {
    if (turns > 200) throw new Error('the fitting never ends');
    step = take(turn(chart, step.case, { at, input: inputFor(chart, step, left) }));
  }
  const { decision } = step.case.state;
  if (decision === null) throw new Error('the fitting ended without an outcome');
  return {
    outcome: decision.decide,
    reason: decision.reason,
    asked: messages.filter((message) => message.kind === 'ask'),
    saidBefore,
    messages,
    end: step,
  };
}

function inputFor(chart: Chart, step: Step, left: ReadonlyMap<string, Given[]>): Input {
  const position = positionOf(step.case);
  switch (position.awaiting) {
    case 'answer': {
      const { check } = position;
      const given = left.get(check)?.shift();
      if (given === undefined) return { type: 'talk', talk: 'cannot' };
      return { type: 'answers', answers: [{ check, value: valueOf(chart, check, given) }] };
    }
    case 'confirm':
      return { type: 'confirm' };
    case 'wait':
      return { type: 'waited' };
    default:
      throw new Error(`a fitting waits for ${position.awaiting}`);
  }
}

function valueOf(
  chart: Chart,
  check: string,
  given: Given,
):
  | readonly string[]
  | { readonly value: number; readonly unit: string; readonly resolution: number } {
  if (typeof given === 'string') return [given];
  const form = chart.flow.checks[check]?.form;
  if (form?.kind !== 'reading') throw new Error(`${check} is no reading`);
  return { value: given, unit: form.unit, resolution: form.unit === 'V' ? 0.01 : 0.1 };
}

/** A fixed sequence of chance. */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** One of several, by chance. */
export function pick<Item>(draw: () => number, of: readonly Item[]): Item {
  const one = of[Math.floor(draw() * of.length)];
  if (one === undefined) throw new RangeError('there is nothing to pick from');
  return one;
}
