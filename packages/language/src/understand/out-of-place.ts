/** What a text seems to tell unasked that nobody tells there. */
import type { AnswerInput, Condition } from '@keyturn/core';
import { findPhrase } from '../typed/heard.ts';
import { isOfSeveral } from './choices.ts';
import type { CheckPhrases } from './lexicon.ts';
import { isOfVehicle } from './fact-runs.ts';
import { mixedOf } from './own-fuel.ts';
import { answerShare, spansOf } from './spans.ts';
import { isOwn } from './told-facts.ts';
import type { Turn } from './turn.ts';
import { namesCheck } from './volunteered.ts';

/** An answer to a choice that was not asked. */
interface Told {
  readonly check: CheckPhrases;
  readonly id: string;
}

/** What is asked only because of another answer, and is not named, is told as surely as this. */
const sureUnnamed = 0.95;

/**
 * True for an answer that the other answers leave nothing to ask for, or that is asked for only
 * because of another one, is not named, and is not told very surely: that the key goes in "all the
 * way" is no clutch, and a battery that is dry no empty tank.
 */
export function isOutOfPlace(told: Told, given: readonly AnswerInput[], turn: Turn): boolean {
  const { check } = told;
  if (isOfVehicle(check) || isOfSeveral(check) || isMixed(told, turn)) return false;
  const { at, when } = check.check;
  const isNamed = isNamedIn(check, turn);
  if ((at === 'memory' || !isNamed) && isRuledOut(when, given)) return true;
  return at === 'memory' && !isNamed && asksForAnswers(when) && !isTold(told, turn);
}

/** True where what is told leaves a check out, or leaves only what nothing told speaks for. */
function isRuledOut(when: Condition | undefined, given: readonly AnswerInput[]): boolean {
  if (when?.kind === 'all') return when.of.some((one) => isRuledOut(one, given));
  if (when?.kind === 'any') {
    const left = when.of.filter((one) => !isRuledOut(one, given));
    return left.length < when.of.length && left.every(hangsOnContext);
  }
  if (when?.kind !== 'answer') return false;
  const told = given.find(({ check }) => check === when.check);
  return (
    told !== undefined &&
    !('value' in told.value) &&
    !told.value.some((id) => when.among.includes(id))
  );
}

/** True for what holds only with something that no answer of the text tells: who helps, with which kit. */
function hangsOnContext(when: Condition): boolean {
  return when.kind === 'all' ? when.of.some(hangsOnContext) : when.kind === 'context';
}

/** True for a check that is asked because of what was answered. */
function asksForAnswers(when: Condition | undefined): boolean {
  if (when?.kind === 'all' || when?.kind === 'any') return when.of.some(asksForAnswers);
  return when?.kind === 'answer';
}

function isMixed({ check, id }: Told, { listener: { lexicon } }: Turn): boolean {
  const mixed = mixedOf(lexicon);
  return mixed?.check === check && mixed.id === id;
}

/** True where the text has a name of the check, or a word that only the check is about. */
function isNamedIn(check: CheckPhrases, { heard, literal }: Turn): boolean {
  return namesCheck(heard, check) || check.names.some((name) => findPhrase(literal, name) >= 0);
}

/** True where some words say the answer very surely, or one of them is a usual word of it and of no other check. */
function isTold({ check, id }: Told, { tokens, heard, listener: { lexicon } }: Turn): boolean {
  const usual = check.options.find((option) => option.id === id)?.usual();
  const isOwnWord = (term: string): boolean =>
    usual?.has(term) === true && isOwn(term, check, lexicon);
  return (
    heard.terms.some(isOwnWord) ||
    spansOf(tokens, lexicon).some(
      ({ subject, heard: said }) =>
        (subject.shareOf(check.id) ?? 0) * answerShare(said, check, id) >= sureUnnamed,
    )
  );
}
