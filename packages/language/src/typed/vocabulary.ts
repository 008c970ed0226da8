import type { Spelling } from '../words/words.ts';
import { isNear } from './typing-mistake.ts';

/** Known terms that a typed term may stand for, each with how alike they are, 0 to 1. */
export type Meanings = ReadonlyMap<string, number>;

/** Finds the known terms that a typed term may stand for. */
export type Vocabulary = (term: string) => Meanings;

/** A typing mistake away. */
const mistyped = 0.9;

/** From here on another form of a word is taken for the word, in so far as it is alike. */
const leastAlike = 0.6;

/** Shorter terms than this have no other forms that could be told from other words. */
const shortestForm = 4;

/** Longer words than this are looked up as they are. */
const longestWord = 30;

/** So many typed terms are remembered. */
const mostKept = 2000;

/**
 * A vocabulary of terms, denied or not. A term that is not known is taken for those one typing
 * mistake away; a term, known or not, also for those that are another form of the same word:
 * that begin alike, or, where words are written on to words, share most pairs of letters.
 */
export function createVocabulary(known: Iterable<string>, spelling: Spelling = {}): Vocabulary {
  const exact = new Set<string>();
  const byStart = new Map<string, string[]>();
  const isPaired = (spelling.attached ?? []).length > 0;
  for (const term of known) {
    const bare = term.replace('!', '');
    if (exact.has(bare)) continue;
    exact.add(bare);
    const key = isPaired ? '' : bare.slice(0, 1);
    byStart.set(key, [...(byStart.get(key) ?? []), bare]);
  }
  const compounds = spelling.compounds === true ? [...exact].filter(isPartOfCompound) : [];
  const alike = isPaired ? sharedPairs : sharedStart;

  const find = (bare: string): ReadonlyMap<string, number> => {
    const found = new Map<string, number>();
    const isKnown = exact.has(bare);
    if (isKnown) found.set(bare, 1);
    if (bare.length > longestWord || /\d/.test(bare)) return found;
    for (const candidate of byStart.get(isPaired ? '' : bare.slice(0, 1)) ?? []) {
      if (found.has(candidate)) continue;
      if (!isKnown && isNear(bare, candidate)) found.set(candidate, mistyped);
      else if (Math.min(bare.length, candidate.length) >= shortestForm) {
        const likeness = alike(bare, candidate);
        if (likeness >= leastAlike) found.set(candidate, Math.min(likeness, mistyped));
      }
    }
    if (!isKnown && found.size === 0) {
      for (const part of compounds) {
        if (bare.endsWith(part) || bare.startsWith(part)) found.set(part, compoundPart);
      }
    }
    return found;
  };

  const kept = new Map<string, Meanings>();
  return (term) => {
    const seen = kept.get(term);
    if (seen !== undefined) return seen;
    const isDenied = term.startsWith('!');
    const found = find(isDenied ? term.slice(1) : term);
    const meanings = isDenied
      ? new Map([...found].map(([bare, likeness]) => [`!${bare}`, likeness]))
      : found;
    const result = meanings.size === 0 ? new Map([[term, 1]]) : meanings;
    if (kept.size >= mostKept) kept.clear();
    kept.set(term, result);
    return result;
  };
}

/** A part of a compound says most of what the compound says. */
const compoundPart = 0.75;

function isPartOfCompound(term: string): boolean {
  return term.length >= 5;
}

/** How much of the longer word the two begin with alike; nothing below four letters. */
function sharedStart(one: string, other: string): number {
  const longer = Math.max(one.length, other.length);
  let same = 0;
  while (same < longer && one[same] === other[same]) same += 1;
  return same < shortestForm ? 0 : same / longer;
}

/** The share of pairs of letters that two words have in common, after Dice. */
function sharedPairs(one: string, other: string): number {
  const pairs = new Map<string, number>();
  for (let at = 0; at + 1 < one.length; at += 1) {
    const pair = one.slice(at, at + 2);
    pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
  }
  let shared = 0;
  for (let at = 0; at + 1 < other.length; at += 1) {
    const left = pairs.get(other.slice(at, at + 2)) ?? 0;
    if (left === 0) continue;
    shared += 1;
    pairs.set(other.slice(at, at + 2), left - 1);
  }
  return (2 * shared) / (one.length + other.length - 2);
}
