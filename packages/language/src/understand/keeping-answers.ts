import type { AnswerInput } from '@keyturn/core';
import type { Offer, Understood } from './understood.ts';
import { type Turn, withAnswers } from './turn.ts';

/**
 * What was understood, without what is told in passing of a check whose choice stands: it is no
 * correction until somebody says so. Where nothing else was told it is asked back; undefined where
 * it says no more than what stands.
 */
export function keepingAnswers(understood: Understood, turn: Turn): Understood | undefined {
  if (understood.type !== 'input') return understood;
  const { said = {}, check: inHand } = turn.hearing;
  const stands = ({ check, value }: AnswerInput): boolean =>
    check !== inHand && said[check] !== undefined && !('value' in value);
  const passing = understood.inputs.flatMap((one) =>
    one.type === 'answers' ? one.answers.filter(stands) : [],
  );
  if (passing.length === 0) return understood;
  const inputs = withAnswers(understood.inputs, (given) => given.filter((one) => !stands(one)));
  if (inputs.length > 0) return { ...understood, inputs };
  const offers = passing.flatMap((answer) => changesOf(answer, said[answer.check] ?? [], turn));
  return offers.length === 0 ? undefined : { type: 'offers', offers };
}

/** What an answer would change in the choices that stand, to be picked. */
function changesOf(
  { check, value }: AnswerInput,
  said: readonly string[],
  { listener }: Turn,
): readonly Offer[] {
  const options = listener.lexicon.checks.get(check)?.options ?? [];
  return options
    .filter(({ id }) => !('value' in value) && value.includes(id) && !said.includes(id))
    .map(({ id, label }) => ({ check, value: id, label }));
}
