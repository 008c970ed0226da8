/**
 * What the figures come to that were typed for one question.
 */
import type { AnswerInput } from '@keyturn/core';
import type { TypedFigure } from './typed-figure.ts';

/** Their answers; the first check whose figure cannot be taken; or that there is none. */
export type FiguresGiven =
  | { readonly type: 'answers'; readonly answers: readonly AnswerInput[] }
  | { readonly type: 'wrong'; readonly check: string }
  | { readonly type: 'none' };

/** Gathers what was typed for these checks; a field left empty is no answer. */
export function figuresGiven(
  checks: readonly string[],
  typed: Readonly<Record<string, string>>,
  figures: Readonly<Record<string, TypedFigure>>,
): FiguresGiven {
  const filled = checks.filter((check) => (typed[check] ?? '').trim() !== '');
  if (filled.length === 0) return { type: 'none' };
  const answers: AnswerInput[] = [];
  for (const check of filled) {
    const figure = figures[check];
    if (figure === undefined || !isTakable(figure)) return { type: 'wrong', check };
    answers.push(figure.answer, ...figure.beside);
  }
  return { type: 'answers', answers };
}

/** Whether a figure as it is typed can be taken. */
export function isTakable(figure: TypedFigure): figure is TypedFigure & { answer: AnswerInput } {
  return figure.answer !== null && figure.refused.length === 0;
}
