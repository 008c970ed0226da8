/**
 * What one turn brings to a store, and what became of it.
 */
import type { Case, CaseEvent } from '@keyturn/core';

/** Anything that JSON can hold. */
export type Json =
  string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** The events of one turn, and the case after them. */
export interface CaseChange {
  /** How many events the case had before; 0 where this opens it. */
  readonly expected: number;
  /** At least one. */
  readonly events: readonly CaseEvent[];
  /** The case after these events; its `events` is `expected` plus theirs. */
  readonly after: Case;
}

/** What a channel keeps of a conversation: a body of its own, replaced whole. */
export interface ConversationChange {
  /** Names the conversation: channel, chat, thread. At most 200 characters. */
  readonly key: string;
  /** The version it had before; 0 where this is its first. */
  readonly expected: number;
  readonly body: Json;
}

/** Something to be sent. */
export interface OutgoingChange {
  /** What is sent to one address goes out in the order in which it was kept. */
  readonly to: string;
  readonly body: Json;
}

/** A moment at which a conversation is to be gone on with; without `dueAt` there is none any more. */
export interface TimerChange {
  readonly conversation: string;
  readonly name: string;
  /** ISO 8601. */
  readonly dueAt?: string;
}

/** All that is kept at once, or not at all. */
export interface Change {
  /** When, ISO 8601. */
  readonly at: string;
  /** Names what came in: a second change with the same name does nothing. At most 200 characters. */
  readonly received?: string;
  readonly case?: CaseChange;
  readonly conversation?: ConversationChange;
  readonly outgoing?: readonly OutgoingChange[];
  readonly timers?: readonly TimerChange[];
  /**
   * What is personal about the case of this change, field to text, beside its technical events; it
   * can be erased without them.
   */
  readonly personal?: Readonly<Record<string, string>>;
}

/** What became of a change. */
export type Committed =
  /** It is kept, and outlives a loss of power. */
  | { readonly type: 'kept' }
  /** What came in was taken before; nothing was done. */
  | { readonly type: 'repeated' }
  /** Somebody else changed the case meanwhile; nothing was done. */
  | {
      readonly type: 'conflict';
      readonly over: 'case';
      /** How many events the case has; 0 where there is none. */
      readonly version: number;
      /** What was not expected: the events since. */
      readonly since: readonly CaseEvent[];
    }
  | {
      readonly type: 'conflict';
      readonly over: 'conversation';
      readonly version: number;
    };
