import type { TermReader, Terms } from '../typed/terms.ts';
import type { TalkWord, Words } from '../words/words.ts';

/** How one talk word is said. */
export interface TalkPhrases {
  readonly said: readonly Terms[];
  /** Every phrase word for word, fillers and all. */
  readonly literal: readonly Terms[];
}

/** How each talk word is said. */
type TalkOf = Readonly<Record<TalkWord, TalkPhrases>>;

/**
 * The phrases of talk. One that small words alone keep from saying something else ("cómo no", of
 * course, without them "no") is understood only word for word.
 */
export function readTalkPhrases(words: Words, reader: TermReader): TalkOf {
  const all = Object.entries(words.talk).flatMap(([word, said]) =>
    said.map((phrase) => {
      const terms = reader.fromText(phrase);
      const literal = reader.literally(phrase);
      return {
        word,
        terms,
        literal,
        key: terms.join(' '),
        isWhole: terms.length === literal.length,
      };
    }),
  );
  const isPlain = ({ word, key, isWhole }: (typeof all)[number]): boolean =>
    isWhole || !all.some((other) => other.key === key && other.word !== word);
  const phrasesOf = (word: string): TalkPhrases => {
    const own = all.filter((phrase) => phrase.word === word && phrase.terms.length > 0);
    return {
      said: own.filter(isPlain).map(({ terms }) => terms),
      literal: own.map(({ literal }) => literal),
    };
  };
  return Object.fromEntries(
    Object.keys(words.talk).map((word) => [word, phrasesOf(word)]),
  ) as Record<TalkWord, TalkPhrases>;
}

/** True where a text is talk, word for word. */
export function isTalk(text: string, talk: TalkOf, reader: TermReader): boolean {
  const literal = reader.literally(text).join(' ');
  return Object.values(talk).some((phrases) =>
    phrases.literal.some((phrase) => phrase.join(' ') === literal),
  );
}
