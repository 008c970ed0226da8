/**
 * A typed line taken through a case, whatever it is shown on afterwards.
 */
import {
  expected,
  positionOf,
  proofBeforeSale,
  repeat,
  saleCheck,
  turn,
  type Case,
  type CaseEvent,
  type Chart,
  type Input,
  type Message,
} from '@keyturn/core';
import type { Offer, Speaker, Understood } from '@keyturn/language';

/** Where a dialogue stands. */
export interface Standing {
  readonly case: Case;
  /** Answers that the last line may have meant, to be picked by letter. */
  readonly offers: readonly Offer[];
}

/** What came of a line. */
export interface Heard extends Standing {
  readonly events: readonly CaseEvent[];
  readonly messages: readonly Message[];
  /** What is asked back: what was not understood, or whether there is a danger beside what was. */
  readonly unclear?: Unclear;
  /** The language to go on in from here. */
  readonly language?: string;
  /** What is said of it before the messages. */
  readonly notices?: readonly string[];
  /** What was asked for by talk: `why`, `stop`, `person`. */
  readonly talk?: string;
}

/** What of a line is not certain. */
export type Unclear = Extract<Understood, { type: 'offers' | 'unclear' }>;

/**
 * Hears readings of the vehicle where a part of it comes back: what is put in for them, and what is
 * said of them. Undefined where a line tells none. `understood` is what it means without that.
 */
export type HearByHand = (
  chart: Chart,
  kase: Case,
  given: { readonly at: string; readonly line: string; readonly understood: Understood },
) => { readonly inputs: readonly Input[]; readonly notices: readonly string[] } | undefined;

/** What a line is heard with. */
export interface Listener {
  readonly byHand?: HearByHand | undefined;
  readonly chart: Chart;
  readonly speaker: Pick<Speaker, 'understand'>;
}

/** The letter by which an offer is picked: a, b, c. */
export function offerLetter(index: number): string {
  return String.fromCodePoint(97 + index);
}

/** Takes a typed line. Pure; a line that cannot be taken leaves the case as it is. */
export function hearLine(
  listener: Listener,
  standing: Standing,
  given: { readonly at: string; readonly line: string },
): Heard {
  const { chart, speaker } = listener;
  const { case: kase } = standing;
  const { at, line } = given;
  const take = (inputs: readonly Input[]): Heard => hearInputs(chart, kase, { at, inputs });
  const untouched = { case: kase, offers: [], events: [] };
  const picked = pickedOffer(listener, standing, line);
  if (picked === 'none') return { ...untouched, messages: repeat(chart, kase) };
  if (picked !== undefined) return take([offerInput(kase, picked)]);
  // Nobody confirms by a number what they have not been asked yet.
  const byKey = asksOfDanger(standing) ? undefined : keyInput(kase, line.trim());
  if (byKey !== undefined) return take([byKey]);
  const understood = speaker.understand(line, expected(chart, kase, at));
  const byHand = listener.byHand?.(chart, kase, { at, line, understood });
  if (byHand !== undefined) {
    const { inputs, notices } = byHand;
    const told =
      inputs.length === 0 ? { ...untouched, messages: repeat(chart, kase) } : take(inputs);
    return { ...told, notices };
  }
  if (understood.type === 'input') {
    const heard = take(asOffered(understood.inputs, standing.offers));
    const { doubted } = understood;
    if (doubted === undefined || positionOf(heard.case).awaiting === 'resume') return heard;
    return { ...heard, offers: [doubted], unclear: { type: 'offers', offers: [doubted] } };
  }
  if (understood.type === 'language')
    return { ...untouched, messages: repeat(chart, kase), language: understood.locale };
  const offers = understood.type === 'offers' ? understood.offers : [];
  return { ...untouched, offers, messages: [], unclear: understood };
}

/** True where a danger is asked about, which comes before the question that stands. */
export function asksOfDanger({ offers }: Pick<Standing, 'offers'>): boolean {
  return offers.some((offer) => 'interrupt' in offer);
}

/** What is said of a line before a danger is asked about: not the step that comes next. */
export function beforeDanger(messages: readonly Message[]): readonly Message[] {
  return messages.filter(({ kind }) => !isPosition(kind) && kind !== 'caution');
}

/** An offer that is taken; of a closed case it puts right what was answered before. */
export function offerInput(kase: Case, offer: Offer): Input {
  if ('interrupt' in offer) return { type: 'interrupt', interrupt: offer.interrupt };
  const { check, value } = offer;
  const isClosed = positionOf(kase).awaiting === 'nothing';
  const isAnswered = kase.state.answers[check] !== undefined;
  return {
    type: isClosed && isAnswered ? 'correction' : 'answers',
    answers: [{ check, value: typeof value === 'string' ? [value] : value }],
  };
}

