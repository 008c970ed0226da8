/**
 * A case for programs: each step is one line of JSON.
 */
import {
  dueOf,
  hearInputs,
  hearLine,
  type Heard,
  type Listener,
  type LineStanding,
  type Unclear,
} from '@keyturn/conversation';
import {
  openCase,
  positionOf,
  repeat,
  type Case,
  type CaseEvent,
  type CasePosition,
  type Message,
  type Opening,
} from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import type { Ending } from './conversation.ts';
import { cleanLine, type Lines } from './lines.ts';

/** One step as it is written. */
interface JsonStep {
  /** What was given, cut to 200 characters; not at the beginning. */
  readonly given?: string;
  readonly messages: readonly Message[];
  /** What was not understood, where nothing was taken. */
  readonly unclear?: Unclear;
  /** The language gone on in from here. */
  readonly language?: string;
  readonly position: CasePosition;
  /** Why the events of this step are not in the file yet. */
  readonly notKept?: string;
}

/** What a case in lines of JSON is taken through with. */
export interface JsonExchange extends Listener {
  readonly lines: Lines;
  readonly write: (step: JsonStep) => void;
  readonly now: () => Date;
  readonly speakerIn: (locale: string) => Speaker;
  readonly keep: (events: readonly CaseEvent[]) => string | undefined;
}

/** Opens a case, or goes on with one, and takes every line: a JSON input, or typed text. */
export async function exchangeLines(
  opening: JsonExchange,
  from: { readonly opening: Omit<Opening, 'at'> } | { readonly case: Case },
): Promise<Ending> {
  const { chart, lines, now, keep } = opening;
  let exchange = opening;
  const step =
    'case' in from
      ? { case: from.case, events: [], messages: repeat(chart, from.case) }
      : openCase(chart, { ...from.opening, at: now().toISOString() });
  let standing: LineStanding = { case: step.case, offers: [] };
  exchange.write(jsonStep({ ...step, offers: [] }, keep(step.events)));
  while (positionOf(standing.case).awaiting !== 'nothing') {
    const line = await lines.next(standing.case);
    if (line === undefined) return { how: 'aside', case: standing.case };
    const heard = hear(exchange, standing, line);
    standing = heard;
    if (heard.language !== undefined)
      exchange = { ...exchange, speaker: exchange.speakerIn(heard.language) };
    exchange.write({ given: line.slice(0, 200), ...jsonStep(heard, keep(heard.events)) });
    if (heard.talk === 'stop' || heard.talk === 'person') return { how: 'aside', case: heard.case };
  }
  return { how: 'closed', case: standing.case };
}

function hear(exchange: JsonExchange, standing: LineStanding, line: string): Heard {
  const now = exchange.now();
  const at = now.toISOString();
  const due = dueOf(standing.case);
  const isOver = due !== undefined && now >= due;
  const ticked = isOver
    ? hearInputs(exchange.chart, standing.case, { at, inputs: [{ type: 'tick' }] })
    : undefined;
  const before = ticked ?? standing;
  const input = line.trimStart().startsWith('{') ? parsed(line) : undefined;
  const heard =
    input === undefined
      ? hearLine(exchange, before, { at, line: cleanLine(line) })
      : hearInputs(exchange.chart, before.case, { at, inputs: [input] });
  return ticked === undefined
    ? heard
    : {
        ...heard,
        events: [...ticked.events, ...heard.events],
        messages: [...ticked.messages, ...heard.messages],
      };
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

function jsonStep(heard: Heard, notKept: string | undefined): JsonStep {
  return {
    messages: heard.messages,
    ...(heard.unclear === undefined ? {} : { unclear: heard.unclear }),
    ...(heard.language === undefined ? {} : { language: heard.language }),
    position: positionOf(heard.case),
    ...(notKept === undefined ? {} : { notKept }),
  };
}
