/**
 * The round of the open cases: each is reached once before any is reached again.
 */

/** A round that begins anew once everybody was seen to. */
export class Round {
  readonly #seen = new Set<string>();

  /** Notes that a case lies before the dispatcher. */
  see(id: string): void {
    this.#seen.add(id);
  }

  /** The first of the others, the most urgent before the rest, that was not seen in this round. */
  next(others: readonly string[]): string | undefined {
    const unseen = others.find((id) => !this.#seen.has(id));
    if (unseen === undefined) this.#seen.clear();
    const next = unseen ?? others[0];
    if (next !== undefined) this.see(next);
    return next;
  }
}
