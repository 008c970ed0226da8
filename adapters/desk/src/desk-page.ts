/**
 * The desk in a page: holds the open cases, shows them, and takes what comes in. All effects are
 * here; what takes long is done by the engine.
 */
import { positionOf, type Flow } from '@keyturn/core';
import { timeIsUp } from '@keyturn/element/pieces';
import { pickedBefore } from '@keyturn/element/sittings';
import { localeNames } from '@keyturn/language';
import { render } from 'lit-html';
import type { DeskCase } from './case/desk-case.ts';
import { openDeskCase } from './case/opening.ts';
import { outcomeOf } from './case/outcome.ts';
import { countsFile, diagramFile } from './case/saved.ts';
import { Round } from './case/round.ts';
import { inOrder } from './case/urgency.ts';
import { playEvening } from './demo/play.ts';
import { firstCaller, inventedCaller, type InventedCaller } from './demo/town.ts';
import { DeskVoice, type LoadPack } from './desk-pack.ts';
import { copyText } from './device/copy-text.ts';
import { DeskClock, later, now, waitOver } from './device/clock.ts';
import { listenToKeys, type KeyActions } from './device/key-listener.ts';
import { rememberedInHand, rememberInHand } from './device/in-hand.ts';
import { saveFile } from './device/save-file.ts';
import { settleMs } from './device/settle.ts';
import type { Engine, Laid, Turned } from './engine/engine.ts';
import type { Command } from './keys.ts';
import { DeskBook } from './store/desk-book.ts';
import type { DeskStore } from './store/desk-store.ts';
import { isStep, placeOf } from './view/card.ts';
import { page } from './view/page.ts';
import { saidLast } from './view/said-last.ts';
import { emptyHand, leftHand, type Actions, type InHand, type Shown } from './view/shown.ts';
import { pressingOf } from './view/step-card.ts';
import { fill } from './wording.ts';
import type { DeskWords } from './words/desk-words.ts';

/** What a desk is shown with. */
export interface DeskSetup {
  readonly host: HTMLElement;
  readonly root: ShadowRoot;
  readonly flow: Flow;
  readonly engine: Engine;
  readonly store: DeskStore;
  /** False where the browser keeps nothing, which is said. */
  readonly isKept: boolean;
  readonly loadPack: LoadPack;
}

/** The case in hand, as it lies there. */
interface Lying {
  readonly id: string;
  readonly laid: Laid;
  readonly why?: InHand['why'];
  readonly unclear?: Turned['unclear'];
}

