/**
 * What is said to what came in, and how the case and the conversation stand afterwards. Pure.
 */
import {
  positionOf,
  repeat,
  type Case,
  type CaseEvent,
  type Chart,
  type Message,
  type Step,
} from '@keyturn/core';
import type { Rendered, Speaker } from '@keyturn/language';
import type { ChannelLimits, Incoming, Key, Part } from './channel.ts';
import { hearInputs, hearLine, type Heard } from './hear-line.ts';
import { cutDraft, draftParts, type Draft, type DraftKey } from './parts.ts';
import { keyId, tapOf, type Standing } from './standing.ts';
import type { Tap } from './tap.ts';

/** What a response is made with. */
export interface Responding {
  readonly chart: Chart;
  readonly limits: ChannelLimits;
  readonly speakerOf: (locale: string) => Speaker;
}

/** How a conversation and its case stand. */
export interface Held {
  readonly standing: Standing;
  /** Null before the first. */
  readonly case: Case | null;
}

/** What came in, and how a case is opened should one be wanted. */
export interface Arrival {
  readonly at: string;
  readonly content: Incoming['content'] | { readonly type: 'time' };
  readonly open: () => Step;
}

/** What is said, and how things stand afterwards. */
export interface Response extends Held {
  readonly events: readonly CaseEvent[];
  readonly parts: readonly Part[];
}

/** Responds to what came in. */
export function respond(responding: Responding, held: Held, arrival: Arrival): Response {
  const { content } = arrival;
  const kase = held.case;
  if (kase === null || content.type === 'begin') return begin(responding, held, arrival);
  const on = { ...held, case: kase };
  switch (content.type) {
    case 'text':
      return hearText(responding, on, { at: arrival.at, text: content.text });
    case 'edited':
      // What was said before is put right by saying so.
      return hearText(responding, on, { at: arrival.at, text: content.text });
    case 'key':
      return tapped(responding, on, { ...arrival, id: content.id, on: content.on });
    case 'time':
      return heard(responding, on, {
        ...hearInputs(responding.chart, kase, { at: arrival.at, inputs: [{ type: 'tick' }] }),
      });
    case 'unreadable':
      return saying(responding, on, {
        rendered: [{ kind: 'refused', text: speakerFor(responding, on).key('onlyText') }],
        messages: repeat(responding.chart, kase),
      });
  }
}

type HeldCase = Held & { readonly case: Case };

const speakerFor = ({ speakerOf }: Responding, { standing }: Held): Speaker =>
  speakerOf(standing.locale);

/** Opens a case; what was written with the first message may describe it. */
function begin(responding: Responding, held: Held, { at, content, open }: Arrival): Response {
  const step = open();
  const opened: HeldCase = {
    standing: { ...held.standing, case: step.case.id, offers: [], picked: [], isAside: false },
    case: step.case,
  };
  const greeting = saying(responding, opened, { messages: step.messages });
  const first: Response = { ...greeting, events: step.events };
  if (content.type !== 'text') return first;
  const told = hearLine(
    { chart: responding.chart, speaker: speakerFor(responding, opened) },
    { case: step.case, offers: [] },
    { at, line: content.text },
  );
  if (told.events.length === 0) return first;
  const opening = step.messages.filter(({ kind }) => kind === 'tell');
  const answered = heard(responding, opened, { ...told, messages: [...opening, ...told.messages] });
  return { ...answered, events: [...step.events, ...answered.events] };
}

function hearText(
  responding: Responding,
  held: HeldCase,
  { at, text }: { readonly at: string; readonly text: string },
): Response {
  const speaker = speakerFor(responding, held);
  const line = text.replaceAll(/\s+/g, ' ').trim();
  const { offers } = held.standing;
  const told = hearLine(
    { chart: responding.chart, speaker },
    { case: held.case, offers },
    { at, line },
  );
  return heard(responding, held, told);
}

/** A key does what it did when it was shown; one of an earlier question does nothing. */
function tapped(
  responding: Responding,
  held: HeldCase,
  given: Arrival & { readonly id: string; readonly on: Part['replaces'] },
): Response {
  const { standing } = held;
  const speaker = speakerFor(responding, held);
  const tap = tapOf(standing, given.id);
  if (tap === undefined || tap === 'old') {
    return saying(responding, held, {
      rendered: [{ kind: 'refused', text: speaker.key('oldKey') }],
      messages: repeat(responding.chart, held.case),
    });
  }
  if (tap.type === 'begin') return begin(responding, held, given);
  if (tap.type === 'pick') return pick(responding, held, { option: tap.option, on: given.on });
  const inputs =
    tap.type === 'input'
      ? [tap.input]
      : standing.picked.length === 0
        ? []
        : [{ type: 'answers', answers: [{ check: tap.check, value: standing.picked }] }];
  if (inputs.length === 0) {
    return saying(responding, held, {
      rendered: [{ kind: 'refused', text: speaker.key('pickFirst') }],
    });
  }
  const { at } = given;
  return heard(responding, held, hearInputs(responding.chart, held.case, { at, inputs }));
}

