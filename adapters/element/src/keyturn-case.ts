/**
 * The custom element as a page meets it: small, so that the first question stands at once; what
 * takes a case further is loaded meanwhile.
 */
import type { CaseEvent } from '@keyturn/core';
import type { CasePage, CasePageSetup } from './case-page.ts';
import { addTypeface } from './device/typeface.ts';
import { showFirstCard, type FirstCard } from './first-card.ts';
import { fittingTag, keptUnder, wantedLanguage } from './host.ts';
import { look } from './look/look.ts';

/** What an element is built with. */
export interface ElementSetup {
  /** BCP 47 tag to the first question. */
  readonly first: Readonly<Record<string, FirstCard>>;
  /** Loads what takes a case further. */
  readonly load: (host: Pick<CasePageSetup, 'host' | 'root'>) => Promise<CasePage>;
  /** Where the script lies, to find the typeface. */
  readonly base: string;
}

/**
 * A no-start case in a page. Attributes: `lang`, `flow`, `person`, `keep`, `theme`, `context`;
 * events: `keyturn-ready`, `keyturn-loaded`, `keyturn-turn`, `keyturn-verdict`, `keyturn-done`,
 * `keyturn-aside`, `keyturn-clear`, `keyturn-error`.
 */
export abstract class KeyturnCase extends HTMLElement {
  /** The attributes that are heeded when they change. */
  static readonly observedAttributes: readonly string[] = ['lang', 'person', 'flow'];

  protected abstract readonly setup: ElementSetup;
  readonly #root = this.attachShadow({ mode: 'open' });
  #page: CasePage | undefined;
  #picked: readonly [check: string, option: string] | undefined;

  /** Every event of the case in hand: with them it can be gone on with elsewhere. */
  get events(): readonly CaseEvent[] {
    return this.#page?.events ?? [];
  }

  /** Takes a line as if it had been typed. Throws before the event `keyturn-ready`. */
  say(line: string): void {
    this.#ready.say(line);
  }

  /** Forgets the case in hand, on this device too, and begins a new one. */
  clear(): void {
    this.#ready.clear();
  }

  /** Scrolls the step in hand into sight, as after a reload. Only after `keyturn-ready`. */
  showStep(): void {
    this.#ready.showStep();
  }

  /** Called by the browser when the element enters a page. */
  connectedCallback(): void {
    addTypeface(this.setup.base);
    this.#root.adoptedStyleSheets = look();
    this.#showFirst();
    void this.#begin();
  }

  /** Called by the browser when the element leaves the page. */
  disconnectedCallback(): void {
    this.#page?.stop();
    this.#page = undefined;
  }

  /** Called by the browser when a heeded attribute changes. */
  attributeChangedCallback(name: string, before: string | null, after: string | null): void {
    if (before === after || !this.isConnected) return;
    if (this.#page === undefined) this.#showFirst();
    else void this.#trying(name === 'lang' ? this.#page.changeLanguage() : this.#page.begin());
  }

  /** The first question, unless a case was kept here or the page says what is asked first. */
  #showFirst(): void {
    const { first } = this.setup;
    const locale = fittingTag(wantedLanguage(this), Object.keys(first)) ?? 'en';
    const card = first[locale];
    const isPlain = !this.hasAttribute('context') && !this.hasAttribute('flow');
    if (card === undefined || !isPlain || this.#hasKept()) return;
    const picked = (option: string): void => {
      this.#picked = [card.check, option];
    };
    showFirstCard(this.#root, card, { locale, picked });
  }

  #hasKept(): boolean {
    try {
      return localStorage.getItem(keptUnder(this)) !== null;
    } catch {
      return false;
    }
  }

  async #begin(): Promise<void> {
    const page = await this.#trying(this.setup.load({ host: this, root: this.#root }));
    if (page === undefined || !this.isConnected) return;
    this.#page = page;
    await this.#trying(page.begin());
    if (this.#picked !== undefined) page.answerFirst(...this.#picked);
    this.#picked = undefined;
    this.dispatchEvent(new CustomEvent('keyturn-ready', { bubbles: true, composed: true }));
  }

  /** Waits; what goes wrong is said in the element and told to the page. */
  async #trying<Value>(work: Promise<Value>): Promise<Value | undefined> {
    try {
      return await work;
    } catch (error) {
      const text = error instanceof Error ? error.message : String(error);
      this.#root.textContent = `keyturn-case: ${text}`;
      this.dispatchEvent(
        new CustomEvent('keyturn-error', { detail: { error }, bubbles: true, composed: true }),
      );
      return undefined;
    }
  }

  get #ready(): CasePage {
    if (this.#page === undefined) throw new Error('wait for the event keyturn-ready');
    return this.#page;
  }
}