/**
 * The offer that a line takes: by its letter, or by a yes where there is one alone. None where a no
 * says that there is no danger.
 */
function pickedOffer(
  { chart, speaker }: Listener,
  { case: kase, offers }: Standing,
  line: string,
): Offer | 'none' | undefined {
  const byLetter = offers.find((_, index) => offerLetter(index) === line.trim().toLowerCase());
  const [only] = offers;
  if (byLetter !== undefined || only === undefined || offers.length > 1) return byLetter;
  const waiting = expected(chart, kase);
  if ('interrupt' in only) {
    // What would end a danger says that there is none: "all safe" is no yes to smoke.
    const over = speaker.understand(line, { ...waiting, ...only, awaiting: 'resume' });
    if (over.type === 'input' && over.inputs[0]?.type === 'resume') return 'none';
  }
  const understood = speaker.understand(line, { ...waiting, awaiting: 'confirm' });
  if (understood.type !== 'input') return undefined;
  if (understood.inputs.every(isConfirm)) return only;
  return 'interrupt' in only && understood.talk === 'no' ? 'none' : undefined;
}

/** A figure that was just offered is the one that was offered: "sorry, I meant 12.4". */
function asOffered(inputs: readonly Input[], offers: readonly Offer[]): readonly Input[] {
  const [only, ...more] = inputs;
  if (only === undefined || more.length > 0 || !('answers' in only)) return inputs;
  const [told, ...others] = only.answers;
  if (told === undefined || others.length > 0 || !('value' in told.value)) return inputs;
  const { value: figure } = told.value;
  const offer = offers
    .filter((one) => 'check' in one)
    .find(({ value }) => typeof value !== 'string' && value.value === figure);
  if (offer === undefined || typeof offer.value === 'string') return inputs;
  return [{ type: 'answers', answers: [{ check: offer.check, value: offer.value }] }];
}

function isConfirm({ type }: Input): boolean {
  return type === 'confirm';
}

/** Number keys where a word is awaited, for a hand in a glove: 1 goes on, 2 does not. */
function keyInput(kase: Case, key: string): Input | undefined {
  const { awaiting } = positionOf(kase);
  if (key === '1' && awaiting === 'confirm') return { type: 'confirm' };
  if (key === '2' && awaiting === 'confirm') return { type: 'talk', talk: 'cannot' };
  if (key === '1' && awaiting === 'wait') return { type: 'waited' };
  if (key === '1' && awaiting === 'resume') return { type: 'resume' };
  return undefined;
}

/** Takes inputs one after another, up to the first that is refused. Pure. */
export function hearInputs(
  chart: Chart,
  kase: Case,
  given: { readonly at: string; readonly inputs: readonly unknown[] },
): Heard {
  let after = kase;
  const events: CaseEvent[] = [];
  let messages: readonly Message[] = [];
  const inputs = [...given.inputs];
  for (const input of inputs) {
    const step = turn(chart, after, { at: notBefore(after, given.at), input });
    after = step.case;
    events.push(...step.events);
    // What was asked after an earlier input of the same line has had its answer.
    messages = [...messages.filter(({ kind }) => !isPosition(kind)), ...step.messages];
    if (step.messages.some(({ kind }) => kind === 'refused')) break;
    const date = saleCheck(chart.flow);
    const isDated = step.events.some((event) => event.type === 'answered' && event.check === date);
    const proof = isDated ? proofBeforeSale(chart.flow, after.state) : undefined;
    if (proof !== undefined) inputs.push({ type: 'answers', answers: [proof] });
  }
  const talk = talkOf(given.inputs.at(-1));
  const isLeaving = talk === 'stop' || talk === 'person';
  return {
    case: after,
    offers: [],
    events,
    messages: isLeaving
      ? messages.filter(({ kind }) => kind === 'tell' || kind === 'refused')
      : messages,
    ...(talk === undefined ? {} : { talk }),
  };
}

/** When the wait in hand is over; undefined where there is none. */
export function dueOf(kase: Case): Date | undefined {
  const position = positionOf(kase);
  const due = position.awaiting === 'wait' ? kase.state.due[position.check] : undefined;
  return due === undefined ? undefined : new Date(due);
}

/** A clock that was set back must not stop a case: its time never runs backwards. */
function notBefore({ state }: Case, at: string): string {
  return Date.parse(at) < Date.parse(state.at) ? state.at : at;
}

function isPosition(kind: Message['kind']): boolean {
  return kind === 'ask' || kind === 'confirm' || kind === 'wait' || kind === 'ranking';
}

function talkOf(input: unknown): string | undefined {
  const { type, talk } = (input ?? {}) as { readonly type?: unknown; readonly talk?: unknown };
  return type === 'talk' && typeof talk === 'string' ? talk : undefined;
}