/** Marks one of several answers, on the very message that it was tapped on. */
function pick(
  responding: Responding,
  held: HeldCase,
  { option, on }: { readonly option: string; readonly on: Part['replaces'] },
): Response {
  const { picked } = held.standing;
  const now = picked.includes(option)
    ? picked.filter((one) => one !== option)
    : [...picked, option];
  const standing = { ...held.standing, picked: now };
  const speaker = speakerFor(responding, held);
  const question = speaker
    .render(repeat(responding.chart, held.case))
    .filter(({ kind }) => kind === 'question');
  const [draft] = draftParts(question, { speaker, limits: responding.limits });
  if (draft === undefined) return { ...held, events: [], parts: [] };
  const parts = partsOf(responding, standing, [draft]).parts.map((part) =>
    on === undefined ? part : { ...part, replaces: on },
  );
  return { standing, case: held.case, events: [], parts };
}

/** What was heard, said; where nothing was taken it is asked back. */
function heard(responding: Responding, held: HeldCase, told: Heard): Response {
  const speaker = speakerFor(responding, held);
  const standing: Standing = {
    ...held.standing,
    offers: told.offers,
    picked: [],
    isAside: told.talk === 'stop' || told.talk === 'person',
  };
  const after: HeldCase = { standing, case: told.case };
  if (told.unclear !== undefined) {
    return saying(responding, after, {
      rendered: speaker.askBack(told.unclear),
      offers: told.offers.map(({ label, check, value }): DraftKey => ({
        label,
        tap: {
          type: 'input',
          input: {
            type: 'answers',
            answers: [{ check, value: typeof value === 'string' ? [value] : value }],
          },
        },
      })),
    });
  }
  const said = saying(responding, after, { messages: told.messages });
  return { ...said, events: told.events };
}

/** Puts rendered words and messages into parts, with the keys of the last question. */
function saying(
  responding: Responding,
  held: HeldCase,
  what: {
    readonly rendered?: readonly Rendered[];
    readonly messages?: readonly Message[];
    readonly offers?: readonly DraftKey[];
  },
): Response {
  const speaker = speakerFor(responding, held);
  const rendered = [...(what.rendered ?? []), ...speaker.render(what.messages ?? [])];
  const drafts = draftParts(rendered, { speaker, limits: responding.limits });
  const { offers = [] } = what;
  const withOffers = offers.length === 0 ? drafts : offered(drafts, offers, responding.limits);
  const standing = offers.length === 0 ? standingKey(held.case, speaker) : undefined;
  const last =
    standing === undefined || responding.limits.keyLength === 0
      ? withOffers
      : withKey(withOffers, standing);
  return { ...held, events: [], ...partsOf(responding, held.standing, last) };
}

/** Answers that may have been meant go with what asks back, to be tapped or picked by letter. */
function offered(
  drafts: readonly Draft[],
  offers: readonly DraftKey[],
  limits: ChannelLimits,
): readonly Draft[] {
  const [last, ...before] = drafts.toReversed();
  if (last === undefined) return drafts;
  const hasKeys = limits.keyLength > 0;
  const lines = offers.map(({ label }, index) => `${String.fromCodePoint(97 + index)}  ${label}`);
  const asking: Draft = hasKeys
    ? { ...last, taps: offers.map((offer) => [offer]) }
    : { ...last, lines: [...last.lines, ...lines] };
  return [...before.toReversed(), asking];
}

/** What can be tapped where no question is asked: the wait is over, the danger is, or a new case. */
function standingKey(kase: Case, speaker: Speaker): DraftKey | undefined {
  switch (positionOf(kase).awaiting) {
    case 'wait':
      return { label: speaker.key('done'), tap: { type: 'input', input: { type: 'waited' } } };
    case 'resume':
      return { label: speaker.key('over'), tap: { type: 'input', input: { type: 'resume' } } };
    case 'nothing':
      return { label: speaker.key('begin'), tap: { type: 'begin' } };
    default:
      return undefined;
  }
}

function withKey(drafts: readonly Draft[], key: DraftKey): readonly Draft[] {
  const [last, ...before] = drafts.toReversed();
  if (last === undefined) return drafts;
  return [...before.toReversed(), { ...last, taps: [...last.taps, [key]] }];
}

/** Parts of drafts; the keys of the last that has any are the ones that count from now on. */
function partsOf(
  { limits }: Responding,
  standing: Standing,
  drafts: readonly Draft[],
): { readonly parts: readonly Part[]; readonly standing: Standing } {
  const asking = drafts.findLast(({ taps }) => taps.length > 0);
  const flat = (asking?.taps ?? []).flat();
  // Keys that only show another pick are those of the same question.
  const isSame = JSON.stringify(flat.map(({ tap }) => tap)) === JSON.stringify(standing.taps);
  const asked = asking === undefined || isSame ? standing.asked : standing.asked + 1;
  const taps: readonly Tap[] = asking === undefined ? standing.taps : flat.map(({ tap }) => tap);
  const parts = drafts.flatMap((draft) => {
    const keys =
      draft === asking ? keysOf(draft.taps, { asked, picked: standing.picked, limits }) : [];
    return cutDraft(draft, { limits, locale: standing.locale, keys });
  });
  return { parts, standing: { ...standing, asked, taps } };
}

function keysOf(
  rows: Draft['taps'],
  given: {
    readonly asked: number;
    readonly picked: readonly string[];
    readonly limits: ChannelLimits;
  },
): readonly (readonly Key[])[] {
  let index = -1;
  return rows.map((row) =>
    row.map(({ label, tap }): Key => {
      index += 1;
      const isPicked = tap.type === 'pick' && given.picked.includes(tap.option);
      const id = keyId(given.asked, index);
      const shown = label.slice(0, given.limits.keyLength);
      return isPicked ? { id, label: shown, isPicked } : { id, label: shown };
    }),
  );
}
