/**
 * Conversations of one channel, held over a store: whatever comes in is taken once, and what is to
 * be said goes into the same commit as what was answered.
 */
import {
  readCase,
  type CaseChange,
  type CaseStore,
  type Change,
  type Committed,
  type DueTimer,
  type Json,
  type Outgoing,
  type OutgoingChange,
} from '@keyturn/cases';
import {
  minorUnits,
  openCase,
  positionOf,
  type Case,
  type CaseEvent,
  type Chart,
  type Opening,
} from '@keyturn/core';
import type { FlowTexts, Speaker } from '@keyturn/language';
import { createSpeaker, localeTags } from '@keyturn/language';
import type { ChannelLimits, Incoming, Part } from './channel.ts';
import { dueOf } from './hear-line.ts';
import { heardBefore } from './heard-before.ts';
import type { HearByHand } from './hear-line.ts';
import type { VehicleSaid } from './vehicle-said.ts';
import { Recent, type Kept } from './recent.ts';
import { respond, type Arrival } from './respond.ts';
import type { Response } from './saying.ts';
import { blankStanding, keptStanding, readStanding, type Standing } from './standing.ts';

/** A flow beside the usual one, which a case follows where that was asked for. */
export interface OfferedFlow {
  readonly chart: Chart;
  /** The words of the flow in a language. */
  readonly texts: (locale: string) => FlowTexts;
  /** The languages in which it has words, English among them; in others English is spoken. */
  readonly locales: readonly string[];
  /**
   * What is known of every case of it before it begins.
   *
   * @defaultValue what is known of those of the usual flow
   */
  readonly opening?: ConversationsOptions['opening'];
  /**
   * What a text that is the code of a vehicle's case says of the part that comes back; undefined
   * where it is none.
   */
  readonly vehicleOf?: (text: string) => VehicleSaid | undefined;
  /** What hears readings of the vehicle in a language, where a part of it comes back. */
  readonly byHandIn?: (locale: string) => HearByHand;
}

/** What conversations are held with. */
export interface ConversationsOptions {
  readonly store: CaseStore;
  readonly chart: Chart;
  /** The words of the flow in a language. */
  readonly texts: (locale: string) => FlowTexts;
  /**
   * Further flows, for cases that are begun by their name.
   *
   * @defaultValue none
   */
  readonly offered?: readonly OfferedFlow[];
  readonly limits: ChannelLimits;
  /** What is known of every case here before it begins; `role` in it says who writes. */
  readonly opening: Pick<Opening, 'context' | 'notAsked' | 'policy'>;
  /** A new name for a case, never used before. */
  readonly newId: () => string;
  /**
   * Told of what people are heard to say, once a language is first spoken: it may be learned in
   * steps before somebody writes.
   *
   * @defaultValue it is learned when somebody writes
   */
  readonly learn?: (steps: Iterable<undefined>) => void;
}

/** What became of something that came in: taken now, or already when it came before. */
export type Taking = 'taken' | 'repeated';

/** Conversations of one channel. */
export interface Conversations {
  /** Takes what came in. What is to be said waits in the store as `Part`, to be sent from there. */
  readonly receive: (incoming: Incoming) => Promise<Taking>;
  /** Goes on with a conversation whose time has come. */
  readonly goOn: (timer: DueTimer, at: string) => Promise<Taking>;
  /** Says anew what stands, where nobody knows whether something went out; to be settled after. */
  readonly unsure: (outgoing: Pick<Outgoing, 'id' | 'to'>, at: string) => Promise<Taking>;
  /** True where a conversation has a case that is not closed. */
  readonly isOpen: (conversation: string) => Promise<boolean>;
  /** The words of a language for what a channel says of itself. */
  readonly speakerOf: (locale: string | undefined) => Speaker;
}

/** The timer of the wait in hand. */
const waitTimer = 'wait';

/** Somebody else may change the case in between; after so many times something is wrong. */
const mostTries = 8;

