/**
 * What was heard, answered; where nothing was taken it is asked back. Pure.
 */
import { positionOf } from '@keyturn/core';
import { asksOfDanger, beforeDanger, offerInput, type Heard } from './hear-line.ts';
import type { DraftKey } from './parts.ts';
import {
  saying,
  speakerFor,
  standingMessages,
  type HeldCase,
  type Responding,
  type Response,
} from './saying.ts';
import type { Standing } from './standing.ts';

/** Answers what was heard; `notices` are said before that. */
export function heard(responding: Responding, held: HeldCase, told: Heard): Response {
  const standing: Standing = {
    ...held.standing,
    locale: told.language ?? held.standing.locale,
    offers: told.offers,
    picked: [],
    tapped: null,
    isAside: told.talk === 'stop' || told.talk === 'person',
  };
  const after: HeldCase = { standing, case: told.case };
  if (told.unclear !== undefined) {
    // Whoever comes back after a pause greets first; that is no answer, and no wrong one.
    if (held.standing.isAside && told.events.length === 0) {
      return comeBack(responding, { ...after, standing: { ...standing, isAside: true } });
    }
    const speaker = speakerFor(responding, after);
    const offers = told.offers.map((offer): DraftKey => ({
      label: offer.label,
      tap: { type: 'input', input: offerInput(told.case, offer) },
    }));
    const noDanger: DraftKey = {
      label: speaker.key('noDanger'),
      tap: { type: 'input', input: { type: 'talk', talk: 'repeat' } },
    };
    const asked = saying(responding, after, {
      rendered: [...speaker.render(beforeDanger(told.messages)), ...speaker.askBack(told.unclear)],
      offers:
        asksOfDanger(told) && responding.limits.keyLength > 0 ? [...offers, noDanger] : offers,
    });
    return { ...asked, events: told.events };
  }
  const isOpen = positionOf(held.case).awaiting !== 'nothing';
  const said = saying(responding, after, {
    rendered: (told.notices ?? []).map((text) => ({ kind: 'text', text })),
    messages: told.messages,
    isEnd: isOpen && told.messages.at(-1)?.kind === 'done',
  });
  return { ...said, events: told.events };
}

/** Goes on where the case was put aside. */
export function comeBack(responding: Responding, held: HeldCase): Response {
  const standing: Standing = { ...held.standing, isAside: false };
  const messages = standingMessages(responding.chart, held.case);
  return saying(
    responding,
    { ...held, standing },
    {
      messages: held.standing.isAside ? [{ kind: 'tell', tell: 'resumed' }, ...messages] : messages,
    },
  );
}
