/**
 * Walks: a vehicle of a case card in the hands of somebody who only writes, and what they wrote.
 */
import { readFileSync } from 'node:fs';
import { hearInputs, hearLine, type Heard, type LineStanding } from '@keyturn/conversation';
import {
  isReading,
  openCase,
  positionOf,
  turn,
  type Answer,
  type AnswerInput,
  type Case,
  type CaseEvent,
  type Input,
  type VerdictMessage,
} from '@keyturn/core';
import { convert, isUnit } from '@keyturn/electrics';
import { createSpeaker, type Speaker } from '@keyturn/language';
import { shippedTexts, type Card } from '@keyturn/terminal';
import { cards, noStart, speaker as english } from './no-start.ts';
import { start } from './play.ts';
import { valueOf } from './translate-card.ts';

const { chart } = noStart;

/** One line that was typed. */
interface WalkLine {
  /** The check in hand; or `confirm`, `wait`, `resume` where one of these was awaited. */
  readonly asked: string;
  readonly typed: string;
  /** A talk id or an interrupt, where that was meant and no answer. */
  readonly means?: string;
  /** A check whose answer was taken wrong: the line is typed only where it still is. */
  readonly corrects?: string;
  /** What is known to be made of it, and should not be. */
  readonly misheard?: string;
  /** What was misheard could not be taken back: the case was begun anew with this line. */
  readonly anew?: true;
}

/** A card, and what its person typed, in order. */
export interface Walk {
  readonly card: string;
  /** What the person knows beside the card: check to answer, as in a card. */
  readonly also?: Readonly<Record<string, string>>;
  /** Why it does not come to the card's verdict today. */
  readonly short?: string;
  readonly lines: readonly WalkLine[];
}

/** One exchange of a walk. */
export interface Exchange {
  readonly asked: string;
  /** Null where the walk has nothing to say to a question, so that the card answered by its id. */
  readonly line: WalkLine | null;
  readonly outcome: 'understood' | 'asked back' | 'wrong';
  /** What was taken and not meant. */
  readonly wrong: readonly string[];
  readonly heard: Heard;
}

/** What a walk came to. */
export interface Walked {
  readonly card: Card;
  readonly exchanges: readonly Exchange[];
  readonly verdict: VerdictMessage;
}

/** The walks of a language. */
export function walksOf(locale: string): readonly Walk[] {
  return JSON.parse(
    readFileSync(new URL(`../walks/${locale}.json`, import.meta.url), 'utf8'),
  ) as Walk[];
}

/** More turns than any walk takes. */
const mostTurns = 200;

/** Walks a card through to its verdict, in a language; nothing is known but who writes. */
export function walk({ card: id, also, lines }: Walk, locale: string): Walked {
  const found = cards.find((one) => one.id === id);
  if (found === undefined) throw new Error(`there is no card ${id}`);
  const card: Card = { ...found, answers: { ...also, ...found.answers } };
  const { role } = card.context as { readonly role?: string };
  const speaker = speakerIn(locale, role);
  const opened = openCase(chart, { id, at: start, context: role === undefined ? {} : { role } });
  const left = [...lines];
  const exchanges: Exchange[] = [];
  let standing: LineStanding = { case: opened.case, offers: [] };
  for (let turns = 0; turns < mostTurns; turns += 1) {
    const { verdict } = standing.case.state;
    if (verdict !== null) return { card, exchanges, verdict };
    if (left[0]?.anew === true) standing = { case: opened.case, offers: [] };
    const exchange = exchangeOf({ card, speaker, standing, exchanges }, left);
    exchanges.push(exchange);
    standing = exchange.heard;
  }
  throw new Error(`the walk of ${id} never ends`);
}

interface Walking {
  readonly card: Card;
  readonly speaker: Speaker;
  readonly standing: LineStanding;
  readonly exchanges: readonly Exchange[];
}

const speakers = new Map<string, Speaker>();

function speakerIn(locale: string, role: string | undefined): Speaker {
  const name = `${locale} ${role ?? ''}`;
  const known = speakers.get(name);
  if (known !== undefined) return known;
  const made = createSpeaker({
    locale,
    flowTexts: shippedTexts('no-start', locale),
    checks: chart.flow.checks,
    ...(role === undefined ? {} : { role }),
  });
  speakers.set(name, made);
  return made;
}

