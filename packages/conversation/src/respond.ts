/**
 * What is said to what came in, and how the case and the conversation stand afterwards. Pure.
 */
import { positionOf, type Case, type Step } from '@keyturn/core';
import type { Content } from './channel.ts';
import { comeBack, heard } from './heard.ts';
import { asksOfDanger, hearInputs } from './hear-line.ts';
import { hearEdited, hearText } from './hear-text.ts';
import {
  saying,
  speakerFor,
  standingMessages,
  type Held,
  type HeldCase,
  type Responding,
  type Response,
} from './saying.ts';
import { takePicked, tapped } from './tapped.ts';
import { typedTap } from './typed-tap.ts';

/** What came in, and how a case is opened should one be wanted. */
export interface Arrival {
  readonly at: string;
  readonly writtenAt?: string | undefined;
  readonly content:
    | Content
    /** The time of the wait in hand has come. */
    | { readonly type: 'time' }
    /** Something was sent, and nobody knows whether it went out. */
    | { readonly type: 'unsure' };
  readonly open: () => Step;
}

/** Responds to what came in. */
export function respond(responding: Responding, held: Held, arrival: Arrival): Response {
  const kase = held.case;
  const response =
    kase === null
      ? respondFirst(responding, held, arrival)
      : respondTo(responding, { ...held, case: kase }, arrival);
  const standing = {
    ...response.standing,
    cautionedAt: cautionedAt(held, response, arrival.at),
  };
  return { ...response, standing };
}

/** Since when cautions wait for their confirmation; null also once that has been waived. */
function cautionedAt(held: Held, response: Response, at: string): string | null {
  const awaits = (kase: Case | null) => (kase === null ? undefined : positionOf(kase));
  const position = awaits(response.case);
  if (position?.awaiting !== 'confirm') return null;
  const isNew = JSON.stringify(position) !== JSON.stringify(awaits(held.case));
  if (isNew) return at;
  const { standing, parts } = response;
  const isSaid = standing.cautionedAt !== null && parts.some(({ kind }) => kind === 'caution');
  return isSaid ? at : standing.cautionedAt;
}

function respondFirst(responding: Responding, held: Held, arrival: Arrival): Response {
  const { type } = arrival.content;
  if (type === 'time' || type === 'unsure') return { ...held, events: [], parts: [] };
  return begin(responding, held, arrival);
}

function respondTo(responding: Responding, held: HeldCase, arrival: Arrival): Response {
  const { content, at, writtenAt } = arrival;
  const { chart } = responding;
  const speaker = speakerFor(responding, held);
  switch (content.type) {
    case 'begin':
      return begin(responding, held, arrival);
    case 'text': {
      const tap = typedTap(held, content.text, speaker);
      if (tap?.type === 'begin') {
        return begin(responding, held, { ...arrival, content: { type: 'begin' } });
      }
      if (tap?.type === 'take') return takePicked(responding, held, { at, check: tap.check });
      return hearText(responding, held, { at, writtenAt, text: content.text, id: content.id });
    }
    case 'edited':
      return hearEdited(responding, held, { at, of: content.of, text: content.text });
    case 'key': {
      const response = tapped(responding, held, { at, id: content.id, on: content.on });
      return response === 'begin' ? begin(responding, held, arrival) : response;
    }
    case 'repeat':
      return comeBack(responding, held);
    case 'stop':
      return heard(
        responding,
        held,
        hearInputs(chart, held.case, { at, inputs: [{ type: 'talk', talk: 'stop' }] }),
      );
    case 'help':
      return saying(responding, held, { rendered: [{ kind: 'text', text: speaker.key('help') }] });
    case 'time':
      return timeCame(responding, held, at);
    case 'unsure':
      return unsure(responding, held);
    case 'unreadable':
      return saying(responding, held, {
        rendered: [{ kind: 'refused', text: speaker.key('onlyText') }],
        messages: standingMessages(chart, held.case),
      });
  }
}

/** Opens a case; what was written with the first message may describe it. */
function begin(responding: Responding, held: Held, { at, content, open }: Arrival): Response {
  const step = open();
  const opened: HeldCase = {
    standing: {
      ...held.standing,
      case: step.case.id,
      offers: [],
      picked: [],
      taken: [],
      isAside: false,
    },
    case: step.case,
  };
  const isPriceLost =
    content.type === 'begin' &&
    content.price !== undefined &&
    responding.chart.flow.part !== undefined &&
    step.case.state.context['sale.price'] === undefined;
  const greeting = saying(responding, opened, {
    rendered: isPriceLost
      ? [{ kind: 'refused', text: speakerFor(responding, opened).key('noPrice') }]
      : [],
    messages: step.messages,
    isAnew: true,
  });
  const first: Response = { ...greeting, events: step.events };
  if (content.type !== 'text') return first;
  const before = step.messages.filter(({ kind }) => kind === 'tell');
  const { text, id } = content;
  const told = hearText(responding, opened, { at, text, id, before });
  const isTold =
    told.events.length > 0 ||
    told.standing.locale !== held.standing.locale ||
    asksOfDanger(told.standing);
  if (isTold) return { ...told, events: [...step.events, ...told.events] };
  return { ...first, standing: { ...first.standing, taken: told.standing.taken } };
}

/** What stands, said anew with all that must not be missing; keys sent before no longer answer. */
function unsure(responding: Responding, held: HeldCase): Response {
  const { verdict, decision } = held.case.state;
  const found = verdict ?? decision;
  const messages = standingMessages(responding.chart, held.case);
  return saying(responding, held, {
    rendered: [{ kind: 'text', text: speakerFor(responding, held).key('unsure') }],
    messages: found === null ? messages : [found, ...messages],
    isAnew: true,
    isEnd: positionOf(held.case).awaiting === 'nothing',
  });
}

/** The wait in hand is over; one that was ended in another way before says nothing. */
function timeCame(responding: Responding, held: HeldCase, at: string): Response {
  const told = hearInputs(responding.chart, held.case, { at, inputs: [{ type: 'tick' }] });
  if (told.events.length === 0 || positionOf(told.case).awaiting === 'wait') {
    return { ...held, events: told.events, case: told.case, parts: [] };
  }
  const { standing } = held;
  const after: HeldCase = { case: told.case, standing: { ...standing, offers: [], picked: [] } };
  const text = speakerFor(responding, held).key('timeUp');
  const said = saying(responding, after, {
    rendered: [{ kind: 'text', text }],
    messages: told.messages,
  });
  return { ...said, events: told.events };
}
