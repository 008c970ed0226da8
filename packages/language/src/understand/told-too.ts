/** What is told beside the answer in hand, and was not heard clause by clause. */
import type { AnswerInput } from '@keyturn/core';
import type { Token } from '../typed/token.ts';
import { exactChoice } from './choices.ts';
import { daysSaid, withoutDays } from './day-said.ts';
import { isOfVehicle } from './fact-runs.ts';
import { isOfKit } from './kit-told.ts';
import { isOfThing, joinClauses, namedAnswer } from './named-things.ts';
import { isSupported, spansOf, toldIn } from './spans.ts';
import { isAmong, isUnnamed } from './told-unasked.ts';
import { type Turn, optionsInHand } from './turn.ts';

/**
 * What is told beside the answer in hand by other words than those that give it, and was not heard
 * clause by clause: "manual and I had the clutch right down".
 */
export function toldToo(given: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { lexicon } = turn.listener;
  const inHand = optionsInHand(turn);
  if (inHand === undefined || !given.some(({ check }) => check === inHand.id)) return [];
  // Whoever tries something tells what he does: "swapped it with the one beside" is no work before.
  if (!inHand.isToldUnasked || inHand.check.form.kind === 'reading' || isOfKit(inHand)) return [];
  // What is said word for word of what was asked says nothing else.
  if (exactChoice(turn.heard, inHand.options) !== undefined) return [];
  const left = withoutNamed(given, turn);
  const spans = spansOf(left, lexicon);
  const days = daysSaid(left, lexicon);
  return toldIn(left, spans, { lexicon, inHand }).filter((one) => {
    const check = lexicon.checks.get(one.check);
    const isSaid = isSupported(one, withoutDays(spans, days, one.check), {
      lexicon,
      isAsked: false,
      leastWords: 1,
    });
    return (
      isSaid &&
      !isAmong(one, given) &&
      check !== undefined &&
      !isOfThing(inHand, check) &&
      !isOfKit(check) &&
      !isUnnamed(check, turn)
    );
  });
}

/** The text without the clauses that tell of a thing by its name: the relay that clicks is all that is said there. */
function withoutNamed(
  given: readonly AnswerInput[],
  { clauses, listener: { lexicon }, inHand }: Turn,
): readonly Token[] {
  const left = clauses.filter((clause) => {
    const named = namedAnswer([clause], { inHand, lexicon });
    const thing = lexicon.checks.get(named?.check ?? '');
    // What the vehicle is stands beside other facts: "a diesel with a manual box".
    if (thing === undefined || isOfVehicle(thing)) return true;
    return !given.some(({ check }) => check === thing.id && thing !== inHand);
  });
  return joinClauses(left);
}
