import type { Token } from '../typed/token.ts';
import type { Words } from '../words/words.ts';
import type { SaidFigure } from './line-figures.ts';
import { hasPhrase } from './word-run.ts';

/** The words of each figure: up to a mark or a new clause, else before it or behind it, as the text begins. */
export function wordsOfEach(
  figures: readonly SaidFigure[],
  tokens: readonly Token[],
  { telling, words }: { readonly telling: readonly string[]; readonly words: Words },
): readonly (readonly Token[])[] {
  const { clauseBreaks, joins } = words;
  const isBefore = hasPhrase(tokens.slice(0, figures[0]?.start ?? 0), telling);
  const cuts = figures.slice(1).map((figure, index) => {
    const from = figures[index]?.end ?? 0;
    const between = tokens.slice(from, figure.start);
    const isJoined = (word: string): boolean =>
      telling.includes(word) &&
      joins.some((join) => telling.includes(word.slice(join.length)) && word.startsWith(join));
    const at = between.findIndex(
      (token) =>
        token.kind === 'mark' ||
        (token.kind === 'word' && (clauseBreaks.includes(token.text) || isJoined(token.text))),
    );
    if (at >= 0) return from + at;
    return isBefore ? from : figure.start;
  });
  return figures.map(({ start, end }, index) => [
    ...tokens.slice(index === 0 ? 0 : cuts[index - 1], start),
    ...tokens.slice(end, cuts[index] ?? tokens.length),
  ]);
}
