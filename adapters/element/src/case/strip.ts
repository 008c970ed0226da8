/**
 * What is printed on the strip: every finding that holds now, and the verdict. Worked out from the
 * case alone, so that a correction, another language or a reload print it anew.
 */
import {
  isReading,
  isSaid,
  turn,
  type Case,
  type Chart,
  type Message,
  type NotedMessage,
  type ReadingMessage,
  type VerdictMessage,
} from '@keyturn/core';

/** One printed finding. */
export interface StripLine {
  readonly check: string;
  readonly message: ReadingMessage | NotedMessage;
}

/** The strip: what was found, what follows from it, and what was found since. */
export interface Strip {
  readonly findings: readonly StripLine[];
  readonly verdict: VerdictMessage | null;
  readonly proving: readonly StripLine[];
}

/** Works out the strip of a case. */
export function stripOf(chart: Chart, kase: Case): Strip {
  const { order, answers, verdict, at } = kase.state;
  const readings = readingsOf(
    turn(chart, kase, { at, input: { type: 'talk', talk: 'numbers' } }).messages,
  );
  const lines = order.map((check): StripLine => {
    const answer = answers[check]?.at(-1);
    const reading = isReading(answer) ? readings.get(check) : undefined;
    const noted = isSaid(answer) && !isReading(answer) ? answer : [];
    return { check, message: reading ?? { kind: 'noted', check, answer: noted } };
  });
  const later = laterChecks(chart);
  return {
    findings: lines.filter(({ check }) => !later.has(check)),
    verdict,
    proving: lines.filter(({ check }) => later.has(check)),
  };
}

function readingsOf(messages: readonly Message[]): ReadonlyMap<string, ReadingMessage> {
  const numbers = messages.find((message) => message.kind === 'numbers');
  return new Map(numbers?.readings.map((reading) => [reading.check, reading]));
}

/** The checks of the stages after the verdict: the work, and what proves it. */
function laterChecks({ flow }: Chart): ReadonlySet<string> {
  const at = flow.stages.findIndex(({ id }) => id === flow.verdictAfter);
  return new Set(flow.stages.slice(at + 1).flatMap(({ checks }) => checks));
}
