import { normalise } from '../typed/normalise.ts';
import type { Token } from '../typed/token.ts';
import { type Turn, unclear } from './turn.ts';
import type { Understood } from './understood.ts';

/** More words than this tell something else than which language to go on in. */
const mostWords = 10;

/** A language's name among more words than this must be asked for. */
const fewWords = 4;

/**
 * Words right before a language's name by which whoever does not speak this one asks for it in
 * another, spelled as typed words are.
 */
const asksAnywhere: ReadonlySet<string> = new Set(
  [
    'speak in into to habla hablas hablar hablan en al parle parles parlez parler',
    'sprechen sprichst auf mowi mowisz mowic po تتكلم تحكي نحكي',
  ].flatMap((words) => words.split(' ')),
);

/** Courtesies beside a language's name, by whoever does not speak this one: "Deutsch bitte". */
const courtesies: ReadonlySet<string> = new Set(
  [
    'please pls bitte svp sil vous plait por favor prosze',
    'لو سمحت من فضلك пожалуйста будь ласка',
  ].flatMap((words) => normalise(words).split(' ')),
);

/** The name of a language, in any language: "Deutsch", "in English please", "po polsku". */
export function readLanguage(turn: Turn): Understood | undefined {
  const { tokens, listener } = turn;
  const words = tokens.filter(({ kind }) => kind === 'word');
  if (words.length === 0 || words.length > mostWords) return undefined;
  if (tokens.some(({ kind }) => kind === 'number')) return undefined;
  const asked = new Set(askedFor(turn));
  const named = new Set(words.flatMap((token) => namedBy(token, turn)));
  // "Do you speak Hindi? My English is not good": the one that is asked for.
  const [locale, more] = asked.size > 0 ? asked : named;
  if (locale === undefined || more !== undefined) return undefined;
  // "English" alone or with little beside it; in a sentence the word may be the car's (العربية).
  const isAlone =
    words.length <= fewWords &&
    words.every((token) => token.kind !== 'word' || isBeside(token.text, turn));
  if (!isAlone && asked.size === 0) return undefined;
  return listener.locales.includes(locale)
    ? { type: 'language', locale, talk: 'language' }
    : unclear(turn, 'which-language', 'language');
}

function namedBy(token: Token | undefined, { listener }: Turn): string[] {
  const locale = token?.kind === 'word' ? listener.languageNamed(token.text) : undefined;
  return locale === undefined ? [] : [locale];
}

/** The languages named behind a word that asks for them: "do you speak Polish", "auf Englisch". */
function askedFor(turn: Turn): string[] {
  const { tokens, listener } = turn;
  const { words } = listener.lexicon;
  return tokens.flatMap((token, at) => {
    const [locale] = namedBy(token, turn);
    if (locale === undefined || token.kind !== 'word') return [];
    const before = tokens[at - 1];
    const isAsked =
      token.text.startsWith(askingPrefix) ||
      (before?.kind === 'word' &&
        (words.speaking.includes(before.text) || asksAnywhere.has(before.text)));
    return isAsked && !isDenied(tokens.slice(0, at), turn) ? [locale] : [];
  });
}

function isDenied(before: readonly Token[], { listener }: Turn): boolean {
  const { negators } = listener.lexicon.words;
  return before.some((token) => token.kind === 'word' && negators.includes(token.text));
}

/** "In", as Arabic writes it on to a language's name. */
const askingPrefix = 'ب';

/** The name, or a word that may stand beside it: "in", "speak", "please". */
function isBeside(word: string, { listener }: Turn): boolean {
  const { words, talk, reader } = listener.lexicon;
  if (listener.languageNamed(word) !== undefined || words.fillers.includes(word)) return true;
  if (courtesies.has(word)) return true;
  if (words.negators.includes(word)) return false;
  const [term = ''] = reader.literally(word);
  return word.length <= shortWord || talk.language.literal.some((said) => said.includes(term));
}

/** Prepositions: "in", "en", "auf", "po". */
const shortWord = 3;
