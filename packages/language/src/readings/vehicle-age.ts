import type { Token } from '../typed/token.ts';
import { figureWordsOf } from '../words/words.ts';
import type { LineContext, SaidFigure } from './line-figures.ts';
import { hasPhrase } from './word-run.ts';

/**
 * True for the years of the vehicle, which are not the battery's: the clause about the figure names
 * the vehicle and no battery, "battery is flat, car is 4 years old".
 */
export function isVehiclesAge(
  { unit, start, end }: SaidFigure,
  tokens: readonly Token[],
  { lexicon: { words, reader } }: LineContext,
): boolean {
  if (unit !== 'a' && unit !== 'mo') return false;
  const { vehicle, battery } = figureWordsOf(words);
  // What joins is written on to the word behind it in some languages, and begins a clause there.
  const isJoined = (token: Token): boolean =>
    token.kind === 'word' && reader.unjoined(token.text) !== token.text;
  const isBreak = (token: Token): boolean =>
    token.kind === 'mark' ||
    isJoined(token) ||
    (token.kind === 'word' &&
      (words.clauseBreaks.includes(token.text) || words.joins.includes(token.text)));
  const at = tokens.slice(0, start).findLastIndex(isBreak);
  const first = tokens[at];
  const from = first !== undefined && isJoined(first) ? at : at + 1;
  const length = tokens.slice(end).findIndex(isBreak);
  const clause = tokens.slice(from, length < 0 ? tokens.length : end + length);
  return hasPhrase(clause, vehicle) && !hasPhrase(clause, battery);
}
