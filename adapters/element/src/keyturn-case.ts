/**
 * The custom element: holds a sitting, shows it, and takes what comes in.
 */
import {
  compileFlow,
  positionOf,
  repeat,
  type Case,
  type CaseEvent,
  type Chart,
  type Input,
  type Message,
} from '@keyturn/core';
import { localeNames, speakerOf, type Rendered, type Speaker } from '@keyturn/language';
import { dueOf } from '@keyturn/conversation';
import { render } from 'lit-html';
import { findSitting, forgetSitting, keepSitting, type KeptPlace } from './case/kept-sitting.ts';
import { unpackFlow, type PackedFlow } from './case/packed-flow.ts';
import { openSitting, takeInputs, takeLine, type Sitting, type Taken } from './case/sitting.ts';
import { stripOf, type Strip } from './case/strip.ts';
import { canListen, listenOnce } from './device/speech.ts';
import { timeIsUp } from './device/time-is-up.ts';
import { addTypeface } from './device/typeface.ts';
import type { LanguagePack, Languages } from './language-pack.ts';
import { look } from './look/look.ts';
import { page } from './view/page.ts';
import { emptyHand, type Actions, type Hand, type Shown } from './view/shown.ts';

/** What an element is built with. */
export interface ElementSetup {
  /** Flow id to the flow. */
  readonly flows: Readonly<Record<string, PackedFlow>>;
  readonly languages: Languages;
  readonly builtIn: LanguagePack;
  /** Where the script lies, to find the typeface. */
  readonly base: string;
}

/** How often a running wait is drawn. */
const tickMs = 500;

/** Where a case is kept when the page says nothing else. */
const usualKey = 'keyturn-case';

/**
 * A no-start case in a page. Attributes: `lang`, `flow`, `person`, `keep`, `theme`, `context`;
 * events: `keyturn-turn`, `keyturn-verdict`, `keyturn-done`, `keyturn-aside`, `keyturn-clear`,
 * `keyturn-error`.
 */
export abstract class KeyturnCase extends HTMLElement {
  /** The attributes that are heeded when they change. */
  static readonly observedAttributes: readonly string[] = ['lang', 'person', 'flow'];

  protected abstract readonly setup: ElementSetup;
  readonly #root = this.attachShadow({ mode: 'open' });
  #chart: Chart | undefined;
  #sitting: Sitting | undefined;
  #strip: { readonly of: Case; readonly strip: Strip } | undefined;
  #pack: LanguagePack | undefined;
  #speaker: Speaker | undefined;
  #unclear: Taken['unclear'];
  #notices: readonly string[] = [];
  #hand: Hand = emptyHand;
  #clock: ReturnType<typeof setInterval> | undefined;

  /** Every event of the case in hand: with them it can be gone on with elsewhere. */
  get events(): readonly CaseEvent[] {
    return this.#sitting?.events ?? [];
  }

  /** Takes a line as if it had been typed. */
  say(line: string): void {
    const { chart, speaker, sitting } = this.#inHand();
    this.#apply(takeLine({ chart, speaker }, sitting, { at: now(), line }));
  }

  /** Forgets the case in hand, on this device too, and begins a new one. */
  clear(): void {
    forgetSitting(this.#place, this.#key);
    this.#notices = [];
    this.#open();
    this.dispatch('keyturn-clear', {});
    this.#show(true);
  }

  /** Called by the browser when the element enters a page. */
  connectedCallback(): void {
    addTypeface(this.setup.base);
    this.#root.adoptedStyleSheets = look();
    this.#root.addEventListener('keydown', this.#press);
    void this.#begin();
  }

  /** Called by the browser when the element leaves the page. */
  disconnectedCallback(): void {
    clearInterval(this.#clock);
    this.#root.removeEventListener('keydown', this.#press);
  }

  /** Called by the browser when a heeded attribute changes. */
  attributeChangedCallback(name: string, before: string | null, after: string | null): void {
    if (before === after || this.#sitting === undefined || !this.isConnected) return;
    if (name === 'lang') void this.#speak().then(() => this.#show(false));
    else void this.#begin();
  }

  async #begin(): Promise<void> {
    try {
      const id = this.getAttribute('flow') ?? 'no-start';
      const { flows } = this.setup;
      const packed = Object.hasOwn(flows, id) ? flows[id] : undefined;
      if (packed === undefined) {
        throw new Error(`there is no flow “${id}”; there is: ${Object.keys(flows).join(', ')}`);
      }
      this.#chart = compileFlow(unpackFlow(packed));
      await this.#speak();
      this.#find();
      this.#show(false);
    } catch (error) {
      this.#root.textContent = `keyturn-case: ${error instanceof Error ? error.message : String(error)}`;
      this.dispatch('keyturn-error', { error });
    }
  }

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
    const given = this.getAttribute('context');
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
    const { languages, builtIn } = this.setup;
    const wanted = this.#locale;
    const pack = languages.get(wanted) ?? (await languages.load(wanted));
    this.#pack = pack ?? this.#pack ?? builtIn;
    const flowId = this.#chart?.flow.id ?? '';
    const flowTexts = this.#pack.flows[flowId];
    if (flowTexts === undefined) throw new Error(`“${flowId}” has no texts in ${this.#pack.tag}`);
    const locale = pack === undefined ? this.#pack.tag : wanted;
    this.#speaker = speakerOf(this.#pack.language, {
      locale,
      flowTexts,
      ...(this.#chart === undefined ? {} : { checks: this.#chart.flow.checks }),
      role: this.#person,
    });
    if (pack === undefined) this.#notices = [this.#texts.noLanguage];
  }

