/**
 * A case made again from the findings that a code carried.
 */
import {
  foldCase,
  isReading,
  isSaid,
  looksLikeDay,
  type Answer,
  type Case,
  type CaseEvent,
  type Chart,
  type LaterEvent,
} from '@keyturn/core';
import { CodeError } from './code-error.ts';
import type { CodedFindings } from './found.ts';

/** A case made again, and the events that a store keeps of it. */
export interface ReplayedCase {
  readonly case: Case;
  readonly events: readonly CaseEvent[];
}

/**
 * Makes the case again: the same answers, and so the same verdict by the flow as it is now. It has
 * the id and the time of the case that the code was made of.
 *
 * @throws CodeError when the findings are of another flow.
 */
export function replayFindings(chart: Chart, found: CodedFindings): ReplayedCase {
  const { flow } = chart;
  if (found.flow !== flow.id) {
    throw new CodeError('other-flow', `the findings are of ${found.flow}; this is ${flow.id}`);
  }
  const opened: CaseEvent = {
    type: 'opened',
    format: 1,
    at: found.at,
    id: found.id,
    flow: { id: flow.id, version: flow.version },
    context: found.context,
    notAsked: found.notAsked,
  };
  const events = withLookedAgain(chart, found, [opened, ...answersAndInterrupts(chart, found)]);
  return { case: foldCase(chart, events), events };
}

/** The answers in their order, and each interrupt where it must have come. */
function answersAndInterrupts({ flow }: Chart, found: CodedFindings): readonly LaterEvent[] {
  const { at, answers, raised } = found;
  const afterVerdict = flow.stages.findIndex(({ id }) => id === flow.verdictAfter) + 1;
  const later = flow.stages.slice(afterVerdict).flatMap(({ checks }) => checks);
  const placed = raised.map((interrupt) => {
    const { then, reopens = [] } = flow.interrupts[interrupt] ?? {};
    // What it opened again was answered after it; that the vehicle runs, before any proof of it.
    const follows = then === 'prove' ? [...reopens, ...later] : reopens;
    const first = answers.findIndex(({ check }) => follows.includes(check));
    return { interrupt, before: first < 0 ? answers.length : first };
  });
  const raisedBefore = (index: number): readonly LaterEvent[] =>
    placed
      .filter(({ before }) => before === index)
      .flatMap(({ interrupt }): readonly LaterEvent[] => [
        { type: 'interrupted', at, interrupt },
        { type: 'resumed', at },
      ]);
  return [
    ...answers.flatMap(({ check, answer }, index): readonly LaterEvent[] => [
      ...raisedBefore(index),
      { type: 'answered', at, check, answer: withoutDay(answer) },
    ]),
    ...raisedBefore(answers.length),
  ];
}

/** Without the terms of the shop a day says nothing, and the band in which it lies is taken. */
function withoutDay(answer: Answer): Answer {
  if (!isSaid(answer) || isReading(answer)) return answer;
  return answer.length > 1 ? answer.filter((one) => !looksLikeDay(one)) : answer;
}

/** What was asked once more is not to be asked a third time: the same answers, said again. */
function withLookedAgain(
  chart: Chart,
  found: CodedFindings,
  events: readonly CaseEvent[],
): readonly CaseEvent[] {
  const { next, doubted, answers } = foldCase(chart, events).state;
  const check = next?.to === 'check' ? next.check : '';
  const answer = answers[check]?.at(-1);
  if (answer === undefined || doubted.includes(check) || !found.doubted.includes(check)) {
    return events;
  }
  const again: CaseEvent = { type: 'corrected', at: found.at, check, answer };
  return withLookedAgain(chart, found, [...events, again]);
}
