import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { isInput } from './input.ts';

/** The shape of an input, said a second time. */
const id = z.string().max(80);
const reading = z.strictObject({
  value: z.number(),
  unit: z.string().max(20),
  resolution: z.number().positive().optional(),
  meter: z
    .strictObject({
      percent: z.number().min(0).max(100),
      digits: z.number().min(0).max(1000),
      counts: z.number().positive().optional(),
    })
    .optional(),
});
const answers = z
  .array(z.strictObject({ check: id, value: z.union([z.array(id).min(1).max(20), reading]) }))
  .min(1)
  .max(40);
const talk = ['dont-know', 'cannot', 'why', 'numbers', 'back', 'repeat', 'person', 'stop'];
const shape = z.union([
  z.strictObject({ type: z.enum(['answers', 'correction']), answers }),
  z.strictObject({
    type: z.literal('unanswered'),
    check: id,
    talk: z.enum(['dont-know', 'cannot']),
  }),
  z.strictObject({ type: z.literal('talk'), talk: z.enum(talk) }),
  z.strictObject({ type: z.literal('interrupt'), interrupt: id }),
  z.strictObject({ type: z.literal('context'), set: z.record(z.string(), z.unknown()) }),
  z.strictObject({ type: z.enum(['confirm', 'resume', 'tick', 'waited']) }),
]);

/** Mostly right, now and then something else in its place. */
const or = (right: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.oneof({ weight: 12, arbitrary: right }, { weight: 1, arbitrary: fc.anything() });
const text = or(fc.string({ maxLength: 90, size: 'max' }));
const figure = or(fc.oneof(fc.double(), fc.integer({ min: -1, max: 1001 })));
const some = (fields: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<unknown> =>
  or(fc.record(fields, { requiredKeys: [] }));
const whole = (fields: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<unknown> =>
  or(fc.record(fields));
const readings = fc
  .tuple(
    whole({ value: figure, unit: text }),
    some({
      resolution: figure,
      meter: whole({ percent: figure, digits: figure }),
      more: fc.constant(undefined),
    }),
  )
  .map(([one, more]) => Object.assign({}, one, more) as unknown);
const anAnswer = whole({
  check: text,
  value: fc.oneof(fc.array(text, { maxLength: 21 }), readings),
});
const near = fc.oneof(
  whole({
    type: fc.constantFrom('answers', 'correction'),
    answers: or(fc.array(anAnswer, { maxLength: 3 })),
  }),
  whole({
    type: fc.constantFrom('unanswered', 'talk', 'tick'),
    talk: or(fc.constantFrom(...talk)),
  }),
  whole({
    type: fc.constant('unanswered'),
    check: text,
    talk: or(fc.constantFrom(...talk)),
  }),
  whole({ type: fc.constant('interrupt'), interrupt: text }),
  whole({ type: fc.constant('context'), set: fc.object() }),
  whole({ type: fc.constantFrom('confirm', 'resume', 'tick', 'waited', 'else') }),
);

describe('an input', () => {
  test('is one exactly where the shape said a second time takes it', () => {
    const taken = { yes: 0, no: 0 };
    fc.assert(
      fc.property(near, (given) => {
        const expected = shape.safeParse(given).success;
        taken[expected ? 'yes' : 'no'] += 1;
        expect(isInput(given)).toBe(expected);
      }),
      { numRuns: 5000 },
    );
    expect(Math.min(taken.yes, taken.no)).toBeGreaterThan(200);
  });

  test.each([
    ['no more than forty answers', 40, 41],
    ['no fewer than one', 1, 0],
  ])('brings %s', (_, right, wrong) => {
    const many = (length: number) => ({
      type: 'answers',
      answers: Array.from({ length }, () => ({ check: 'place', value: ['home'] })),
    });
    expect(isInput(many(right))).toBe(true);
    expect(isInput(many(wrong))).toBe(false);
  });

  test('leaves nothing out of a list', () => {
    expect(isInput({ type: 'answers', answers: new Array(1) })).toBe(false);
  });
});
