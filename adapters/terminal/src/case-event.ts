/**
 * The form that a line of a case file is held to before it is used.
 */
import { policyShape, type CaseEvent } from '@keyturn/core';
import { z } from 'zod';

const at = z.string().refine((text) => !Number.isNaN(Date.parse(text)), 'not a time');
const id = z.string().min(1).max(80);
const partLimit = z.object({
  low: z.number().optional(),
  high: z.number().optional(),
  unit: z.string(),
});
const contextValue = z.union([
  z.string(),
  z.number(),
  z.boolean(),
  z.array(z.string()),
  z.record(z.string(), partLimit),
]);
const context = z.record(z.string(), contextValue);

const answer = z.union([
  z.array(id),
  z.object({
    value: z.number(),
    unit: z.string(),
    resolution: z.number().positive().optional(),
  }),
  z.enum(['unknown', 'cannot']),
]);

const event = z.discriminatedUnion('type', [
  z.object({
    type: z.literal('opened'),
    // Another format is told from a broken line, and refused by the core in so many words.
    format: z.number(),
    at,
    id,
    flow: z.object({ id: z.string().regex(/^[a-z0-9-]{1,80}$/), version: z.string() }),
    context,
    notAsked: z.array(id),
    policy: z.optional(policyShape),
  }),
  z.object({ type: z.enum(['answered', 'corrected']), at, check: id, answer }),
  z.object({ type: z.literal('confirmed'), at, cautions: z.array(id) }),
  z.object({ type: z.enum(['interrupted', 'withdrawn']), at, interrupt: id }),
  z.object({ type: z.literal('context-changed'), at, context }),
  z.object({ type: z.literal('waited'), at, check: id }),
  z.object({ type: z.enum(['went-back', 'resumed', 'time-passed']), at }),
]);

/** The event that a line holds, or what is wrong with the line. */
export type EventLine =
  | { readonly type: 'event'; readonly event: CaseEvent }
  | { readonly type: 'broken'; readonly reason: string };

/** Reads one line of a case file. Never throws. */
export function readEvent(line: string): EventLine {
  let data: unknown;
  try {
    data = JSON.parse(line);
  } catch {
    return { type: 'broken', reason: 'it is not JSON' };
  }
  const result = event.safeParse(data);
  if (result.success) return { type: 'event', event: result.data as CaseEvent };
  const [issue] = result.error.issues;
  const where = issue?.path.map(String).join('.') ?? '';
  return {
    type: 'broken',
    reason: `it is not an event of a case${where === '' ? '' : ` (${where}: ${issue?.message ?? ''})`}`,
  };
}
