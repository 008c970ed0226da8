import type { AnswerInput } from '@keyturn/core';
import { exactChoice, isOfSeveral, likeliest } from './choices.ts';
import { isOfKit } from './kit-told.ts';
import { isOfPast, isOfThing, notInHand } from './named-things.ts';
import { isDenied, spansOf } from './spans.ts';
import type { Turn } from './turn.ts';
import { namesCheck } from './volunteered.ts';

/** So many words in a row tell what happened before, or what they name, as surely as this. */
const [leastWords, sure] = [3, 0.93];

/**
 * What some words in a row surely tell of a thing that they name, or of what happened before,
 * wherever they stand: "the old van has stood for two months at the garage and only clicks".
 */
export function toldSurely(given: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { inHand, tokens, heard, listener } = turn;
  const { lexicon } = listener;
  const isGiven = (id: string): boolean => given.some(({ check }) => check === id);
  if (inHand !== undefined) {
    if (!isGiven(inHand.id) || exactChoice(heard, inHand.options) !== undefined) return [];
  }
  const told = new Map<string, Set<string>>();
  for (const span of spansOf(tokens, lexicon)) {
    const { check: id, share } = span.subject;
    const check = lexicon.checks.get(id);
    if (check === undefined || share < sure || span.words < leastWords || isGiven(id)) continue;
    if (!check.isToldUnasked || check.check.form.kind !== 'choice' || isOfKit(check)) continue;
    if (!isOfPast(check) && !namesCheck(span.heard, check)) continue;
    const said = likeliest(span.heard, check);
    if (said.id === undefined || said.id === 'none' || share * said.share < sure) continue;
    const isAnswer =
      inHand !== undefined &&
      (isOfThing(inHand, check) || likeliest(span.heard, inHand).share >= notInHand);
    if (isAnswer || isDenied(span, tokens, lexicon)) continue;
    told.set(id, (told.get(id) ?? new Set()).add(said.id));
  }
  return [...told]
    .filter(([id, value]) => value.size === 1 || isOfSeveral(lexicon.checks.get(id)))
    .map(([id, value]) => ({ check: id, value: [...value] }));
}
