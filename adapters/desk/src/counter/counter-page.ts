/**
 * The counter in a page: draws it, moves the focus, and hands on what is pressed, typed, scanned
 * and seen by the camera.
 */
import { positionOf, type Flow } from '@keyturn/core';
import { localeNames } from '@keyturn/language';
import { render } from 'lit-html';
import { fill } from '../wording.ts';
import type { LoadCounterPack } from './counter-pack.ts';
import { CounterShop } from './counter-shop.ts';
import { CounterVoice } from './counter-voice.ts';
import { CounterWork } from './counter-work.ts';
import { canReadCodes, watchForCode } from './device/camera.ts';
import { listenToKeystrokes } from './device/keystrokes.ts';
import { signOf, TypedAhead } from './device/typed-ahead.ts';
import { settleMs } from '../device/settle.ts';
import type { CounterEngine } from './engine/counter-engine.ts';
import { isCommandInField, readKey, type CounterCommand } from './keys.ts';
import { lookUp } from './shop/scanned.ts';
import { CounterBook } from './store/counter-book.ts';
import type { CounterStore } from './store/counter-store.ts';
import { page } from './view/page.ts';
import { usualOf } from './view/usual-list.ts';
import { emptyHand, type Actions, type Shown } from './view/shown.ts';
import type { CounterWords } from './words/counter-words.ts';

/** What a counter is shown with. */
export interface CounterSetup {
  readonly host: HTMLElement;
  readonly root: ShadowRoot;
  /** The flows of returns, by id. */
  readonly flows: Readonly<Record<string, Flow>>;
  readonly engine: CounterEngine;
  readonly store: CounterStore;
  /** False where the browser keeps nothing, which is said. */
  readonly isKept: boolean;
  readonly loadPack: LoadCounterPack;
}

