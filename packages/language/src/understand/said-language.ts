import type { Turn } from './turn.ts';
import type { Understood } from './understood.ts';

/** More words than this tell something else than which language to go on in. */
const mostWords = 4;

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
  return { type: 'language', locale, talk: 'language' };
}
