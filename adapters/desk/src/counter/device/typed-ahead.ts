/**
 * What is pressed before the next question can be read: figures of somebody who knows what comes are
 * kept for their fields, and nothing else is taken.
 */
import { unknownInField } from '../keys.ts';

/**
 * Milliseconds without a key after which somebody has looked up. What follows a key that was not
 * taken sooner than that was meant for questions further on. Common practice, no source.
 */
const lookUpMs = 1000;

/** Keys that were pressed ahead. */
export class TypedAhead {
  #kept = '';
  #lost = '';
  #lostAt = Number.NEGATIVE_INFINITY;

  /** Keeps a key for the question that comes. */
  keep(key: string): void {
    this.#kept = key === 'Backspace' ? this.#kept.slice(0, -1) : this.#kept + signOf(key);
  }

  /** True where a sign would go on with figures, as in “12.6” or “2026-01-31”; “.2” begins with one. */
  get isFigure(): boolean {
    return /^(?:[.,]?\p{Nd}|[.,]$)/u.test(this.#kept);
  }

  /** Hands out what was kept: a text for each field in turn, or what is no figure. */
  release(): { readonly figures: readonly string[] } | { readonly keys: string } {
    const { isFigure } = this;
    const keys = this.#kept;
    this.#kept = '';
    return isFigure ? { figures: keys.split(enter) } : { keys };
  }

  /** Notes keys that are not taken. Gives all of them since somebody last looked up. */
  lose(keys: string, at: number): string {
    this.#lost = this.isLost(at) ? `${this.#lost} ${keys}` : keys;
    this.#lostAt = at;
    return this.#lost;
  }

  /** True for a key that was meant for a question behind one whose answer was not taken. */
  isLost(at: number): boolean {
    return at - this.#lostAt < lookUpMs;
  }
}

/** How the key for taking something is written. */
const enter = '↵';

/** A key as it is written. */
export function signOf(key: string): string {
  if (key === 'Delete') return unknownInField;
  return key === 'Enter' ? enter : key;
}