  #apply(taken: Taken): void {
    const before = this.#sitting;
    this.#sitting = taken.sitting;
    this.#unclear = taken.unclear;
    this.#hand = emptyHand;
    if (taken.unclear?.type === 'language') {
      this.#unclear = undefined;
      this.lang = taken.unclear.locale;
      return;
    }
    const isKept = this.#key === '' || keepSitting(this.#place, this.#key, taken.sitting);
    this.#notices = isKept ? [] : [this.#texts.notKept];
    const isNewVerdict = taken.sitting.case.state.verdict !== before?.case.state.verdict;
    this.#show(true, isNewVerdict ? '.verdict' : '.card');
    this.#tell(before, taken);
  }

  /** Tells the page what happened. */
  #tell(before: Sitting | undefined, { sitting, events, talk }: Taken): void {
    const { verdict, outcome } = sitting.case.state;
    if (events.length > 0) {
      const { awaiting } = positionOf(sitting.case);
      this.dispatch('keyturn-turn', { case: sitting.case.id, events, awaiting });
    }
    const earlier = before?.case.state.verdict;
    if (
      verdict !== null &&
      (earlier?.fault !== verdict.fault || earlier.strength !== verdict.strength)
    ) {
      const { fault, strength, probability, remedy, send } = verdict;
      this.dispatch('keyturn-verdict', { fault, strength, probability, remedy, send });
    }
    if (outcome !== null && outcome !== before?.case.state.outcome) {
      this.dispatch('keyturn-done', { outcome });
    }
    if (talk === 'person' || talk === 'stop') this.dispatch('keyturn-aside', { talk });
  }

  protected dispatch(name: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }

  #show(isAnswered: boolean, place = '.card'): void {
    const shown = this.#shown();
    if (shown === undefined) return;
    render(page(shown), this.#root);
    this.#runClock(shown);
    if (isAnswered) this.#bringToHand(place);
  }

  #shown(): Shown | undefined {
    if (this.#sitting === undefined) return undefined;
    const { chart, speaker, sitting } = this.#inHand();
    if (this.#strip?.of !== sitting.case) {
      this.#strip = { of: sitting.case, strip: stripOf(chart, sitting.case) };
    }
    const pack = this.#pack ?? this.setup.builtIn;
    return {
      chart,
      speaker,
      sitting,
      strip: this.#strip.strip,
      texts: pack.page,
      flowTexts: pack.flows[chart.flow.id] as Shown['flowTexts'],
      locale: this.#locale.startsWith(pack.tag) ? this.#locale : pack.tag,
      locales: localeNames,
      position: positionOf(sitting.case),
      now: speaker.render(inHand(chart, sitting.case)),
      said: [...this.#askedBack(speaker), ...speaker.render(sitting.said)],
      notices: this.#notices,
      hand: this.#hand,
      clock: Date.now(),
      act: this.#actions,
    };
  }

  #askedBack(speaker: Speaker): readonly Rendered[] {
    return this.#unclear === undefined ? [] : speaker.askBack(this.#unclear);
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
    },
    speakIn: canListen() ? () => this.#listen() : undefined,
    language: (tag) => {
      this.#hand = emptyHand;
      this.lang = tag;
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
    const near = this.#root.querySelector(place) ?? this.#root.querySelector('.card');
    const target =
      near?.querySelector<HTMLElement>('.pad input') ??
      near?.querySelector<HTMLElement>('[tabindex="-1"]');
    target?.focus({ preventScroll: true });
    const isStill = matchMedia('(prefers-reduced-motion: reduce)').matches;
    near?.scrollIntoView({
      block: near.clientHeight < innerHeight * 0.8 ? 'end' : 'start',
      behavior: isStill ? 'auto' : 'smooth',
    });
  }

  /** Number keys answer, wherever in the element the focus is; not while something is typed. */
  readonly #press = (event: Event): void => {
    if (!(event instanceof KeyboardEvent) || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement)
      return;
    if (!/^[1-9]$/.test(event.key)) return;
    this.#root.querySelector<HTMLButtonElement>(`.card [data-key="${event.key}"]`)?.click();
  };

  #inHand(isWhole = true): { chart: Chart; speaker: Speaker; sitting: Sitting } {
    const [chart, speaker, sitting] = [this.#chart, this.#speaker, this.#sitting];
    if (chart === undefined || speaker === undefined || (isWhole && sitting === undefined)) {
      throw new Error('the element has not begun yet; wait for it to be in the page');
    }
    return { chart, speaker, sitting: sitting as Sitting };
  }

  get #texts(): LanguagePack['page'] {
    return (this.#pack ?? this.setup.builtIn).page;
  }

  get #person(): string {
    return this.getAttribute('person') ?? 'driver';
  }

  /** The element's language, or that of what it stands in, or the browser's. */
  get #locale(): string {
    const near = this.closest('[lang]')?.getAttribute('lang') ?? '';
    return near === '' ? navigator.language : near;
  }

  /** The key under which the case is kept; empty where none is to be. */
  get #key(): string {
    return this.getAttribute('keep') ?? usualKey;
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

/** What a case waits for; of an interrupt, what it is about, which is said only once otherwise. */
function inHand(chart: Chart, kase: Case): readonly Message[] {
  const position = positionOf(kase);
  if (position.awaiting !== 'resume') return repeat(chart, kase);
  const interrupt = chart.flow.interrupts[position.interrupt];
  if (interrupt === undefined) return [];
  const { id, word, then } = interrupt;
  return [{ kind: 'interrupt', interrupt: id, word, then }];
}

function now(): string {
  return new Date().toISOString();
}
