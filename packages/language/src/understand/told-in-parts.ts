import type { AnswerInput, Input } from '@keyturn/core';
import type { Hearing, Understood } from './understood.ts';

/** Marks between two parts of a line; one within a figure is none. */
const marks = /[,;.!?،؛؟]\s/u;

/** A part without a letter is a figure, or a number of the list. */
const words = /\p{L}/u;

/** More parts than this are a letter, and heard as a whole. */
const mostParts = 8;

/**
 * What a line means, with all that its parts tell beyond the question in hand: "in a car park,
 * petrol, nothing happens at all". For a flow of which only lists are known: where it is known what
 * people say, that tells what stands beside an answer.
 */
export function hearParts(
  understand: (text: string, hearing: Hearing) => Understood,
  hearing: Hearing,
  line: string,
): Understood {
  const whole = understand(line, hearing);
  const { check, awaiting, answered } = hearing;
  const parts = line.split(marks).filter((part) => words.test(part));
  if (awaiting !== 'answer' || check === null || !isTelling(whole)) return whole;
  if (parts.length < 2 || parts.length > mostParts) return whole;
  const given = inputsOf(whole);
  const taken = answersIn(given);
  const unasked = { ...hearing, check: null };
  const told = parts.flatMap((part) => {
    const own = inputsOf(understand(part, hearing));
    // The question in hand is answered once: what seems to say otherwise tells something else.
    const isOther = answersIn(own).some((one) => taken.some((given) => contradicts(one, given)));
    return own.length > 0 && !isOther ? own : inputsOf(understand(part, unasked));
  });
  const answers = answersIn(told);
  const known = [...answered, ...taken.map((one) => one.check)];
  const more = answers
    .filter((one, at) => answers.findIndex((other) => other.check === one.check) === at)
    .filter(
      (one) => !known.includes(one.check) && !answers.some((other) => contradicts(one, other)),
    );
  // What was meant by the whole stays in doubt, unless a part says it by itself.
  if (more.length === 0 || (given.length === 0 && !more.some((one) => one.check === check))) {
    return whole;
  }
  const facts = given.length > 0 ? given : told.filter(({ type }) => type === 'context');
  return { type: 'input', inputs: [...facts, { type: 'answers', answers: more }] };
}

/** False for talk, a danger, a correction, a figure in doubt: these are about the line as a whole. */
function isTelling(whole: Understood): boolean {
  if (whole.type === 'offers') return whole.doubt === undefined;
  return inputsOf(whole).length > 0;
}

/** The inputs of a text that tells answers and facts alone. */
function inputsOf(understood: Understood): readonly Input[] {
  if (understood.type !== 'input' || understood.talk !== undefined) return [];
  const { inputs } = understood;
  return inputs.every(({ type }) => type === 'answers' || type === 'context') ? inputs : [];
}

function answersIn(inputs: readonly Input[]): readonly AnswerInput[] {
  return inputs.flatMap((input) => (input.type === 'answers' ? input.answers : []));
}

/** True for two answers to one question that are not the same. */
function contradicts(one: AnswerInput, other: AnswerInput): boolean {
  return one.check === other.check && JSON.stringify(one.value) !== JSON.stringify(other.value);
}