/** Holds the conversations of a channel. */
export function createConversations(options: ConversationsOptions): Conversations {
  const { store, opening } = options;
  const { chart, texts, offered = [] } = options;
  const usual: OfferedFlow = { chart, texts, locales: localeTags };
  /** The flow of a name; the usual one where it is none of those offered. */
  const flowNamed = (id: string | undefined): OfferedFlow =>
    offered.find(({ chart: { flow } }) => flow.id === id) ?? usual;
  const role = opening.context?.['role'];
  const recent = new Recent();
  const speakers = new Map<string, Speaker>();
  const speakerIn = (flow: OfferedFlow, wanted: string): Speaker => {
    const locale = flow.locales.includes(wanted) ? wanted : 'en';
    const name = `${flow.chart.flow.id} ${locale}`;
    const known = speakers.get(name);
    if (known !== undefined) return known;
    const made = createSpeaker({
      locale,
      flowTexts: flow.texts(locale),
      checks: flow.chart.flow.checks,
      ...(typeof role === 'string' ? { role } : {}),
    });
    const speaker = { ...made, understand: heardBefore(made.understand) };
    speakers.set(name, speaker);
    options.learn?.(made.learnAhead(flow.chart.flow.checks));
    return speaker;
  };

  const once = async (given: {
    readonly conversation: string;
    readonly received: string;
    readonly at: string;
    readonly writtenAt?: string;
    readonly locale?: string;
    readonly content: Arrival['content'];
  }): Promise<Committed> => {
    const kept = recent.get(given.conversation) ?? (await read(given));
    const { standing } = kept;
    const { content } = given;
    const flow = flowNamed(content.type === 'begin' ? content.flow : standing.flow);
    const response = respond(
      {
        chart: flow.chart,
        limits: options.limits,
        speakerOf: (locale) => speakerIn(flow, locale),
        ...(flow.vehicleOf === undefined ? {} : { vehicleOf: flow.vehicleOf }),
        ...(flow.byHandIn === undefined ? {} : { byHandIn: flow.byHandIn }),
      },
      kept,
      {
        at: given.at,
        writtenAt: given.writtenAt,
        content,
        open: () => {
          const known = flow.opening ?? opening;
          const context = { ...known.context, ...paidFor(flow.chart, known, content) };
          return openCase(flow.chart, { id: options.newId(), at: given.at, ...known, context });
        },
      },
    );
    const due = response.case === null ? undefined : dueOf(response.case);
    const after: Kept = {
      standing: { ...response.standing, flow: flow.chart.flow.id, isTimed: due !== undefined },
      case: response.case,
      version: kept.version + 1,
    };
    // Until it is known to be kept, what stands is what the store says.
    recent.forget(given.conversation);
    const committed = await store.commit(changeOf(given, response, { before: kept, after, due }));
    if (committed.type === 'kept') recent.keep(given.conversation, after);
    return committed;
  };

  const read = async (given: {
    readonly conversation: string;
    readonly locale?: string;
  }): Promise<Kept> => {
    const kept = await store.conversation(given.conversation);
    const standing =
      (kept && readStanding(kept.body)) ?? blankStanding(supportedLocale(given.locale));
    return { standing, case: await caseOf(standing), version: kept?.version ?? 0 };
  };

  const caseOf = async (standing: Standing): Promise<Case | null> => {
    if (standing.case === null) return null;
    const { chart: followed } = flowNamed(standing.flow);
    return (await readCase(store, followed, standing.case))?.case ?? null;
  };

  const take = async (given: Parameters<typeof once>[0]): Promise<Taking> => {
    for (let count = 1; ; count += 1) {
      const committed = await once(given);
      if (committed.type !== 'conflict') return committed.type === 'kept' ? 'taken' : 'repeated';
      if (count === mostTries) throw new Error(`${given.conversation} is changed without end`);
    }
  };

  return {
    receive: ({ key, ...incoming }) => take({ ...incoming, received: key }),
    goOn: ({ conversation, name, dueAt }, at) =>
      take({
        conversation,
        at,
        received: `timer ${conversation} ${name} ${dueAt}`,
        content: { type: 'time' },
      }),
    unsure: ({ id, to }, at) =>
      take({
        conversation: to,
        at,
        received: `unsure ${to} ${String(id)}`,
        content: { type: 'unsure' },
      }),
    isOpen: async (conversation) => {
      const kept = await store.conversation(conversation);
      const standing = kept && readStanding(kept.body);
      const kase = standing === undefined ? null : await caseOf(standing);
      return kase !== null && positionOf(kase).awaiting !== 'nothing';
    },
    speakerOf: (locale) => speakerIn(usual, supportedLocale(locale)),
  };
}

/** What was paid for the part that comes back, where terms and an amount of their currency are there. */
function paidFor(
  { flow }: Chart,
  { policy }: ConversationsOptions['opening'],
  content: Arrival['content'],
): NonNullable<Opening['context']> {
  if (content.type !== 'begin' || content.price === undefined) return {};
  if (flow.part === undefined || policy === undefined) return {};
  const price = minorUnits(content.price, policy.currency);
  return price === undefined ? {} : { 'sale.price': price };
}

/** The change that keeps a response. */
function changeOf(
  given: { readonly conversation: string; readonly received: string; readonly at: string },
  { case: kase, events, parts }: Response,
  {
    before,
    after,
    due,
  }: { readonly before: Kept; readonly after: Kept; readonly due: Date | undefined },
): Change {
  const { conversation, received, at } = given;
  const timer = { conversation, name: waitTimer };
  return {
    at,
    received,
    conversation: {
      key: conversation,
      expected: before.version,
      body: keptStanding(after.standing),
    },
    ...caseChange(kase, events),
    outgoing: parts.map((part: Part): OutgoingChange => ({
      to: conversation,
      body: part as unknown as Json,
    })),
    ...(due === undefined
      ? before.standing.isTimed
        ? { timers: [timer] }
        : {}
      : { timers: [{ ...timer, dueAt: due.toISOString() }] }),
  };
}

function caseChange(
  after: Case | null,
  events: readonly CaseEvent[],
): { readonly case?: CaseChange } {
  if (after === null || events.length === 0) return {};
  return { case: { expected: after.events - events.length, events, after } };
}

/** The language of a profile, or of its language alone, or English. */
function supportedLocale(locale: string | undefined): string {
  const base = locale?.split('-', 1)[0];
  return localeTags.find((tag) => tag === locale) ?? localeTags.find((tag) => tag === base) ?? 'en';
}
