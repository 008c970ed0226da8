/** Bounds: "less than 12" is no figure, "just under 12" is close to it. */
import type { Token } from '../typed/token.ts';
import { figureWordsOf } from '../words/words.ts';
import type { LineContext, SaidFigure } from './line-figures.ts';
import { endsWithPhrase, hasPhrase, phraseAt, textOf } from './word-run.ts';

/** So many words may stand before a figure to say that it is not passed. */
const mostBoundWords = 5;

/** "less than 12": no figure, only a bound; "just under 12" is close to it. */
export function hasBoundOnly(
  tokens: readonly Token[],
  figures: readonly SaidFigure[],
  { lexicon, inHand }: LineContext,
): boolean {
  const { boundsOnly, nearly, negators } = lexicon.words;
  const isTurning = inHand?.check.does.includes('starter') === true;
  const { changes, climbs, present, until, barely } = figureWordsOf(lexicon.words);
  // "It won't go above 12.4", "never fell under 10.2", "up to 13.9 now": where it is.
  const isReached = ({ start, end, decimals }: SaidFigure): boolean => {
    const lead = tokens.slice(Math.max(start - mostBoundWords, 0), start);
    const isOfEnd = hasPhrase(lead, [...climbs, ...changes]) || (isTurning && decimals > 0);
    const isEnd = hasPhrase(lead, negators) && isOfEnd;
    const isBarely = decimals > 0 && endsWithPhrase(tokens, start, barely);
    return (
      isEnd ||
      isBarely ||
      (endsWithPhrase(tokens, start, until) && phraseAt(tokens, end, present) > 0)
    );
  };
  const before = figures
    .filter((figure) => !isReached(figure))
    .map(({ start }) => textOf(tokens.slice(Math.max(start - 4, 0), start)));
  const isBound = (said: string, word: string): boolean => {
    if (said === word) return true;
    if (!said.endsWith(` ${word}`)) return false;
    // A comma stands where a figure was taken out: "from 12.4 as far as 6.8".
    const rest = said.slice(0, -word.length - 1).replace(/ ,$/u, '');
    // "It drops as far as 9.8".
    const near = until.includes(word) ? [...nearly, ...changes] : nearly;
    return !near.some((one) => rest === one || rest.endsWith(` ${one}`));
  };
  return before.some((said) => boundsOnly.some((word) => isBound(said, word)));
}
