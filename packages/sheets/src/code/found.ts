/**
 * What a code carries of a case: what was known and answered, and nothing that follows from it.
 */
import {
  contextFields,
  isReading,
  isSaid,
  looksLikeDay,
  stripOf,
  type Answer,
  type Case,
  type Context,
  type Flow,
} from '@keyturn/core';

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
  /**
   * Every answer, in the order of each check's latest. A day has beside it the band in which it
   * lies, since the terms of the shop that say so are not carried.
   */
  readonly answers: readonly { readonly check: string; readonly answer: Answer }[];
}

/** The findings of a case. */
export function foundIn(flow: Flow, kase: Case): CodedFindings {
  const { id, state } = kase;
  const lines = stripOf({ flow }, kase).findings;
  const withBand = (check: string, answer: Answer): Answer => {
    if (!isSaid(answer) || isReading(answer) || !answer.some(looksLikeDay)) return answer;
    const line = lines.find((one) => one.check === check);
    return line?.message.kind === 'noted' ? line.message.answer : answer;
  };
  return {
    flow: kase.flow.id,
    id,
    at: `${new Date(state.at).toISOString().slice(0, 16)}:00.000Z`,
    context: Object.fromEntries(
      Object.entries(state.given).filter(([path]) => contextFields[path]?.kind !== 'text'),
    ),
    notAsked: Object.keys(state.answers).filter((check) => !state.order.includes(check)),
    raised: state.raised,
    doubted: state.doubted,
    answers: state.order.flatMap((check) =>
      (state.answers[check] ?? []).map((answer) => ({ check, answer: withBand(check, answer) })),
    ),
  };
}
