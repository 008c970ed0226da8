/**
 * The desk as an element of its page: its look, its language, and what it is made of.
 */
import type { Flow } from '@keyturn/core';
import { addTypeface, fittingTag, look } from '@keyturn/element/pieces';
import type { LoadPack } from './desk-pack.ts';
import { DeskPage } from './desk-page.ts';
import type { Engine } from './engine/engine.ts';
import { deskLook } from './look/desk-css.ts';
import { openBrowserStore } from './store/browser-store.ts';
import type { DeskStore } from './store/desk-store.ts';
import { createPassingStore } from './store/passing-store.ts';

/** What a desk is built with. */
export interface DeskParts {
  readonly flow: Flow;
  readonly engine: Engine;
  readonly loadPack: LoadPack;
  /** BCP 47 tags of the languages that there are. */
  readonly tags: readonly string[];
  /** Where the script lies, to find the typeface. */
  readonly base: string;
}

/** Where the cases are kept when the page says nothing else. */
const usualStore = 'keyturn-desk';

/** Defines `<keyturn-desk>`. Attributes: `lang`; `keep`, the name under which cases are kept. */
export function defineKeyturnDesk(parts: DeskParts): void {
  if (customElements.get('keyturn-desk') !== undefined) return;
  customElements.define(
    'keyturn-desk',
    class extends HTMLElement {
      static readonly observedAttributes: readonly string[] = ['lang'];
      readonly #root = this.attachShadow({ mode: 'open' });
      #page: DeskPage | undefined;

      connectedCallback(): void {
        addTypeface(parts.base);
        this.#root.adoptedStyleSheets = [...look(), deskLook()];
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
        const { flow, engine, loadPack } = parts;
        const { store, isKept } = await openStore(this.getAttribute('keep') ?? usualStore);
        const page = new DeskPage({
          host: this,
          root: this.#root,
          flow,
          engine,
          store,
          isKept,
          loadPack,
        });
        if (!this.isConnected) return;
        this.#page = page;
        try {
          await page.begin(this.#tag);
          this.dispatchEvent(new CustomEvent('keyturn-ready', { bubbles: true, composed: true }));
        } catch (error) {
          this.#root.textContent = `keyturn-desk: ${error instanceof Error ? error.message : String(error)}`;
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
): Promise<{ readonly store: DeskStore; readonly isKept: boolean }> {
  try {
    return { store: await openBrowserStore(name), isKept: true };
  } catch {
    return { store: createPassingStore(), isKept: false };
  }
}
