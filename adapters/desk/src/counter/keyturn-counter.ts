/**
 * The counter as an element of its page: its look, its language, and what it is made of.
 */
import type { Flow, FlowByHand } from '@keyturn/core';
import { addTypeface, fittingTag, look } from '@keyturn/element/pieces';
import type { LoadCounterPack } from './counter-pack.ts';
import { CounterPage } from './counter-page.ts';
import type { CounterEngine } from './engine/counter-engine.ts';
import { counterLook } from './look/counter-css.ts';
import { openBrowserCounterStore } from './store/browser-counter-store.ts';
import type { CounterStore } from './store/counter-store.ts';
import { createPassingCounterStore } from './store/passing-counter-store.ts';

/** What a counter is built with. */
export interface CounterParts {
  /** The flows of returns, by id. */
  readonly flows: Readonly<Record<string, Flow>>;
  /** Of the no-start flow what asks for readings by hand. */
  readonly vehicle: FlowByHand;
  readonly engine: CounterEngine;
  readonly loadPack: LoadCounterPack;
  /** BCP 47 tags of the languages that there are. */
  readonly tags: readonly string[];
  /** Where the script lies, to find the typeface. */
  readonly base: string;
}

/** Where the returns are kept when the page says nothing else. */
const usualStore = 'keyturn-counter';

/** Defines `<keyturn-counter>`. Attributes: `lang`; `keep`, the name under which returns are kept. */
export function defineKeyturnCounter(parts: CounterParts): void {
  if (customElements.get('keyturn-counter') !== undefined) return;
  customElements.define(
    'keyturn-counter',
    class extends HTMLElement {
      static readonly observedAttributes: readonly string[] = ['lang'];
      readonly #root = this.attachShadow({ mode: 'open' });
      #page: CounterPage | undefined;

      connectedCallback(): void {
        addTypeface(parts.base);
        this.#root.adoptedStyleSheets = [...look(), counterLook()];
        void this.#begin();
      }

      disconnectedCallback(): void {
        this.#page?.stop();
        this.#page = undefined;
      }

      attributeChangedCallback(_: string, before: string | null, after: string | null): void {
        if (before !== after) void this.#page?.changeLanguage(this.#tag);
      }

      async #begin(): Promise<void> {
        const { flows, vehicle, engine, loadPack } = parts;
        const { store, isKept } = await openStore(this.getAttribute('keep') ?? usualStore);
        if (!this.isConnected) return;
        const page = new CounterPage({
          host: this,
          root: this.#root,
          flows,
          vehicle,
          engine,
          store,
          isKept,
          loadPack,
        });
        this.#page = page;
        try {
          await page.begin(this.#tag);
          this.dispatchEvent(new CustomEvent('keyturn-ready', { bubbles: true, composed: true }));
        } catch (error) {
          this.#root.textContent = `keyturn-counter: ${error instanceof Error ? error.message : String(error)}`;
        }
      }

      get #tag(): string {
        return fittingTag(this.lang || navigator.language, parts.tags) ?? 'en';
      }
    },
  );
}

async function openStore(
  name: string,
): Promise<{ readonly store: CounterStore; readonly isKept: boolean }> {
  try {
    return { store: await openBrowserCounterStore(name), isKept: true };
  } catch {
    return { store: createPassingCounterStore(), isKept: false };
  }
}
