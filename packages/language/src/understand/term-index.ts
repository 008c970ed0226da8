import type { Heard } from '../typed/heard.ts';
import { flip } from '../typed/terms.ts';

/** Finds the entries of a list that a text could say or deny, those with a word of it, in order. */
export type TermIndex<Entry> = (heard: Pick<Heard, 'all'>) => Entry[];

/** An index of entries by their terms, so that a text is not held against all of them. */
export function indexByTerm<Entry>(
  entries: readonly Entry[],
  termsOf: (entry: Entry) => Iterable<string>,
): TermIndex<Entry> {
  const places = new Map<string, number[]>();
  entries.forEach((entry, place) => {
    for (const term of new Set(termsOf(entry))) {
      const holders = places.get(term);
      if (holders === undefined) places.set(term, [place]);
      else holders.push(place);
    }
  });
  return ({ all }) => {
    const found = new Set<number>();
    for (const term of all.keys()) {
      for (const place of places.get(term) ?? []) found.add(place);
      for (const place of places.get(flip(term)) ?? []) found.add(place);
    }
    return [...found]
      .sort((one, other) => one - other)
      .flatMap((place) => entries.slice(place, place + 1));
  };
}
