import { collapseRepeats, normalise } from './normalise.ts';
import { tokenise, type Token } from './token.ts';
import type { Words } from '../words/words.ts';

/**
 * What is compared of a phrase: words without endings and fillers, numbers in figures. A term that
 * is denied begins with `!`: "no click at all" is `!click`.
 */
export type Terms = readonly string[];

/** How many terms a negation reaches over, unless the clause ends before. */
const negationReach = 4;

/** Turns tokens into terms by the words of one language. */
export interface TermReader {
  readonly fromTokens: (tokens: readonly Token[]) => Terms;
  readonly fromText: (text: string) => Terms;
  /** Every word of a name, fillers kept and nothing denied. */
  readonly literally: (text: string | readonly Token[]) => Terms;
}

/** The term reader of one language. */
export function createTermReader(words: Words): TermReader {
  const negators = new Set(words.negators.map(normalise));
  const breaks = new Set(words.clauseBreaks.map(normalise));
  const fillers = new Set(words.fillers.map(normalise));
  const stem = (word: string): string => stemWord(word, words);

  const fromTokens = (tokens: readonly Token[]): Terms => {
    const terms: string[] = [];
    let reach = 0;
    // A negator that nothing follows is a term itself: "no", "nothing".
    let alone: string | undefined;
    const endClause = (): void => {
      if (alone !== undefined) terms.push(alone);
      alone = undefined;
      reach = 0;
    };
    for (const token of tokens) {
      if (token.kind === 'malformed' || (token.kind === 'mark' && '-/'.includes(token.text)))
        continue;
      if (token.kind === 'mark') endClause();
      else if (token.kind === 'word' && negators.has(token.text)) {
        endClause();
        alone = stem(token.text);
        reach = negationReach;
      } else if (token.kind === 'word' && breaks.has(token.text)) endClause();
      else if (token.kind === 'number' || !fillers.has(token.text)) {
        const term = token.kind === 'number' ? token.digits : stem(token.text);
        terms.push(reach > 0 ? `!${term}` : term);
        reach = Math.max(reach - 1, 0);
        alone = undefined;
      }
    }
    endClause();
    return terms.length > 0
      ? terms
      : tokens.flatMap((token) => (token.kind === 'word' ? [stem(token.text)] : []));
  };

  const tokensOf = (text: string): Token[] => tokenise(normalise(text), words.grouping);
  return {
    fromTokens,
    fromText: (text) => fromTokens(tokensOf(text)),
    literally: (text) =>
      (typeof text === 'string' ? tokensOf(text) : text).flatMap((token) => {
        if (token.kind === 'number') return [token.digits];
        return token.kind === 'word' ? [stem(token.text)] : [];
      }),
  };
}

/** The shortest that a word may become when its ending goes. */
const shortestStem = 3;

function stemWord(word: string, { cardinals, endings }: Words): string {
  const number = Object.hasOwn(cardinals, word) ? cardinals[word] : undefined;
  if (number !== undefined) return String(number);
  const short = collapseRepeats(word);
  const ending = endings.find(
    (end) => short.endsWith(end) && short.length - end.length >= shortestStem,
  );
  return ending === undefined ? short : collapseRepeats(short.slice(0, -ending.length));
}

/** The same term affirmed where it was denied, and denied where it was affirmed. */
export function flip(term: string): string {
  return term.startsWith('!') ? term.slice(1) : `!${term}`;
}
