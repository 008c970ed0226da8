/**
 * The one interface of all stores. Whatever resolves is kept; whatever rejects, with a
 * {@link CasesError}, changed nothing.
 */
import type { CaseEvent } from '@keyturn/core';
import type { Change, Committed, Json } from './change.ts';

/** A case as a store keeps it. */
export interface KeptCase {
  readonly id: string;
  /** How many events it has. */
  readonly version: number;
  /** The case after all its events, as JSON text; its events alone make it again. */
  readonly snapshot: string;
  /** The digest of the snapshot when it was kept. */
  readonly digest: string;
}

/** A conversation as a store keeps it. */
export interface Conversation {
  readonly version: number;
  readonly body: Json;
}

/** Something to be sent, taken by whoever sends it. */
export interface Outgoing {
  readonly id: number;
  readonly to: string;
  readonly body: Json;
  /** How often it was taken before. */
  readonly attempts: number;
  /** True where it was taken before and nobody said what became of it: it may have been sent. */
  readonly isUnsure: boolean;
}

/** A timer whose time has come, taken by whoever goes on with the conversation. */
export interface DueTimer {
  readonly conversation: string;
  readonly name: string;
  readonly dueAt: string;
}

/** How work is taken from a store by one of several that share it. */
export interface Taking {
  /** ISO 8601. */
  readonly now: string;
  readonly limit: number;
  /** For how long nobody else is given it, milliseconds. */
  readonly forMs: number;
  /** Only conversations and addresses that begin so, where several channels share a store. */
  readonly of?: string;
}

/** What became of something to be sent. */
export type Delivery =
  /** It is out, or will never be: it is kept no longer. */
  | { readonly type: 'over' }
  /** It is to be tried again, not before this time, ISO 8601. */
  | { readonly type: 'again'; readonly notBefore: string };

/** One thing that is wrong in a store. */
export interface Damage {
  /** A case's id, or undefined for the store as a whole. */
  readonly case?: string;
  readonly what: string;
}

/** Keeps cases and conversations. */
export interface CaseStore {
  /** Keeps a change whole, or says why not. */
  readonly commit: (change: Change) => Promise<Committed>;
  /** A case, or undefined where there is none of that id. */
  readonly read: (id: string) => Promise<KeptCase | undefined>;
  /** The events of a case after the first `after` ones, in order; none where there is no case. */
  readonly events: (id: string, after?: number) => Promise<readonly CaseEvent[]>;
  readonly conversation: (key: string) => Promise<Conversation | undefined>;
  /** Takes what is to be sent now: for each address only the oldest, so that order is kept. */
  readonly takeOutgoing: (taking: Taking) => Promise<readonly Outgoing[]>;
  /** Says what became of something that was taken. */
  readonly settle: (id: number, delivery: Delivery) => Promise<void>;
  /** Takes timers that are due. A change that sets or clears a timer ends the taking. */
  readonly takeDue: (taking: Taking) => Promise<readonly DueTimer[]>;
  /**
   * The earliest time of a timer or of something to be sent, ISO 8601, if there is any; 1970 where
   * something is to be sent that was not tried before.
   */
  readonly nextDue: () => Promise<string | undefined>;
  /** What is personal about a case. */
  readonly personal: (id: string) => Promise<Readonly<Record<string, string>>>;
  /** Erases what is personal about a case; the case itself stays as it is. */
  readonly erasePersonal: (id: string) => Promise<void>;
  /** Forgets which things came in before a time, ISO 8601: they will not come again. */
  readonly forgetReceived: (before: string) => Promise<void>;
  /** Looks for damage. */
  readonly inspect: () => Promise<readonly Damage[]>;
  /** Finishes what was begun and lets go of the store. */
  readonly close: () => Promise<void>;
}
