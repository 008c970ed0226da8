/**
 * Turns of a case as a channel keeps them.
 */
import type { Change } from '@keyturn/cases';
import { openCase, turn, type Case, type Input, type Step } from '@keyturn/core';
import { noStart } from './no-start.ts';

/** When everything here happens. */
export const at = '2026-01-05T08:00:00.000Z';

/** A time so many minutes later. */
export const later = (minutes: number): string =>
  new Date(Date.parse(at) + minutes * 60_000).toISOString();

/** A case just opened. */
export function opened(id: string): Step {
  return openCase(noStart.chart, { id, at, context: { place: 'home' } });
}

/** The case after one more answer. */
export function answered(before: Case, check: string, choice: string): Step {
  const input: Input = { type: 'answers', answers: [{ check, value: [choice] }] };
  const step = turn(noStart.chart, before, { at, input });
  if (step.events.length === 0) throw new Error(`${check} was not taken`);
  return step;
}

/** A step as a change that expects the case to be as it was before it. */
export function changeOf(step: Step, more: Partial<Change> = {}): Change {
  const expected = step.case.events - step.events.length;
  return { at, case: { expected, events: step.events, after: step.case }, ...more };
}