/** The counter. */
export class CounterPage {
  readonly #setup: CounterSetup;
  readonly #box = document.createElement('div');
  readonly #voice: CounterVoice;
  readonly #book: CounterBook;
  readonly #work: CounterWork;
  readonly #shop: CounterShop;
  /** The day whose list is shown; empty: today. */
  #day = '';
  #hasKeys = true;
  #hasHow = false;
  #hasListed = false;
  /** Since when the sentence stands that is to be answered now, in milliseconds of the epoch. */
  #askedSince = 0;
  readonly #ahead = new TypedAhead();
  #endCamera: (() => void) | undefined;
  #endKeys: () => void = () => undefined;
  #endWatch: () => void = () => undefined;
  readonly #onClick = (event: Event): void => {
    // The second half of a double click was meant for the question before.
    const isSecond = event instanceof MouseEvent && event.detail > 1 && this.#isHasty;
    const isKey = event
      .composedPath()
      .some((at) => at instanceof Element && at.matches('.card .key'));
    if (isSecond && isKey) event.stopImmediatePropagation();
  };

  constructor(setup: CounterSetup) {
    this.#setup = setup;
    this.#voice = new CounterVoice(setup.loadPack, setup.flows);
    this.#book = new CounterBook(setup.store, setup.flows);
    const { flows, engine, host } = setup;
    const [book, voice] = [this.#book, this.#voice];
    const show = (isMoved: boolean): void => {
      this.#show(isMoved);
    };
    const goOnIn = (tag: string): void => {
      host.lang = tag;
    };
    this.#work = new CounterWork({ flows, engine, book, voice, show, goOnIn });
    this.#shop = new CounterShop({ flows, engine, book, work: this.#work, show });
  }

  /** Shows the counter with what was kept. */
  async begin(wanted: string): Promise<void> {
    await this.#voice.speak(wanted);
    await this.#book.read();
    this.#setup.root.replaceChildren(this.#box);
    this.#box.addEventListener('click', this.#onClick, true);
    this.#endKeys = listenToKeystrokes({
      pressed: (key) => {
        this.#pressed(key);
      },
      fieldFor: (key) => this.#fieldFor(key),
      isShut: (field) => field.matches(typedInto) && this.#isShut,
      isCommandIn: (field, key) =>
        field.matches(`input[name=line], ${typedInto}`) && this.#hasKeys && isCommandInField(key),
      isCode: (text) =>
        lookUp(text, this.#book.shop).type !== 'unknown' ||
        this.#book.onCounterBy(text) !== undefined,
      scanned: (text) => {
        void this.#work.entry.enter(text, 'scanned');
      },
    });
    this.#endWatch = this.#book.watch(() => void this.#work.readAgain());
    await this.#work.begin(this.#setup.isKept);
  }

  /** Ends what runs: the counter has left the page. */
  stop(): void {
    this.#endCamera?.();
    this.#endKeys();
    this.#endWatch();
  }

  /** Goes on in another language. */
  async changeLanguage(wanted: string): Promise<void> {
    try {
      await this.#voice.speak(wanted);
    } catch {
      this.#work.notice(this.#words.noLanguage);
    }
    await this.#work.tellAnew();
  }

  #show(isMoved: boolean): void {
    const before = this.#asked;
    render(page(this.#shown()), this.#box);
    if (this.#asked !== before) this.#askedSince = Date.now();
    this.#runCamera();
    if (isMoved) this.#bringToHand();
    if (!this.#work.isWaiting) this.#takeTypedAhead();
  }

  #shown(): Shown {
    const [voice, book, work] = [this.#voice, this.#book, this.#work];
    const { today } = work;
    return {
      words: voice.words,
      locale: voice.tag,
      locales: localeNames,
      speakerFor: (part) => voice.speakerFor(part),
      textsFor: (part) => voice.textsFor(part),
      vehicleNames: voice.vehicleNames,
      shop: book.shop,
      shopFaults: this.#shop.faults,
      screen: work.screen,
      inHand: work.inHand,
      waiting: work.waiting,
      returns: book.here,
      today,
      day: this.#day === '' ? today : this.#day,
      notices: work.notices,
      listedBefore: work.entry.listedBefore,
      again: work.screen === 'day' ? work.slips.again : undefined,
      hasKeys: this.#hasKeys,
      hasHow: this.#hasHow,
      hasListed: this.#hasListed,
      hasCamera: canReadCodes(),
      hand: work.hand,
      act: this.#actions,
    };
  }

  /** Moves the focus to what is to be done next, unless somebody is typing elsewhere. */
  #bringToHand(): void {
    const typing = this.#setup.root.activeElement;
    if (typing instanceof HTMLInputElement && typing.closest('.facts') !== null) return;
    const fields = [
      ...this.#setup.root.querySelectorAll<HTMLInputElement>(
        '.figures input, .day-entry input, input[name=lead]',
      ),
    ];
    const to = fields.find(({ value }) => value === '') ?? fields[0] ?? this.#find('#asked');
    to?.focus({ preventScroll: true });
    // What was refused is typed anew.
    if (to instanceof HTMLInputElement && to.closest('.day-entry') !== null) to.select();
    // Whoever has pointed to something further down goes on at the top.
    this.#find('.page')?.scrollIntoView({ block: 'start' });
  }

  /** Looks for a code as long as the camera is open. */
  #runCamera(): void {
    const video = this.#setup.root.querySelector('video');
    if (video === null) {
      this.#endCamera?.();
      this.#endCamera = undefined;
      return;
    }
    if (this.#endCamera !== undefined) return;
    let isClosed = false;
    this.#endCamera = () => {
      isClosed = true;
    };
    const found = (text: string): void => {
      this.#work.holdNothing();
      void this.#work.entry.enter(text, 'scanned');
    };
    watchForCode(video, found).then(
      (end) => {
        if (isClosed) end();
        else this.#endCamera = end;
      },
      (error: unknown) => {
        const reason = error instanceof Error ? error.message : String(error);
        this.#work.holdNothing();
        this.#work.notice(fill(this.#words.cameraFailed, { reason }));
      },
    );
  }

  readonly #actions: Actions = {
    take: (...inputs) => {
      void this.#work.take(...inputs);
    },
    answer: (check, value) => {
      void this.#work.answer(check, value);
    },
    takeList: (answers) => {
      this.#hasListed = true;
      void this.#work.take({ type: 'answers', answers });
    },
    enter: (text) => {
      // The next key is an answer again, whatever becomes of the line.
      this.#bringToHand();
      void this.#work.entry.enter(text, 'typed');
    },
    hand: (change) => {
      this.#work.hold(change);
    },
    command: (command) => {
      this.#command(command);
    },
    choose: (id) => {
      void this.#work.choose(id);
    },
    begin: (part) => {
      void this.#work.open({ part });
    },
    practise: () => {
      void this.#shop.practise();
    },
    type: (check, text) => {
      this.#work.fields.typed(check, text);
    },
    day: (check, text) => {
      void this.#work.fields.day(check, text);
    },
    takeFigures: () => {
      void this.#takeFigures();
    },
    nextFigure: (check) => {
      void this.#nextFigure(check);
    },
    tell: (field, text) => {
      this.#work.tell(field, text);
    },
    fetchPart: (number) => {
      void this.#work.entry.fetchPart(number);
    },
    receipt: (number) => {
      void this.#work.entry.receipt(number);
    },
    price: (text) => {
      this.#work.price(text);
    },
    oldUnit: (told) => {
      void this.#work.take({ type: 'context', set: { 'sale.oldUnit': told } });
    },
    boughtOn: (by) => {
      this.#work.alter({ diagnosis: { by } });
    },
    caseFile: (file) => {
      void this.#work.evidence.caseFile(file);
    },
    useCase: (which) => {
      void this.#work.evidence.useCase(which);
    },
    takeTold: () => {
      void this.#work.entry.takeTold();
    },
    putAside: () => {
      void this.#putAside();
    },
    intoList: () => {
      void this.#work.intoList();
    },
    goodwill: (name) => {
      this.#work.goodwill(name);
    },
    remove: () => {
      void this.#work.remove();
    },
    shopFile: (file) => {
      void this.#shop.readFile(file);
    },
    forgetShop: () => {
      void this.#shop.forget();
    },
    go: (screen) => {
      this.#day = '';
      this.#work.go(screen);
    },
    pickDay: (day) => {
      this.#day = day;
      this.#show(false);
    },
    notice: (text) => {
      this.#work.notice(text);
    },
    switchKeys: () => {
      this.#hasKeys = !this.#hasKeys;
      this.#show(false);
    },
    language: (tag) => {
      this.#setup.host.lang = tag;
    },
    print: () => {
      void this.#print();
    },
    printAgain: (id) => {
      void this.#printAgain(id);
    },
  };

  /** Takes the figures that were typed; one that cannot be taken is typed anew. */
  async #takeFigures(): Promise<void> {
    const wrong = await this.#work.fields.takeFigures();
    const field = this.#find(`#figure-${wrong ?? ''}`);
    if (!(field instanceof HTMLInputElement)) return;
    field.focus();
    field.select();
  }

  /** Goes on from one field to the next that is empty, and takes all of them behind the last. */
  async #nextFigure(check: string): Promise<void> {
    if (await this.#work.fields.takesOther()) return;
    const isWrong = await this.#work.fields.isWrong(check);
    const field = this.#find(`#figure-${check}`);
    if (isWrong && field instanceof HTMLInputElement) {
      const typed = this.#ahead.release();
      const keys = 'keys' in typed ? typed.keys : typed.figures.join(signOf('Enter'));
      if (keys !== '') this.#notTaken(keys);
      field.focus();
      field.select();
      return;
    }
    const isEmpty = field instanceof HTMLInputElement && field.value.trim() === '';
    const next = isEmpty ? undefined : this.#figureFields.find(({ value }) => value.trim() === '');
    if (next === undefined) await this.#takeFigures();
    else {
      next.focus();
      this.#takeTypedAhead();
    }
  }

  async #print(): Promise<void> {
    if (await this.#work.slips.writeNow()) window.print();
  }

  async #printAgain(id: string): Promise<void> {
    if (await this.#work.slips.writeAgain(id)) window.print();
  }

  /** The slip says since when it waits and what follows; then another can begin. */
  async #putAside(): Promise<void> {
    if (!(await this.#work.putAside())) return;
    window.print();
    this.#work.layAside(true);
  }

  #pressed(key: string): void {
    const meant = this.#hasKeys || key.length > 1 ? readKey(key) : undefined;
    const isDigit = /^\p{Nd}$/u.test(key);
    const isSign = /^[-./,:]$/u.test(key);
    const isAnswer = typeof meant === 'object' || answers.includes(meant);
    if (this.#work.isWaiting) {
      const isFigure = isDigit || key === '-' || (isSign && this.#ahead.isFigure);
      if (isAnswer || isFigure || key === 'Backspace') {
        this.#ahead.keep(key);
        return;
      }
    } else {
      // A digit goes into the field of a figure, and a sign behind it.
      const field = this.#figureField;
      const isTyped = field !== undefined && (isDigit || (isSign && field.value !== ''));
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
    if (typeof meant === 'string') this.#command(meant);
    else if (meant !== undefined) this.#find(`.card [data-key="${meant.number}"]`)?.click();
  }

  /** What was typed while an answer was worked out: figures go into their fields, nothing else does. */
  #takeTypedAhead(): void {
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
    const { lastTaken } = this.#work;
    if (lastTaken !== undefined) said.push(fill(this.#words.takenLast, { what: lastTaken }));
    this.#work.notice(said.join(' '));
  }

  /** True while nothing is typed into the fields of figures and days. */
  get #isShut(): boolean {
    return this.#work.isWaiting || this.#ahead.isLost(Date.now());
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
   * A letter begins a code or a sentence, and goes into the line; a digit that is pressed where
   * figures or a day are asked for goes into the first empty field.
   */
  #fieldFor(key: string): HTMLInputElement | undefined {
    if (/^\p{L}$/u.test(key) && this.#hasKeys) {
      const line = this.#find('input[name=line]');
      return line instanceof HTMLInputElement ? line : undefined;
    }
    return /^\p{Nd}$/u.test(key) && !this.#isShut ? this.#figureField : undefined;
  }

  /** The field that a figure or a day goes into: the one in hand, the first empty one, or the first. */
  get #figureField(): HTMLInputElement | undefined {
    const fields = this.#figureFields;
    const inHand = fields.find((field) => field === this.#setup.root.activeElement);
    return inHand ?? fields.find(({ value }) => value === '') ?? fields[0];
  }

  get #figureFields(): readonly HTMLInputElement[] {
    return [...this.#setup.root.querySelectorAll<HTMLInputElement>(typedInto)];
  }

  #command(command: CounterCommand): void {
    switch (command) {
      case 'new':
        this.#work.layAside();
        return;
      case 'next': {
        const [first] = this.#work.waiting;
        if (first !== undefined) void this.#work.choose(first.id);
        return;
      }
      case 'aside':
        this.#actions.putAside();
        return;
      case 'correct':
        this.#correctBefore();
        return;
      case 'danger':
        if (this.#work.back !== undefined) this.#work.hold({ ...emptyHand, open: 'danger' });
        return;
      case 'dont-know':
      case 'cannot':
        this.#leaveUnanswered(command);
        return;
      case 'how':
        this.#hasHow = !this.#hasHow;
        this.#show(false);
        return;
      case 'take':
        this.#find('.card .key.take:not([data-key])')?.click();
        return;
      case 'scan':
        this.#find('input[name=line]')?.focus();
        return;
      case 'leave':
        (this.#setup.root.activeElement as HTMLElement | null)?.blur();
        this.#work.backToCounter();
        this.#find('#asked')?.focus({ preventScroll: true });
    }
  }

  /** What is asked is not known or cannot be done; of a list each line is told by itself. */
  #leaveUnanswered(talk: 'dont-know' | 'cannot'): void {
    const { inHand, hand, screen } = this.#work;
    const isBegun = [hand.open, hand.told, hand.offered].some((one) => one !== null);
    if (inHand === undefined || isBegun || screen !== 'counter') return;
    if (hand.asking !== null)
      void this.#work.take({ type: 'unanswered', check: hand.asking, talk });
    else if (usualOf({ hand }, inHand).length > 0) this.#work.notice(this.#words.usualOther);
    else if (isTalkTo[talk].includes(positionOf(inHand.back.sitting.case).awaiting)) {
      void this.#work.take({ type: 'talk', talk });
    }
  }

  /** The answer before the one that is being put right, or the last. */
  #correctBefore(): void {
    const order = this.#work.back?.sitting.case.state.order ?? [];
    const { asking } = this.#work.hand;
    const place = asking === null ? order.length : order.indexOf(asking);
    const before = order[place - 1];
    if (before !== undefined) this.#work.hold({ ...emptyHand, asking: before });
  }

  #find(selector: string): HTMLElement | null {
    return this.#setup.root.querySelector(selector);
  }

  get #words(): CounterWords {
    return this.#voice.words;
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
const typedInto = '.figures input:not([type=file]), .day-entry input';

/** Types a text into a field in place of what stood there. */
function typeInto(field: HTMLInputElement, text: string): void {
  field.focus({ preventScroll: true });
  field.value = text;
  field.dispatchEvent(new Event('input', { bubbles: true }));
}
