/**
 * The keys of the counter: answers and commands, figures and signs into their fields, and what was
 * typed before anything could be read.
 */
import { positionOf } from '@keyturn/core';
import { settleMs, typingMs } from '../device/settle.ts';
import { fill } from '../wording.ts';
import type { CounterVoice } from './counter-voice.ts';
import type { CounterWork } from './counter-work.ts';
import { listenToKeystrokes } from './device/keystrokes.ts';
import { signOf, TypedAhead } from './device/typed-ahead.ts';
import { isCommandInField, readKey, type CounterCommand } from './keys.ts';
import { lookUp } from './shop/scanned.ts';
import type { CounterBook } from './store/counter-book.ts';
import { cells, isHydrometerAsked } from './view/hydrometer.ts';
import { figuresInHand, mayBeBelowZero } from './view/step-card.ts';
import { emptyHand } from './view/shown.ts';
import { usualOf } from './view/usual-list.ts';
import type { CounterWords } from './words/counter-words.ts';

/** What the keys work on. */
interface CounterKeyboardSetup {
  readonly root: ShadowRoot;
  readonly book: CounterBook;
  readonly voice: CounterVoice;
  readonly work: CounterWork;
  readonly putAside: () => void;
  /** Shows how things are done, or hides it. */
  readonly switchHow: () => void;
}

