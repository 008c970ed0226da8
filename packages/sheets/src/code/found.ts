/**
 * What a code carries of a case: what was known and answered, and nothing that follows from it.
 */
import type { Answer, Case, Context } from '@keyturn/core';
import { contextFields } from '@keyturn/core';

/** The findings of a case, as they were given. */
export interface CodedFindings {
  /** Id of the flow. */
  readonly flow: string;
  /** Id of the case. */
  readonly id: string;
  /** When the last of them was given, to the minute, ISO 8601. */
  readonly at: string;
  /** What was known of vehicle, kit and place; free text is left out. */
  readonly context: Context;
  /** Checks that were not put, since nobody was there to answer them. */
  readonly notAsked: readonly string[];
  /** Interrupts that were raised. */
  readonly raised: readonly string[];
  /** Checks asked once more since the answers did not fit together. */
  readonly doubted: readonly string[];
  /** Every answer, in the order of each check's latest. */
  readonly answers: readonly { readonly check: string; readonly answer: Answer }[];
}

/** The findings of a case. */
export function foundIn({ id, flow, state }: Case): CodedFindings {
  return {
    flow: flow.id,
    id,
    at: `${new Date(state.at).toISOString().slice(0, 16)}:00.000Z`,
    context: Object.fromEntries(
      Object.entries(state.given).filter(([path]) => contextFields[path]?.kind !== 'text'),
    ),
    notAsked: Object.keys(state.answers).filter((check) => !state.order.includes(check)),
    raised: state.raised,
    doubted: state.doubted,
    answers: state.order.flatMap((check) =>
      (state.answers[check] ?? []).map((answer) => ({ check, answer })),
    ),
  };
}
