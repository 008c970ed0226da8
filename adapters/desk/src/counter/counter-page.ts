/**
 * The counter in a page: holds the returns, shows them, and takes what comes in. All effects are
 * here; what takes long is done by the engine.
 */
import { positionOf, type AnswerInput, type Flow, type Input } from '@keyturn/core';
import { localeNames, type Rendered } from '@keyturn/language';
import type { Sheet } from '@keyturn/sheets';
import { render } from 'lit-html';
import { answering, type Laid, type Turned } from '../engine/engine.ts';
import { fill } from '../wording.ts';
import type { LoadCounterPack } from './counter-pack.ts';
import { CounterVoice } from './counter-voice.ts';
import { inventedReturns, inventedShop } from './demo/invented-shop.ts';
import { playEnded, playReturns } from './demo/play-returns.ts';
import { canReadCodes, watchForCode } from './device/camera.ts';
import { listenToKeystrokes } from './device/keystrokes.ts';
import type { CounterEngine, TypedFigure } from './engine/counter-engine.ts';
import { readKey, type CounterCommand } from './keys.ts';
import { flowOf, type Closed, type CounterReturn } from './return/counter-return.ts';
import { shopDayOf } from './return/day.ts';
import { minorUnits, typedAmount } from './return/money.ts';
import { answersOf, contextOf, labelsOf, openReturn, type KnownPart } from './return/opening.ts';
import { lookUp } from './shop/scanned.ts';
import { readShop, type Shop, type ShopFault } from './shop/shop.ts';
import { CounterBook } from './store/counter-book.ts';
import type { CounterStore } from './store/counter-store.ts';
import { faultWords, misfitWords } from './vehicle/case-words.ts';
import { misfitOf, soldNotBefore } from './vehicle/fit-of-case.ts';
import { page } from './view/page.ts';
import { emptyHand, type Actions, type Hand, type InHand, type Shown } from './view/shown.ts';
import { figuresInHand } from './view/step-card.ts';
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

/** The return in hand, as it lies there. */
interface Lying {
  readonly id: string;
  readonly laid: Laid;
  readonly unclear: Turned['unclear'] | undefined;
  readonly figures: Readonly<Record<string, TypedFigure>>;
  readonly sheet?: Sheet;
}

/** The counter. */
export class CounterPage {
  readonly #setup: CounterSetup;
  readonly #box = document.createElement('div');
  readonly #voice: CounterVoice;
  readonly #book: CounterBook;
  #shopFaults: readonly ShopFault[] = [];
  #lying: Lying | undefined;
  /** The returns whose answer is being worked on. */
  readonly #busy = new Set<string>();
  #hand: Hand = emptyHand;
  #screen: Shown['screen'] = 'counter';
  /** The day whose list is shown; empty: today. */
  #day = '';
  #hasKeys = true;
  #notices: readonly string[] = [];
  #endCamera: (() => void) | undefined;
  #endKeys: () => void = () => undefined;
  #endWatch: () => void = () => undefined;

  constructor(setup: CounterSetup) {
    this.#setup = setup;
    this.#voice = new CounterVoice(setup.loadPack, setup.flows);
    this.#book = new CounterBook(setup.store, setup.flows);
  }

  /** Shows the counter with what was kept. */
  async begin(wanted: string): Promise<void> {
    await this.#voice.speak(wanted);
    await this.#book.read();
    this.#setup.root.replaceChildren(this.#box);
    if (!this.#setup.isKept) this.#notices = [this.#words.notKept];
    else if (this.#book.unfit > 0) {
      this.#notices = [fill(this.#words.unfit, { count: this.#book.unfit })];
    }
    this.#endKeys = listenToKeystrokes({
      hasKeys: () => this.#hasKeys,
      pressed: (key) => {
        this.#pressed(key);
      },
      fieldFor: (key) => this.#fieldFor(key),
      isCode: (text) => lookUp(text, this.#book.shop).type !== 'unknown',
      scanned: (text) => {
        void this.#enter(text, 'scanned');
      },
    });
    this.#endWatch = this.#book.watch(() => void this.#readAgain());
    const before = sessionStorage.getItem(lastKey);
    if (before !== null && this.#book.open(before) !== undefined) await this.#choose(before);
    else this.#show(true);
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
      this.#notices = [this.#words.noLanguage];
    }
    this.#show(false);
    await this.#weigh();
    await this.#writeSlip();
  }

