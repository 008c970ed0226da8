import type { Words } from '../words/words.ts';
import { normalise } from './normalise.ts';
import { tokenise, type Token } from './token.ts';

/** The numbers, words and marks of a text as a language writes them. */
export function readTokens(
  text: string,
  { spelling, grouping }: Pick<Words, 'spelling' | 'grouping'>,
): Token[] {
  return tokenise(normalise(text, spelling), grouping);
}
