import type { Token } from '../typed/token.ts';
import type { Words } from '../words/words.ts';

/** A unit as typed: its UCUM code, or `bare` for "degrees", and how many tokens it takes. */
interface SaidUnit {
  readonly code: string;
  readonly length: number;
}

/** Finds the unit that begins at a place, the longest one that fits. */
export type UnitReader = (tokens: readonly Token[], at: number) => SaidUnit | undefined;

/** What `code` is for a word that means the unit of the check itself. */
export const bareUnit = 'bare';

/** A word before which the vowel of a little word is left out. */
const vowel = /^[aeiouy].+/;

/**
 * The unit reader of one language, whose words are spelled as typed words are. A unit that is spelled as an article ("a") is one only where no
 * other word follows: "170 a" has it, "12.4 a minute ago" has not.
 */
export function createUnitReader(words: Words): UnitReader {
  const units = new Map<string, string>();
  let longest = 1;
  const add = (said: string, code: string): void => {
    units.set(said, code);
    longest = Math.max(longest, said.split(' ').length);
  };
  for (const said of words.bareUnits) add(said, bareUnit);
  for (const [code, said] of Object.entries(words.units)) {
    for (const word of said) add(word, code);
  }

  return (tokens, at) => {
    const said: string[] = [];
    for (let next = at; next < at + longest; next += 1) {
      const token = tokens[next];
      if (token?.kind !== 'word') break;
      said.push(token.text);
    }
    for (let length = said.length; length > 0; length -= 1) {
      const word = said.slice(0, length).join(' ');
      const code = units.get(word);
      const next = tokens[at + 1];
      const isArticle =
        words.articles.includes(word) && ['word', 'number'].includes(next?.kind ?? '');
      // The c of "12,1 c'est bas" is no degree.
      const isSmall =
        word.length === 1 &&
        words.fillers.includes(word) &&
        next?.kind === 'word' &&
        words.fillers.includes(next.text);
      // "Jeden ma 12,8": no milliampere.
      const isVerb = words.fillers.includes(word) && next?.kind === 'number';
      // Nor is the l of "12,6 l'autre" a litre: it is written on to a vowel.
      const isElided =
        words.spelling?.elides === true &&
        word.length === 1 &&
        words.fillers.includes(word) &&
        next?.kind === 'word' &&
        vowel.test(next.text);
      if (code !== undefined && !isArticle && !isSmall && !isVerb && !isElided)
        return { code, length };
    }
    return undefined;
  };
}
