import type { Token } from '../typed/token.ts';
import { type Words, figureWordsOf } from '../words/words.ts';
import type { SaidFigure } from './line-figures.ts';
import { hasPhrase } from './word-run.ts';

/** What the words of each figure are told by. */
interface Telling {
  readonly telling: readonly string[];
  readonly words: Words;
}

/**
 * Where the words of each figure begin: at a mark or a new clause, else before it or behind the one
 * before, as the text begins.
 */
export function startsOfEach(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  { telling, words }: Telling,
): readonly number[] {
  const { clauseBreaks, joins, spelling } = words;
  const { moments } = figureWordsOf(words);
  const isBefore = hasPhrase(tokens.slice(0, figures[0]?.start ?? 0), telling);
  const isJoined = (word: string): boolean =>
    telling.includes(word) &&
    joins.some((join) => telling.includes(word.slice(join.length)) && word.startsWith(join));
  // The "and" that is written on to a moment: `وعند`.
  const isMoment = (word: string): boolean =>
    (spelling?.attached ?? []).some(
      (prefix) =>
        joins.includes(prefix) &&
        word.startsWith(prefix) &&
        moments.includes(word.slice(prefix.length)),
    );
  const isBreak = (word: string): boolean =>
    clauseBreaks.includes(word) || isJoined(word) || isMoment(word);
  const cuts = figures.slice(1).map((figure, index) => {
    const end = figures[index]?.end ?? 0;
    // A unit may have the break in it: "520 a et".
    const last = tokens[end - 1];
    const from = last?.kind === 'word' && isBreak(last.text) ? end - 1 : end;
    const at = tokens
      .slice(from, figure.start)
      .findIndex(
        (token) => token.kind === 'mark' || (token.kind === 'word' && isBreak(token.text)),
      );
    if (at >= 0) return from + at;
    return isBefore ? from : figure.start;
  });
  return [0, ...cuts];
}

/** The words of each figure. */
export function wordsOfEach(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  how: Telling,
): readonly (readonly Token[])[] {
  const starts = startsOfEach(figures, tokens, how);
  return figures.map(({ start, end }, index) => [
    ...tokens.slice(starts[index], start),
    ...tokens.slice(end, starts[index + 1] ?? tokens.length),
  ]);
}
