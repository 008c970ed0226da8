import type { AnswerInput, Message, ReadingMessage } from '@keyturn/core';
import type { Turned } from '../../engine/engine.ts';

/** A figure while it is typed. */
export interface TypedFigure {
  /** Its scale; the reading on it is only there to have one where nothing can be taken. */
  readonly scale: ReadingMessage | null;
  /** What it would be taken as; null where nothing was typed, or it is no figure. */
  readonly answer: AnswerInput | null;
  /** What was typed beside it and answers another question: the standard, in “640 EN”. */
  readonly beside: readonly AnswerInput[];
  /** True where it answers other questions alone. */
  readonly isOfOther: boolean;
  /** Why it would not be taken. */
  readonly refused: readonly Message[];
  /** What was not understood of it. */
  readonly unclear: Turned['unclear'] | null;
}

/** A field with nothing in it. */
export const blankFigure: TypedFigure = {
  scale: null,
  answer: null,
  beside: [],
  isOfOther: false,
  refused: [],
  unclear: null,
};
