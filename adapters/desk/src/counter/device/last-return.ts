/**
 * Which return was in hand, remembered by the window over a reload.
 */

const key = 'keyturn-counter-return';

/** Remembers a return by its id; undefined where none is in hand. */
export function rememberReturn(id: string | undefined): void {
  try {
    if (id === undefined) sessionStorage.removeItem(key);
    else sessionStorage.setItem(key, id);
  } catch {
    // A browser that keeps nothing begins with no return in hand.
  }
}

/** The return that was in hand. */
export function rememberedReturn(): string | undefined {
  try {
    return sessionStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}
