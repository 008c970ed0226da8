import { remembered } from '../once.ts';
import type { Words } from '../words/words.ts';

/** What a typed word is made of and what it does. */
export interface WordParts {
  /** Without what is written on to it. */
  readonly word: string;
  readonly role: 'term' | 'negator' | 'filler';
  /** True where a joining word is written on to it: the `و` of `والبطارية`. */
  readonly isJoined: boolean;
  /** True where what is written round it denies it: `مابيشتغلش`. */
  readonly isDenied: boolean;
}

/** Less than this is no word without what is written on to it. */
const shortestWord = 3;

/** Less than this is no word behind what joins it: the `زر` of `وزر`. */
const shortestJoined = 2;

/** Takes words apart in one language, whose words are spelled as typed words are. */
export function createWordParts(words: Words): {
  readonly partsOf: (typed: string) => WordParts;
  /** A word without what joins it to the one before: `وبصمة` is `بصمة`. Number words stay whole. */
  readonly unjoined: (typed: string) => string;
} {
  const { attached = [], around = [] } = words.spelling ?? {};
  const negators = new Set(words.negators);
  const fillers = new Set(words.fillers);
  const plain = new Set([...words.clauseBreaks, ...words.joins, ...Object.keys(words.cardinals)]);
  const roleOf = (word: string): WordParts['role'] => {
    if (negators.has(word)) return 'negator';
    return fillers.has(word) ? 'filler' : 'term';
  };
  const unjoined = (typed: string): string => {
    if (plain.has(typed) || roleOf(typed) !== 'term') return typed;
    const join = attached.find(
      (one) =>
        words.joins.includes(one) &&
        typed.startsWith(one) &&
        typed.length - one.length >= shortestJoined,
    );
    const bare = typed.slice(join?.length);
    return Object.hasOwn(words.cardinals, bare) ? typed : bare;
  };

  const partsOf = (typed: string): WordParts => {
    const role = roleOf(typed);
    const whole = { word: typed, role, isJoined: false, isDenied: false };
    if (role !== 'term' || plain.has(typed)) return whole;
    // Little words are joined as others are: the `هي` of `وهي`.
    const little = unjoined(typed);
    if (roleOf(little) !== 'term')
      return { word: little, role: roleOf(little), isJoined: true, isDenied: false };
    for (const bare of new Set([typed, unjoined(typed)])) {
      for (const [start, end] of around) {
        const length = bare.length - start.length - end.length;
        if (!bare.startsWith(start) || !bare.endsWith(end) || length < shortestWord) continue;
        const word = bare.slice(start.length, start.length + length);
        return { word, role, isJoined: bare !== typed, isDenied: true };
      }
    }
    // Behind an article two letters are a word as well: the `بي` of `عالبي`, P.
    const leastOf = (one: string): number =>
      words.articles.some((article) => one.endsWith(article)) ? shortestJoined : shortestWord;
    const prefix = attached.find(
      (one) =>
        typed.startsWith(one) &&
        typed.length - one.length >= leastOf(one) &&
        (typed.length - one.length >= shortestWord || roleOf(typed.slice(one.length)) === 'term'),
    );
    if (prefix === undefined) return whole;
    const word = typed.slice(prefix.length);
    const isJoined = words.joins.some((join) => prefix.startsWith(join));
    return { word, role: roleOf(word), isJoined, isDenied: false };
  };
  return { partsOf: remembered(partsOf), unjoined: remembered(unjoined) };
}
