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

/** Takes off what joins a word to the one before: `وبصمة` is `بصمة`. Number words stay whole. */
export function createUnjoiner({ spelling, joins, cardinals, negators, fillers, clauseBreaks }: Words): (
  typed: string,
) => string {
  const attached = (spelling?.attached ?? []).filter((prefix) => joins.includes(prefix));
  const whole = new Set([...negators, ...fillers, ...clauseBreaks, ...Object.keys(cardinals)]);
  return (typed) => {
    const join = attached.find((one) => typed.startsWith(one) && typed.length - one.length >= shortestJoined);
    return join === undefined || whole.has(typed) ? typed : typed.slice(join.length);
  };
}

/** Takes words apart in one language, whose words are spelled as typed words are. */
export function createWordParts(words: Words): (typed: string) => WordParts {
  const { attached = [], around = [] } = words.spelling ?? {};
  const negators = new Set(words.negators);
  const fillers = new Set(words.fillers);
  const plain = new Set([...words.clauseBreaks, ...words.joins, ...Object.keys(words.cardinals)]);
  const roleOf = (word: string): WordParts['role'] => {
    if (negators.has(word)) return 'negator';
    return fillers.has(word) ? 'filler' : 'term';
  };

  return (typed) => {
    const role = roleOf(typed);
    const whole = { word: typed, role, isJoined: false, isDenied: false };
    if (role !== 'term' || plain.has(typed)) return whole;
    const joined = words.joins.find((join) => typed.startsWith(join)) ?? '';
    for (const join of new Set(['', joined])) {
      const bare = typed.slice(join.length);
      for (const [start, end] of around) {
        const length = bare.length - start.length - end.length;
        if (bare.startsWith(start) && bare.endsWith(end) && length >= shortestWord)
          return { word: bare.slice(start.length, start.length + length), role, isJoined: join !== '', isDenied: true };
      }
    }
    const prefix = attached.find(
      (one) => typed.startsWith(one) && typed.length - one.length >= shortestWord,
    );
    if (prefix === undefined) return whole;
    const word = typed.slice(prefix.length);
    const isJoined = words.joins.some((join) => prefix.startsWith(join));
    return { word, role: roleOf(word), isJoined, isDenied: false };
  };
}
