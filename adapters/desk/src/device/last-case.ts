/**
 * Which case was in hand, remembered by the window over a reload.
 */

const key = 'keyturn-desk-case';

/** Remembers a case by its id; undefined where none is in hand. */
export function rememberCase(id: string | undefined): void {
  try {
    if (id === undefined) sessionStorage.removeItem(key);
    else sessionStorage.setItem(key, id);
  } catch {
    // A browser that keeps nothing begins with no case in hand.
  }
}

/** The case that was in hand. */
export function rememberedCase(): string | undefined {
  try {
    return sessionStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}
