/**
 * The counter in a page: draws it, moves the focus, and hands on what is done in it and seen by the
 * camera.
 */
import type { Flow, FlowByHand } from '@keyturn/core';
import { localeNames } from '@keyturn/language';
import { render } from 'lit-html';
import { fill } from '../wording.ts';
import { CounterKeyboard } from './counter-keyboard.ts';
import type { LoadCounterPack } from './counter-pack.ts';
import { CounterShop } from './counter-shop.ts';
import { CounterVoice } from './counter-voice.ts';
import { CounterWork } from './counter-work.ts';
import { canReadCodes, watchForCode } from './device/camera.ts';
import type { CounterEngine } from './engine/counter-engine.ts';
import { CounterBook } from './store/counter-book.ts';
import type { CounterStore } from './store/counter-store.ts';
import { page } from './view/page.ts';
import { priceTyped } from './view/price-field.ts';
import type { Actions, Proof, Shown } from './view/shown.ts';
import type { CounterWords } from './words/counter-words.ts';

/** What a counter is shown with. */
export interface CounterSetup {
  readonly host: HTMLElement;
  readonly root: ShadowRoot;
  /** The flows of returns, by id. */
  readonly flows: Readonly<Record<string, Flow>>;
  /** Of the no-start flow what asks for readings by hand. */
  readonly vehicle: FlowByHand;
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
  readonly #keyboard: CounterKeyboard;
  /** The day whose list is shown; empty: today. */
  #day = '';
  #hasHow = false;
  #hasListed = false;
  #endCamera: (() => void) | undefined;
  #endWatch: () => void = () => undefined;
  constructor(setup: CounterSetup) {
    this.#setup = setup;
    this.#voice = new CounterVoice(setup.loadPack, setup.flows, setup.vehicle);
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
    this.#keyboard = new CounterKeyboard({
      root: setup.root,
      book,
      voice,
      work: this.#work,
      putAside: () => {
        void this.#putAside();
      },
      switchHow: () => {
        this.#hasHow = !this.#hasHow;
        this.#show(false);
      },
    });
  }

  /** Shows the counter with what was kept. */
  async begin(wanted: string): Promise<void> {
    await this.#voice.speak(wanted);
    await this.#book.read();
    this.#setup.root.replaceChildren(this.#box);
    this.#keyboard.listen(this.#box);
    this.#endWatch = this.#book.watch(() => void this.#work.readAgain());
    await this.#work.begin(this.#setup.isKept);
  }

  /** Ends what runs: the counter has left the page. */
  stop(): void {
    this.#endCamera?.();
    this.#keyboard.stop();
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
    const before = this.#find('.notes')?.innerText ?? '';
    this.#keyboard.whileDrawn(() => {
      render(page(this.#shown()), this.#box);
    });
    this.#makeRoom();
    this.#runCamera();
    if (isMoved) this.#bringToHand();
    this.#bringNotes(before);
    if (!this.#work.isWaiting) this.#keyboard.takeTypedAhead();
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
      priceWrong: work.priceWrong,
      receiptUnlisted: work.entry.receiptUnlisted,
      receiptElsewhere: work.entry.receiptElsewhere,
      again: work.screen === 'day' ? work.slips.again : undefined,
      hasKeys: this.#keyboard.isOn,
      hasHow: this.#hasHow,
      hasListed: this.#hasListed,
      hasCamera: canReadCodes(),
      hand: work.hand,
      act: this.#actions,
    };
  }

  /** A message at the foot of the screen covers no key: what stands there keeps clear of its height. */
  #makeRoom(): void {
    const height = this.#find('.notes')?.offsetHeight ?? 0;
    this.#box.style.setProperty('--notes', `${String(height)}px`);
  }

  /** What is said anew is seen, however far down the clerk has scrolled. */
  #bringNotes(before: string): void {
    const notes = this.#find('.notes');
    const said = notes?.innerText ?? '';
    if (said !== '' && said !== before) notes?.scrollIntoView({ block: 'nearest' });
  }

  /** Moves the focus to what is to be done next, unless somebody is typing elsewhere. */
  #bringToHand(): void {
    const typing = this.#setup.root.activeElement;
    if (typing instanceof HTMLInputElement && typing.closest('.facts') !== null) return;
    const fields = [
      ...this.#setup.root.querySelectorAll<HTMLInputElement>(
        '.figures input, .typed input, input[name=lead]',
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
    stood: () => {
      void this.#work.stood();
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
    mark: (picked) => {
      this.#work.mark(picked);
    },
    command: (command) => {
      this.#keyboard.command(command);
    },
    choose: (id) => {
      void this.#work.choose(id);
    },
    begin: (part) => {
      void this.#work.entry.begin(part);
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
      void this.#keyboard.takeFigures();
    },
    nextFigure: (check) => {
      void this.#keyboard.nextFigure(check);
    },
    tell: (field, text) => {
      this.#work.tell(field, text);
    },
    fetchPart: (number) => {
      void this.#work.entry.fetchPart(number);
    },
    proof: (given) => {
      if (this.#goesToPrice(given)) return;
      void this.#work.entry.proof(given).then(() => {
        this.#toWrongPrice();
      });
    },
    price: (text) => {
      void this.#work.price(text);
      this.#toWrongPrice();
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
      this.#keyboard.isOn = !this.#keyboard.isOn;
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

  /**
   * Enter behind the number of a receipt goes on to its price, as long as that is empty. One that the
   * shop’s list has stands there, so that what is typed from the paper answers nothing else.
   */
  #goesToPrice(given: Proof): boolean {
    const { activeElement } = this.#setup.root;
    const price = this.#find('.day-entry input[name=price]');
    const isBehindNumber =
      'receipt' in given &&
      activeElement === this.#find('input[name=receipt-number]') &&
      this.#work.entry.isReceipt(given.receipt);
    if (!isBehindNumber || !(price instanceof HTMLInputElement) || price.value !== '') return false;
    this.#work.fields.typed(priceTyped, this.#work.entry.priceListed(given.receipt));
    price.focus();
    price.select();
    return true;
  }

  /** What was refused of a price is typed anew. */
  #toWrongPrice(): void {
    const field = this.#find('input[name=price]');
    if (this.#work.priceWrong === undefined || !(field instanceof HTMLInputElement)) return;
    field.focus();
    field.select();
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

  #find(selector: string): HTMLElement | null {
    return this.#setup.root.querySelector(selector);
  }

  get #words(): CounterWords {
    return this.#voice.words;
  }
}
