/**
 * What is done with the returns at the counter: opened, taken further, ended, each of them kept. It
 * draws nothing; what takes long is done by the engine.
 */
import { minorUnits, positionOf, type AnswerInput, type Flow, type Input } from '@keyturn/core';
import { rememberedInHand, rememberInHand } from '../device/in-hand.ts';
import { answering, type Laid, type Turned } from '../engine/engine.ts';
import { dayAndTime, fill, timeOfDay } from '../wording.ts';
import { CounterEntry } from './counter-entry.ts';
import { CounterFields } from './counter-fields.ts';
import { CounterSlips } from './counter-slips.ts';
import type { CounterVoice } from './counter-voice.ts';
import { rememberedKit, rememberKit } from './device/test-kit.ts';
import { inventedReturns } from './demo/invented-shop.ts';
import type { CounterEngine } from './engine/counter-engine.ts';
import { inHandOf, withoutErrors, type Lying } from './in-hand.ts';
import {
  closedAsDecided,
  flowOf,
  stillTyped,
  type CounterReturn,
} from './return/counter-return.ts';
import { shopDayOf } from './return/day.ts';
import { readyAt } from './return/ready.ts';
import { writtenPrice } from './return/written-price.ts';
import { openReturn, type KnownPart } from './return/opening.ts';
import type { CounterBook } from './store/counter-book.ts';
import { CounterEvidence } from './vehicle/counter-evidence.ts';
import { priceTyped } from './view/price-field.ts';
import { emptyHand, type Hand, type InHand, type PartField, type Shown } from './view/shown.ts';
import { foundWords } from './view/taken.ts';
import type { CounterWords } from './words/counter-words.ts';

/** What the work is done with. */
export interface CounterWorkSetup {
  /** The flows of returns, by id. */
  readonly flows: Readonly<Record<string, Flow>>;
  readonly engine: CounterEngine;
  readonly book: CounterBook;
  readonly voice: CounterVoice;
  /** Shows how things stand; `isMoved`: what is to be done next is another thing. */
  readonly show: (isMoved: boolean) => void;
  /** A language was asked for in words; BCP 47 tag. */
  readonly goOnIn: (tag: string) => void;
}

/** The work at one counter. */
export class CounterWork {
  readonly #setup: CounterWorkSetup;
  readonly #voice: CounterVoice;
  readonly #book: CounterBook;
  /** The line, and what is scanned. */
  readonly entry: CounterEntry;
  /** The case of the vehicle. */
  readonly evidence: CounterEvidence;
  /** The figures and days that are typed. */
  readonly fields: CounterFields;
  readonly slips: CounterSlips;
  #lying: Lying | undefined;
  /** The returns whose answer is being worked on. */
  readonly #busy = new Set<string>();
  /** True while an answer is taken and what follows from it is not shown yet. */
  #isArriving = false;
  #hand: Hand = emptyHand;
  #screen: Shown['screen'] = 'counter';
  #notices: readonly string[] = [];
  #priceWrong: string | undefined;

  constructor(setup: CounterWorkSetup) {
    this.#setup = setup;
    this.#voice = setup.voice;
    this.#book = setup.book;
    this.entry = new CounterEntry({ ...setup, work: this });
    this.evidence = new CounterEvidence({ ...setup, work: this });
    this.fields = new CounterFields({ ...setup, work: this });
    this.slips = new CounterSlips({ ...setup, work: this });
  }

  /** The return in hand, as it is kept. */
  get back(): CounterReturn | undefined {
    return this.#book.open(this.#lying?.id);
  }

