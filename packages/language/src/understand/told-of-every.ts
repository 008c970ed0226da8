import type { AnswerInput } from '@keyturn/core';
import { hearTokens } from '../typed/heard.ts';
import { chooseOption, isOfSeveral, likeliest } from './choices.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';
import { readClauses } from './told-unasked.ts';
import type { Turn } from './turn.ts';

/** A clause that tells nothing else answers what is asked of every vehicle as surely as this. */
const sureOfEvery = 0.87;

/** "Nothing" is said of anything, and of what is asked of every vehicle first. */
const nothing = 'none';

/**
 * What a first message answers of what is asked of every vehicle, in a clause that tells nothing
 * else: "diesel, parked at home, nothing", where the subject of the clause is not said.
 */
export function toldOfEvery(given: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { lexicon } = turn.listener;
  const check = lexicon.isHeard && turn.inHand === undefined ? askedOfEvery(lexicon) : undefined;
  if (check === undefined || given.some((one) => one.check === check.id)) return [];
  const isNothingTold = given.some(({ value }) => !('value' in value) && value.includes(nothing));
  const told = turn.clauses.flatMap((clause) => {
    const heard = hearTokens(clause, lexicon);
    if (heard.at.length === 0 || clause.some(({ kind }) => kind === 'number')) return [];
    const { id, share } = likeliest(heard, check);
    const choice = chooseOption(heard, check);
    if (share < sureOfEvery || choice.type !== 'one' || choice.fit.id !== id) return [];
    const { answers } = readClauses(turn, [clause]);
    if (answers.some((one) => one.check !== check.id && !isNothing(one))) return [];
    const subject = lexicon.subject()(heard);
    const other = lexicon.checks.get(subject.check);
    const isOfEvery =
      other === check ||
      (!isNothingTold && other !== undefined && likeliest(heard, other).id === nothing);
    return isOfEvery ? [{ id, share }] : [];
  });
  const [best] = told.toSorted((one, other) => other.share - one.share);
  return best === undefined ? [] : [{ check: check.id, value: [best.id] }];
}

function isNothing({ value }: AnswerInput): boolean {
  return !('value' in value) && value.every((id) => id === nothing);
}

/** The check that asks everybody what the vehicle does, from memory, and says nothing else of it. */
export const askedOfEvery: (lexicon: Lexicon) => CheckPhrases | undefined = onceFor(({ checks }) =>
  [...checks.values()].find((one) => {
    const { form, at, when, sets, again } = one.check;
    const isOne = form.kind === 'choice' && !isOfSeveral(one) && at === 'memory';
    return isOne && when === undefined && again.length === 0 && Object.keys(sets).length === 0;
  }),
);
