/**
 * What is typed into the line of the counter, or scanned anywhere: a sale, a part, the case of a
 * vehicle, a return that lies here, or the clerk's own words.
 */
import { positionOf, type AnswerInput, type Input } from '@keyturn/core';
import type { ReadingsSaid } from '@keyturn/language';
import { answering } from '../engine/engine.ts';
import { dayAndTime, fill } from '../wording.ts';
import type { CounterVoice } from './counter-voice.ts';
import type { ReturnWork } from './return-work.ts';
import type { CounterEngine, HeardLine } from './engine/counter-engine.ts';
import { answersOf, contextOf, labelsOf, type KnownPart } from './return/opening.ts';
import { writtenPrice } from './return/written-price.ts';
import { isSameCode, lookUp, type Scanned } from './shop/scanned.ts';
import type { CounterReturn } from './return/counter-return.ts';
import type { CounterBook } from './store/counter-book.ts';
import { leftWords } from './vehicle/case-words.ts';
import { proofCheck } from './vehicle/case-taken.ts';
import { looksLikeCase } from './vehicle/read-vehicle-case.ts';
import { priceTyped } from './view/price-field.ts';
import { emptyHand, type Proof } from './view/shown.ts';
import type { CounterWords } from './words/counter-words.ts';

/** What the line works with. */
export interface CounterEntrySetup {
  readonly engine: CounterEngine;
  readonly book: CounterBook;
  readonly voice: CounterVoice;
  readonly work: ReturnWork;
}

/** The line of one counter. */
export class CounterEntry {
  readonly #engine: CounterEngine;
  readonly #book: CounterBook;
  readonly #voice: CounterVoice;
  readonly #work: ReturnWork;
  /** A number that was given before there was a part: that of its receipt, as far as anybody knows. */
  #receiptTyped: string | undefined;

  constructor({ engine, book, voice, work }: CounterEntrySetup) {
    this.#engine = engine;
    this.#book = book;
    this.#voice = voice;
    this.#work = work;
  }

