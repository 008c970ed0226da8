import type { Words } from '../words/words.ts';
import { normalise } from './normalise.ts';
import { tokenise, type Token } from './token.ts';

/** The numbers, words and marks of a text as a language writes them. */
export function readTokens(
  text: string,
  { spelling, grouping }: Pick<Words, 'spelling' | 'grouping'>,
): Token[] {
  const ampere = spelling?.ampere;
  const said = ampere === undefined ? text : text.replace(ampereSign, `$1 ${ampere}`);
  return tokenise(normalise(said, spelling), grouping);
}

/** The sign of the ampere behind a whole figure; before another capital it may be the little word. */
const ampereSign = /(?<![\d.,])(\d{2,4}) ?A(?![\p{L}\p{M}\d]| \p{Lu})/gu;
