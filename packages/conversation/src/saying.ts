/**
 * What is said, put into parts with the keys that count from now on. Pure.
 */
import {
  positionOf,
  repeat,
  type Case,
  type CaseEvent,
  type Chart,
  type Message,
} from '@keyturn/core';
import type { Rendered, Speaker } from '@keyturn/language';
import type { ChannelLimits, Key, Part } from './channel.ts';
import { offerLetter, type HearByHand } from './hear-line.ts';
import type { VehicleSaid } from './vehicle-said.ts';
import {
  cutDraft,
  draftParts,
  joinDrafts,
  pictureDraft,
  type Draft,
  type DraftKey,
} from './parts.ts';
import { pictureOf, type Pictured } from './picture.ts';
import { keyId, type Standing } from './standing.ts';
import { summaryDraft } from './summary.ts';
import type { Tap } from './tap.ts';

/** What a response is made with. */
export interface Responding {
  readonly chart: Chart;
  readonly limits: ChannelLimits;
  readonly speakerOf: (locale: string) => Speaker;
  /** What a text that is the code of a vehicle's case says; undefined where it is none. */
  readonly vehicleOf?: (text: string) => VehicleSaid | undefined;
  /** What hears readings of the vehicle in a language, where a part of it comes back. */
  readonly byHandIn?: (locale: string) => HearByHand;
}

/** How a conversation and its case stand. */
export interface Held {
  readonly standing: Standing;
  /** Null before the first. */
  readonly case: Case | null;
}

/** The same, once there is a case. */
export type HeldCase = Held & { readonly case: Case };

/** What is said, and how things stand afterwards. */
export interface Response extends Held {
  readonly events: readonly CaseEvent[];
  readonly parts: readonly Part[];
}

/** What there is to say; the question in hand comes last. */
export interface Saying {
  readonly rendered?: readonly Rendered[];
  readonly messages?: readonly Message[];
  /** Answers that may have been meant. */
  readonly offers?: readonly DraftKey[];
  /** True where keys shown before must not answer any more, though the question is the same. */
  readonly isAnew?: boolean;
  /** True where the case has just come to its end. */
  readonly isEnd?: boolean;
}

/** The speaker of a conversation. */
export function speakerFor({ speakerOf }: Responding, { standing }: Held): Speaker {
  return speakerOf(standing.locale);
}

/** What stands before a case, to be said once more. */
export function standingMessages(chart: Chart, kase: Case): readonly Message[] {
  const position = positionOf(kase);
  if (position.awaiting !== 'resume') return repeat(chart, kase);
  const interrupt = chart.flow.interrupts[position.interrupt];
  if (interrupt === undefined) return [];
  const { word, then } = interrupt;
  return [{ kind: 'interrupt', interrupt: position.interrupt, word, then }];
}

/** Puts rendered words and messages into parts, with the keys of the last question. */
export function saying(responding: Responding, held: HeldCase, what: Saying): Response {
  const { limits } = responding;
  const speaker = speakerFor(responding, held);
  const rendered = [...(what.rendered ?? []), ...speaker.render(what.messages ?? [])];
  const canGoBack = held.case.state.order.length > 0;
  const drafts = draftParts(rendered, { speaker, limits, canGoBack });
  const { offers = [] } = what;
  const isHasty = offers.length > 0 || rendered.length === 0;
  const key = isHasty ? undefined : standingKey(held.case, speaker);
  const withKeys = offers.length > 0 ? offered(drafts, offers, limits) : drafts;
  const last = key === undefined ? withKeys : withStandingKey(withKeys, key, limits);
  const whole = what.isEnd === true ? beforeLast(last, summaryDraft(held.case, speaker)) : last;
  const pictured = limits.pictures ? newPicture(responding, held, what) : undefined;
  const shown = pictured === undefined ? whole : withPicture(whole, pictured);
  const standing =
    pictured === undefined ? held.standing : { ...held.standing, pictured: pictured.of };
  return { ...held, events: [], ...partsOf(responding, standing, { drafts: shown, ...what }) };
}

/** The picture of what is said, unless it was the last that was sent. */
function newPicture(
  { chart, speakerOf }: Responding,
  { standing, case: kase }: HeldCase,
  { messages = [], isAnew = false }: Saying,
): Pictured | undefined {
  const speaker = speakerOf(standing.locale);
  const pictured = pictureOf(messages, { chart, case: kase, speaker });
  return pictured?.of === standing.pictured && !isAnew ? undefined : pictured;
}

function withPicture(drafts: readonly Draft[], pictured: Pictured): readonly Draft[] {
  const isBefore = pictured.goes === 'before-question';
  const index = drafts.findLastIndex(({ kind }) => kind === (isBefore ? 'question' : 'verdict'));
  return drafts.toSpliced(isBefore ? index : index + 1, 0, pictureDraft(pictured));
}

/** The end stands last, with the key that begins anew. */
function beforeLast(drafts: readonly Draft[], one: Draft): readonly Draft[] {
  return joinDrafts([...drafts.slice(0, -1), one, ...drafts.slice(-1)]);
}

/** Answers that may have been meant go with what asks back, to be tapped or picked by letter. */
function offered(
  drafts: readonly Draft[],
  offers: readonly DraftKey[],
  limits: ChannelLimits,
): readonly Draft[] {
  const last = drafts.at(-1);
  if (last === undefined) return drafts;
  const lines = offers.map(({ label }, index) => ({ text: `${offerLetter(index)}  ${label}` }));
  const asking: Draft =
    limits.keyLength > 0
      ? { ...last, taps: offers.map((offer) => [offer]) }
      : { ...last, lines: [...last.lines, ...lines] };
  return [...drafts.slice(0, -1), asking];
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

function withStandingKey(
  drafts: readonly Draft[],
  key: DraftKey,
  limits: ChannelLimits,
): readonly Draft[] {
  const last = drafts.at(-1);
  if (last === undefined) return drafts;
  const withKey: Draft =
    limits.keyLength > 0
      ? { ...last, taps: [...last.taps, [key]] }
      : { ...last, lines: [...last.lines, { text: `1  ${key.label}` }] };
  return [...drafts.slice(0, -1), withKey];
}

/** Parts of drafts; the keys of the last that has any are the ones that count from now on. */
export function partsOf(
  { limits }: Pick<Responding, 'limits'>,
  standing: Standing,
  { drafts, isAnew = false }: { readonly drafts: readonly Draft[]; readonly isAnew?: boolean },
): { readonly parts: readonly Part[]; readonly standing: Standing } {
  const asking = drafts.findLast(({ taps }) => taps.length > 0);
  const flat = (asking?.taps ?? []).flat();
  // The same question once more, or with another pick, keeps its keys.
  const isSame = !isAnew && areSame(flat, standing.taps);
  const asked = asking === undefined || isSame ? standing.asked : standing.asked + 1;
  const taps: readonly Tap[] = asking === undefined ? standing.taps : flat.map(({ tap }) => tap);
  const parts = drafts.flatMap((draft) => {
    const keys =
      draft === asking ? keysOf(draft.taps, { asked, picked: standing.picked, limits }) : [];
    return cutDraft(draft, { limits, locale: standing.locale, keys });
  });
  return { parts, standing: { ...standing, asked, taps } };
}

function areSame(keys: readonly DraftKey[], taps: readonly Tap[]): boolean {
  return (
    keys.length === taps.length &&
    JSON.stringify(keys.map(({ tap }) => tap)) === JSON.stringify(taps)
  );
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