  /** What else came back on the receipt in hand, a sentence for each: one receipt may list both. */
  get receiptElsewhere(): readonly string[] {
    const { back } = this.#work;
    if (back === undefined) return [];
    const others = this.#book.othersWithReceiptOf(back).map((one) => this.#cameOn(one));
    const sale = this.#saleInHand;
    if (others.length > 0 || sale === undefined || sale.part.part === back.part) return others;
    const { receipt, sold } = sale.sale;
    const day = this.#dayOf(`${sold}T12:00:00Z`, 'UTC');
    return [fill(this.#words.receiptOfOther, { receipt, part: this.#kindOf(sale.part), day })];
  }

  /** That another part came on the receipt in hand: it lies here, or is in the list of a day. */
  #cameOn({ part, receipt, openedAt, closed, name }: CounterReturn): string {
    const which = { receipt, part: this.#kindOf({ part, name }) };
    const zone = this.#book.shop?.policy['time-zone'];
    if (closed === null) {
      const since = dayAndTime(openedAt, this.#voice.tag);
      return fill(this.#words.receiptLying, { ...which, since });
    }
    const decision = this.#voice.textsFor(part).decisions?.[closed.decide]?.name ?? closed.decide;
    return fill(this.#words.listedBefore, {
      ...which,
      day: this.#dayOf(closed.at, zone),
      decision,
    });
  }

  /** What kind of part it is, and what it is called. */
  #kindOf({ part, name }: Pick<CounterReturn, 'part' | 'name'>): string {
    return [this.#words[part], name].filter((text) => text !== '').join(' · ');
  }

  #dayOf(at: string, timeZone: string | undefined): string {
    const how = { dateStyle: 'medium', timeZone } as const;
    return new Intl.DateTimeFormat(this.#voice.tag, how).format(new Date(at));
  }

  /** The sale that the shop's list has under the receipt in hand. */
  get #saleInHand(): Extract<Scanned, { type: 'sale' }> | undefined {
    const scanned = lookUp(this.#work.back?.receipt ?? '', this.#book.shop);
    return scanned.type === 'sale' ? scanned : undefined;
  }

  /** That the shop's list does not have the receipt in hand; undefined where it does, or has none. */
  get receiptUnlisted(): string | undefined {
    const { receipt = '' } = this.#work.back ?? {};
    const sales = this.#book.shop?.sales ?? [];
    const isListed = sales.some((sale) => isSameCode(sale.receipt, receipt));
    if (receipt.trim() === '' || sales.length === 0 || isListed) return undefined;
    return fill(this.#words.receiptUnlisted, { receipt });
  }

  /** Begins with a part of which nothing is known but what was typed of its receipt. */
  async begin(part: KnownPart['part']): Promise<void> {
    const receiptTyped = this.#receiptTyped;
    this.#receiptTyped = undefined;
    await this.#work.open({ part, receiptTyped });
  }

  /** What was scanned, or typed into the line: a sale, a part, a case, a return here, or words. */
  async enter(text: string, how: 'typed' | 'scanned'): Promise<void> {
    const scanned = lookUp(text, this.#book.shop);
    const back = this.#work.back;
    const lying = this.#book.onCounterBy(text);
    if (lying !== undefined && (scanned.type === 'case' || scanned.type === 'unknown')) {
      await this.#work.choose(lying.id);
      return;
    }
    switch (scanned.type) {
      case 'sale':
        await this.#known({ part: scanned.part.part, shelf: scanned.part, sale: scanned.sale });
        return;
      case 'part':
        await this.#known({ part: scanned.part.part, shelf: scanned.part });
        return;
      case 'case':
        if (back === undefined) this.#work.notice(this.#words.caseNeedsPart);
        else await this.#work.evidence.offer(scanned.text);
        return;
      case 'unknown': {
        if (back === undefined && isLikeNumber(text)) {
          this.#receiptTyped = text.trim();
          this.#work.notice(fill(this.#words.receiptKept, { text: text.trim() }));
        } else if (back === undefined || how === 'scanned') {
          this.#work.notice(fill(this.#words.unknownScan, { text: text.slice(0, 60) }));
        } else {
          await this.#hear(text);
        }
      }
    }
  }

  /** A number or a receipt that was written into the part’s own field: what the shop knows of it. */
  async fetchPart(text: string, paid: readonly Input[] = []): Promise<void> {
    const scanned = lookUp(text, this.#book.shop);
    if (scanned.type !== 'part' && scanned.type !== 'sale') return;
    const sale = scanned.type === 'sale' ? scanned.sale : undefined;
    const known = { part: scanned.part.part, shelf: scanned.part, sale };
    if (this.#work.back?.part === known.part) await this.#fillIn(known, paid);
  }

  /** Whether a text is the number of a receipt. */
  isReceipt(text: string): boolean {
    return looksLikeReceipt(text) && !isOther(text);
  }

  /** The price that the shop’s list has with a receipt for the part in hand, as it is typed. */
  priceListed(receipt: string): string {
    const { shop } = this.#book;
    const scanned = lookUp(receipt, shop);
    if (shop === null || scanned.type !== 'sale') return '';
    const { part, sale } = scanned;
    const price = sale.price ?? part.price;
    if (price === undefined || part.part !== this.#work.back?.part) return '';
    return writtenPrice(price, shop.policy.currency, this.#voice.tag);
  }

  /** Proof of the sale, by the number of the receipt or another answer, with the price beside it. */
  async proof(given: Proof): Promise<void> {
    const { back } = this.#work;
    if (back === undefined) return;
    if ('receipt' in given && isOther(given.receipt)) {
      await this.enter(given.receipt, 'typed');
      return;
    }
    if ('receipt' in given && !looksLikeReceipt(given.receipt)) {
      const { receiptNeeded, receiptWrong } = this.#words;
      const said = given.receipt.slice(0, 40);
      this.#work.notice(said === '' ? receiptNeeded : fill(receiptWrong, { given: said }));
      return;
    }
    const price = this.#work.priceIn(back.typed[priceTyped] ?? '');
    if (price === undefined) return;
    const [receipt, answer] = 'receipt' in given ? [given.receipt, 'shown'] : ['', given.answer];
    if (receipt !== '') this.#work.alter({ receipt });
    await this.#work.take(...price, answering(back.sitting.case, 'sale-proof', [answer]));
    if (receipt === '') return;
    await this.fetchPart(receipt, price);
  }

  /** Takes a line: at once where it says one thing plainly, else once it was shown what it tells. */
  async #hear(line: string): Promise<void> {
    const back = this.#work.back;
    if (back === undefined || this.#work.isBusy) return;
    const locale = this.#voice.tag;
    const correcting = this.#work.hand.asking;
    await this.#work.trying(async () => {
      const { sitting } = back;
      const isLeft = (): boolean => this.#work.back?.sitting !== sitting;
      const ofVehicle = await this.#readingsIn(line);
      if (isLeft()) return;
      if (ofVehicle?.type === 'readings') {
        this.#work.evidence.typeReadings(ofVehicle);
        return;
      }
      const told = await this.#engine.hear(sitting, { at: now(), line, locale, correcting });
      if (isLeft()) return;
      if (told === undefined && (correcting !== null || looksLikeLabel(line))) {
        this.#work.hold({ ...emptyHand, asking: correcting });
        const { notPutRight, unknownScan } = this.#words;
        const said = correcting === null ? unknownScan : notPutRight;
        this.#work.notice(fill(said, { text: line.slice(0, 60) }));
        return;
      }
      // A figure is none of the bench because nobody says where it was read.
      if (ofVehicle !== undefined && told === undefined) {
        this.#sayUnclear(ofVehicle.unclear);
        return;
      }
      const one = told === undefined ? undefined : onlyThing(told);
      const isPlain = ofVehicle === undefined && (told === undefined || one !== undefined);
      if (isPlain && correcting === null) {
        await this.#work.turn((sat) => this.#engine.say(sat, { at: now(), line, locale }));
      } else if (one !== undefined && one.check === correcting) {
        await this.#work.take(answering(sitting.case, one.check, one.value));
      } else this.#work.hold({ ...emptyHand, asking: correcting, told: told ?? null });
    });
  }

  /** The readings of the vehicle in a line, where it is asked what was measured on that. */
  async #readingsIn(line: string): Promise<ReadingsSaid | undefined> {
    const { back, hand, evidence } = this.#work;
    if (back === undefined) return undefined;
    const position = positionOf(back.sitting.case);
    const asked = hand.asking ?? ('check' in position ? position.check : '');
    if (asked !== proofCheck) return undefined;
    return this.#engine.readings(back.sitting, { ...evidence.told(back), line });
  }

  #sayUnclear(unclear: Extract<ReadingsSaid, { type: 'unclear' }>['unclear']): void {
    const said = this.#voice.vehicleSpeaker.askBack(unclear);
    this.#work.notice(said.flatMap((one) => ('text' in one ? [one.text] : [])).join(' '));
  }

  /** Takes what a line told; what was not understood of it stays said. */
  async takeTold(): Promise<void> {
    const { told } = this.#work.hand;
    const back = this.#work.back;
    if (told === null || back === undefined) return;
    this.#work.hold(emptyHand);
    await this.#work.take(
      ...told.answers.map(({ check, value }) => answering(back.sitting.case, check, value)),
    );
    if (told.left.length === 0) return;
    this.#work.notice(leftWords(this.#words, told.left, this.#voice.tag), true);
  }

  /** A part that the shop knows: told of the return in hand where nothing is known of that yet. */
  async #known(known: KnownPart): Promise<void> {
    const back = this.#work.back;
    const receiptTyped = known.sale === undefined ? this.#receiptTyped : undefined;
    this.#receiptTyped = undefined;
    const isBare =
      back?.receipt === '' && (back.number === '' || back.number === known.shelf?.number);
    if (back === undefined || !isBare || back.part !== known.part) {
      await this.#work.open({ ...known, receiptTyped });
      return;
    }
    await this.#fillIn(known);
  }

  /** What the shop knows of the part in hand; what was answered of its sale and typed as paid stands. */
  async #fillIn(known: KnownPart, paid: readonly Input[] = []): Promise<void> {
    const { back } = this.#work;
    if (back === undefined) return;
    const { receipt, ...labels } = labelsOf(known);
    this.#work.alter({ ...labels, ...(receipt === '' ? {} : { receipt }) });
    const answers = answersOf(known.sale).filter(
      ({ check }) => back.sitting.case.state.answers[check] === undefined,
    );
    await this.#work.take(
      { type: 'context', set: contextOf(known) },
      ...paid,
      ...(answers.length === 0 ? [] : [{ type: 'answers', answers } as const]),
    );
  }

  get #words(): CounterWords {
    return this.#voice.words;
  }
}

