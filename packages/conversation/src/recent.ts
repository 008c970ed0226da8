/**
 * Conversations as they stood when this process last kept them, so that one that goes on need not
 * be read again. Whatever is made from them names the version it was made from, and the store
 * refuses it where somebody else has written since.
 */
import type { Held } from './saying.ts';

/** A conversation, and which of its versions that is; 0 before the first. */
export interface Kept extends Held {
  readonly version: number;
}

/** So many conversations are remembered, some 5 kB each. */
const mostRecent = 2000;

/** The conversations that this process kept last. */
export class Recent {
  readonly #kept = new Map<string, Kept>();

  /** A conversation as it was last kept here; undefined where that is not known any more. */
  get(conversation: string): Kept | undefined {
    return this.#kept.get(conversation);
  }

  /** Notes what was kept. */
  keep(conversation: string, kept: Kept): void {
    this.forget(conversation);
    const [oldest] = this.#kept.keys();
    if (this.#kept.size >= mostRecent && oldest !== undefined) this.#kept.delete(oldest);
    this.#kept.set(conversation, kept);
  }

  /** Somebody else may have written. */
  forget(conversation: string): void {
    this.#kept.delete(conversation);
  }
}
