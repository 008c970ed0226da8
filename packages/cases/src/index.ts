/** Stores, to be opened. */
export { openSqliteStore } from './open-sqlite.ts';
export { openPostgresStore } from './open-postgres.ts';
export { createMemoryStore } from './memory-store.ts';

/** What a store does. */
export type {
  CaseStore,
  Conversation,
  Damage,
  Delivery,
  DueTimer,
  KeptCase,
  Outgoing,
  Taking,
} from './case-store.ts';
export { readCase, type ReadCase } from './read-case.ts';

/** What is kept. */
export type {
  CaseChange,
  Change,
  Committed,
  ConversationChange,
  Json,
  OutgoingChange,
  TimerChange,
} from './change.ts';

/** The one error. */
export { CasesError, type CasesErrorCode } from './cases-error.ts';
