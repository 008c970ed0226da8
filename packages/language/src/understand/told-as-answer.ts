import type { AnswerInput, Condition, Input } from '@keyturn/core';
import { hasPhrase } from '../readings/word-run.ts';
import { hearTokens, isPhrase, says } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { startsNow } from './alarms.ts';
import { likeliest } from './choices.ts';
import { withDoubt } from './cried-beside.ts';
import { isOfVehicle } from './fact-runs.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { joinClauses } from './named-things.ts';
import { findInterrupt, findJoined } from './talk.ts';
import type { Turn } from './turn.ts';
import type { Understood } from './understood.ts';

/** A clause that tells an answer speaks of what it answers, and tells which one, as surely as this. */
const [sureSubject, sureAnswer] = [0.5, 0.8];

/** A word of the danger that stands in this much of what tells the answer is one of the answer. */
const ofAnswer = 0.045;

/**
 * What was understood; where that is a danger which only an answer seems to tell, what the text tells
 * without it, and the danger in doubt. `withoutIt` understands the text as none of that danger.
 */
export function asAnswered(
  understood: Understood,
  turn: Turn,
  withoutIt: (danger: string) => Understood,
): Understood {
  const danger = dangerOfAnswer(understood, turn);
  if (danger === undefined) return understood;
  const told = withoutIt(danger);
  // Somebody who stands there may be in danger all the same, and what smells may be leaking.
  if (tellsPlace(told, turn)) return withDoubt(told, turn);
  return tellsWhatFollows(told, turn) ? withDoubt(told, turn, danger) : understood;
}

/**
 * The danger that a text raises only by what answers another question: "stuck in the middle lane"
 * tells the place, and whoever goes on from there is warned; "it turns but won't fire, and smells of
 * petrol" tells of a flooded engine. That something happens there is a danger: "they rush past us".
 */
function dangerOfAnswer(understood: Understood, turn: Turn): string | undefined {
  const raised = inputsOf(understood).find((one) => one.type === 'interrupt');
  const { hearing, heard, inHand, listener, clauses } = turn;
  const { lexicon } = listener;
  if (raised === undefined || raised.interrupt === startsNow || hearing.awaiting === 'resume')
    return undefined;
  const answered = [...placesToTell(turn), ...askedBehindOthers(turn)];
  if (answered.length === 0 || !lexicon.isHeard) return undefined;
  const { interrupt } = raised;
  // Word for word a cry for help, and no answer to what was asked.
  const isCried = lexicon.interrupts.some(
    (one) => one.interrupt === interrupt && isPhrase(heard, one.terms),
  );
  const isAskedFor = answered.some((check) => check === inHand);
  if (isCried && !isAskedFor) return undefined;
  const rest = clauses.filter(
    (clause) => !answered.some((check) => isOf(clause, { check, interrupt, lexicon })),
  );
  if (rest.length === clauses.length) return undefined;
  const joined = joinClauses(rest);
  // A man who stands in the road is none of where the vehicle does, if that was not asked.
  const told = listener.asHeard?.dangerTold(
    isAskedFor ? { ...turn, tokens: joined, clauses: rest } : turn,
  );
  if (told?.isSure === true && told.interrupt === interrupt) return undefined;
  const isRaised =
    findInterrupt(rest, lexicon, [interrupt]) !== undefined ||
    findJoined(joined, lexicon, [interrupt]) !== undefined;
  return isRaised ? undefined : interrupt;
}

/** True where what is understood tells the place. */
function tellsPlace(understood: Understood, turn: Turn): boolean {
  const places = placesToTell(turn);
  return answersOf(understood).some(({ check }) => places.some(({ id }) => id === check));
}

/** True where what is understood tells what is asked because of something else that it tells. */
function tellsWhatFollows(understood: Understood, turn: Turn): boolean {
  const answers = answersOf(understood);
  return askedBehindOthers(turn).some(
    ({ id, check }) =>
      answers.some((one) => one.check === id) && answers.some((one) => asksFor(check.when, one)),
  );
}

function answersOf(understood: Understood): readonly AnswerInput[] {
  return inputsOf(understood).flatMap((one) => (one.type === 'answers' ? one.answers : []));
}

function inputsOf(understood: Understood): readonly Input[] {
  return understood.type === 'input' ? understood.inputs : [];
}

/** The checks that ask where it stands, in hand or not answered yet. */
function placesToTell({ hearing, inHand, listener }: Turn): readonly CheckPhrases[] {
  return [...listener.lexicon.checks.values()].filter(
    (check) =>
      Object.keys(check.check.sets).length > 0 &&
      !isOfVehicle(check) &&
      (check === inHand || !hearing.answered.includes(check.id)),
  );
}

/** What is known without looking, and asked because of an answer to something else. */
function askedBehindOthers({ inHand, listener }: Turn): readonly CheckPhrases[] {
  return [...listener.lexicon.checks.values()].filter(
    (one) =>
      one !== inHand &&
      one.check.at === 'memory' &&
      one.check.form.kind === 'choice' &&
      one.check.when !== undefined,
  );
}

/** True where an answer makes that a question. */
function asksFor(when: Condition | undefined, { check, value }: AnswerInput): boolean {
  if (when?.kind === 'all' || when?.kind === 'any')
    return when.of.some((one) => asksFor(one, { check, value }));
  return (
    when?.kind === 'answer' &&
    when.check === check &&
    !('value' in value) &&
    value.some((id) => when.among.includes(id))
  );
}

/** True for a clause that tells an answer, and has no word that only the danger has. */
function isOf(
  clause: readonly Token[],
  by: { readonly check: CheckPhrases; readonly interrupt: string; readonly lexicon: Lexicon },
): boolean {
  const { check, interrupt, lexicon } = by;
  const heard = hearTokens(clause, lexicon);
  const { id, share } = likeliest(heard, check);
  const subject = lexicon.subject()(heard).shareOf(check.id) ?? 0;
  if (subject < sureSubject || share < sureAnswer) return false;
  const option = check.options.find((one) => one.id === id);
  const ways = option === undefined ? [] : [...option.spoken, ...option.heard()];
  const isOfAnswer = (sign: string): boolean =>
    ways.filter(({ terms }) => terms.includes(sign)).length >= ofAnswer * ways.length;
  const signs = lexicon.alarms.find((alarm) => alarm.interrupt === interrupt)?.signs ?? [];
  const isSign = [...signs].some((sign) => says(heard, sign) && !isOfAnswer(sign));
  return !isSign && !hasPhrase(clause, lexicon.words.rails ?? []);
}
