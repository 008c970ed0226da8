import type { AnswerInput } from '@keyturn/core';
import { exactChoice, isOfSeveral, likeliest } from './choices.ts';
import { isOfKit } from './kit-told.ts';
import type { CheckPhrases } from './lexicon.ts';
import { isOfPast, isOfThing, notInHand } from './named-things.ts';
import { type Span, holds, isDenied, spansOf } from './spans.ts';
import { askedOfEvery } from './told-of-every.ts';
import type { Turn } from './turn.ts';
import { namesCheck } from './volunteered.ts';

/** So many words in a row, and as sure as this. */
interface Least {
  readonly words: number;
  readonly sure: number;
}

/** What happened before, and what is said of a thing by its name, is told so. */
const named: Least = { words: 3, sure: 0.93 };

/** Beside an answer what names nothing is: "dry and not cracked anywhere". */
const unnamed: Least = { words: 4, sure: 0.97 };

/** That nothing is at hand is said by denying it: "no tools". */
const nothing: Least = { words: 2, sure: 0.9 };

/**
 * What some words in a row surely tell, wherever they stand: "the old van has stood for two months
 * at the garage and only clicks".
 */
export function toldSurely(given: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { inHand, tokens, heard, listener } = turn;
  const { lexicon } = listener;
  const isGiven = (id: string): boolean => given.some(({ check }) => check === id);
  if (inHand !== undefined) {
    if (!isGiven(inHand.id) || exactChoice(heard, inHand.options) !== undefined) return [];
  }
  const told = new Map<string, Set<string>>();
  const spans = spansOf(tokens, lexicon);
  const taken = spans.filter(
    ({ subject }) => isGiven(subject.check) && subject.share >= named.sure,
  );
  for (const span of spans) {
    const { check: id, share } = span.subject;
    const check = lexicon.checks.get(id);
    if (check?.isToldUnasked !== true || check.check.form.kind !== 'choice' || isGiven(id))
      continue;
    const said = likeliest(span.heard, check);
    const least = leastFor({ span, check, said: said.id }, turn);
    if (said.id === undefined || least === undefined) continue;
    if (span.words < least.words || share * said.share < least.sure) continue;
    const isAnswer =
      inHand !== undefined &&
      (isOfThing(inHand, check) || likeliest(span.heard, inHand).share >= notInHand);
    // "Bone dry" says of the battery that it is, and nothing of the tank.
    const isOfGiven = least === unnamed && taken.some((whole) => holds(whole, span));
    if (isAnswer || isOfGiven || isDenied(span, tokens, lexicon)) continue;
    told.set(id, (told.get(id) ?? new Set()).add(said.id));
  }
  return [...told]
    .filter(([id, value]) => value.size === 1 || isOfSeveral(lexicon.checks.get(id)))
    .map(([id, value]) => ({ check: id, value: [...value] }));
}

/** What it takes that some words tell an answer; undefined for one that is not told so. */
function leastFor(
  by: { readonly span: Span; readonly check: CheckPhrases; readonly said: string | undefined },
  { inHand, listener: { lexicon } }: Turn,
): Least | undefined {
  const { span, check, said } = by;
  if (isOfKit(check)) {
    const isDenial = span.heard.terms.some((term) => term.startsWith('!'));
    return said === 'none' && isDenial ? nothing : undefined;
  }
  if (said === 'none') return undefined;
  if (isOfPast(check) || namesCheck(span.heard, check)) return named;
  const isOfItself = Object.keys(check.check.sets).length === 0 && check !== askedOfEvery(lexicon);
  return inHand !== undefined && isOfItself ? unnamed : undefined;
}
