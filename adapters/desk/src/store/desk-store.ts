/**
 * Where the desk keeps its cases: the seam at which a server, and with it a second desk on another
 * machine, comes in. What was asked here is asked of any store, and the page knows no other.
 */
import type { Caller, DeskCase } from '../case/desk-case.ts';
import type { DeskOutcome } from '../case/outcome.ts';

/** All that is kept. */
export interface DeskBook {
  readonly cases: readonly DeskCase[];
  /** Case id to the person who called. */
  readonly callers: Readonly<Record<string, Caller>>;
  /** What cases turned out to be, ids only. */
  readonly outcomes: readonly DeskOutcome[];
}

/** Kept; or not, since somebody else kept another version first: theirs, gone where it was closed. */
export type Kept =
  { readonly type: 'kept' } | { readonly type: 'conflict'; readonly theirs: DeskCase | undefined };

/** A store of cases. Every change is whole or not at all, and kept once its promise is fulfilled. */
export interface DeskStore {
  readonly read: () => Promise<DeskBook>;
  /** Keeps a case whose version is one more than that of the one kept; a new one has version 1. */
  readonly keep: (kase: DeskCase) => Promise<Kept>;
  readonly keepCaller: (id: string, caller: Caller) => Promise<void>;
  /** Takes a case off the desk: the person is forgotten, the outcome, where there is one, stays. */
  readonly close: (id: string, outcome: DeskOutcome | undefined) => Promise<void>;
  /** Puts a closed case back with its person, and takes its outcome, by its id, out again. */
  readonly reopen: (kase: DeskCase, caller: Caller, outcome: string | undefined) => Promise<void>;
  /** Calls `changed` whenever another desk has changed something. Gives what ends that. */
  readonly watch: (changed: () => void) => () => void;
}
