/**
 * A case as it lies before a person: where it stands, and what was said last. Pure.
 */
import { hearInputs, hearLine, type Heard, type Listener } from '@keyturn/conversation';
import {
  openCase,
  positionOf,
  type Case,
  type CaseEvent,
  type CautionMessage,
  type Chart,
  type Input,
  type Message,
  type RankingMessage,
} from '@keyturn/core';
import type { Offer } from '@keyturn/language';

/** A case in hand. */
export interface Sitting {
  readonly case: Case;
  /** Every event so far: the case can be made again from them, on any machine. */
  readonly events: readonly CaseEvent[];
  /** What was said last, besides the question, its cautions and what is printed. */
  readonly said: readonly Message[];
  /** The cautions that belong to the step in hand. */
  readonly cautions: readonly CautionMessage[];
  /** The faults as they were last shown; null before the first evidence. */
  readonly ranking: RankingMessage | null;
  /** Answers that the last line may have meant. */
  readonly offers: readonly Offer[];
}

/** A sitting after something came in, and what was not understood of it. */
export interface Taken {
  readonly sitting: Sitting;
  /** The events of this turn. */
  readonly events: readonly CaseEvent[];
  readonly unclear?: Heard['unclear'];
  /** The language to go on in from here. */
  readonly language?: string;
  /** What was asked for by talk: `why`, `stop`, `person`. */
  readonly talk?: string;
}

/** Opens a case. */
export function openSitting(chart: Chart, opening: Parameters<typeof openCase>[1]): Sitting {
  const { case: kase, events, messages } = openCase(chart, opening);
  const blank = { case: kase, events, said: [], cautions: [], ranking: null, offers: [] };
  return { ...blank, ...shown(blank, messages, { isSamePlace: false, asked: undefined }) };
}

/** Takes a typed line. */
export function takeLine(
  listener: Listener,
  sitting: Sitting,
  given: { readonly at: string; readonly line: string },
): Taken {
  return after(sitting, hearLine(listener, sitting, given));
}

/** Takes what was tapped. */
export function takeInputs(
  chart: Chart,
  sitting: Sitting,
  given: { readonly at: string; readonly inputs: readonly Input[] },
): Taken {
  return after(sitting, hearInputs(chart, sitting.case, given));
}

function after(before: Sitting, heard: Heard): Taken {
  const { case: kase, offers, messages, unclear, language, talk } = heard;
  const place = positionOf(before.case);
  const isSamePlace = JSON.stringify(place) === JSON.stringify(positionOf(kase));
  const asked = place.awaiting === 'answer' ? place.check : undefined;
  return {
    sitting: {
      case: kase,
      events: [...before.events, ...heard.events],
      offers,
      ...shown(before, messages, { isSamePlace, asked }),
    },
    events: heard.events,
    ...(unclear === undefined ? {} : { unclear }),
    ...(language === undefined ? {} : { language }),
    ...(talk === undefined ? {} : { talk }),
  };
}

/** What has a place of its own before the person, and is not said a second time. */
const placed: readonly Message['kind'][] = [
  'ask',
  'confirm',
  'wait',
  'interrupt',
  'caution',
  'ranking',
  'noted',
  'verdict',
  'done',
];

function shown(
  before: Pick<Sitting, 'cautions' | 'ranking'>,
  messages: readonly Message[],
  { isSamePlace, asked }: { readonly isSamePlace: boolean; readonly asked: string | undefined },
): Pick<Sitting, 'said' | 'cautions' | 'ranking'> {
  const cautions = messages.filter((message) => message.kind === 'caution');
  const ranking = messages.findLast((message) => message.kind === 'ranking');
  const inHand = messages.findLast((message) => message.kind === 'interrupt');
  // What was asked shows that it was taken by what is asked next; what was not is said back. Of
  // several dangers the last has the place of the question.
  const isSaidBack = (one: Message): boolean =>
    one.kind === 'noted' ? one.check !== asked : one.kind === 'interrupt' && one !== inHand;
  return {
    said: messages.filter((one) => !placed.includes(one.kind) || isSaidBack(one)),
    cautions: cautions.length === 0 && isSamePlace ? before.cautions : cautions,
    ranking: ranking ?? before.ranking,
  };
}