  /** Another window has changed something. */
  async #readAgain(): Promise<void> {
    const id = this.#lying?.id;
    const version = this.#book.open(id)?.version;
    await this.#book.read();
    const now = this.#book.open(id);
    if (id !== undefined && now === undefined) this.#leaveReturn(this.#words.gone);
    else if (now !== undefined && now.version !== version) {
      await this.#choose(now.id, this.#words.conflict);
    } else this.#show(false);
  }

  /** Puts a return before the clerk. */
  async #choose(id: string, notice?: string): Promise<void> {
    const back = this.#book.open(id);
    if (back === undefined) return;
    await this.#trying(async () => {
      const laid = await this.#setup.engine.lay(back.sitting);
      this.#lie({ id, laid, unclear: undefined, figures: {} });
      this.#notices = notice === undefined ? [] : [notice];
      await this.#weigh();
      this.#show(true);
      await this.#writeSlip();
    });
  }

  #lie(lying: Lying): void {
    this.#lying = lying;
    this.#hand = emptyHand;
    this.#screen = 'counter';
    sessionStorage.setItem(lastKey, lying.id);
  }

  #leaveReturn(notice?: string): void {
    this.#lying = undefined;
    this.#hand = emptyHand;
    sessionStorage.removeItem(lastKey);
    this.#notices = notice === undefined ? [] : [notice];
    this.#show(true);
  }

  /** Opens a return, or goes on with that of the same receipt. */
  async #open(known: KnownPart): Promise<void> {
    const receipt = known.sale?.receipt;
    const same = this.#book.onCounter.find(
      (back) => receipt !== undefined && back.receipt === receipt,
    );
    if (same !== undefined) {
      await this.#choose(same.id);
      return;
    }
    await this.#trying(async () => {
      const back = await openReturn(this.#setup.engine, this.#book.shop, { ...known, at: now() });
      await this.#keep(back);
      await this.#choose(back.id);
    });
  }

  /** What was scanned, or typed into the line: a sale, a part, a case, or words. */
  async #enter(text: string, how: 'typed' | 'scanned'): Promise<void> {
    const scanned = lookUp(text, this.#book.shop);
    const back = this.#back;
    switch (scanned.type) {
      case 'sale':
        await this.#known({ part: scanned.part.part, shelf: scanned.part, sale: scanned.sale });
        return;
      case 'part':
        await this.#known({ part: scanned.part.part, shelf: scanned.part });
        return;
      case 'case':
        if (back === undefined) this.#notice(this.#words.caseNeedsPart);
        else await this.#offerCase(scanned.text);
        return;
      case 'unknown': {
        const locale = this.#voice.tag;
        if (back === undefined || how === 'scanned') {
          this.#notice(fill(this.#words.unknownScan, { text: text.slice(0, 60) }));
        } else {
          await this.#turn((sitting) =>
            this.#setup.engine.say(sitting, { at: now(), line: text, locale }),
          );
        }
      }
    }
  }

  /** A part that the shop knows: told of the return in hand where nothing is known of that yet. */
  async #known(known: KnownPart): Promise<void> {
    const back = this.#back;
    const isBare =
      back?.receipt === '' && (back.number === '' || back.number === known.shelf?.number);
    if (back === undefined || !isBare || back.part !== known.part) {
      await this.#open(known);
      return;
    }
    this.#alter({ ...labelsOf(known) });
    const answers = answersOf(known.sale);
    await this.#take(
      { type: 'context', set: contextOf(known) },
      ...(answers.length === 0 ? [] : [{ type: 'answers', answers } as const]),
    );
  }

  /** Reads a case of a vehicle; whether it is this customer's is asked. */
  async #offerCase(text: string): Promise<void> {
    const id = this.#back?.id ?? '';
    this.#busy.add(id);
    this.#notices = [];
    this.#show(false);
    await this.#trying(async () => {
      const reading = await this.#setup.engine.readCase(text).finally(() => this.#busy.delete(id));
      const back = this.#back;
      if (back === undefined) return;
      if (reading.type === 'fault') {
        this.#notice(faultWords(this.#words, reading.fault));
        return;
      }
      const sale = this.#book.shop?.sales.find(({ receipt }) => receipt === back.receipt);
      const others = this.#book.all;
      const misfit = misfitOf(reading.case, { back, sale, others });
      if (misfit !== undefined) {
        this.#notice(misfitWords(misfit, this.#voice));
        return;
      }
      this.#hand = { ...emptyHand, offered: reading.case };
      this.#notices = [];
      this.#show(true);
    });
  }

  /** The case that was offered is this vehicle's, or it is left out. */
  async #useCase(isThis: boolean): Promise<void> {
    const { offered } = this.#hand;
    const back = this.#back;
    this.#hand = emptyHand;
    if (offered === null || back === undefined || !isThis) {
      this.#notice(this.#words.caseLeft);
      this.#show(true);
      return;
    }
    const { fault, strength, code, proof } = offered;
    if (soldNotBefore(offered, back) !== undefined) {
      this.#alter({ diagnosis: { by: 'case', fault, strength } });
      this.#show(true);
      return;
    }
    this.#alter({ vehicle: offered });
    await this.#take(
      // A code beyond what a context holds is kept with the return alone.
      ...(code.length > 500 ? [] : [{ type: 'context', set: { case: code } } as const]),
      answering(back.sitting.case, 'vehicle-proof', [proof[back.part]]),
    );
  }

  /** A day of sale told afterwards may show that the case is older than the part. */
  async #dropOlderCase(): Promise<void> {
    const back = this.#back;
    if (back?.vehicle === null || back === undefined) return;
    const { vehicle } = back;
    const sold = soldNotBefore(vehicle, back);
    if (sold === undefined) return;
    const { fault, strength } = vehicle;
    this.#alter({ vehicle: null, diagnosis: { by: 'case', fault, strength } });
    await this.#take(answering(back.sitting.case, 'vehicle-proof', ['incomplete']));
    this.#notice(fill(this.#words.caseBefore, { sold }));
  }

  #take(...inputs: readonly Input[]): Promise<void> {
    return this.#turn((sitting) => this.#setup.engine.take(sitting, { at: now(), inputs }));
  }

  /** Takes what came in for the return in hand, one at a time. */
  async #turn(work: (sitting: Laid['sitting']) => Promise<Turned>): Promise<void> {
    const id = this.#back?.id;
    if (id === undefined || this.#busy.has(id)) return;
    this.#busy.add(id);
    this.#notices = [];
    this.#show(false);
    await this.#trying(async () => {
      const { laid, events, unclear, language } = await work(
        this.#book.open(id)?.sitting ?? neverThere(),
      );
      this.#busy.delete(id);
      const before = this.#book.open(id);
      if (before === undefined) return;
      const typed = Object.fromEntries(
        Object.entries(before.typed).filter(
          ([check]) => !events.some((event) => 'check' in event && event.check === check),
        ),
      );
      const next = { ...before, sitting: laid.sitting, typed };
      this.#book.hold(next);
      if (this.#lying?.id === id) {
        this.#lie({ id, laid, unclear, figures: {} });
        await this.#weigh();
        this.#show(true);
      }
      if (events.length > 0) await this.#keep({ ...next, version: next.version + 1 });
      if (language !== undefined) this.#setup.host.lang = language;
      await this.#dropOlderCase();
      await this.#writeSlip();
    });
    this.#busy.delete(id);
  }

  /** Keeps a return; where another window was first, theirs is shown. */
  async #keep(back: CounterReturn): Promise<void> {
    const held = await this.#book.keep(back);
    if (held === 'kept' || this.#lying?.id !== back.id) return;
    if (held === 'theirs') await this.#choose(back.id, this.#words.conflict);
    else this.#leaveReturn(this.#words.gone);
  }

  /** The return in hand with something of it changed, kept. */
  #alter(change: Partial<CounterReturn>): void {
    const back = this.#back;
    if (back === undefined) return;
    void this.#trying(() => this.#keep({ ...back, ...change, version: back.version + 1 }));
  }

  /** Works out what stands on the scales of the figures that are asked for. */
  async #weigh(): Promise<void> {
    const inHand = this.#inHand();
    if (inHand === undefined) return;
    const { back } = inHand;
    const checks = figuresInHand(this.#hand, inHand);
    if (checks.length === 0) return;
    const typed = Object.fromEntries(checks.map((check) => [check, back.typed[check] ?? '']));
    const figures = await this.#setup.engine.figures(back.sitting, {
      at: now(),
      locale: this.#voice.tag,
      typed,
    });
    const lying = this.#lying;
    const isStill = checks.every((check) => (this.#back?.typed[check] ?? '') === typed[check]);
    if (lying?.id !== back.id || !isStill) return;
    this.#lying = { ...lying, figures };
    this.#show(false);
  }

  /** Writes the slip of a decision as it is printed. */
  async #writeSlip(): Promise<void> {
    const back = this.#back;
    if (back === undefined || back.sitting.case.state.decision === null) return;
    const { timeZone: here } = new Intl.DateTimeFormat().resolvedOptions();
    const sheet = await this.#setup.engine.slip(back.sitting, {
      made: now(),
      locale: this.#voice.tag,
      timeZone: this.#book.shop?.policy['time-zone'] ?? here,
    });
    const lying = this.#lying;
    if (lying?.id !== back.id || this.#back?.sitting !== back.sitting) return;
    this.#lying = { ...lying, sheet };
    this.#show(false);
  }

  async #takeFigures(): Promise<void> {
    await this.#trying(() => this.#weigh());
    const inHand = this.#inHand();
    if (inHand === undefined) return;
    const { figures, back } = inHand;
    const typed = figuresInHand(this.#hand, inHand).filter(
      (check) => (back.typed[check] ?? '').trim() !== '',
    );
    if (typed.length === 0) {
      this.#notice(this.#words.figureNeeded);
      return;
    }
    const isWrong = (check: string): boolean => {
      const figure = figures[check];
      return figure === undefined || figure.answer === null || figure.refused.length > 0;
    };
    const wrong = typed.find(isWrong);
    if (wrong !== undefined) {
      this.#find(`#figure-${wrong}`)?.focus();
      return;
    }
    const answers = typed.flatMap((check): AnswerInput[] => {
      const answer = figures[check]?.answer;
      return answer === null || answer === undefined ? [] : [answer];
    });
    const [only] = answers;
    if (this.#hand.asking !== null && only !== undefined) {
      await this.#take(answering(back.sitting.case, only.check, only.value));
    } else await this.#take({ type: 'answers', answers });
  }

  /** Ends the return in hand. */
  async #close(closed: Omit<Closed, 'at'>): Promise<void> {
    const back = this.#back;
    if (back === undefined || this.#busy.has(back.id)) return;
    await this.#trying(async () => {
      await this.#keep({ ...back, closed: { ...closed, at: now() }, version: back.version + 1 });
      const words = this.#words;
      const next = back.practice === inventedReturns[0]?.id ? [words.guideListed] : [];
      this.#leaveReturn([words.listed, ...next].join(' '));
    });
  }

  async #remove(): Promise<void> {
    const back = this.#back;
    if (back === undefined) return;
    if (!this.#hand.removing) {
      this.#hand = { ...this.#hand, removing: true };
      this.#show(false);
      return;
    }
    await this.#trying(async () => {
      await this.#book.remove(back.id);
      this.#leaveReturn(this.#words.removed);
    });
  }

  async #useShop(shop: Shop | null): Promise<void> {
    this.#shopFaults = [];
    this.#lying = undefined;
    this.#hand = emptyHand;
    sessionStorage.removeItem(lastKey);
    await this.#book.useShop(shop);
    this.#show(true);
  }

  async #practise(): Promise<void> {
    await this.#trying(async () => {
      const shop = inventedShop(shopDayOf(now(), null));
      await this.#useShop(shop);
      const [before] = this.#book.onCounter.filter(({ practice }) => practice !== null);
      if (before !== undefined) {
        await this.#choose(before.id);
        return;
      }
      const { engine, flows } = this.#setup;
      const playing = { engine, flows, shop, at: now() };
      const played = await playReturns(playing);
      for (const back of [...(await playEnded(playing)), ...played]) await this.#keep(back);
      const [first] = played;
      if (first !== undefined) await this.#choose(first.id);
    });
  }

  async #shopFile(file: File): Promise<void> {
    await this.#trying(async () => {
      const read = readShop(await file.text());
      if (read.type === 'faults') {
        this.#shopFaults = read.faults.slice(0, 20);
        this.#show(false);
      } else await this.#useShop(read.shop);
    });
  }

  /** Waits; what goes wrong is said. */
  async #trying(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      this.#notice(fill(this.#words.failed, { reason }));
    }
  }

  #notice(text: string): void {
    this.#notices = [text];
    this.#show(false);
  }

  #show(isMoved: boolean): void {
    render(page(this.#shown()), this.#box);
    this.#runCamera();
    if (isMoved) this.#bringToHand();
  }

  #shown(): Shown {
    const voice = this.#voice;
    const today = shopDayOf(now(), this.#book.shop?.policy ?? null);
    return {
      words: voice.words,
      locale: voice.tag,
      locales: localeNames,
      speakerFor: (part) => voice.speakerFor(part),
      textsFor: (part) => voice.textsFor(part),
      vehicleNames: voice.vehicleNames,
      shop: this.#book.shop,
      shopFaults: this.#shopFaults,
      screen: this.#screen,
      inHand: this.#inHand(),
      waiting: this.#book.onCounter.filter(({ id }) => id !== this.#lying?.id),
      returns: this.#book.here,
      today,
      day: this.#day === '' ? today : this.#day,
      notices: this.#notices,
      hasKeys: this.#hasKeys,
      hasCamera: canReadCodes(),
      hand: this.#hand,
      act: this.#actions,
    };
  }

  #inHand(): InHand | undefined {
    const [lying, back] = [this.#lying, this.#back];
    const flow = back === undefined ? undefined : this.#setup.flows[flowOf[back.part]];
    if (lying === undefined || back === undefined || flow === undefined) return undefined;
    const speaker = this.#voice.speakerFor(back.part);
    return {
      back,
      laid: lying.laid,
      flow,
      speaker,
      texts: this.#voice.textsFor(back.part),
      figures: lying.figures,
      sheet: lying.sheet,
      said: saidLast(lying, speaker),
      isBusy: this.#busy.has(back.id),
      invented: inventedReturns.find(({ id }) => id === back.practice),
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
    this.#find('#asked')?.scrollIntoView({ block: 'nearest' });
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
      this.#hand = emptyHand;
      this.#show(false);
      void this.#enter(text, 'scanned');
    };
    watchForCode(video, found).then(
      (end) => {
        if (isClosed) end();
        else this.#endCamera = end;
      },
      (error: unknown) => {
        const reason = error instanceof Error ? error.message : String(error);
        this.#hand = emptyHand;
        this.#notice(fill(this.#words.cameraFailed, { reason }));
      },
    );
  }

  readonly #actions: Actions = {
    take: (...inputs) => {
      void this.#take(...inputs);
    },
    enter: (text) => {
      void this.#enter(text, 'typed');
    },
    hand: (change) => {
      this.#hand = { ...this.#hand, ...change };
      this.#show('asking' in change || 'open' in change);
      if ('asking' in change) void this.#trying(() => this.#weigh());
    },
    command: (command) => {
      this.#command(command);
    },
    choose: (id) => {
      void this.#choose(id);
    },
    begin: (part) => {
      void this.#open({ part });
    },
    practise: () => {
      void this.#practise();
    },
    type: (check, text) => {
      this.#alter({ typed: { ...this.#back?.typed, [check]: text } });
      void this.#trying(() => this.#weigh());
    },
    takeFigures: () => {
      void this.#takeFigures();
    },
    tell: (field, text) => {
      this.#alter({ [field]: text });
      this.#show(false);
    },
    price: (text) => {
      this.#price(text);
    },
    oldUnit: (told) => {
      void this.#take({ type: 'context', set: { 'sale.oldUnit': told } });
    },
    boughtOn: (by) => {
      this.#alter({ diagnosis: { by } });
    },
    caseFile: (file) => {
      void this.#trying(async () => {
        await this.#offerCase(await file.text());
      });
    },
    useCase: (isThis) => {
      void this.#useCase(isThis);
    },
    intoList: () => {
      const by = this.#back?.goodwill ?? null;
      const decision = this.#back?.sitting.case.state.decision ?? null;
      if (by !== null) {
        void this.#close({ decide: 'accept', reason: 'goodwill', refund: null, by });
      } else if (decision !== null) {
        const { decide, reason, refund = null } = decision;
        void this.#close({ decide, reason, refund, by: null });
      }
    },
    goodwill: (name) => {
      if (name === '') {
        this.#notice(this.#words.goodwillNeeded);
        return;
      }
      this.#alter({ goodwill: name });
      this.#hand = emptyHand;
      this.#notices = [];
      this.#show(true);
    },
    remove: () => {
      void this.#remove();
    },
    shopFile: (file) => {
      void this.#shopFile(file);
    },
    forgetShop: () => {
      void this.#trying(() => this.#useShop(null));
    },
    go: (screen) => {
      this.#screen = screen;
      this.#day = '';
      this.#show(true);
    },
    pickDay: (day) => {
      this.#day = day;
      this.#show(false);
    },
    notice: (text) => {
      this.#notice(text);
    },
    switchKeys: () => {
      this.#hasKeys = !this.#hasKeys;
      this.#show(false);
    },
    language: (tag) => {
      this.#setup.host.lang = tag;
    },
    print: () => {
      void this.#trying(async () => {
        await this.#writeSlip();
        window.print();
      });
    },
  };

  #price(text: string): void {
    const currency = this.#book.shop?.policy.currency;
    if (currency === undefined || text.trim() === '') return;
    const price = minorUnits(text, currency);
    if (price === undefined) {
      const values = { given: text.slice(0, 40), currency, example: typedAmount(12_900, currency) };
      this.#notice(fill(this.#words.priceWrong, values));
    } else void this.#take({ type: 'context', set: { 'sale.price': price } });
  }

  #pressed(key: string): void {
    const meant = readKey(key);
    if (meant === undefined) return;
    if (typeof meant === 'string') this.#command(meant);
    else if (this.#back === undefined || !this.#busy.has(this.#back.id)) {
      this.#find(`.card [data-key="${meant.number}"]`)?.click();
    }
  }

  /** A digit that is pressed where figures are asked for goes into the first that is empty. */
  #fieldFor(key: string): HTMLInputElement | undefined {
    if (!/^\p{Nd}$/u.test(key)) return undefined;
    const fields = [
      ...this.#setup.root.querySelectorAll<HTMLInputElement>('.figures input:not([type=file])'),
    ];
    return fields.find(({ value }) => value === '') ?? fields[0];
  }

  #command(command: CounterCommand): void {
    switch (command) {
      case 'new':
        this.#screen = 'counter';
        this.#leaveReturn();
        return;
      case 'next': {
        const [first] = this.#shown().waiting;
        if (first !== undefined) void this.#choose(first.id);
        return;
      }
      case 'correct':
        this.#correctBefore();
        return;
      case 'danger':
        if (this.#back !== undefined) this.#actions.hand({ ...emptyHand, open: 'danger' });
        return;
      case 'dont-know':
      case 'cannot':
        if (this.#isAsked) this.#actions.take({ type: 'talk', talk: command });
        return;
      case 'take':
        this.#find('.card .key.take:not([data-key])')?.click();
        return;
      case 'scan':
        this.#find('input[name=line]')?.focus();
        return;
      case 'leave':
        this.#hand = emptyHand;
        this.#screen = 'counter';
        (this.#setup.root.activeElement as HTMLElement | null)?.blur();
        this.#show(false);
        this.#find('#asked')?.focus({ preventScroll: true });
    }
  }

  get #isAsked(): boolean {
    const back = this.#back;
    const { asking, open, offered } = this.#hand;
    if (back === undefined || asking !== null || open !== null || offered !== null) return false;
    return this.#screen === 'counter' && positionOf(back.sitting.case).awaiting === 'answer';
  }

  /** The answer before the one that is being put right, or the last. */
  #correctBefore(): void {
    const order = this.#back?.sitting.case.state.order ?? [];
    const { asking } = this.#hand;
    const place = asking === null ? order.length : order.indexOf(asking);
    const before = order[place - 1];
    if (before !== undefined) this.#actions.hand({ ...emptyHand, asking: before });
  }

  #find(selector: string): HTMLElement | null {
    return this.#setup.root.querySelector(selector);
  }

  get #back(): CounterReturn | undefined {
    return this.#book.open(this.#lying?.id);
  }

  get #words(): CounterWords {
    return this.#voice.words;
  }
}

/** Where the window remembers which return was in hand. */
const lastKey = 'keyturn-counter-return';

function now(): string {
  return new Date().toISOString();
}

function neverThere(): never {
  throw new Error('the return is no longer on the counter');
}

/** What was said last and has no place of its own: readings and the decision have theirs. */
function saidLast({ laid, unclear }: Lying, speaker: InHand['speaker']): readonly Rendered[] {
  const said = laid.sitting.said.filter(
    (message) =>
      message.kind !== 'reading' &&
      message.kind !== 'decision' &&
      (message.kind !== 'tell' || message.tell !== 'opening'),
  );
  return [...(unclear === undefined ? [] : speaker.askBack(unclear)), ...speaker.render(said)];
}
