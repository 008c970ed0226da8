import type { Heard } from '../typed/heard.ts';
import { flip } from '../typed/terms.ts';
import { gather } from '../gather.ts';
import { onceFor } from '../once.ts';

/** Finds the entries of a list that a text could say or deny, those with a word of it, in order. */
export type TermIndex<Entry> = (heard: Pick<Heard, 'all'>) => Entry[];

/**
 * An index of entries by their terms, so that a text is not held against all of them. What was
 * found in a text is kept for as long as it is in hand.
 */
export function indexByTerm<Entry>(
  entries: readonly Entry[],
  termsOf: (entry: Entry) => Iterable<string>,
): TermIndex<Entry> {
  interface Placed {
    readonly place: number;
    readonly entry: Entry;
  }
  const places = gather(
    entries.map((entry, place): Placed => ({ place, entry })),
    ({ entry }) => {
      const terms = [...termsOf(entry)];
      // What a text denies is found by what it denies, and the other way round.
      return new Set([...terms, ...terms.map(flip)]);
    },
  );
  return onceFor((heard) => {
    const found = new Set<Placed>();
    for (const term of heard.all.keys()) {
      for (const placed of places.get(term) ?? []) found.add(placed);
    }
    return [...found].sort((one, other) => one.place - other.place).map(({ entry }) => entry);
  });
}

/** The same, gathered by whose they are. */
export function indexByOwner<Owner, Entry>(
  entries: readonly { readonly owner: Owner; readonly entry: Entry }[],
  termsOf: (entry: Entry) => Iterable<string>,
): (heard: Pick<Heard, 'all'>, owner: Owner) => readonly Entry[] {
  const index = indexByTerm(entries, ({ entry }) => termsOf(entry));
  const gather = onceFor((heard: Pick<Heard, 'all'>) => {
    const gathered = new Map<Owner, Entry[]>();
    for (const { owner, entry } of index(heard)) {
      const own = gathered.get(owner);
      if (own === undefined) gathered.set(owner, [entry]);
      else own.push(entry);
    }
    return gathered;
  });
  return (heard, owner) => gather(heard).get(owner) ?? [];
}
