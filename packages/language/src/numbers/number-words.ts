import type { Token } from '../typed/token.ts';
import { isNear } from '../typed/typing-mistake.ts';
import { remembered } from '../once.ts';
import type { Words } from '../words/words.ts';

/** The numbers of one language as they are said. The words are spelled as typed words are. */
export interface NumberWords {
  readonly words: Words;
  /** The number whose words begin here, the longest one, and how many words it takes. */
  readonly cardinalAt: (
    tokens: readonly Token[],
    at: number,
  ) => { readonly value: number; readonly length: number } | undefined;
  /** Words taken apart that are numbers written together: "einundzwanzig", "وعشرون". */
  readonly takeApart: (tokens: readonly Token[]) => readonly Token[];
}

/** Longer words than this are no numbers. */
const longestCompound = 40;

/** A shorter word is not taken for a mistyped number: "there" is not "three". */
const shortestMistyped = 6;

/** A part of a number in one word is mistyped only where it is as long as this. */
const shortestPart = 4;

/** What stands before a mistyped part is as long as this: `elf`. */
const shortestLead = 3;

/** Shorter number words are other words where something is written on: `لست`, I am not. */
const shortestWrittenOn = 3;

type Mistyped = { readonly value: number; readonly length: number } | undefined;

/** Makes the number words of one language ready; a word that is known is no mistyped number. */
export function createNumberWords(
  words: Words,
  isKnown: (word: string) => boolean = () => false,
): NumberWords {
  const { cardinals, scales, fractions, joins, point, spelling = {} } = words;
  const longest = Math.max(1, ...Object.keys(cardinals).map((said) => said.split(' ').length));
  const parts = new Set(
    [cardinals, scales, fractions].flatMap((record) =>
      Object.keys(record).filter((said) => !said.includes(' ')),
    ),
  );
  const joined = new Set([...parts, ...joins, ...point]);
  const unitsBehind = new Set(spelling.unitsBehind);
  const attached = (spelling.attached ?? []).filter((prefix) => joins.includes(prefix));

  // Where words are not usually written together, a short one is no number.
  const shortest = spelling.compounds === true ? 0 : shortestMistyped;
  const splitExact = (word: string): readonly string[] | undefined => {
    if (word.length > longestCompound || word.length < shortest) return undefined;
    // From the end: which number words the rest of the word is made of, the longest first.
    const rests: (readonly string[] | undefined)[] = new Array<undefined>(word.length + 1);
    rests[word.length] = [];
    for (let start = word.length - 1; start >= 0; start -= 1) {
      for (let end = word.length; end > start; end -= 1) {
        const rest = rests[end];
        const part = word.slice(start, end);
        const isUnit = end === word.length && unitsBehind.has(part);
        if (rest === undefined || !(isUnit || joined.has(part))) continue;
        rests[start] = [part, ...rest];
        break;
      }
    }
    const split = rests[0];
    if (split === undefined || split.length < 2 || !parts.has(split[0] ?? '')) return undefined;
    // "Stoi" is no hundred and.
    return joins.includes(split.at(-1) ?? '') ? undefined : split;
  };

  // The one part that a piece of a word can be, where it is mistyped.
  const partLike = (piece: string): string | undefined => {
    const [like, more] = [...parts].filter(
      (part) => part.length >= shortestPart && isNear(piece, part),
    );
    return more === undefined ? like : undefined;
  };
  // "Fünfhundertzwanig", "sibeneinhalb": the last part may be mistyped, or the first.
  const splitMistyped = (word: string): readonly string[] | undefined => {
    if (spelling.compounds !== true || word.length > longestCompound || isKnown(word))
      return undefined;
    for (let end = word.length - shortestPart; end >= shortestLead; end -= 1) {
      const lead = word.slice(0, end);
      const rest = word.slice(end);
      const before = parts.has(lead) ? [lead] : splitExact(lead);
      const behind = parts.has(rest) ? [rest] : splitExact(rest);
      const last = before === undefined ? undefined : partLike(rest);
      const first = behind === undefined ? undefined : partLike(lead);
      if (before !== undefined && last !== undefined) return [...before, last];
      if (behind !== undefined && first !== undefined) return [first, ...behind];
    }
    return undefined;
  };

  const splitCompound = (word: string): readonly string[] | undefined =>
    splitExact(word) ?? splitMistyped(word);

  const two = Object.keys(cardinals).find((said) => cardinals[said] === 2);
  const splitAttached = (word: string): readonly string[] | undefined => {
    // With what is written on to it: `بدرجتين`.
    const [one] = ['', ...(spelling.beforeNumbers ?? [])].flatMap((prefix) => {
      const said = word.startsWith(prefix) ? word.slice(prefix.length) : '';
      return Object.hasOwn(spelling.twoOf ?? {}, said) ? (spelling.twoOf?.[said] ?? []) : [];
    });
    if (one !== undefined && two !== undefined) return [two, one];
    const prefix = attached.find(
      (one) => word.startsWith(one) && parts.has(word.slice(one.length)),
    );
    return prefix === undefined ? undefined : [prefix, word.slice(prefix.length)];
  };

  const longestOf = (
    said: readonly string[],
    numbers: Readonly<Record<string, number>>,
  ): Mistyped => {
    for (let length = said.length; length > 0; length -= 1) {
      const phrase = said.slice(0, length).join(' ');
      const value = Object.hasOwn(numbers, phrase) ? numbers[phrase] : undefined;
      if (value !== undefined) return { value, length };
    }
    return undefined;
  };
  const writtenOn = ([first = '', ...more]: readonly string[]): Mistyped => {
    const prefix = (spelling.beforeNumbers ?? []).find(
      (one) => first.startsWith(one) && first.length - one.length >= shortestWrittenOn,
    );
    if (prefix === undefined) return undefined;
    const found = longestOf([first.slice(prefix.length), ...more], cardinals);
    return found !== undefined && found.value > 1 ? found : undefined;
  };

  const long = Object.keys(cardinals).filter(
    (said) => said.length >= shortestMistyped && !said.includes(' '),
  );
  const likeOne = remembered((word): Mistyped => {
    const values = long.filter((said) => isNear(word, said)).map((said) => cardinals[said]);
    const [value, more] = [...new Set(values)];
    return value === undefined || more !== undefined ? undefined : { value, length: 1 };
  });
  const mistyped = (word: string | undefined): Mistyped => {
    if (word === undefined || word.length < shortestMistyped || parts.has(word)) return undefined;
    if (words.vague.includes(word) || Object.hasOwn(words.ordinals, word)) return undefined;
    return isKnown(word) ? undefined : likeOne(word);
  };

  const apart = remembered(attached.length > 0 ? splitAttached : splitCompound);

  return {
    words,
    cardinalAt: (tokens, at) => {
      const said: string[] = [];
      for (let next = at; next < at + longest; next += 1) {
        const token = tokens[next];
        if (token?.kind !== 'word') break;
        said.push(token.text);
      }
      return longestOf(said, cardinals) ?? writtenOn(said) ?? mistyped(said[0]);
    },
    takeApart: (tokens) => {
      return tokens.flatMap((token): readonly Token[] => {
        if (token.kind !== 'word' || parts.has(token.text)) return [token];
        const split = apart(token.text);
        return split?.map((text) => ({ kind: 'word', text })) ?? [token];
      });
    },
  };
}
