import type { LatinLetters } from '../words/words.ts';
import { once } from '../understand/once.ts';
import { collapseRepeats } from './normalise.ts';
import type { Token } from './token.ts';

/** Puts words that are typed in Latin letters into the letters of the language. */
export type LatinReader = (tokens: readonly Token[]) => readonly Token[];

/** What each place costs that a letter stands behind the likeliest of those that are typed so. */
const otherLetter = 0.08;

/** What it costs where a vowel is typed and none is written, within a word and at its end. */
const shortVowel = 0.1;
const lastVowel = 0.3;

/** What it costs where one is written and none is typed, within a word and at either end. */
const longVowel = 0.4;
const vowelAtEdge = 0.15;

/** So much of a text must spell words: else it is in another language. */
const leastSpelled = 0.6;

/** How far a spelling may be from a word, for each of its letters, to be taken for it. */
const farthest = 0.1;

/** A word that is said twice as often may be so much farther. */
const usualBonus = 0.05;

/** Farther than any word is. */
const never = 99;

/** Longer words are left as they are. */
const longest = 24;

/** So many words are remembered. */
const mostKept = 2000;

/** Stands among the letters that a Latin one may stand for, where it may stand for none. */
const none = '-';

/** The words that there are. */
export interface KnownWords {
  /** How often each is said. */
  readonly counts: ReadonlyMap<string, number>;
  /** What is Latin everywhere: `stop`, `diesel`. */
  readonly kept: ReadonlySet<string>;
}

/**
 * Reads each word of a text in Latin letters as the known one that it spells, short vowels and
 * doubled letters aside: `mofta7` is `مفتاح`. A word that spells none stays as it is.
 */
export function createLatinReader(latin: LatinLetters, known: () => KnownWords): LatinReader {
  const bones = createBones(latin);
  const find = (typed: string, index: BoneIndex): string | undefined => {
    let best: { readonly word?: string; readonly far: number } = { far: never };
    for (const { word, count } of bones.ofTyped(typed).flatMap((bone) => index.get(bone) ?? [])) {
      const by = distance(typed, word, latin);
      const far = by - usualBonus * Math.log2(count);
      if (by <= farthest * (typed.length + 1) && far < best.far) best = { word, far };
    }
    return best.word;
  };
  const index = once(() => indexByBones(known().counts, bones));
  const found = new Map<string, string | undefined>();
  const spelled = (typed: string): string | undefined => {
    if (typed.length > longest) return undefined;
    const word = found.has(typed)
      ? found.get(typed)
      : (latin.little[typed] ?? find(collapseRepeats(typed), index()));
    if (found.size >= mostKept) found.clear();
    found.set(typed, word);
    return word;
  };

  return (tokens) => {
    const words = tokens.flatMap((token) => (token.kind === 'word' ? [token.text] : []));
    if (words.length === 0 || !words.every(isLatin)) return tokens;
    let strange = 0;
    const read = tokens.flatMap((token, at): readonly Token[] => {
      // Behind a figure a letter or two are its unit.
      const isUnit = tokens[at - 1]?.kind === 'number' && token.kind === 'word' && token.text.length < 3;
      if (token.kind !== 'word' || isUnit) return [token];
      const isLetter = token.text.length === 1 || known().kept.has(token.text);
      if (isLetter && latin.little[token.text] === undefined) return [token];
      const text = spelled(token.text);
      if (text === undefined) strange += 1;
      return text === '' ? [] : [{ kind: 'word', text: text ?? token.text }];
    });
    return read.length > 0 && strange <= (1 - leastSpelled) * words.length ? read : tokens;
  };
}

/** True for a word in Latin letters, among which digits stand for others: `3andi` is `عandi` here. */
function isLatin(word: string): boolean {
  return /[a-z]/.test(word);
}

interface Counted {
  readonly word: string;
  readonly count: number;
}

/** The consonants of a word, as a key: those that are typed for one another are one. */
interface Bones {
  readonly of: (word: string) => string;
  /** A typed word may have several: a `2` is a hamza here and a `ق` there. */
  readonly ofTyped: (typed: string) => readonly string[];
}

function createBones({ reads, silent }: LatinLetters): Bones {
  const first = new Map<string, string>();
  const firstOf = (letter: string): string => {
    const before = first.get(letter) ?? letter;
    return before === letter ? letter : firstOf(before);
  };
  const ofReads = (letters: string): string[] =>
    Array.from(letters).filter((letter) => letter !== none && !silent.includes(letter));
  for (const letters of Object.values(reads)) {
    const [one = '', ...others] = ofReads(letters);
    for (const other of others) first.set(firstOf(other), firstOf(one));
  }
  const isBone = (letter: string): boolean => letter !== none && !silent.includes(letter);
  const of = (word: string): string => Array.from(word).filter(isBone).map(firstOf).join('');
  const ofTyped = (typed: string): readonly string[] => {
    const found: Set<string>[] = [new Set([''])];
    for (let at = 0; at < typed.length; at += 1) {
      for (const size of [1, 2]) {
        const heads = new Set(Array.from(reads[typed.slice(at, at + size)] ?? '', of));
        const ends = (found[at + size] ??= new Set());
        for (const before of found[at] ?? []) for (const head of heads) ends.add(before + head);
      }
    }
    return [...(found[typed.length] ?? [])];
  };
  return { of, ofTyped };
}

type BoneIndex = ReadonlyMap<string, readonly Counted[]>;

function indexByBones(counts: ReadonlyMap<string, number>, { of }: Bones): BoneIndex {
  const index = new Map<string, Counted[]>();
  for (const [word, count] of counts) {
    const own = index.get(of(word));
    if (own === undefined) index.set(of(word), [{ word, count }]);
    else own.push({ word, count });
  }
  return index;
}

/** How far a spelling is from a word, read in whichever way brings them closest. */
function distance(typed: string, word: string, { reads, silent }: LatinLetters): number {
  const width = word.length + 1;
  const least = new Float64Array((typed.length + 1) * width).fill(never);
  least[0] = 0;
  for (let at = 0; at <= typed.length; at += 1) {
    for (let own = 0; own <= word.length; own += 1) {
      const here = least[at * width + own] ?? never;
      const lower = (to: number, cost: number): void => {
        if (here + cost < (least[to] ?? never)) least[to] = here + cost;
      };
      const letter = word[own];
      if (letter !== undefined && silent.includes(letter))
        lower(at * width + own + 1, own === 0 || own === word.length - 1 ? vowelAtEdge : longVowel);
      for (const size of [1, 2]) {
        if (at + size > typed.length) continue;
        const letters = reads[typed.slice(at, at + size)] ?? '';
        const to = (at + size) * width + own;
        if (letters.includes(none)) lower(to, at + 1 === typed.length ? lastVowel : shortVowel);
        const place = letter === undefined ? -1 : letters.indexOf(letter);
        if (place >= 0) lower(to + 1, place * otherLetter);
      }
    }
  }
  return least.at(-1) ?? never;
}