function exchangeOf(walking: Walking, left: WalkLine[]): Exchange {
  const { card, speaker, standing } = walking;
  const kase = standing.case;
  const { at } = kase.state;
  const asked = askedOf(kase);
  const line = nextLine(walking, asked, left);
  if (line === undefined) {
    const inputs = [unsaid(card, kase, walking.exchanges)];
    const heard = hearInputs(chart, kase, { at, inputs });
    if (heard.events.length > 0)
      return { asked, line: null, outcome: 'understood', wrong: [], heard };
    const cannot = hearInputs(chart, kase, { at, inputs: [{ type: 'talk', talk: 'cannot' }] });
    return { asked, line: null, outcome: 'understood', wrong: [], heard: cannot };
  }
  const heard = hearLine({ chart, speaker }, standing, { at, line: line.typed });
  const wrong = wronglyTaken(card, line, { before: kase, heard });
  const isTaken =
    heard.unclear === undefined && !heard.messages.some(({ kind }) => kind === 'refused');
  const outcome = wrong.length > 0 ? 'wrong' : isTaken ? 'understood' : 'asked back';
  return { asked, line, outcome, wrong, heard };
}

/** What a case waits for. */
function askedOf(kase: Case): string {
  const position = positionOf(kase);
  return position.awaiting === 'answer' ? position.check : position.awaiting;
}

/** Takes the next line out of those that are left; a confirmation is said as it was before. */
function nextLine(
  { card, standing, exchanges }: Walking,
  asked: string,
  left: WalkLine[],
): WalkLine | undefined {
  const { state } = standing.case;
  const index = left.findIndex((line) => {
    if (line.corrects === undefined) return line.asked === asked;
    const answer = state.answers[line.corrects]?.at(-1);
    return answer !== undefined && !isMeant(card, { check: line.corrects, answer });
  });
  if (index >= 0) return left.splice(index, 1)[0];
  if (asked !== 'confirm') return undefined;
  const said = exchanges.findLast(({ heard }) => heard.events.some(isConfirmed));
  return said?.line ?? undefined;
}

function isConfirmed({ type }: CaseEvent): boolean {
  return type === 'confirmed';
}

/** The card's own answer by its id, where nobody typed one; nothing said is "cannot do". */
function unsaid(card: Card, kase: Case, exchanges: readonly Exchange[]): Input {
  const position = positionOf(kase);
  if (position.awaiting === 'confirm') return { type: 'confirm' };
  if (position.awaiting === 'wait') return { type: 'waited' };
  if (position.awaiting !== 'answer') return { type: 'resume' };
  const { check } = position;
  const time = exchanges.filter(({ asked }) => asked === check).length;
  const meant = meanings(card, check);
  const value = meant[Math.min(time, meant.length - 1)];
  return value === undefined
    ? { type: 'talk', talk: 'cannot' }
    : { type: 'answers', answers: [{ check, value }] };
}

type Value = AnswerInput['value'];

/** All that a card can mean by a check: its answers, or what it knows of the context. */
function meanings(card: Card, check: string): readonly Value[] {
  const said = card.answers[check];
  const list = said === undefined ? [] : [said].flat();
  if (list.length === 0) return contextMeanings(card, check);
  return list.map((one) => {
    const value = valueOf(one, check, english, chart);
    if (value === undefined) throw new Error(`${card.id}: “${one}” is no answer to ${check}`);
    return value;
  });
}

function contextMeanings(card: Card, check: string): readonly Value[] {
  const { context } = openCase(chart, { id: card.id, at: start, context: card.context }).case.state;
  const asked = chart.flow.checks[check];
  if (asked === undefined) return [];
  if (asked.writes !== undefined) {
    const known = context[asked.writes] as unknown;
    if (Array.isArray(known)) return [known.length === 0 ? ['none'] : (known as string[])];
    const form = asked.form.kind === 'reading' ? asked.form : undefined;
    if (typeof known === 'number' && form !== undefined) return [{ value: known, unit: form.unit }];
    return known === undefined ? [] : [known as Value];
  }
  return Object.entries(asked.sets)
    .filter(([, set]) => Object.entries(set).every(([key, value]) => context[key] === value))
    .map(([choice]) => [choice]);
}