/** What is neither a figure nor a day, whatever was asked: the code of a case, or a whole sentence. */
export function isOther(text: string): boolean {
  return (
    looksLikeCase(text) ||
    /[,;:،؛]\s*\p{L}/u.test(text) ||
    text.split(/\s+/u).filter((word) => /\p{L}/u.test(word)).length > 6
  );
}

/** The one answer that a line tells; what is refused of it is said where it is asked. */
function onlyThing({ answers, left, refused }: HeardLine): AnswerInput | undefined {
  const [one, ...others] = [...answers, ...refused.map(({ answer }) => answer)];
  return others.length + left.length === 0 ? one : undefined;
}

/** What stands on a receipt or a label rather than in a sentence: one word of letters and digits. */
function looksLikeLabel(line: string): boolean {
  return /^(?=\S*\p{Nd})(?=\S*\p{L}|\p{Nd}{8})\S{6,}$/u.test(line.trim());
}

/** What stands alone as a number of a receipt does: a word or two, with a digit. */
function isLikeNumber(text: string): boolean {
  return looksLikeReceipt(text.trim()) && text.trim().split(/\s+/u).length <= 2;
}

/** A number as receipts have it: not without a digit, and longer than the number of an answer. */
function looksLikeReceipt(text: string): boolean {
  return text.length > 1 && text.length <= 40 && /\p{Nd}/u.test(text);
}

function now(): string {
  return new Date().toISOString();
}
