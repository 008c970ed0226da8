import { once } from '../once.ts';
import type { LatinLetters, LatinReader, Words } from '../words/words.ts';
import { collapseRepeats, normalise } from './normalise.ts';
import type { Token } from './token.ts';

/** What it costs where a vowel is typed and none is written, and where one is written and none typed. */
const shortVowel = 0.1;
const longVowel = 0.4;

/** The same at the end of a word. */
const lastVowel = 0.2;

/** What each place costs that a letter stands behind the likeliest of those that are typed so. */
const otherLetter = 0.08;

/** How far a spelling may be from a word, for each of its letters, to be taken for it. */
const farthest = 0.1;

/** A word that is said twice as often may be so much farther. */
const usualBonus = 0.04;

/** So much of a text must spell words: else it is in another language. */
const leastSpelled = 0.6;

/** Stands among the letters that a Latin one may stand for, where it may stand for none. */
const none = '-';

/** The words that there are. */
export interface KnownWords {
  /** How often each is said. */
  readonly counts: ReadonlyMap<string, number>;
  /** What is Latin everywhere: `stop`, `diesel`. */
  readonly kept: ReadonlySet<string>;
  /** What was put into the letters of the language already: `khms`. */
  readonly told: ReadonlySet<string>;
}

/**
 * Reads each word of a text in Latin letters as the known one that it spells, short vowels and
 * doubled letters aside: `mofta7` is `مفتاح`. A word that spells none stays as it is.
 */
export function createLatinReader(latin: LatinLetters, known: () => KnownWords): LatinReader {
  const { reads, silent, little } = latin;
  const typedLetters = new RegExp(
    Object.keys(reads)
      .sort((one, other) => other.length - one.length)
      .join('|'),
    'gu',
  );
  // As few as can be: a vowel that is typed is the one that is written.
  const vowel = `([${silent}]??)`;

  /** The known word that is closest to a spelling, its consonants the same. */
  const find = (typed: string): string | undefined => {
    // A digit spells a letter, and several in a row a number: "p0335".
    if (/\d{3}/u.test(typed)) return undefined;
    const letters = (typed.match(typedLetters) ?? []).map((letter) => reads[letter] ?? '');
    if (letters.length === 0 || letters.join('') === '') return undefined;
    const spelling = new RegExp(
      `^${vowel}${letters.map((one) => `([${one.replace(none, '')}]${one.includes(none) ? '?' : ''})${vowel}`).join('')}$`,
      'u',
    );
    let best: { readonly word?: string; readonly far: number } = { far: Infinity };
    for (const [word, count] of known().counts) {
      const found = spelling.exec(word)?.slice(1);
      if (found === undefined) continue;
      const by = found.reduce((sum, letter, at) => {
        const isLast = at >= found.length - 2;
        if (at % 2 === 0)
          return sum + (letter === '' ? 0 : isLast || at === 0 ? lastVowel : longVowel);
        const place = letters[(at - 1) / 2]?.indexOf(letter) ?? 0;
        return sum + (letter === '' ? (isLast ? lastVowel : shortVowel) : place * otherLetter);
      }, 0);
      const far = by - usualBonus * Math.log2(count);
      if (by <= farthest * (typed.length + 1) && far < best.far) best = { word, far };
    }
    return best.word;
  };

  const found = new Map<string, string | undefined>();
  const spelled = (typed: string): string | undefined => {
    const word = found.has(typed)
      ? found.get(typed)
      : (little[typed] ?? find(collapseRepeats(typed)));
    found.set(typed, word);
    return word;
  };

  return (tokens) => {
    const words = tokens.flatMap((token) => (token.kind === 'word' ? [token.text] : []));
    const isTyped = (word: string): boolean => /[a-z]/u.test(word) || known().told.has(word);
    if (!words.some((word) => /[a-z]/u.test(word)) || !words.every(isTyped)) return tokens;
    let strange = 0;
    const read = tokens.flatMap((token, at): readonly Token[] => {
      if (token.kind !== 'word') return [token];
      if (known().told.has(token.text)) return [token];
      // Behind a figure a letter or two are its unit.
      const isUnit = tokens[at - 1]?.kind === 'number' && token.text.length < 3;
      const isKept = token.text.length === 1 || known().kept.has(token.text);
      if (isUnit || (isKept && little[token.text] === undefined)) return [token];
      const text = spelled(token.text);
      if (text === undefined) strange += 1;
      return text === '' ? [] : [{ kind: 'word', text: text ?? token.text }];
    });
    return read.length > 0 && strange <= (1 - leastSpelled) * words.length ? read : tokens;
  };
}

/** The reader of a language, by its words and all that is said in it. */
export function latinReaderOf(latin: LatinLetters): NonNullable<Words['readLatin']> {
  return (said, words) =>
    createLatinReader(
      latin,
      once(() => knownWords(words, said)),
    );
}

/** A text within JSON, and a word of it in the letters of the language, or in Latin ones. */
const textInJson = /"(?:[^"\\]|\\.)+"/gu;
const wordInText = /[\u0621-\u06d3]+|[a-z]+/giu;

/** Every word that is said, and what stays Latin: talk, and what stands among other letters. */
function knownWords({ spelling, ...words }: Words, texts: unknown): KnownWords {
  const counts = new Map<string, number>();
  const kept = new Set([...Object.values(words.talk), words.point].flat());
  const count = (word: string, by: number): unknown =>
    counts.set(word, (counts.get(word) ?? 0) + by);
  const said = new Map<string, number>();
  for (const [text] of JSON.stringify([words, texts]).matchAll(textInJson)) {
    const found = Array.from(text.matchAll(wordInText), ([word]) => word);
    const isMixed = found.some((word) => word > '~');
    for (const word of found) {
      if (word > '~') said.set(word, (said.get(word) ?? 0) + 1);
      else if (isMixed) kept.add(word.toLowerCase());
    }
  }
  for (const [word, by] of said) {
    const spelled = normalise(word, spelling);
    count(spelled, by);
    const article = words.articles.find((one) => spelled.startsWith(one));
    if (article !== undefined) count(spelled.slice(article.length), by);
  }
  const told = Object.values(spelling?.latin ?? {}).map((word) => normalise(word, spelling));
  return { counts, kept, told: new Set(told) };
}
