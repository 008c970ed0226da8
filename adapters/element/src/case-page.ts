/**
 * A case in a page: holds a sitting, shows it in the element's shadow, and takes what comes in.
 */
import {
  compileFlow,
  positionOf,
  stripOf,
  type Case,
  type CaseEvent,
  type Chart,
  type Input,
  type Strip,
} from '@keyturn/core';
import { circuitOf, isClampInHand, probesInHand } from '@keyturn/drawings';
import {
  localeNames,
  tellerOf,
  type Rendered,
  type Teller,
  type ToldTexts,
  type Understanding,
} from '@keyturn/language';
import { dueOf } from '@keyturn/conversation';
import { render } from 'lit-html';
import { besideKeys, mayBe24 } from './case/beside-keys.ts';
import { isActed, saysOtherwise } from './case/verdict-said.ts';
import { messagesInHand } from './case/in-hand.ts';
import { findSitting, forgetSitting, keepSitting, type KeptPlace } from './case/kept-sitting.ts';
import { unpackFlow, type PackedFlow } from './case/packed-flow.ts';
import { openSitting, takeInputs, takeLine, type Sitting, type Taken } from './case/sitting.ts';
import { passOn } from './device/pass-on.ts';
import { canListen, listenOnce } from './device/speech.ts';
import { guardTaps } from './device/guard-taps.ts';
import { timeIsUp } from './device/time-is-up.ts';
import { keptUnder, themeOf, wantedLanguage } from './host.ts';
import type { LanguagePack, Languages } from './language-pack.ts';
import { usualEmergency } from './view/emergency-key.ts';
import { page } from './view/page.ts';
import type { Pictures } from './view/pictures.ts';
import { emptyHand, type Actions, type Hand, type Shown } from './view/shown.ts';

/** What a case is shown with. */
export interface CasePageSetup {
  readonly host: HTMLElement;
  readonly root: ShadowRoot;
  /** Flow id to the flow. */
  readonly flows: Readonly<Record<string, PackedFlow>>;
  readonly languages: Languages;
  /** Loads what draws the pictures. */
  readonly loadPictures: () => Promise<Pictures>;
}

/** How often a running wait is drawn. */
const tickMs = 500;

