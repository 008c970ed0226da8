/**
 * What comes into a turn, and the zod schema that it is held to before anything else is done.
 */
import type { MeterAccuracy } from '@keyturn/electrics';
import * as z from 'zod/mini';

/** One check answered: choice ids, a reading, or `done` for work. */
export interface AnswerInput {
  readonly check: string;
  readonly value:
    | readonly string[]
    | {
        readonly value: number;
        readonly unit: string;
        /** The step in which it was typed, in the same unit. */
        readonly resolution?: number | undefined;
        /** The accuracy of the meter; left out it is what the context tells of it. */
        readonly meter?: MeterAccuracy | undefined;
        /** The current under which a voltage was read, where it was told. */
        readonly under?: { readonly value: number; readonly unit: string } | undefined;
      };
}

/** Talk that every user can always use. */
export type Talk =
  'dont-know' | 'cannot' | 'why' | 'numbers' | 'back' | 'repeat' | 'person' | 'stop';

/** What a channel hands to a turn. */
export type Input =
  /** Answers to the question in hand, or to any other check that was volunteered. */
  | { readonly type: 'answers'; readonly answers: readonly AnswerInput[] }
  /** An earlier answer was wrong. */
  | { readonly type: 'correction'; readonly answers: readonly AnswerInput[] }
  /** A check that need not be in hand is not known or cannot be done; an answer to it is taken back. */
  | {
      readonly type: 'unanswered';
      readonly check: string;
      readonly talk: 'dont-know' | 'cannot';
    }
  | { readonly type: 'talk'; readonly talk: Talk }
  /** The cautions in hand have been read, and it is safe to go on. */
  | { readonly type: 'confirm' }
  | { readonly type: 'interrupt'; readonly interrupt: string }
  /** The interrupt is over. */
  | { readonly type: 'resume' }
  /** There never was what the interrupt told of; what it forbade goes with it. */
  | { readonly type: 'withdraw'; readonly interrupt: string }
  /** Something of the context has changed or become known: context path to value. */
  | { readonly type: 'context'; readonly set: Readonly<Record<string, unknown>> }
  /** Time has passed; `at` of the turn says when it is. */
  | { readonly type: 'tick' }
  /** The wait in hand is over before its time, by the user's word. */
  | { readonly type: 'waited' };

const answer = z.strictObject({
  check: z.string().check(z.maxLength(80)),
  value: z.union([
    z.array(z.string().check(z.maxLength(80))).check(z.minLength(1), z.maxLength(20)),
    z.strictObject({
      value: z.number(),
      unit: z.string().check(z.maxLength(20)),
      resolution: z.optional(z.number().check(z.positive())),
      meter: z.optional(
        z.strictObject({
          percent: z.number().check(z.nonnegative(), z.maximum(100)),
          digits: z.number().check(z.nonnegative(), z.maximum(1000)),
          counts: z.optional(z.number().check(z.positive())),
        }),
      ),
      under: z.optional(
        z.strictObject({ value: z.number(), unit: z.string().check(z.maxLength(20)) }),
      ),
    }),
  ]),
});

const answers = z.array(answer).check(z.minLength(1), z.maxLength(40));

/** The schema of an input: shapes and lengths; meanings are checked against the flow afterwards. */
export const inputSchema: z.ZodMiniType<Input> = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('answers'), answers }),
  z.strictObject({ type: z.literal('correction'), answers }),
  z.strictObject({
    type: z.literal('unanswered'),
    check: z.string().check(z.maxLength(80)),
    talk: z.enum(['dont-know', 'cannot']),
  }),
  z.strictObject({
    type: z.literal('talk'),
    talk: z.enum(['dont-know', 'cannot', 'why', 'numbers', 'back', 'repeat', 'person', 'stop']),
  }),
  z.strictObject({ type: z.literal('confirm') }),
  z.strictObject({ type: z.literal('interrupt'), interrupt: z.string().check(z.maxLength(80)) }),
  z.strictObject({ type: z.literal('resume') }),
  z.strictObject({ type: z.literal('withdraw'), interrupt: z.string().check(z.maxLength(80)) }),
  z.strictObject({ type: z.literal('context'), set: z.record(z.string(), z.unknown()) }),
  z.strictObject({ type: z.literal('tick') }),
  z.strictObject({ type: z.literal('waited') }),
]);