/** A reading that is told in round figures is still what was read; an age by half of what it is counted in. */
const roundly = 0.03;

/** True where an answer is what the person meant. */
function isMeant(
  card: Card,
  { check, answer }: { readonly check: string; readonly answer: Answer },
  means?: WalkLine['means'],
): boolean {
  const meant = meanings(card, check);
  if (answer === 'cannot' || answer === 'unknown') {
    return meant.length === 0 || means === 'cannot' || means === 'dont-know';
  }
  return meant.some((value) => {
    if (!isReading(answer)) {
      const ids = 'value' in value ? [bandOf(card, check, value)] : value;
      return answer.every((id) => ids.includes(id));
    }
    if (!('value' in value)) return false;
    const own = inUnit(answer, value.unit);
    const coarse = value.unit === 'a' ? inUnit({ ...answer, value: 0.5 }, 'a') : 0;
    return Math.abs(own - value.value) <= Math.max(0.005, coarse, roundly * Math.abs(value.value));
  });
}

/** The band of a card's reading, where somebody says that in place of the figure. */
function bandOf(card: Card, check: string, value: Value): string | undefined {
  const opened = openCase(chart, { id: card.id, at: start, context: card.context });
  const input: Input = { type: 'answers', answers: [{ check, value }] };
  const { messages } = turn(chart, opened.case, { at: start, input });
  return messages.find((one) => one.kind === 'reading')?.band;
}

function inUnit({ value, unit }: { readonly value: number; readonly unit: string }, own: string) {
  return unit === own || !isUnit(unit) || !isUnit(own)
    ? value
    : convert({ value, unit }, own).value;
}

/** What was taken of a line and not meant by it. */
function wronglyTaken(
  card: Card,
  line: WalkLine,
  { before, heard }: { readonly before: Case; readonly heard: Heard },
): readonly string[] {
  const { means } = line;
  const { awaiting } = positionOf(before);
  const wrong = heard.events.flatMap((event): readonly string[] =>
    isEventMeant(event, { card, means, awaiting }) ? [] : [told(event)],
  );
  const { talk, language } = heard;
  const isTalkOnly = talk !== undefined && !['cannot', 'dont-know', 'back'].includes(talk);
  return [
    ...wrong,
    ...(isTalkOnly && means !== talk ? [talk] : []),
    ...(language !== undefined && means !== 'language' ? [`language ${language}`] : []),
  ];
}

function isEventMeant(
  event: CaseEvent,
  given: { readonly card: Card; readonly means: WalkLine['means']; readonly awaiting: string },
): boolean {
  const { card, means, awaiting } = given;
  switch (event.type) {
    case 'answered':
    case 'corrected':
      return isMeant(card, event, means);
    case 'confirmed':
      return awaiting === 'confirm' && means === undefined;
    case 'waited':
      return awaiting === 'wait' && means === undefined;
    case 'resumed':
      return awaiting === 'resume' && means === undefined;
    case 'went-back':
      return means === 'back';
    case 'interrupted':
      return means === event.interrupt;
    case 'context-changed':
      return isContextOf(card, event.context);
    case 'withdrawn':
      return false;
    case 'opened':
    case 'time-passed':
      return true;
  }
}

function isContextOf(card: Card, told: Readonly<Record<string, unknown>>): boolean {
  const { context } = openCase(chart, { id: card.id, at: start, context: card.context }).case.state;
  return Object.entries(told).every(([key, value]) => {
    const known = context[key];
    if (Array.isArray(value))
      return Array.isArray(known) && value.every((one) => known.includes(one));
    return known === value;
  });
}

function told(event: CaseEvent): string {
  switch (event.type) {
    case 'answered':
    case 'corrected': {
      const { check, answer } = event;
      if (typeof answer === 'string') return `${check}: ${answer}`;
      if (!isReading(answer)) return `${check}: ${answer.join(', ')}`;
      return `${check}: ${String(answer.value)} ${answer.unit}`;
    }
    case 'interrupted':
      return event.interrupt;
    default:
      return event.type;
  }
}
