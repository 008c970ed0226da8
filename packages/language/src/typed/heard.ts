import { flip, type Terms } from './terms.ts';
import type { Vocabulary } from './vocabulary.ts';

/** The terms of a typed text, each with the known terms that it may stand for. */
export interface Heard {
  readonly at: readonly ReadonlySet<string>[];
  readonly all: ReadonlySet<string>;
}

/** Looks every term up. */
export function hear(terms: Terms, vocabulary: Vocabulary): Heard {
  const known = new Map<string, ReadonlySet<string>>();
  const at = terms.map((term) => {
    const seen = known.get(term) ?? new Set(vocabulary(term));
    known.set(term, seen);
    return seen;
  });
  return { at, all: new Set([...known.values()].flatMap((seen) => [...seen])) };
}

/** True where the text is the phrase and nothing else. */
export function isPhrase(heard: Heard, phrase: Terms): boolean {
  return heard.at.length === phrase.length && phrase.length > 0 && startsAt(heard, phrase, 0);
}

/** Where the phrase begins in the text, its terms in order and together; -1 where it does not. */
export function findPhrase(heard: Heard, phrase: Terms): number {
  if (phrase.length === 0 || !phrase.every((term) => heard.all.has(term))) return -1;
  for (let start = 0; start + phrase.length <= heard.at.length; start += 1) {
    if (startsAt(heard, phrase, start)) return start;
  }
  return -1;
}

function startsAt({ at }: Heard, phrase: Terms, start: number): boolean {
  return phrase.every((term, index) => at[start + index]?.has(term) === true);
}

/** True where the text denies what the phrase says, or says what it denies. */
export function isContradicted({ all }: Heard, phrase: Terms): boolean {
  return phrase.some((term) => !all.has(term) && all.has(flip(term)));
}