  /** All of the return in hand that is shown. */
  get inHand(): InHand | undefined {
    const [lying, back, flow] = [this.#lying, this.back, this.flow];
    if (lying === undefined || back === undefined || flow === undefined) return undefined;
    return inHandOf(lying, { back, flow, voice: this.#voice, isBusy: this.#busy.has(back.id) });
  }

  /** The flow of the return in hand. */
  get flow(): Flow | undefined {
    const { back } = this;
    return back === undefined ? undefined : this.#setup.flows[flowOf[back.part]];
  }

  /** What was taken last of the return in hand, in words; undefined where nothing was. */
  get lastTaken(): string | undefined {
    const { inHand } = this;
    const last = inHand?.laid.strip.findings.at(-1);
    return inHand === undefined || last === undefined
      ? undefined
      : foundWords(last, inHand.speaker);
  }

  /** Whether an answer of the return in hand is being worked on. */
  get isBusy(): boolean {
    return this.#lying !== undefined && this.#busy.has(this.#lying.id);
  }

  /** Whether the question that is shown has been answered, and the next one is not shown yet. */
  get isWaiting(): boolean {
    return this.isBusy || this.#isArriving || this.fields.isJudging;
  }

  /** Waits for something about a return, and takes nothing of it meanwhile. */
  async whileBusy<Result>(id: string, wait: () => Promise<Result>): Promise<Result> {
    this.#busy.add(id);
    this.#notices = [];
    this.#show(false);
    return wait().finally(() => this.#busy.delete(id));
  }

  /** What the hand has begun. */
  get hand(): Hand {
    return this.#hand;
  }

  /** What the clerk looks at. */
  get screen(): Shown['screen'] {
    return this.#screen;
  }

  /** Whether the last line, or day, of the return in hand could not be understood. */
  get isUnclear(): boolean {
    return this.#lying?.unclear !== undefined;
  }

  /** What is to be said of what happened last. */
  get notices(): readonly string[] {
    return this.#notices;
  }

  /** What is wrong with the price that was typed last. */
  get priceWrong(): string | undefined {
    return this.#priceWrong;
  }

  /** Today where the shop is; ISO 8601. */
  get today(): string {
    return shopDayOf(now(), this.#book.shop?.policy ?? null);
  }

  /** The other returns on the counter, in turn after the one in hand, so that each is reached. */
  get waiting(): readonly CounterReturn[] {
    return this.#book.onCounterAfter(this.#lying?.id);
  }

  /** Begins with what was kept: the return that was in hand lies there again. */
  async begin(isKept: boolean): Promise<void> {
    const { unfit } = this.#book;
    if (!isKept) this.#notices = [this.#words.notKept];
    else if (unfit > 0) this.#notices = [fill(this.#words.unfit, { count: unfit })];
    const before = rememberedInHand('counter');
    if (before !== undefined && this.#book.open(before) !== undefined) await this.choose(before);
    else this.#show(true);
  }

  /** Works out anew what is in words: the language has changed. */
  async tellAnew(): Promise<void> {
    this.#show(false);
    await this.fields.weigh();
    await this.slips.write();
  }

  /** Another window has changed something. */
  async readAgain(): Promise<void> {
    const id = this.#lying?.id;
    const version = this.#book.open(id)?.version;
    await this.#book.read();
    const now = this.#book.open(id);
    if (id !== undefined && now === undefined) this.#leaveReturn(this.#words.gone);
    else if (now !== undefined && now.version !== version) {
      await this.choose(now.id, this.#words.conflict);
    } else this.#show(false);
  }

  /** Puts a return before the clerk. */
  async choose(id: string, notice?: string): Promise<void> {
    const back = this.#book.open(id);
    if (back === undefined) return;
    await this.trying(async () => {
      const laid = await this.#setup.engine.lay(back.sitting);
      const ahead = await this.#setup.engine.ahead(back.sitting);
      this.#lie({ id, laid, unclear: undefined, figures: {}, ahead });
      this.#notices = notice === undefined ? [] : [notice];
      await this.fields.weigh();
      this.#show(true);
      await this.slips.write();
    });
  }

  #lie(lying: Lying): void {
    this.#lying = lying;
    this.#hand = emptyHand;
    this.#screen = 'counter';
    rememberInHand('counter', lying.id);
  }

  /** Something that was worked out of the return in hand is shown; `isMoved`: another thing is asked. */
  lay(change: (lying: Lying) => Lying, isMoved = false): void {
    if (this.#lying === undefined) return;
    this.#lying = change(this.#lying);
    this.#show(isMoved);
  }

  #leaveReturn(notice?: string): void {
    this.handsOff();
    this.#notices = notice === undefined ? [] : [notice];
    this.#show(true);
  }

  /** Opens a return, or goes on with that of the same receipt. */
  async open(known: KnownPart): Promise<void> {
    const same = this.#book.onCounterWith(known.sale?.receipt, known.part);
    if (same !== undefined) {
      await this.choose(same.id);
      return;
    }
    await this.trying(async () => {
      const { shop } = this.#book;
      const kit = rememberedKit({ shop: shop?.policy.shop ?? null, part: known.part });
      const back = await openReturn(this.#setup.engine, shop, { ...known, at: now(), kit });
      await this.keep(back);
      await this.choose(back.id);
    });
  }

  /** Takes answers and other inputs for the return in hand. */
  take(...inputs: readonly Input[]): Promise<void> {
    return this.turn((sitting) => this.#setup.engine.take(sitting, { at: now(), inputs }));
  }

  /** Takes an answer to a check, or puts it in place of the one before. */
  async answer(check: string, value: AnswerInput['value']): Promise<void> {
    const { back, flow } = this;
    if (back === undefined) return;
    const { case: kase } = back.sitting;
    const isKit = flow?.checks[check]?.writes === 'kit' && Array.isArray(value);
    const kit = isKit ? (value as readonly string[]).filter((id) => id !== 'none') : [];
    if (isKit) rememberKit({ shop: back.shop, part: back.part }, kit);
    const position = positionOf(kase);
    const isAsked = 'check' in position && position.check === check;
    // What was remembered was never asked in this case: something of its context has changed.
    const isChanged = isKit && !isAsked && kase.state.answers[check] === undefined;
    await this.take(isChanged ? { type: 'context', set: { kit } } : answering(kase, check, value));
  }

  /**
   * It has stood here long enough: taken, since the clock of a desk may be wrong, and said where it
   * has not by that clock.
   */
  async stood(): Promise<void> {
    const { back } = this;
    const position = back === undefined ? undefined : positionOf(back.sitting.case);
    if (back === undefined || position === undefined || !('check' in position)) return;
    const ready = readyAt(back);
    await this.answer(position.check, ['usable']);
    if (ready === undefined || ready <= now() || this.back?.id !== back.id) return;
    const time = dayAndTime(ready, this.#voice.tag);
    const what = this.#voice.speakerFor(back.part).checkName(position.check);
    this.notice(fill(this.#words.stoodEarly, { time, what }), true);
  }

  /** Takes what came in for the return in hand, one at a time. */
  async turn(work: (sitting: Laid['sitting']) => Promise<Turned>): Promise<void> {
    const id = this.back?.id;
    if (id === undefined || this.#busy.has(id)) return;
    this.#busy.add(id);
    this.#notices = [];
    this.#show(false);
    await this.trying(async () => {
      const { laid, events, unclear, language } = await work(
        this.#book.open(id)?.sitting ?? neverThere(),
      );
      this.#busy.delete(id);
      const before = this.#book.open(id);
      if (before === undefined) return;
      const isOn = events.length > 0;
      const next = {
        ...before,
        sitting: laid.sitting,
        typed: stillTyped(before, events),
        aside: isOn ? null : before.aside,
      };
      this.#book.hold(next);
      const isInHand = this.#lying?.id === id;
      if (isInHand) {
        const { asking, picked } = this.#hand;
        this.#lie({ id, laid, unclear, figures: {}, ahead: [] });
        // An answer stays to be put right until it is, or is left as it was.
        if (!isOn) this.#hand = { ...emptyHand, asking, picked };
        this.#isArriving = true;
      }
      // Kept before anything else is waited for: what is typed meanwhile goes on from there.
      await Promise.all([
        isOn ? this.keep({ ...next, version: next.version + 1 }) : undefined,
        isInHand
          ? Promise.all([this.#lookAhead(), this.fields.weigh()]).finally(() => {
              this.#arrive();
            })
          : undefined,
      ]);
      if (language !== undefined) this.#setup.goOnIn(language);
      await this.evidence.dropOlder();
      await this.slips.write();
    });
    this.#busy.delete(id);
  }

  #arrive(): void {
    this.#isArriving = false;
    this.#show(true);
  }

  /** Keeps a return; where another window was first, theirs is shown. */
  async keep(back: CounterReturn): Promise<void> {
    const held = await this.#book.keep(back);
    if (held === 'kept' || this.#lying?.id !== back.id) return;
    if (held === 'theirs') await this.choose(back.id, this.#words.conflict);
    else this.#leaveReturn(this.#words.gone);
  }

  /** The return in hand with something of it changed, kept. */
  alter(change: Partial<CounterReturn>): void {
    const back = this.back;
    if (back === undefined) return;
    this.dropErrors();
    void this.trying(() => this.keep({ ...back, ...change, version: back.version + 1 }));
  }

  /** What was refused or not understood is no longer said: the clerk has gone on. */
  dropErrors(): void {
    this.#notices = [];
    this.#priceWrong = undefined;
    if (this.#lying !== undefined) this.#lying = withoutErrors(this.#lying);
  }

  /** Works out what is asked next on the same screen. */
  async #lookAhead(): Promise<void> {
    const back = this.back;
    if (back === undefined) return;
    const ahead = await this.#setup.engine.ahead(back.sitting);
    if (this.#lying?.id === back.id && this.back?.sitting === back.sitting) {
      this.#lying = { ...this.#lying, ahead };
    }
  }

  /** The hand begins something, or goes on with it. */
  hold(change: Partial<Hand>): void {
    this.#hand = { ...this.#hand, ...change };
    this.dropErrors();
    const isOther = 'asking' in change || 'byHand' in change;
    this.#show(isOther || 'open' in change || 'offered' in change);
    if (isOther) void this.trying(() => this.fields.weigh());
  }

  /** What is picked by what stands in a field is marked; what was said stays. */
  mark(picked: Hand['picked']): void {
    this.#hand = { ...this.#hand, picked };
    this.#show(false);
  }

  /** What the hand had begun is dropped. */
  holdNothing(): void {
    this.#hand = emptyHand;
    this.#show(false);
  }

  /** Looks at another screen. */
  go(screen: Shown['screen']): void {
    this.#screen = screen;
    this.#show(true);
  }

  /** Back to the return in hand, from wherever the clerk is. */
  backToCounter(): void {
    this.#screen = 'counter';
    this.dropErrors();
    this.holdNothing();
  }

  /** The return in hand waits on the counter; another can begin. */
  layAside(isSaid = false): void {
    const since = isSaid ? this.back?.aside : null;
    const time = timeOfDay(since ?? now(), this.#voice.tag);
    this.#screen = 'counter';
    this.#leaveReturn(isSaid ? fill(this.#words.asideDone, { time }) : undefined);
  }

  /** The part waits from now on, on the charger or for whatever is asked next. False where that fails. */
  async putAside(): Promise<boolean> {
    const back = this.back;
    if (back === undefined || this.#busy.has(back.id)) return false;
    let isPut = false;
    await this.trying(async () => {
      await this.keep({ ...back, aside: now(), version: back.version + 1 });
      await this.slips.write();
      isPut = this.back?.aside !== null;
    });
    return isPut;
  }

  /** What is written of the part by hand. */
  tell(field: PartField, text: string): void {
    this.alter({ [field]: text });
    this.#show(false);
    void this.trying(() => this.slips.write());
  }

  /** The price that was paid, as it is typed. */
  async price(text: string): Promise<void> {
    const price = this.priceIn(text);
    if (price !== undefined) await this.take(...price);
  }

  /** The price in a text, to be taken; nothing of an empty one. Undefined where it is none: it is said. */
  priceIn(text: string): readonly Input[] | undefined {
    const currency = this.#book.shop?.policy.currency;
    if (currency === undefined || text.trim() === '') return [];
    const price = minorUnits(text, currency);
    if (price !== undefined) return [{ type: 'context', set: { [priceTyped]: price } }];
    const example = writtenPrice(12_900, currency, this.#voice.tag);
    const values = { given: text.trim().slice(0, 40), currency, example };
    this.dropErrors();
    this.#priceWrong = fill(this.#words.priceWrong, values);
    this.#show(false);
    return undefined;
  }

  /** Puts the return in hand into the day's list, as it was decided. */
  async intoList(): Promise<void> {
    const back = this.back;
    const closed = back === undefined ? undefined : closedAsDecided(back);
    if (back === undefined || closed === undefined || this.#busy.has(back.id)) return;
    await this.trying(async () => {
      await this.keep({ ...back, closed: { ...closed, at: now() }, version: back.version + 1 });
      const words = this.#words;
      const next = back.practice === inventedReturns[0]?.id ? [words.guideListed] : [];
      this.#leaveReturn([words.listed, ...next].join(' '));
    });
  }

  /** A lead takes it back, by name; null: not after all. */
  goodwill(name: string | null): void {
    if (name === '') {
      this.notice(this.#words.goodwillNeeded);
      return;
    }
    this.alter({ goodwill: name });
    this.#hand = emptyHand;
    this.#notices = [];
    this.#show(true);
    void this.trying(() => this.slips.write());
  }

  async remove(): Promise<void> {
    const back = this.back;
    if (back === undefined) return;
    if (!this.#hand.removing) {
      this.#hand = { ...this.#hand, removing: true };
      this.#show(false);
      return;
    }
    await this.trying(async () => {
      await this.#book.remove(back.id);
      this.#leaveReturn(this.#words.removed);
    });
  }

  /** Nothing is in hand any more: another shop's returns lie on the counter. */
  handsOff(): void {
    this.#lying = undefined;
    this.#hand = emptyHand;
    this.#notices = [];
    rememberInHand('counter', undefined);
  }

  /** Waits; what goes wrong is said. */
  async trying(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      this.notice(fill(this.#words.failed, { reason }));
    }
  }

  /** Says something, alone or beside what was said last. */
  notice(text: string, isBeside = false): void {
    const before = isBeside ? this.#notices : [];
    if (!isBeside) this.dropErrors();
    this.#notices = [...before, text];
    this.#show(false);
  }

  #show(isMoved: boolean): void {
    this.#setup.show(isMoved);
  }

  get #words(): CounterWords {
    return this.#voice.words;
  }
}

function now(): string {
  return new Date().toISOString();
}

function neverThere(): never {
  throw new Error('the return is no longer on the counter');
}
