/**
 * A case card: a scripted vehicle, what it answers, and which verdicts or decisions are right.
 */
import { z } from 'zod';

const answer = z.union([z.string(), z.number().transform(String)]);

const card = z.object({
  id: z.string().min(1),
  flow: z.string().min(1),
  locale: z.string().default('en'),
  context: z.record(z.string(), z.unknown()).default({}),
  answers: z.record(z.string(), z.union([answer, z.array(answer).min(1)])),
  accept: z
    .strictObject({
      fault: z.array(z.string()).optional(),
      remedy: z.array(z.string()).optional(),
      strength: z.array(z.string()).optional(),
      send: z.array(z.string()).optional(),
      decision: z.array(z.string()).optional(),
      outcome: z.array(z.string()).optional(),
      reason: z.array(z.string()).optional(),
    })
    .default({}),
  forbid: z.array(z.string()).default([]),
});

/** A case card. Answers are ids or text; several for a check asked again after work, in order. */
export interface Card {
  readonly id: string;
  readonly flow: string;
  readonly locale: string;
  readonly context: Readonly<Record<string, unknown>>;
  readonly answers: Readonly<Record<string, string | readonly string[]>>;
  readonly accept: {
    readonly fault?: readonly string[] | undefined;
    readonly remedy?: readonly string[] | undefined;
    readonly strength?: readonly string[] | undefined;
    readonly send?: readonly string[] | undefined;
    /** Of a flow that ends in decisions. */
    readonly decision?: readonly string[] | undefined;
    readonly outcome?: readonly string[] | undefined;
    readonly reason?: readonly string[] | undefined;
  };
  readonly forbid: readonly string[];
}

/** A file that holds no cards; the message says where and what was expected. */
export class CardError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'CardError';
  }
}

/**
 * Reads the cards of a file: one card or an array.
 *
 * @throws CardError when the text is not JSON or a card has not the form of one.
 */
export function readCards(path: string, text: string): readonly Card[] {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (cause) {
    throw new CardError(`${path}: not JSON: ${(cause as Error).message}`);
  }
  const result = z
    .array(card)
    .min(1)
    .safeParse(Array.isArray(data) ? data : [data]);
  if (result.success) return result.data;
  const issues = result.error.issues.map(
    (issue) => `${path}: card ${issue.path.map(String).join('.')}: ${issue.message}`,
  );
  throw new CardError(issues.join('\n'));
}
