/**
 * The state of a case: plain JSON, the context of its machine. It holds what was said and done;
 * what follows from that (bands, beliefs, what may be asked) is worked out from it, never kept.
 */
import type { Quantity } from '@keyturn/electrics';
import type { Context } from './context.ts';
import type { Policy } from '../policy/policy.ts';
import type { DecisionMessage, DoneMessage, VerdictMessage, Weighted } from './message.ts';

/** What was said of a check: choices, bands or `done` by their ids, a day, or a reading. */
export type Said = readonly string[] | Quantity;

/** One answer as it was given; "don't know" and "can't" say nothing. */
export type Answer = Said | 'unknown' | 'cannot';

/** True for an answer that says something. */
export function isSaid(answer: Answer | undefined): answer is Said {
  return typeof answer === 'object';
}

/** True for a figure that was read. */
export function isReading(answer: Answer | undefined): answer is Quantity {
  return typeof answer === 'object' && !Array.isArray(answer);
}

/** What is asked next, or that the verdict or the end is due. */
export type Next =
  | { readonly to: 'check'; readonly stage: string; readonly check: string }
  | { readonly to: 'verdict' }
  | { readonly to: 'closed'; readonly outcome: DoneMessage['outcome'] };

/** The state of a case. */
export interface CaseState {
  /** When the last event happened, ISO 8601. */
  readonly at: string;
  /** When it was opened, ISO 8601. */
  readonly opened: string;
  /** The terms of the shop, where it has given any. */
  readonly policy: Policy | null;
  /** What was given with the case, or told since. */
  readonly given: Context;
  /** The same, with what answers say of it. */
  readonly context: Context;
  /** Check to its answers, oldest first. */
  readonly answers: Readonly<Record<string, readonly Answer[]>>;
  /** Check to what was told of its list in passing, before it was asked. */
  readonly mentioned?: Readonly<Record<string, readonly string[]>>;
  /** Answered checks by the time of their latest answer. */
  readonly order: readonly string[];
  /** Checks asked once more since the answers did not fit together. */
  readonly doubted: readonly string[];
  /** Cautions said, confirmed where they must be, and not lapsed. */
  readonly cautioned: readonly string[];
  /** Interrupts raised so far. */
  readonly raised: readonly string[];
  /** Check to the time at which its wait is over, ISO 8601. */
  readonly due: Readonly<Record<string, string>>;
  /** A check to be asked next by the user's wish. */
  readonly wanted: string | null;
  readonly next: Next | null;
  /** The leading faults when last reckoned, so that the next turn can say how they moved. */
  readonly leaders: readonly Weighted[];
  readonly verdict: VerdictMessage | null;
  readonly decision: DecisionMessage | null;
  readonly outcome: DoneMessage['outcome'] | null;
  /** What stood before the latest correction, until something else is told; cases kept long ago lack it. */
  readonly corrected?: Omit<CaseState, 'corrected'> | null;
}

/** A state in which nothing has been said. */
export const blankState: CaseState = {
  at: '1970-01-01T00:00:00.000Z',
  opened: '1970-01-01T00:00:00.000Z',
  policy: null,
  given: {},
  context: {},
  answers: {},
  order: [],
  doubted: [],
  cautioned: [],
  raised: [],
  due: {},
  wanted: null,
  next: null,
  leaders: [],
  verdict: null,
  decision: null,
  outcome: null,
  corrected: null,
};

/** The latest answer of a check that says something, if there is one. */
export function latestAnswer(state: CaseState, check: string): Answer | undefined {
  return state.answers[check]?.at(-1);
}
