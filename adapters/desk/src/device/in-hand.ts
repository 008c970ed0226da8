/**
 * What was in hand at a page, remembered by its window over a reload.
 */

/** Remembers by its id what is in hand at a page; undefined where nothing is. */
export function rememberInHand(page: 'desk' | 'counter', id: string | undefined): void {
  try {
    if (id === undefined) sessionStorage.removeItem(keyOf(page));
    else sessionStorage.setItem(keyOf(page), id);
  } catch {
    // A browser that keeps nothing begins with nothing in hand.
  }
}

/** What was in hand at a page, by its id. */
export function rememberedInHand(page: 'desk' | 'counter'): string | undefined {
  try {
    return sessionStorage.getItem(keyOf(page)) ?? undefined;
  } catch {
    return undefined;
  }
}

function keyOf(page: 'desk' | 'counter'): string {
  return `keyturn-${page}-in-hand`;
}
