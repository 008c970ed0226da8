import type { Turn } from './turn.ts';
import type { Understood } from './understood.ts';

/** More words than this tell something else than which language to go on in. */
const mostWords = 10;

/** A language's name among more words than this must be asked for. */
const fewWords = 4;

/** The name of a language, in any language: "Deutsch", "in English please", "po polsku". */
export function readLanguage(turn: Turn): Understood | undefined {
  const { tokens, listener } = turn;
  const words = tokens.filter(({ kind }) => kind === 'word');
  if (words.length === 0 || words.length > mostWords) return undefined;
  if (tokens.some(({ kind }) => kind === 'number')) return undefined;
  const named = words.flatMap((token) => {
    const locale = token.kind === 'word' ? listener.languageNamed(token.text) : undefined;
    return locale === undefined ? [] : [locale];
  });
  const [locale, more] = [...new Set(named)];
  if (locale === undefined || more !== undefined) return undefined;
  // "English" alone or with little beside it; in a sentence the word may be the car's (العربية).
  const isAlone =
    words.length <= fewWords &&
    words.every((token) => token.kind !== 'word' || isBeside(token.text, turn));
  if (!isAlone && !isAskedFor(turn)) return undefined;
  return { type: 'language', locale, talk: 'language' };
}

/** True where the name stands behind a word that asks for it: "do you speak Polish", "auf Englisch". */
function isAskedFor({ tokens, listener }: Turn): boolean {
  const { words } = listener.lexicon;
  const isDenied = tokens.some(
    (token) => token.kind === 'word' && words.negators.includes(token.text),
  );
  if (isDenied) return false;
  return tokens.some((token, at) => {
    if (token.kind !== 'word' || listener.languageNamed(token.text) === undefined) return false;
    const before = tokens[at - 1];
    return (
      token.text.startsWith(askingPrefix) ||
      (before?.kind === 'word' && words.speaking.includes(before.text))
    );
  });
}

/** "In", as Arabic writes it on to a language's name. */
const askingPrefix = 'ب';

/** The name, or a word that may stand beside it: "in", "speak", "please". */
function isBeside(word: string, { listener }: Turn): boolean {
  const { words, talk, reader } = listener.lexicon;
  if (listener.languageNamed(word) !== undefined || words.fillers.includes(word)) return true;
  if (words.negators.includes(word)) return false;
  const [term = ''] = reader.literally(word);
  return word.length <= shortWord || talk.language.literal.some((said) => said.includes(term));
}

/** Prepositions: "in", "en", "auf", "po". */
const shortWord = 3;
