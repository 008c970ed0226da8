import { gather } from '../gather.ts';
import { remembered } from '../once.ts';
import type { Spelling } from '../words/words.ts';
import { indexMistakes } from './typing-mistake.ts';

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

/**
 * A vocabulary of terms, denied or not. A term that is not known is taken for those one typing
 * mistake away; a term, known or not, also for those that are another form of the same word:
 * that begin alike, or, where words are written on to words, share most pairs of letters.
 */
export function createVocabulary(known: Iterable<string>, spelling: Spelling = {}): Vocabulary {
  const exact = new Set<string>();
  for (const term of known) exact.add(term.replace('!', ''));
  const nearTo = indexMistakes(exact);
  const likeTo = (spelling.attached ?? []).length > 0 ? indexPairs(exact) : indexStarts(exact);
  const compounds = spelling.compounds === true ? [...exact].filter(isPartOfCompound) : [];

  const find = (bare: string): ReadonlyMap<string, number> => {
    const found = new Map<string, number>();
    const isKnown = exact.has(bare);
    if (isKnown) found.set(bare, 1);
    if (bare.length > longestWord || /\d/.test(bare)) return found;
    for (const [candidate, likeness] of likeTo(bare)) {
      if (!found.has(candidate) && likeness >= leastAlike)
        found.set(candidate, Math.min(likeness, mistyped));
    }
    if (!isKnown) for (const candidate of nearTo(bare)) found.set(candidate, mistyped);
    if (!isKnown && found.size === 0) {
      for (const part of compounds) {
        if (bare.endsWith(part) || bare.startsWith(part)) found.set(part, compoundPart);
      }
    }
    return found;
  };

  return remembered((term) => {
    const isDenied = term.startsWith('!');
    const found = find(isDenied ? term.slice(1) : term);
    const meanings = isDenied
      ? new Map([...found].map(([bare, likeness]) => [`!${bare}`, likeness]))
      : found;
    return meanings.size === 0 ? new Map([[term, 1]]) : meanings;
  });
}

/** A part of a compound says most of what the compound says. */
const compoundPart = 0.75;

function isPartOfCompound(term: string): boolean {
  return term.length >= 5;
}

/** Finds known words that are like a word, each with how alike they are. */
type LikeWords = (word: string) => Iterable<readonly [string, number]>;

/** Known words that begin alike: how much of the longer word the two begin with alike. */
function indexStarts(words: Iterable<string>): LikeWords {
  const byStart = gather(words, (word) => [word.slice(0, shortestForm)]);
  return (word) =>
    word.length < shortestForm
      ? []
      : (byStart.get(word.slice(0, shortestForm)) ?? [])
          .filter((candidate) => candidate.length >= shortestForm)
          .map((candidate) => [candidate, sharedStart(word, candidate)]);
}

function sharedStart(one: string, other: string): number {
  const longer = Math.max(one.length, other.length);
  let same = 0;
  while (same < longer && one[same] === other[same]) same += 1;
  return same / longer;
}

/** Known words that share pairs of letters: the share that two have in common, after Dice. */
function indexPairs(words: Iterable<string>): LikeWords {
  const long = [...words].filter((word) => word.length >= shortestForm);
  const byPair = gather(long, pairsOf);
  return (word) => {
    if (word.length < shortestForm) return [];
    const shared = new Map<string, number>();
    for (const pair of pairsOf(word)) {
      for (const candidate of byPair.get(pair) ?? [])
        shared.set(candidate, (shared.get(candidate) ?? 0) + 1);
    }
    return [...shared].map(([candidate, count]) => [
      candidate,
      (2 * count) / (word.length + candidate.length - 2),
    ]);
  };
}

/** The pairs of letters of a word; one that comes again is told apart by how often it came. */
function pairsOf(word: string): string[] {
  const pairs: string[] = [];
  for (let at = 0; at + 1 < word.length; at += 1) {
    let pair = word.slice(at, at + 2);
    while (pairs.includes(pair)) pair += '+';
    pairs.push(pair);
  }
  return pairs;
}