/** The desk. */
export class DeskPage {
  readonly #setup: DeskSetup;
  readonly #box = document.createElement('div');
  readonly #book: DeskBook;
  readonly #voice: DeskVoice;
  #lying: Lying | undefined;
  readonly #round = new Round();
  /** The cases whose answer is being worked on. */
  readonly #busy = new Set<string>();
  /** What was typed for each case and not taken yet: one caller's words are never another's. */
  readonly #drafts = new Map<string, string>();
  #hand = emptyHand;
  #screen: Shown['screen'] = 'desk';
  #hasKeys = true;
  #hasMoreWords = true;
  #notices: readonly string[] = [];
  readonly #clock = new DeskClock({
    due: () => waitOver(this.#kase?.sitting.case),
    tick: () => {
      this.#show(false);
    },
    over: () => {
      timeIsUp();
      this.#actions.take({ type: 'tick' });
    },
  });
  /** What lies before the dispatcher, and since when, in milliseconds of the epoch. */
  #put = { card: '', since: 0 };
  #endKeys: () => void = () => undefined;
  #endWatch: () => void = () => undefined;

  constructor(setup: DeskSetup) {
    this.#setup = setup;
    this.#book = new DeskBook(setup.store, setup.flow);
    this.#voice = new DeskVoice(setup.loadPack, setup.flow);
  }

  /** Shows the desk with what was kept. */
  async begin(wanted: string): Promise<void> {
    await this.#voice.speak(wanted);
    await this.#book.read();
    this.#setup.root.replaceChildren(this.#box);
    this.#endKeys = listenToKeys(this.#keyActions);
    this.#endWatch = this.#setup.store.watch(() => void this.#readAgain());
    const { unfit: count } = this.#book;
    if (!this.#setup.isKept) this.#notices = [this.#words.notKept];
    else if (count > 0) this.#notices = [fill(this.#words.unfit, { count })];
    const before = this.#book.case(rememberedInHand('desk'));
    if (before === undefined) this.#show(true);
    else await this.#choose(before.id, this.#notices[0]);
  }

  /** Ends what runs: the desk has left the page. */
  stop(): void {
    this.#clock.stop();
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
  }

  /** Another desk has changed something. */
  async #readAgain(): Promise<void> {
    const before = this.#lying;
    const version = this.#book.case(before?.id)?.version;
    await this.#book.read();
    if (before === undefined || this.#lying?.id !== before.id) {
      this.#show(false);
      return;
    }
    const now = this.#book.case(before.id);
    if (now === undefined) this.#leaveCase(this.#words.gone);
    else if (now.version === version) this.#show(false);
    else await this.#choose(before.id, this.#words.conflict);
  }

  /** Puts a case before the dispatcher. */
  async #choose(id: string | undefined, notice?: string): Promise<void> {
    const kase = this.#book.case(id);
    if (kase === undefined) return;
    await this.#trying(async () => {
      const laid = await this.#setup.engine.lay(kase.sitting);
      this.#lie({ id: kase.id, laid });
      this.#notices = notice === undefined ? [] : [notice];
      this.#show(true);
    });
  }

  #lie(lying: Lying): void {
    this.#book.forgetClosed();
    const goesOn = this.#lying?.id === lying.id && this.#hand.goesOn;
    this.#lying = lying;
    this.#round.see(lying.id);
    this.#hand = { ...emptyHand, goesOn };
    this.#screen = 'desk';
    rememberInHand('desk', lying.id);
    void this.#learnWhy(lying);
  }

  /** What each answer would change comes after the question itself. */
  async #learnWhy({ id, laid }: Lying): Promise<void> {
    if (positionOf(laid.sitting.case).awaiting !== 'answer') return;
    const why = await this.#setup.engine.why(laid.sitting);
    const lying = this.#lying;
    if (lying?.id !== id || lying.laid !== laid || why === undefined) return;
    this.#lying = { ...lying, why };
    this.#show(false);
  }

  #leaveCase(notice: string): void {
    this.#lying = undefined;
    this.#hand = emptyHand;
    rememberInHand('desk', undefined);
    this.#notices = [notice];
    this.#show(true);
  }

  async #open(invented?: InventedCaller): Promise<void> {
    await this.#trying(async () => {
      const kase = await openDeskCase(this.#setup.engine, { at: now(), practice: invented?.id });
      if (invented !== undefined) await this.#book.keepCaller(kase.id, invented.caller);
      await this.#keep(kase);
      await this.#choose(kase.id);
    });
  }

  async #fillEvening(): Promise<void> {
    await this.#trying(() =>
      playEvening(this.#setup, async (kase, caller) => {
        await this.#book.keepCaller(kase.id, caller);
        await this.#keep(kase);
        this.#show(false);
      }),
    );
  }

  /** Takes what came in for the case in hand, one at a time. */
  async #turn(work: (sitting: Laid['sitting']) => Promise<Turned>): Promise<void> {
    const kase = this.#kase;
    if (kase === undefined || this.#busy.has(kase.id)) return;
    this.#busy.add(kase.id);
    this.#notices = [];
    this.#show(false);
    await this.#trying(async () => {
      const turned = await work(kase.sitting);
      const { laid, events, unclear, language } = turned;
      const isTaken = events.length > 0;
      // Help may have been sent, or the case closed, while this was being worked out.
      const before = this.#book.case(kase.id);
      if (before === undefined) return;
      const next: DeskCase = {
        ...before,
        sitting: laid.sitting,
        touchedAt: now(),
        version: before.version + (isTaken ? 1 : 0),
      };
      this.#book.hold(next);
      this.#busy.delete(kase.id);
      if (this.#lying?.id === next.id) {
        this.#lie({ id: next.id, laid, ...(unclear === undefined ? {} : { unclear }) });
        this.#show(true);
      }
      if (isTaken) await this.#keep(next);
      if (language !== undefined) this.#setup.host.lang = language;
    });
    this.#busy.delete(kase.id);
  }

  /** Keeps a case; where another desk was first, theirs is shown. */
  async #keep(kase: DeskCase): Promise<void> {
    const held = await this.#book.keep(kase);
    if (held === 'kept' || this.#lying?.id !== kase.id) return;
    if (held === 'gone') this.#leaveCase(this.#words.gone);
    else await this.#choose(kase.id, this.#words.conflict);
  }

  /** The case in hand with something of it changed, kept and shown. */
  async #change(change: Partial<DeskCase>): Promise<void> {
    const kase = this.#kase;
    if (kase === undefined) return;
    const next = { ...kase, ...change, version: kase.version + 1 };
    this.#book.hold(next);
    this.#hand = emptyHand;
    this.#show(true);
    await this.#trying(() => this.#keep(next));
  }

  async #close(cause: string | undefined): Promise<void> {
    const kase = this.#kase;
    if (kase === undefined) return;
    await this.#trying(async () => {
      const answers = await this.#setup.engine.found(kase.sitting);
      const outcome = await outcomeOf({ flow: this.#setup.flow, kase, cause, answers });
      await this.#book.close(kase, outcome);
      const { closed, counted } = this.#words;
      this.#leaveCase(
        cause === undefined
          ? closed
          : fill(counted, { cause: this.#voice.speaker.faultName(cause) }),
      );
    });
  }

  /** Puts the case that was closed last back on the desk, and takes its cause out of the count. */
  async #reopen(): Promise<void> {
    await this.#trying(async () => {
      const id = await this.#book.reopen();
      if (id !== undefined) await this.#choose(id, this.#words.reopened);
    });
  }

  /** Waits; what goes wrong is said on the desk. */
  async #trying(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      this.#notices = [fill(this.#words.failed, { reason })];
      this.#show(false);
    }
  }

  #show(isMoved: boolean): void {
    const shown = this.#shown();
    const card = placeOf(shown);
    if (card !== this.#put.card) this.#put = { card, since: Date.now() };
    render(page(shown), this.#box);
    this.#clock.run();
    if (isMoved) this.#bringToHand();
  }

  #shown(): Shown {
    const { flow } = this.#setup;
    const clock = Date.now();
    const others = this.#book.cases.filter(({ id }) => id !== this.#lying?.id);
    return {
      flow,
      speaker: this.#voice.speaker,
      texts: this.#voice.texts,
      words: this.#words,
      locale: this.#voice.tag,
      locales: localeNames,
      clock,
      screen: this.#screen,
      hasKeys: this.#hasKeys,
      hasMoreWords: this.#hasMoreWords,
      inHand: this.#inHand(),
      others: inOrder(others, flow, clock).map((one) => ({
        ...one,
        caller: this.#book.caller(one.kase.id),
      })),
      outcomes: this.#book.outcomes,
      notices: this.#notices,
      canReopen: this.#book.canReopen,
      hand: this.#hand,
      act: this.#actions,
    };
  }

  #inHand(): InHand | undefined {
    const [lying, kase] = [this.#lying, this.#kase];
    if (lying === undefined || kase === undefined) return undefined;
    return {
      kase,
      laid: lying.laid,
      caller: this.#book.caller(kase.id),
      why: lying.why,
      said: saidLast(lying, this.#voice),
      isBusy: this.#busy.has(kase.id),
      invented: inventedCaller(kase.practice),
      draft: this.#drafts.get(kase.id) ?? '',
    };
  }

  /** Moves the focus to what is to be said next, unless somebody is typing. */
  #bringToHand(): void {
    const typing = this.#setup.root.activeElement;
    if (typing instanceof HTMLInputElement && typing.closest('.caller') !== null) return;
    this.#find('#asked')?.focus({ preventScroll: true });
    const card = this.#find('.card');
    const { top = 0 } = card?.getBoundingClientRect() ?? {};
    const { bottom = 0 } = this.#find('.head')?.getBoundingClientRect() ?? {};
    if (top < Math.max(0, bottom) || top > innerHeight / 2)
      card?.scrollIntoView({ block: 'start' });
  }

  readonly #actions: Actions = {
    take: (...inputs) => {
      void this.#turn((sitting) => this.#setup.engine.take(sitting, { at: now(), inputs }));
    },
    say: (line) => {
      const given = { line, locale: this.#voice.tag, isAsked: isStep(this.#shown()) };
      void this.#turn((sitting) => this.#setup.engine.say(sitting, { at: now(), ...given }));
    },
    draft: (line) => {
      this.#drafts.set(this.#lying?.id ?? '', line);
    },
    hand: (change) => {
      const isMoved = 'asking' in change || 'open' in change || 'goesOn' in change;
      this.#hand = { ...this.#hand, dropping: null, sending: null, ...change };
      this.#show(isMoved);
    },
    ask: (check) => {
      const kase = this.#kase?.sitting.case;
      const picked = kase === undefined ? [] : pickedBefore(kase, check);
      this.#actions.hand({ asking: check, picked, open: null });
    },
    command: (command) => {
      this.#command(command);
    },
    choose: (id) => {
      void this.#choose(id);
    },
    tell: (field, text) => {
      const id = this.#lying?.id;
      if (id !== undefined) void this.#trying(() => this.#book.tell(id, field, text));
    },
    send: (help, minutes) => {
      const callBackAt = later(minutes);
      void this.#change({ sent: { help, at: now(), callBackAt }, touchedAt: now() });
    },
    later: (minutes) => {
      const sent = this.#kase?.sent;
      if (sent === null || sent === undefined) return;
      void this.#change({ sent: { ...sent, callBackAt: later(minutes) }, touchedAt: now() });
    },
    close: (cause) => {
      void this.#close(cause);
    },
    reopen: () => void this.#reopen(),
    practise: () => {
      void this.#open(firstCaller);
    },
    fillEvening: () => {
      void this.#fillEvening();
    },
    go: (screen) => {
      this.#screen = screen;
      this.#show(true);
    },
    switchKeys: () => {
      this.#hasKeys = !this.#hasKeys;
      this.#show(false);
    },
    language: (tag) => {
      this.#setup.host.lang = tag;
    },
    copy: (text) => {
      void this.#copy(text);
    },
    print: () => {
      window.print();
    },
    save: (what) => {
      const { outcomes } = this.#book;
      saveFile(
        what === 'diagram'
          ? diagramFile(outcomes, this.#words.howSure)
          : countsFile(this.#setup.flow, outcomes),
      );
    },
  };

  #command(command: Command): void {
    const { hand } = this.#actions;
    const kase = this.#kase;
    switch (command) {
      case 'new':
        void this.#open();
        return;
      case 'next':
        void this.#choose(this.#round.next(this.#shown().others.map((other) => other.kase.id)));
        return;
      case 'correct':
        if (kase === undefined) void this.#reopen();
        // Where nothing was answered there is nothing to correct: the call was none.
        else if (kase.sitting.case.state.order.length === 0) void this.#close(undefined);
        else this.#correctBefore();
        return;
      case 'words':
        this.#hasMoreWords = !this.#hasMoreWords;
        this.#show(false);
        return;
      case 'send-now':
      case 'danger':
        if (kase !== undefined)
          hand({ open: command === 'danger' ? 'danger' : 'help', asking: null });
        return;
      case 'dont-know':
      case 'cannot':
        if (kase !== undefined) this.#leaveUnanswered(kase, command);
        return;
      case 'take':
        this.#find('.card .key.take')?.click();
        return;
      case 'caller':
        this.#find('.caller input')?.focus();
        return;
      case 'leave':
        this.#hand = leftHand(this.#hand);
        this.#screen = 'desk';
        (this.#setup.root.activeElement as HTMLElement | null)?.blur();
        this.#show(true);
    }
  }

  /** Says that it is not known or cannot be done; ticks are only dropped at a second press. */
  #leaveUnanswered({ sitting }: DeskCase, talk: 'dont-know' | 'cannot'): void {
    const { take, hand } = this.#actions;
    const { asking, picked, dropping } = this.#hand;
    const { entry } = pressingOf(this.#shown());
    const isAsked = asking !== null || positionOf(sitting.case).awaiting === 'answer';
    if (entry === 'nothing' || !isAsked) return;
    if (picked !== null && picked.length > 0 && dropping !== talk) {
      hand({ dropping: talk });
      return;
    }
    take(asking === null ? { type: 'talk', talk } : { type: 'unanswered', check: asking, talk });
  }

  /** The answer before the one that is being put right, or the last. */
  #correctBefore(): void {
    const order = this.#kase?.sitting.case.state.order ?? [];
    const place = this.#hand.asking === null ? order.length : order.indexOf(this.#hand.asking);
    const before = order[place - 1];
    if (before !== undefined) this.#actions.ask(before);
  }

  async #copy(text: string): Promise<void> {
    this.#notices = [(await copyText(text)) ? this.#words.copied : this.#words.notCopied];
    this.#show(false);
  }

  readonly #keyActions: KeyActions = {
    hasKeys: () => this.#hasKeys,
    pressing: () => pressingOf(this.#shown()),
    canAnswer: () =>
      !this.#busy.has(this.#lying?.id ?? '') && Date.now() - this.#put.since >= settleMs,
    number: (key) => {
      this.#find(`.card [data-key="${key}"]`)?.click();
    },
    tooSoon: (key) => {
      this.#notices = [fill(this.#words.tooSoon, { key })];
      this.#show(false);
    },
    line: (begun) => {
      if (begun !== '') this.#actions.draft(begun);
      this.#show(false);
      this.#find('input[name=line]')?.focus();
    },
    command: this.#actions.command,
  };

  #find(selector: string): HTMLElement | null {
    return this.#setup.root.querySelector(selector);
  }

  get #kase(): DeskCase | undefined {
    return this.#book.case(this.#lying?.id);
  }

  get #words(): DeskWords {
    return this.#voice.words;
  }
}
