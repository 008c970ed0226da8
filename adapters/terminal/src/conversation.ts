/**
 * A case as a conversation in lines of text.
 */
import {
  beforeDanger,
  dueOf,
  hearInputs,
  hearLine,
  offerLetter,
  type HearByHand,
  type Heard,
  type LineStanding,
} from '@keyturn/conversation';
import {
  isReading,
  isSaid,
  openCase,
  positionOf,
  repeat,
  type Case,
  type CaseEvent,
  type Chart,
  type Message,
  type Opening,
} from '@keyturn/core';
import type { FlowTexts, Rendered, Speaker } from '@keyturn/language';
import { cleanLine, type Lines } from './lines.ts';
import { layOutPage, type Page } from './page.ts';
import { helpLines } from './terminal-texts.ts';
import type { TerminalTexts } from './texts/terminal-words.ts';
import { cutTo, wrapBehind, wrapText } from './wrap.ts';

/** What is said and how it is laid out, in one language. */
export interface Spoken {
  readonly speaker: Speaker;
  readonly flowTexts: FlowTexts;
  readonly texts: TerminalTexts;
  /** Asked for before each page, as a terminal's width may change. */
  readonly page: () => Page;
  readonly formatTime: (time: Date) => string;
}

/** What a conversation is held with. */
export interface Conversation extends Spoken {
  readonly chart: Chart;
  /** What hears readings of the vehicle in a language, where a part of it comes back. */
  readonly byHandIn: (locale: string) => HearByHand;
  readonly spokenIn: (locale: string) => Spoken;
  readonly lines: Lines;
  /** True where the lines are not seen as they are typed, so that they are written out. */
  readonly echo: boolean;
  readonly write: (text: string) => void;
  readonly now: () => Date;
  /** Keeps events; the reason, where they could not be kept. */
  readonly keep: (events: readonly CaseEvent[]) => string | undefined;
}

/** How a conversation ended. */
export interface Ending {
  readonly how: 'closed' | 'aside';
  readonly case: Case;
}

/** Opens a case and takes it through to its end, or to the end of the lines. */
export async function beginCase(
  conversation: Conversation,
  given: { readonly opening: Omit<Opening, 'at'>; readonly notices?: readonly string[] },
): Promise<Ending> {
  const { chart, now, texts, flowTexts } = conversation;
  const step = openCase(chart, { ...given.opening, at: now().toISOString() });
  print(conversation, [{ kind: 'text', text: texts.title(flowTexts.name) }]);
  for (const text of given.notices ?? []) print(conversation, [{ kind: 'text', text }]);
  keep(conversation, step.events);
  return converse(conversation, step.case, step.messages);
}

/** Goes on with a case that was put aside. */
export async function continueCase(
  conversation: Conversation,
  kase: Case,
  kept: { readonly openedAt: string; readonly isTorn: boolean },
): Promise<Ending> {
  const { chart, texts, flowTexts, speaker, formatTime } = conversation;
  const { order } = kase.state;
  print(conversation, [{ kind: 'text', text: texts.title(flowTexts.name) }]);
  const when = formatTime(new Date(kept.openedAt));
  print(conversation, [
    { kind: 'text', text: texts.goingOn(when, order.length) },
    ...(kept.isTorn ? [{ kind: 'text', text: texts.torn } as const] : []),
  ]);
  if (order.length > 0) listKnown(conversation, kase);
  const { verdict, decision } = kase.state;
  const found = verdict ?? decision;
  const standing = repeat(chart, kase);
  // What a closed case was found to be is among what stands.
  if (found !== null && !standing.includes(found)) print(conversation, speaker.render([found]));
  return converse(conversation, kase, standing);
}

/** Lists every answer given so far, a line each. */
function listKnown(conversation: Conversation, kase: Case): void {
  const { speaker, texts, page, write } = conversation;
  const { width, nameOf } = page();
  const known = kase.state.order.flatMap((check): readonly string[] => {
    const answer = kase.state.answers[check]?.at(-1);
    if (isReading(answer)) return [`${nameOf(check)}: ${speaker.formatQuantity(answer)}.`];
    const value = isSaid(answer) ? answer : [];
    return speaker
      .render([{ kind: 'noted', check, answer: value }])
      .flatMap((one) => (one.kind === 'text' ? [one.text] : []));
  });
  const lines = [
    ...wrapBehind('   ', `${texts.soFar}:`, width),
    ...known.flatMap((line) => wrapBehind('   - ', line, width)),
  ];
  write(`\n${lines.join('\n')}\n`);
}

