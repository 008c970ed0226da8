import { gather } from '../gather.ts';
import { remembered } from '../once.ts';
import type { Spelling } from '../words/words.ts';
import { collapseRepeats } from './normalise.ts';
import type { Token } from './token.ts';
import { indexMistakes } from './typing-mistake.ts';

/** Puts right what was mistyped or written together: "teh lihgts", "nosound". */
export type SpellingMender = (tokens: readonly Token[]) => readonly Token[];

/** What a spelling is mended by. */
interface Known {
  /** How often each word is heard, in the one spelling that typed words have. */
  readonly counts: ReadonlyMap<string, number>;
  readonly spelling?: Spelling | undefined;
  /** True for a number in words, mistyped or not, which is read as one. */
  readonly isNumber: (word: string) => boolean;
  /** Words of figures, which are meant wherever they can be: `six`, `volts`. */
  readonly ofFigures: ReadonlySet<string>;
}

/** A word is mended to one that is heard so often, and so much oftener than any other alike. */
const [leastOften, oftener] = [3, 3];

/** Shorter words are not two that were written together, longer ones are left as they are. */
const [shortestPair, longestWord] = [6, 30];

/** The shortest of two words written together; a longer one where words are written together anyway. */
const [shortestPart, shortestOfCompound] = [2, 3];

/** How often one of two words must be heard, by its length: short ones stand at the ends of many words. */
const leastOfPart = ({ length }: string): number => (length < 4 ? 60 : length < 5 ? 20 : 6);

/**
 * The mender of one language. A word that nobody is heard to say becomes the one that it is a typing
 * mistake away from, or the two that it is made of; where it may be several it stays.
 */
export function createSpellingMender({
  counts,
  spelling = {},
  isNumber,
  ofFigures,
}: Known): SpellingMender {
  const { attached = [], beforeNumbers = [], compounds = false, elides = false } = spelling;
  const before = [...attached, ...beforeNumbers];
  const often = [...counts].filter(([, count]) => count >= leastOften).map(([word]) => word);
  const nearTo = indexMistakes(often);
  const byLetters = gather(often, (word) => [collapseRepeats(word)]);
  const countOf = (word: string): number => counts.get(word) ?? 0;

  const isKnown = (word: string): boolean =>
    counts.has(word) ||
    ofFigures.has(word) ||
    isNumber(word) ||
    before.some((little) => word.startsWith(little) && counts.has(word.slice(little.length)));
  const oftenest = (words: readonly string[]): string | undefined => {
    const [first, second] = words.toSorted((one, other) => countOf(other) - countOf(one));
    if (first === undefined) return undefined;
    return second === undefined || countOf(first) >= oftener * countOf(second) ? first : undefined;
  };
  const isApart = (part: string): boolean =>
    countOf(part) >= leastOfPart(part) || (part.length > shortestPart && ofFigures.has(part));
  const isHeardApart = (part: string): boolean =>
    isApart(part) ||
    before.some((little) => part.startsWith(little) && isApart(part.slice(little.length)));
  const least = compounds ? shortestOfCompound : shortestPart;
  const partsOf = (word: string, from: number, to: number): readonly string[] | undefined => {
    let best: { readonly parts: readonly string[]; readonly count: number } | undefined;
    for (let at = from; at <= to; at += 1) {
      const parts = [word.slice(0, at), word.slice(at)];
      // Where numbers are written as one word, two of them are none: `einhalb`.
      if (!parts.every(isHeardApart) || (compounds && parts.every((part) => ofFigures.has(part))))
        continue;
      const count = parts.reduce((product, part) => product * Math.log(1 + countOf(part)), 1);
      if (best === undefined || count > best.count) best = { parts, count };
    }
    return best?.parts;
  };
  const mended = remembered((word: string): readonly string[] => {
    if (word.length > longestWord || /\d/.test(word) || isKnown(word)) return [word];
    const doubled = oftenest(byLetters.get(collapseRepeats(word)) ?? []);
    if (doubled !== undefined) return [doubled];
    // "Davance", with the apostrophe left out.
    const elided = elides ? partsOf(word, 1, 1) : undefined;
    if (elided !== undefined) return elided;
    const near = oftenest(nearTo(word));
    if (near !== undefined) return [near];
    const parts =
      word.length < shortestPair ? undefined : partsOf(word, least, word.length - least);
    return parts ?? [word];
  });

  return (tokens) =>
    tokens.flatMap((token, at): readonly Token[] => {
      if (token.kind !== 'word' || token.isWrittenOn === true) return [token];
      const words = mended(token.text);
      const isSame = words.length === 1 && words[0] === token.text;
      // What stands behind a figure may be its unit: "10 jsais pas" are no ten days.
      const isTorn = words.length > 1 && tokens[at - 1]?.kind === 'number';
      return isSame || isTorn ? [token] : words.map((text) => ({ kind: 'word', text }));
    });
}
