import type { Emphasis } from './emphasis.ts';
import { columnsOf, wrapBehind } from './wrap.ts';

/** A signal word with what is to be known under it. */
export interface CautionText {
  /** In capitals, in the reader's language. */
  readonly word: string;
  readonly text: string;
}

/**
 * Cautions in a fence of exclamation marks, the signal word in its rail, so that they stand out
 * without colour and over any connection. Several share their rails.
 */
export function cautionBlock(
  cautions: readonly CautionText[],
  width: number,
  emphasis: Emphasis,
): string[] {
  if (cautions.length === 0) return [];
  const lines = cautions.flatMap(({ word, text }) => [
    rail(word, width, emphasis),
    ...wrapBehind('!  ', text, width).map((line) =>
      line.startsWith('!') ? line : `!${line.slice(1)}`,
    ),
  ]);
  return [...lines, '!'.repeat(width)];
}

function rail(word: string, width: number, emphasis: Emphasis): string {
  const rest = '!'.repeat(Math.max(2, width - 5 - columnsOf(word)));
  return `!!! ${emphasis.inverse(word)} ${rest}`;
}