async function converse(
  begun: Conversation,
  opened: Case,
  messages: readonly Message[],
): Promise<Ending> {
  const { lines, now, chart } = begun;
  let conversation = begun;
  let standing: LineStanding = { case: opened, offers: [] };
  let question = say(conversation, messages);
  for (;;) {
    const isClosed = positionOf(standing.case).awaiting === 'nothing';
    // Whoever types can still put an answer right; lines that were written before cannot mean that.
    if (isClosed && conversation.echo) return { how: 'closed', case: standing.case };
    conversation.write(`\n${hint(conversation, standing, question)}\n> `);
    const line = await lines.next(standing.case);
    if (line === undefined) {
      conversation.write('\n');
      return { how: isClosed ? 'closed' : 'aside', case: standing.case };
    }
    const typed = cleanLine(line);
    if (conversation.echo) conversation.write(`${cutTo(typed, conversation.page().width - 2)}\n`);
    if (isClosed && typed.trim() === '') return { how: 'closed', case: standing.case };
    if (isHelp(typed)) {
      const help = helpLines(conversation.texts, conversation.page().width);
      conversation.write(`\n${help.join('\n')}\n`);
      continue;
    }
    const at = now();
    const due = dueOf(standing.case);
    if (due !== undefined && at >= due) {
      const ticked = hearInputs(chart, standing.case, {
        at: at.toISOString(),
        inputs: [{ type: 'tick' }],
      });
      keep(conversation, ticked.events);
      question = say(conversation, ticked.messages) ?? question;
      standing = ticked;
      if (typed.trim() === '') continue;
    }
    const { speaker, byHandIn } = conversation;
    const byHand = byHandIn(speaker.locale);
    const heard = hearLine({ ...conversation, byHand }, standing, {
      at: at.toISOString(),
      line: typed,
    });
    if (isClosed && heard.talk === 'stop') return { how: 'closed', case: standing.case };
    keep(conversation, heard.events);
    standing = heard;
    if (heard.language !== undefined) {
      conversation = { ...conversation, ...conversation.spokenIn(heard.language) };
      question = null;
    }
    print(
      conversation,
      (heard.notices ?? []).map((text) => ({ kind: 'text', text })),
    );
    if (heard.unclear === undefined) {
      const before = heard.talk === 'repeat' ? null : question;
      question = say(conversation, heard.messages, before) ?? question;
    } else {
      print(conversation, conversation.speaker.render(beforeDanger(heard.messages)));
      // What comes next was not asked yet.
      if (heard.messages.length > 0) question = null;
      askBack(conversation, heard, { at, due });
    }
    if (heard.talk === 'stop' || heard.talk === 'person') return { how: 'aside', case: heard.case };
  }
}

type Question = Extract<Rendered, { kind: 'question' }>;

/**
 * Prints messages; gives back the question among them. One that already stands `before` is put in
 * short, unless it has been left in between.
 */
function say(
  conversation: Conversation,
  messages: readonly Message[],
  before: Question | null = null,
): Question | null {
  const { speaker, texts, formatTime } = conversation;
  const rendered = messages.flatMap((message): readonly Rendered[] => {
    const said = speaker.render([message]);
    if (message.kind !== 'wait') return said;
    return [...said, { kind: 'text', text: texts.until(formatTime(new Date(message.due))) }];
  });
  const question = rendered.findLast((one) => one.kind === 'question') ?? null;
  const isAsked = before?.text === question?.text && !messages.some(({ kind }) => kind === 'tell');
  print(conversation, rendered, isAsked ? before?.check : undefined);
  return question;
}

function askBack(
  conversation: Conversation,
  heard: Heard,
  clock: { readonly at: Date; readonly due: Date | undefined },
): void {
  const { speaker, texts, formatTime } = conversation;
  const { unclear } = heard;
  if (unclear === undefined) return;
  const { due, at } = clock;
  if (due !== undefined && due > at) {
    const minutes = Math.ceil((due.getTime() - at.getTime()) / 60_000);
    print(conversation, [{ kind: 'text', text: texts.notYet(formatTime(due), minutes) }]);
    return;
  }
  print(conversation, speaker.askBack(unclear));
  const { width, nameOf } = conversation.page();
  const offers = heard.offers.flatMap((offer, index) => {
    const text = 'check' in offer ? `${offer.label} (${nameOf(offer.check)})` : offer.label;
    return wrapBehind(`   ${offerLetter(index)}  `, text, width);
  });
  conversation.write(offers.map((line) => `${line}\n`).join(''));
}

function print(conversation: Conversation, rendered: readonly Rendered[], asked?: string): void {
  const lines = layOutPage(rendered, conversation.page(), asked);
  conversation.write(lines.map((line) => `${line}\n`).join(''));
}

function keep(conversation: Conversation, events: readonly CaseEvent[]): void {
  const reason = conversation.keep(events);
  if (reason === undefined) return;
  print(conversation, [{ kind: 'refused', text: conversation.texts.notKept(reason) }]);
}

function isHelp(typed: string): boolean {
  return ['?', 'help', 'h'].includes(typed.trim().toLowerCase());
}

/** What can be typed now. */
function hint(
  conversation: Conversation,
  standing: LineStanding,
  question: Question | null,
): string {
  const { texts, page } = conversation;
  const text = hintText(texts, standing, question);
  return wrapText(text, page().width).join('\n');
}

function hintText(texts: TerminalTexts, standing: LineStanding, question: Question | null): string {
  const { prompt } = texts;
  const letters = standing.offers.map((_, index) => offerLetter(index)).join(', ');
  if (letters !== '') return texts.offer(letters);
  const { awaiting } = positionOf(standing.case);
  if (awaiting !== 'answer') {
    return {
      confirm: prompt.confirm,
      wait: prompt.wait,
      resume: prompt.resume,
      nothing: prompt.closed,
    }[awaiting];
  }
  const count = question?.options.length ?? 0;
  switch (question?.entry) {
    case 'choice':
      return prompt.choice(count);
    case 'choices':
      return prompt.choices(count);
    case 'date':
      return prompt.date(count);
    case 'work':
      return prompt.work;
    case 'reading':
    case undefined:
      return question?.unit === undefined ? prompt.lamp : prompt.reading(question.unit);
  }
}