/** A case in a page. */
export class CasePage {
  readonly #host: HTMLElement;
  readonly #root: ShadowRoot;
  readonly #box = document.createElement('div');
  readonly #flows: CasePageSetup['flows'];
  readonly #languages: Languages;
  readonly #loadPictures: CasePageSetup['loadPictures'];
  #pictures: Pictures | undefined;
  #picturing: Promise<void> = Promise.resolve();
  #chart: Chart | undefined;
  #sitting: Sitting | undefined;
  #strip: { readonly of: Case; readonly strip: Strip } | undefined;
  #drawn:
    | {
        readonly of: Case;
        readonly by: Teller;
        readonly theme: 'light' | 'dark';
        readonly pictures: Shown['pictures'];
      }
    | undefined;
  #pack: LanguagePack | undefined;
  #flowTexts: ToldTexts | undefined;
  #locale = 'en';
  #speaker: Teller | undefined;
  #understand: Understanding | undefined;
  /** A line that was typed before it could be understood. */
  #waiting: string | undefined;
  #isLoaded = false;
  #unclear: Taken['unclear'];
  #notices: readonly string[] = [];
  #hand: Hand = emptyHand;
  #clock: ReturnType<typeof setInterval> | undefined;
  /** What stands in the card. */
  #card = '';
  readonly #endTaps: () => void;
  readonly #edges = new ResizeObserver(() => {
    this.#measureEdges();
  });

  constructor({ host, root, flows, languages, loadPictures }: CasePageSetup) {
    this.#host = host;
    this.#root = root;
    this.#flows = flows;
    this.#languages = languages;
    this.#loadPictures = loadPictures;
    root.addEventListener('keydown', this.#press);
    root.addEventListener('focusin', this.#expectLine);
    this.#endTaps = guardTaps(root, () => this.#card);
    addEventListener('online', this.#learnWords);
  }

  /** Every event of the case in hand: with them it can be gone on with elsewhere. */
  get events(): readonly CaseEvent[] {
    return this.#sitting?.events ?? [];
  }

  /** Takes a line as if it had been typed, once it can be understood. */
  say(line: string): void {
    const { chart, sitting } = this.#inHand();
    const understand = this.#understand;
    if (understand === undefined) {
      this.#waiting = line;
      this.#hand = emptyHand;
      this.#notices = [this.#texts.loading];
      this.#show(true);
      this.#learnWords();
      return;
    }
    this.#apply(takeLine({ chart, speaker: { understand } }, sitting, { at: now(), line }));
  }

  /** Forgets the case in hand, on this device too, and begins a new one. */
  clear(): void {
    forgetSitting(this.#place, this.#key);
    this.#notices = [];
    this.#open();
    this.#dispatch('keyturn-clear', {});
    this.#show(true);
  }

  /** Scrolls the step in hand into sight; where that is to act on a verdict, or nothing, the verdict. */
  showStep(): void {
    const { chart, sitting } = this.#inHand();
    this.#bringToSight(isActed(chart, sitting.case) ? '.verdict' : '.card');
  }

  /** Answers the first question of a new case, which may have been shown before this was loaded. */
  answerFirst(check: string, option: string): void {
    const position = positionOf(this.#inHand().sitting.case);
    if (position.awaiting !== 'answer' || position.check !== check) return;
    this.#actions.take({ type: 'answers', answers: [{ check, value: [option] }] });
  }

  /** Stops the clock: the element has left the page. */
  stop(): void {
    clearInterval(this.#clock);
    this.#clock = undefined;
    this.#edges.disconnect();
    this.#root.removeEventListener('keydown', this.#press);
    this.#root.removeEventListener('focusin', this.#expectLine);
    this.#endTaps();
    removeEventListener('online', this.#learnWords);
  }

  /** Shows the case that was kept, or a new one. Rejects where the attributes make no sense. */
  async begin(): Promise<void> {
    const id = this.#host.getAttribute('flow') ?? 'no-start';
    const packed = Object.hasOwn(this.#flows, id) ? this.#flows[id] : undefined;
    if (packed === undefined) {
      throw new Error(`there is no flow “${id}”; there is: ${Object.keys(this.#flows).join(', ')}`);
    }
    this.#chart = compileFlow(unpackFlow(packed));
    await this.#speak();
    this.#find();
    // Takes the place of the first question that may have been shown before.
    this.#root.replaceChildren(this.#box);
    this.#show(false);
    for (const edge of this.#root.querySelectorAll('.top, .foot')) this.#edges.observe(edge);
    this.#learnWords();
    this.#picturing = this.#loadPictures().then(
      (pictures) => {
        this.#pictures = pictures;
        this.#drawn = undefined;
        this.#show(false);
      },
      // Everything is said in words as well.
      () => undefined,
    );
  }

  /** Goes on in the language that is wanted now. */
  async changeLanguage(): Promise<void> {
    await this.#speak();
    this.#show(false);
    this.#learnWords();
  }

  /** Loads what people say, the last of all: until then the keys take the case further. */
  readonly #learnWords = (): void => {
    const [chart, teller, pack] = [this.#chart, this.#speaker, this.#pack];
    if (this.#understand !== undefined) return;
    if (chart === undefined || teller === undefined || pack === undefined) return;
    this.#languages.loadUnderstanding(pack, { flow: chart.flow.id, teller }).then(
      (understand) => {
        const isWanted = this.#speaker === teller && this.#understand === undefined;
        if (!isWanted || this.#sitting === undefined) return;
        this.#understand = understand;
        if (this.#waiting !== undefined) this.say(this.#waiting);
        if (this.#isLoaded) return;
        this.#isLoaded = true;
        void this.#picturing.then(() => {
          this.#dispatch('keyturn-loaded', undefined);
        });
      },
      () => {
        if (this.#waiting === undefined) return;
        this.#notices = [this.#texts.noWords];
        this.#show(false);
      },
    );
  };

  /**
   * What words mean is worked out at the first line, which takes long: better while it is begun. Who
   * answers by the keys alone never waits for it.
   */
  readonly #expectLine = ({ target }: Event): void => {
    const understand = this.#understand;
    if (understand === undefined || !(target instanceof HTMLInputElement)) return;
    setTimeout(() => {
      const { chart, sitting } = this.#inHand();
      takeLine({ chart, speaker: { understand } }, sitting, { at: now(), line: '' });
    });
  };

  /** Goes on with the case that was kept, or opens one. */
  #find(): void {
    const { chart } = this.#inHand(false);
    const found = findSitting(this.#place, this.#key, chart);
    if (found.type === 'sitting') this.#sitting = found.sitting;
    else this.#open();
    if (found.type === 'unfit') this.#notices = [this.#texts.unfit];
  }

  #open(): void {
    const { chart } = this.#inHand(false);
    const given = this.#host.getAttribute('context');
    const context = given === null ? {} : (JSON.parse(given) as Record<string, unknown>);
    this.#hand = emptyHand;
    this.#unclear = undefined;
    this.#sitting = openSitting(chart, {
      id: crypto.randomUUID(),
      at: now(),
      context: { role: this.#person, ...context },
    });
  }

  /** Finds the language that is wanted, and makes its speaker. */
  async #speak(): Promise<void> {
    const wanted = wantedLanguage(this.#host);
    const pack = await this.#languages.load(wanted);
    this.#pack = pack ?? this.#pack ?? (await this.#languages.load('en'));
    if (this.#pack === undefined || this.#chart === undefined) {
      throw new Error(`the texts in “${wanted}” cannot be loaded`);
    }
    const { id, checks } = this.#chart.flow;
    const flowTexts = this.#pack.flows[id];
    if (flowTexts === undefined) throw new Error(`“${id}” has no texts in ${this.#pack.tag}`);
    this.#flowTexts = flowTexts;
    this.#locale = pack === undefined ? this.#pack.tag : wanted;
    this.#understand = undefined;
    this.#speaker = tellerOf(this.#pack.texts, {
      locale: this.#locale,
      flowTexts,
      checks,
      role: this.#person,
    });
    if (pack === undefined) this.#notices = [this.#texts.noLanguage];
  }

  #apply(taken: Taken): void {
    const before = this.#sitting;
    const isCall = taken.talk === 'person' && this.#isCallLeft();
    // Nobody takes over where nobody was told.
    const sitting = isCall ? { ...taken.sitting, said: [] } : taken.sitting;
    this.#sitting = sitting;
    this.#waiting = undefined;
    this.#unclear = taken.unclear;
    this.#hand = isCall ? { ...emptyHand, open: 'note' } : emptyHand;
    if (taken.language !== undefined) {
      this.#host.lang = taken.language;
      return;
    }
    const isKept = this.#key === '' || keepSitting(this.#place, this.#key, sitting);
    this.#notices = isKept ? [] : [this.#texts.notKept];
    if (taken.talk === 'stop') this.#dispatch('keyturn-aside', { talk: 'stop' });
    this.#show(!isCall, saysOtherwise(before, sitting) ? '.verdict' : '.card');
    if (isCall) this.#bringDrawerToHand();
    this.#tell(before, taken);
  }

  /** Somebody is asked for: true unless the page around sees to it, by `preventDefault`. */
  #isCallLeft(): boolean {
    return this.#dispatch('keyturn-aside', { talk: 'person' }, true);
  }

  /** Tells the page what happened. */
  #tell(before: Sitting | undefined, { sitting, events }: Taken): void {
    const { verdict, outcome } = sitting.case.state;
    if (events.length > 0) {
      const { awaiting } = positionOf(sitting.case);
      this.#dispatch('keyturn-turn', { case: sitting.case.id, events, awaiting });
    }
    const earlier = before?.case.state.verdict;
    if (
      verdict !== null &&
      (earlier?.fault !== verdict.fault || earlier.strength !== verdict.strength)
    ) {
      const { fault, strength, probability, remedy, send } = verdict;
      this.#dispatch('keyturn-verdict', { fault, strength, probability, remedy, send });
    }
    if (outcome !== null && outcome !== before?.case.state.outcome) {
      this.#dispatch('keyturn-done', { outcome });
    }
  }

  /** False where the page took it upon itself, by `preventDefault`. */
  #dispatch(name: string, detail: unknown, cancelable = false): boolean {
    const event = new CustomEvent(name, { detail, bubbles: true, composed: true, cancelable });
    return this.#host.dispatchEvent(event);
  }

  #show(isAnswered: boolean, place = '.card'): void {
    const shown = this.#shown();
    if (shown === undefined) return;
    this.#card = JSON.stringify([shown.position, shown.hand.correcting]);
    render(page(shown), this.#box);
    this.#runClock(shown);
    if (isAnswered) this.#bringToHand(place);
  }

  #shown(): Shown | undefined {
    if (this.#sitting === undefined) return undefined;
    const { chart, speaker, sitting } = this.#inHand();
    if (this.#strip?.of !== sitting.case) {
      this.#strip = { of: sitting.case, strip: stripOf(chart, sitting.case) };
    }
    return {
      chart,
      speaker,
      sitting,
      strip: this.#strip.strip,
      texts: this.#texts,
      flowTexts: this.#flowTexts as Shown['flowTexts'],
      locale: this.#locale,
      locales: localeNames,
      position: positionOf(sitting.case),
      now: speaker.render(messagesInHand(chart, sitting.case)),
      said: [...this.#askedBack(speaker), ...speaker.render(sitting.said)],
      notices: this.#notices,
      emergency: this.#host.getAttribute('emergency') ?? usualEmergency,
      mayBe24: mayBe24(this.#unclear, sitting.said),
      hand: this.#hand,
      pictures: this.#draw(),
      clock: Date.now(),
      act: this.#actions,
    };
  }

  /** The pictures of the case in hand, drawn once for each turn, language and theme. */
  #draw(): Shown['pictures'] {
    const pictures = this.#pictures;
    if (pictures === undefined) return {};
    const { chart, speaker, sitting } = this.#inHand();
    const how = { speaker, theme: themeOf(this.#host) };
    const known = this.#drawn;
    if (known?.of === sitting.case && known.by === speaker && known.theme === how.theme) {
      return known.pictures;
    }
    const probes = probesInHand(chart, sitting.case);
    const meter =
      probes !== undefined
        ? pictures.drawProbes(probes, how)
        : isClampInHand(chart, sitting.case)
          ? pictures.drawClamp(how)
          : undefined;
    const view = circuitOf(chart, sitting.case, (id) => this.#flowTexts?.faults[id]?.name ?? id);
    const drawn = {
      ...(meter === undefined ? {} : { meter }),
      ...(view.found?.length === 0 ? {} : { circuit: pictures.drawCircuit(view, how) }),
    };
    this.#drawn = { of: sitting.case, by: speaker, theme: how.theme, pictures: drawn };
    return drawn;
  }

  #askedBack(speaker: Teller): readonly Rendered[] {
    return this.#unclear === undefined ? [] : speaker.askBack(besideKeys(this.#unclear));
  }

  readonly #actions: Actions = {
    take: (...inputs: readonly Input[]) => {
      const { chart, sitting } = this.#inHand();
      this.#apply(takeInputs(chart, sitting, { at: now(), inputs }));
    },
    say: (line) => {
      this.say(line);
    },
    hand: (change) => {
      const isAnother = change.correcting !== undefined;
      this.#hand = { ...this.#hand, ...change };
      this.#show(isAnother);
      if (change.open === 'danger' || change.open === 'note') this.#bringDrawerToHand();
    },
    speakIn: canListen() ? () => this.#listen() : undefined,
    language: (tag) => {
      this.#hand = emptyHand;
      this.#host.lang = tag;
    },
    passOn: (note) => {
      void passOn(note).then((copied) => {
        if (copied !== undefined) this.#actions.hand({ copied });
      });
    },
    clear: () => {
      this.clear();
    },
  };

  #listen(): void {
    const entry = this.#root.querySelector<HTMLInputElement>('input[name=line]');
    const begun = listenOnce(this.#locale, {
      heard: (text) => {
        if (entry !== null) entry.value = text;
      },
      ended: () => {
        this.#actions.hand({ isListening: false });
        entry?.focus();
      },
    });
    if (begun) this.#actions.hand({ isListening: true });
  }

  /** While a wait runs, draws it, and goes on when it is over. */
  #runClock({ sitting }: Shown): void {
    const due = dueOf(sitting.case)?.getTime();
    if (due === undefined) {
      clearInterval(this.#clock);
      this.#clock = undefined;
      return;
    }
    this.#clock ??= setInterval(() => {
      if (Date.now() < due) {
        this.#show(false);
        return;
      }
      clearInterval(this.#clock);
      this.#clock = undefined;
      timeIsUp();
      this.#actions.take({ type: 'tick' });
    }, tickMs);
  }

  /** Moves what is asked, or a new verdict, into sight and under the fingers. */
  #bringToHand(place: string): void {
    const near = this.#part(place) ?? this.#part('.card');
    const target =
      near?.querySelector<HTMLElement>('.pad input') ??
      near?.querySelector<HTMLElement>('[tabindex="-1"]');
    target?.focus({ preventScroll: true });
    const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
    this.#bringToSight(place, isStill ? 'auto' : 'smooth');
  }

  /** Scrolls so that what is read first lies below the head: with the foot, where both have room. */
  #bringToSight(place: string, behavior: ScrollBehavior = 'auto'): void {
    const near = this.#part(place) ?? this.#part('.card');
    if (near === null) return;
    const { head, foot } = this.#measureEdges();
    const isWhole = head + near.clientHeight + foot <= innerHeight;
    near.scrollIntoView({ block: isWhole && near.matches('.card') ? 'end' : 'start', behavior });
  }

  #part(selector: string): HTMLElement | null {
    return this.#root.querySelector(selector);
  }

  /**
   * The heights of head and foot in pixels, by which whatever is scrolled to is kept clear of them.
   * They differ by language and width.
   */
  #measureEdges(): { readonly head: number; readonly foot: number } {
    const [top, bottom] = [this.#part('.top'), this.#part('.foot')];
    const isSticky = top !== null && getComputedStyle(top).position === 'sticky';
    const edges = { head: isSticky ? top.offsetHeight : 0, foot: bottom?.offsetHeight ?? 0 };
    for (const [edge, height] of Object.entries(edges)) {
      this.#box.style.setProperty(`--${edge}`, `${height}px`);
    }
    return edges;
  }

  /** Moves the open drawer under the fingers; where the head scrolls away, it opens out of sight. */
  #bringDrawerToHand(): void {
    const drawer = this.#part('.drawer');
    if (drawer === null) return;
    if (drawer.getBoundingClientRect().top < 0) drawer.scrollIntoView({ block: 'start' });
    drawer.focus({ preventScroll: true });
  }

  /** Number keys answer, wherever in the element the focus is; not while something is typed. */
  readonly #press = (event: Event): void => {
    if (!(event instanceof KeyboardEvent) || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement)
      return;
    if (!/^[1-9]$/.test(event.key)) return;
    this.#root.querySelector<HTMLButtonElement>(`.card [data-key="${event.key}"]`)?.click();
  };

  #inHand(isWhole = true): { chart: Chart; speaker: Teller; sitting: Sitting } {
    const [chart, speaker, sitting] = [this.#chart, this.#speaker, this.#sitting];
    if (chart === undefined || speaker === undefined || (isWhole && sitting === undefined)) {
      throw new Error('the element has not begun yet; wait for it to be in the page');
    }
    return { chart, speaker, sitting: sitting as Sitting };
  }

  get #texts(): LanguagePack['page'] {
    if (this.#pack === undefined) throw new Error('no language has been loaded');
    return this.#pack.page;
  }

  get #person(): string {
    return this.#host.getAttribute('person') ?? 'driver';
  }

  /** The key under which the case is kept; empty where none is to be. */
  get #key(): string {
    return keptUnder(this.#host);
  }

  get #place(): KeptPlace | undefined {
    if (this.#key === '') return undefined;
    try {
      return localStorage;
    } catch {
      return undefined;
    }
  }
}

function now(): string {
  return new Date().toISOString();
}