/** The keys of one counter. */
export class CounterKeyboard {
  readonly #setup: CounterKeyboardSetup;
  /** Whether single keys are commands. */
  isOn = true;
  /** Since when the sentence stands that is to be answered now, in milliseconds of the epoch. */
  #askedSince = 0;
  readonly #ahead = new TypedAhead();
  /** A digit that answers unless more is typed behind it: “2 years ago”. */
  #begun: { readonly key: string; readonly timer: ReturnType<typeof setTimeout> } | undefined;
  #endKeys: () => void = () => undefined;
  readonly #onClick = (event: Event): void => {
    // The second half of a double click was meant for the question before.
    const isSecond = event instanceof MouseEvent && event.detail > 1 && this.#isHasty;
    const isKey = event
      .composedPath()
      .some((at) => at instanceof Element && at.matches('.card .key'));
    if (isSecond && isKey) event.stopImmediatePropagation();
  };

  constructor(setup: CounterKeyboardSetup) {
    this.#setup = setup;
  }

  /** Listens to what is pressed and clicked in the box of the counter. */
  listen(box: HTMLElement): void {
    box.addEventListener('click', this.#onClick, true);
    this.#endKeys = listenToKeystrokes({
      pressed: (key) => {
        this.#pressed(key);
      },
      fieldFor: (key) => this.#fieldFor(key),
      isShut: (field) => field.matches(typedInto) && this.#isShut,
      isCommandIn: (field, key) => this.isOn && this.#isCommandIn(field, key),
      isCode: (text) =>
        lookUp(text, this.#setup.book.shop).type !== 'unknown' ||
        this.#setup.book.onCounterBy(text) !== undefined,
      scanned: (text) => {
        void this.#setup.work.entry.enter(text, 'scanned');
      },
    });
  }

  /**
   * Signs that cannot begin what is typed are commands while nothing stands in a field. A plus can
   * be no part of a figure or a day at all; a minus begins a figure below zero and nothing else.
   */
  #isCommandIn(field: HTMLInputElement, key: string): boolean {
    const isTyped = field.matches(typedInto);
    if (key === '+' && isTyped && field.name !== 'receipt-number') return true;
    const { selectionStart, selectionEnd, value, name } = field;
    const isTypedOver = value === '' || (selectionStart === 0 && selectionEnd === value.length);
    const { inHand } = this.#setup.work;
    if (key === '-' && isTyped && isTypedOver && inHand !== undefined) {
      return !mayBeBelowZero(inHand, name);
    }
    return (
      value === '' && (isTyped || (name === 'line' && key !== 'Delete')) && isCommandInField(key)
    );
  }

  /** Listens no more. */
  stop(): void {
    clearTimeout(this.#begun?.timer);
    this.#endKeys();
  }

  /** Draws the counter, and notes since when its question stands. */
  whileDrawn(draw: () => void): void {
    const before = this.#asked;
    draw();
    if (this.#asked !== before) this.#askedSince = Date.now();
  }

  /** Takes the figures that were typed; one that cannot be taken is typed anew. */
  async takeFigures(): Promise<void> {
    const wrong = await this.#setup.work.fields.takeFigures();
    const field = this.#figureFieldOf(wrong ?? '');
    if (!(field instanceof HTMLInputElement)) return;
    field.focus();
    field.select();
  }

  /**
   * Goes on from one field to the next that is empty, also from one that was left empty, so that no
   * figure lands in the field of another; takes all of them behind the last.
   */
  async nextFigure(check: string): Promise<void> {
    if (await this.#setup.work.fields.takesOther()) return;
    const isWrong = await this.#setup.work.fields.isWrong(check);
    const field = this.#figureFieldOf(check);
    if (isWrong && field instanceof HTMLInputElement) {
      const typed = this.#ahead.release();
      const keys = 'keys' in typed ? typed.keys : typed.figures.join(signOf('Enter'));
      if (keys !== '') this.#notTaken(keys);
      field.focus();
      field.select();
      return;
    }
    const next = this.#emptyAfter(field);
    if (next === undefined) await this.takeFigures();
    else {
      next.focus();
      this.takeTypedAhead();
    }
  }

  /**
   * The empty field behind one; behind a filled one that is not the last, any that is empty. What was
   * gone past of a vehicle was not read there, and is not asked for again.
   */
  #emptyAfter(field: HTMLElement | null): HTMLInputElement | undefined {
    const fields = this.#figureFields;
    const at = fields.findIndex((one) => one === field);
    const isEmpty = ({ value }: HTMLInputElement): boolean => value.trim() === '';
    const behind = fields.slice(at + 1).find(isEmpty);
    const isDone = at === fields.length - 1 || fields.slice(at, at + 1).some(isEmpty);
    const { byHand } = this.#setup.work.hand;
    return behind ?? (isDone || byHand ? undefined : fields.find(isEmpty));
  }

  #pressed(key: string): void {
    if (this.#goesOnBegun(key)) return;
    const meant = this.isOn || key.length > 1 ? readKey(key) : undefined;
    const isDigit = /^\p{Nd}$/u.test(key);
    const isSign = /^[-./,:]$/u.test(key);
    // ".2" begins with its mark.
    const isMark = /^[.,]$/u.test(key);
    const isAnswer = typeof meant === 'object' || answers.includes(meant);
    if (this.#setup.work.isWaiting) {
      const isFigure = isDigit || isMark || key === '-' || (isSign && this.#ahead.isFigure);
      if (isAnswer || isFigure || key === 'Backspace') {
        this.#ahead.keep(key);
        return;
      }
    } else {
      // A digit or its mark goes into the field of a figure, and a sign behind it.
      const field = this.#figureField;
      const isTyped = field !== undefined && (isDigit || isMark || (isSign && field.value !== ''));
      const isMeant = meant !== undefined && meant !== 'leave';
      const isLost = this.#ahead.isLost(Date.now()) && (isMeant || isTyped);
      if (isLost || (isAnswer && !isTyped && this.#isHasty)) {
        this.#notTaken(key);
        return;
      }
      if (isTyped) {
        typeInto(field, field.value + key);
        return;
      }
    }
    const { inHand, screen } = this.#setup.work;
    if (isDigit && meant !== undefined && inHand === undefined && screen === 'counter') {
      this.#begin(key);
    } else if (typeof meant === 'string') this.command(meant);
    else if (meant !== undefined && this.#isToldInWords) this.#begin(meant.number);
    else if (meant !== undefined) this.#pick(meant.number);
  }

  #pick(number: string): void {
    this.#find(`.card [data-key="${number}"]`)?.click();
  }

  /**
   * A digit picks its answer where nothing is typed behind it in a moment. One that is no answer before
   * there is a part goes into the line: a receipt begins with it.
   */
  #begin(key: string): void {
    const asked = this.#asked;
    const line = this.#setup.work.inHand === undefined ? this.#line : undefined;
    if (line !== undefined && this.#find(`.card [data-key="${key}"]`) === null) {
      typeInto(line, line.value + key);
      return;
    }
    const timer = setTimeout(() => {
      this.#begun = undefined;
      if (this.#asked === asked) this.#pick(key);
    }, typingMs);
    this.#begun = { key, timer };
  }

  /** Types a digit that was begun with, and what goes on behind it, into the line. False: it does not. */
  #goesOnBegun(key: string): boolean {
    const line = this.#line;
    if (this.#begun === undefined || line === undefined) return false;
    clearTimeout(this.#begun.timer);
    const { key: first } = this.#begun;
    this.#begun = undefined;
    if (!/^[\p{L}\p{Nd} .,/-]$/u.test(key)) {
      this.#pick(first);
      return key === 'Enter';
    }
    typeInto(line, line.value + first + key);
    return true;
  }

  /**
   * True where a text may begin with a digit that else picks an answer: the number of a receipt before
   * there is a part, and a day where it is asked for in words.
   */
  get #isToldInWords(): boolean {
    const { inHand, screen, hand } = this.#setup.work;
    if (screen !== 'counter') return false;
    if (inHand === undefined) return true;
    if (hand.told !== null) return false;
    const position = positionOf(inHand.back.sitting.case);
    const check = hand.asking ?? ('check' in position ? position.check : '');
    const isDay = inHand.flow.checks[check]?.form.kind === 'date';
    return isDay && inHand.back.sitting.case.state.policy === null;
  }

  get #line(): HTMLInputElement | undefined {
    const line = this.#find('input[name=line]');
    return line instanceof HTMLInputElement ? line : undefined;
  }

  /** What was typed while an answer was worked out: figures go into their fields, nothing else does. */
  takeTypedAhead(): void {
    const typed = this.#ahead.release();
    if ('keys' in typed) {
      if (typed.keys !== '') this.#notTaken(typed.keys);
      return;
    }
    const fields = this.#figureFields.filter(({ value }) => value === '');
    for (const [index, text] of typed.figures.entries()) {
      const field = fields[index];
      if (field !== undefined) typeInto(field, text);
    }
    const left = typed.figures.slice(fields.length);
    if (left.length > 0)
      this.#notTaken([fields.length > 0 ? '' : [], left].flat().join(signOf('Enter')));
  }

  /** Says which keys did nothing, and why. */
  #notTaken(keys: string): void {
    const lost = this.#ahead.lose(signOf(keys), Date.now());
    const said = [fill(this.#words.notTaken, { keys: lost })];
    const { lastTaken } = this.#setup.work;
    if (lastTaken !== undefined) said.push(fill(this.#words.takenLast, { what: lastTaken }));
    this.#setup.work.notice(said.join(' '));
  }

  /** True while nothing is typed into the fields of figures and days. */
  get #isShut(): boolean {
    return this.#setup.work.isWaiting || this.#ahead.isLost(Date.now());
  }

  /** What is asked, to tell one question from the next: two lists have one sentence. */
  get #asked(): string {
    const asked = this.#setup.root.querySelectorAll('#asked, .usual li');
    return [...asked].map(({ textContent }) => textContent).join();
  }

  /** True while what is pressed can only be meant for a sentence that stood there before. */
  get #isHasty(): boolean {
    return Date.now() - this.#askedSince < settleMs;
  }

  /**
   * A letter begins a code or a sentence, and goes into the line; a digit, or the mark
   * before it, that is pressed where figures or a day are asked for goes into the first empty field.
   */
  #fieldFor(key: string): HTMLInputElement | undefined {
    if (this.#begun !== undefined) return undefined;
    if (/^\p{L}$/u.test(key) && this.isOn) return this.#line;
    return /^[\p{Nd}.,]$/u.test(key) && !this.#isShut ? this.#figureField : undefined;
  }

  /** The field that a figure or a day goes into: the one in hand, the first empty one, or the first. */
  get #figureField(): HTMLInputElement | undefined {
    const fields = this.#figureFields;
    const inHand = fields.find((field) => field === this.#focused);
    return inHand ?? fields.find(({ value }) => value === '') ?? fields[0];
  }

  get #focused(): Element | null {
    return this.#setup.root.activeElement;
  }

  #figureFieldOf(check: string): HTMLElement | null {
    return this.#find(`#figure-${check}`);
  }

  get #figureFields(): readonly HTMLInputElement[] {
    return [...this.#setup.root.querySelectorAll<HTMLInputElement>(typedInto)];
  }

  /** Does what a key is for. */
  command(command: CounterCommand): void {
    switch (command) {
      case 'new':
        this.#setup.work.layAside();
        return;
      case 'next': {
        const [first] = this.#setup.work.waiting;
        if (first !== undefined) void this.#setup.work.choose(first.id);
        return;
      }
      case 'aside':
        this.#setup.putAside();
        return;
      case 'correct':
        this.#correctBefore();
        return;
      case 'danger':
        if (this.#setup.work.back !== undefined)
          this.#setup.work.hold({ ...emptyHand, open: 'danger' });
        return;
      case 'dont-know':
      case 'cannot':
        this.#leaveUnanswered(command);
        return;
      case 'kit':
        this.#find('.key.kit')?.click();
        return;
      case 'how':
        this.#setup.switchHow();
        return;
      case 'take':
        this.#find('.card .key.take:not([data-key])')?.click();
        return;
      case 'scan':
        this.#find('input[name=line]')?.focus();
        return;
      case 'leave':
        (this.#setup.root.activeElement as HTMLElement | null)?.blur();
        this.#setup.work.backToCounter();
        this.#find('#asked')?.focus({ preventScroll: true });
    }
  }

  /**
   * What is asked is not known or cannot be done: of several figures the one in whose field it is
   * said; of a list each line is told by itself.
   */
  #leaveUnanswered(talk: 'dont-know' | 'cannot'): void {
    const { inHand, hand, screen } = this.#setup.work;
    const isBegun = [hand.open, hand.told, hand.offered].some((one) => one !== null);
    if (inHand === undefined || isBegun || screen !== 'counter' || this.#hasWordsLeft()) return;
    const figures = figuresInHand(hand, inHand);
    if (hand.byHand) {
      this.#passField();
      return;
    }
    const inField = figures.find((check) => this.#figureFieldOf(check) === this.#focused);
    const offered = isHydrometerAsked({ hand }, inHand) ? cells : undefined;
    const check = hand.asking ?? offered ?? (figures.length > 1 ? inField : undefined);
    if (check !== undefined) void this.#setup.work.take({ type: 'unanswered', check, talk });
    else if (usualOf({ hand }, inHand).length > 0) this.#setup.work.notice(this.#words.usualOther);
    else if (isTalkTo[talk].includes(positionOf(inHand.back.sitting.case).awaiting)) {
      void this.#setup.work.take({ type: 'talk', talk });
    }
  }

  /**
   * Words that answered nothing, or stand in the line, are not passed over by one key: it is said, and
   * the next one counts.
   */
  #hasWordsLeft(): boolean {
    const { work } = this.#setup;
    const { wordsLeft } = this.#words;
    const isLeft = work.isUnclear || (this.#line?.value ?? '').trim() !== '';
    if (!isLeft || this.#figureFields.length > 0 || work.notices.includes(wordsLeft)) return false;
    work.notice(wordsLeft);
    return true;
  }

  /** What was not read on the vehicle stays empty; behind the last field what was read is taken. */
  #passField(): void {
    const fields = this.#figureFields;
    const at = fields.findIndex((field) => field === this.#focused);
    const isLast = at === fields.length - 1;
    if (isLast && fields.some(({ value }) => value.trim() !== '')) void this.takeFigures();
    else fields[(at + 1) % fields.length]?.focus();
  }

  /** The answer before the one that is being put right, or the last. */
  #correctBefore(): void {
    const order = this.#setup.work.back?.sitting.case.state.order ?? [];
    const { asking } = this.#setup.work.hand;
    const place = asking === null ? order.length : order.indexOf(asking);
    const before = order[place - 1];
    if (before !== undefined) this.#setup.work.hold({ ...emptyHand, asking: before });
  }

  #find(selector: string): HTMLElement | null {
    return this.#setup.root.querySelector(selector);
  }

  get #words(): CounterWords {
    return this.#setup.voice.words;
  }
}

/** The commands that answer a question. */
const answers: readonly (CounterCommand | undefined)[] = ['take', 'dont-know', 'cannot'];

/** Where it can be said: a caution cannot be unknown, but what it asks may be impossible. */
const isTalkTo: Readonly<Record<'dont-know' | 'cannot', readonly string[]>> = {
  'dont-know': ['answer'],
  cannot: ['answer', 'confirm'],
};

/** The fields of figures and days. */
const typedInto = '.figures input:not([type=file]), .typed input';

/** Types a text into a field in place of what stood there. */
function typeInto(field: HTMLInputElement, text: string): void {
  field.focus({ preventScroll: true });
  field.value = text;
  field.dispatchEvent(new Event('input', { bubbles: true }));
}
