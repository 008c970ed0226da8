import { isBlank } from '../readings/word-run.ts';
import type { AnswerInput } from '@keyturn/core';
import type { SaidReading } from '../readings/doubtful.ts';
import { type ToldAside, readAside } from '../readings/told-aside.ts';
import { spellNumbers } from '../numbers/numbers.ts';
import { isAlike } from '../numbers/unit.ts';
import type { Token } from '../typed/token.ts';
import type { Lexicon } from './lexicon.ts';
import { type Turn, cut, input, withAnswers } from './turn.ts';
import type { Understood } from './understood.ts';

type Given = Pick<Turn, 'text' | 'tokens' | 'hearing' | 'listener'>;

/** What figures tell by the way, where an answer is awaited or nothing was asked. */
export function toldInFigures({ tokens, hearing, listener }: Given): ToldAside {
  const { lexicon, unitHere } = listener;
  const { kit, nominal, answered } = hearing;
  const inHand = hearing.check === null ? undefined : lexicon.checks.get(hearing.check);
  const nothing = { told: [], rest: tokens };
  if (hearing.awaiting !== 'answer') return nothing;
  const aside = readAside(tokens, { lexicon, inHand, kit, nominal, unitHere });
  // What was answered before is corrected, and not told by the way.
  return aside.told.some(({ check }) => answered.includes(check)) ? nothing : aside;
}

/**
 * What was understood, with what figures tell by the way. An age that is told in a figure is that
 * figure, and a time that something stood is no age: neither is a band by its sound.
 */
export function withAside(
  understood: Understood,
  { told, rest }: ToldAside,
  { text, hearing, listener: { lexicon } }: Given,
): Understood {
  const isBand = ({ check, value }: AnswerInput): boolean =>
    check !== hearing.check && !('value' in value) && isOfTime(check, lexicon);
  const isTold = ({ check }: AnswerInput): boolean => told.some((one) => one.check === check);
  const hasTime = told.some(({ check }) => isOfTime(check, lexicon)) || namesTime(rest, lexicon);
  const own = (answers: readonly AnswerInput[]): readonly AnswerInput[] =>
    answers.filter((one) => !isTold(one) && !(hasTime && isBand(one)));
  if (understood.type !== 'input')
    return told.length > 0 && isBare(understood, rest, hearing) ? ofTold(told) : understood;
  if (!understood.inputs.every(({ type }) => type === 'answers' || type === 'context'))
    return understood;
  const kept = withAnswers(understood.inputs, own);
  const isSome = kept.some(({ type }) => type === 'answers');
  const inputs = isSome
    ? kept.map((one) =>
        one.type === 'answers' ? { ...one, answers: [...one.answers, ...told] } : one,
      )
    : [...kept, ...(told.length > 0 ? [{ type: 'answers', answers: told } as const] : [])];
  if (inputs.length === 0 && understood.talk === undefined)
    return { type: 'unclear', code: 'not-understood', given: cut(text), possible: [] };
  return { ...understood, inputs };
}

/** True where what was asked and all that is told by the way was understood. */
export function tellsAll(
  understood: Understood,
  { told }: ToldAside,
  { check: asked }: Given['hearing'],
): boolean {
  if (told.length === 0) return true;
  const inputs = understood.type === 'input' ? understood.inputs : [];
  const answers = inputs.flatMap((one) => (one.type === 'answers' ? one.answers : []));
  const isTold = ({ check }: SaidReading): boolean =>
    answers.some((one) => one.check === check && 'value' in one.value);
  const isAnswered = asked === null || answers.some(({ check }) => check === asked);
  return isAnswered && told.every(isTold);
}

function ofTold(told: readonly SaidReading[]): Understood {
  return input([{ type: 'answers', answers: told }]);
}

/** True where nothing else is said, or nothing that was asked. */
function isBare(
  understood: Understood,
  rest: readonly Token[],
  { check }: Given['hearing'],
): boolean {
  if (isBlank(rest)) return true;
  return check === null && understood.type === 'unclear';
}

function isOfTime(check: string, { checks }: Lexicon): boolean {
  const form = checks.get(check)?.check.form;
  return form?.kind === 'reading' && isAlike(form.unit, 'a');
}

/** True where a number of days, weeks, months or years stands in the text. */
function namesTime(typed: readonly Token[], { numbers, readUnit }: Lexicon): boolean {
  const tokens = spellNumbers(typed, numbers);
  return tokens.some(
    ({ kind }, at) => kind === 'number' && isAlike(readUnit(tokens, at + 1)?.code ?? '', 'a'),
  );
}
