/**
 * What a typed text taps: the words of a key that stands, which say nothing by themselves.
 */
import { positionOf } from '@keyturn/core';
import type { Speaker } from '@keyturn/language';
import { cleanText } from './hear-text.ts';
import type { HeldCase } from './saying.ts';
import type { Tap } from './tap.ts';

/** The key that ends several picks or begins anew, where one stands and the text is its words. */
export function typedTap(
  { case: kase, standing }: HeldCase,
  text: string,
  speaker: Pick<Speaker, 'key'>,
): Extract<Tap, { type: 'take' | 'begin' }> | undefined {
  const typed = bare(text);
  if (positionOf(kase).awaiting === 'nothing') {
    // The number under which a closed case offers it, where there are no keys.
    return typed === '1' || typed === bare(speaker.key('begin')) ? { type: 'begin' } : undefined;
  }
  return typed === bare(speaker.key('take'))
    ? standing.taps.find((tap) => tap.type === 'take')
    : undefined;
}

/** A text as it is compared: without capitals and marks. */
function bare(text: string): string {
  return cleanText(text)
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}\p{M}\s]/gu, '');
}
