/**
 * A store over a database of either kind; how a transaction is made is the kind's own.
 */
import type { Kysely } from 'kysely';
import type { CaseStore, Damage } from './case-store.ts';
import { CasesError } from './cases-error.ts';
import type { Change, Committed } from './change.ts';
import {
  damagedCases,
  earliestDue,
  keptCase,
  keptConversation,
  keptEvents,
  keptPersonal,
} from './reading.ts';
import { requireChange } from './require-change.ts';
import type { Kind, Tables } from './tables.ts';
import { settle, takeDue, takeOutgoing } from './taking.ts';

/** Work on a database, within a transaction or not as it is given. */
export type Work<Result> = (db: Kysely<Tables>) => Promise<Result>;

/** What one kind of database does in its own way. */
export interface Engine {
  readonly kind: Kind;
  readonly db: Kysely<Tables>;
  readonly commit: (change: Change) => Promise<Committed>;
  /** Runs work that writes, all or nothing. */
  readonly within: <Result>(work: Work<Result>) => Promise<Result>;
  /** Runs one statement that writes. */
  readonly write: <Result>(work: Work<Result>) => Promise<Result>;
  /** Damage of the database as a whole. */
  readonly inspect: () => Promise<readonly Damage[]>;
  /** What a failure means for whoever uses the store. */
  readonly errorOf: (error: unknown) => unknown;
  readonly close: () => Promise<void>;
}

/** A store over an engine. */
export function createSqlStore(engine: Engine): CaseStore {
  const { db, kind } = engine;
  let isClosed = false;
  const asked = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    if (isClosed) throw new CasesError('closed', 'the store has been closed');
    try {
      return await work();
    } catch (error) {
      throw engine.errorOf(error);
    }
  };
  return {
    commit: (change) =>
      asked(async () => {
        requireChange(change);
        return engine.commit(change);
      }),
    read: (id) => asked(() => keptCase(db, id)),
    events: (id, after = 0) => asked(() => keptEvents(db, id, after)),
    conversation: (key) => asked(() => keptConversation(db, key)),
    takeOutgoing: (taking) => asked(() => engine.within((trx) => takeOutgoing(trx, kind, taking))),
    settle: (id, delivery) => asked(() => engine.write((trx) => settle(trx, id, delivery))),
    takeDue: (taking) => asked(() => engine.within((trx) => takeDue(trx, kind, taking))),
    nextDue: () =>
      asked(async () => {
        const due = await earliestDue(db);
        return due === undefined ? undefined : new Date(due).toISOString();
      }),
    personal: (id) => asked(() => keptPersonal(db, id)),
    erasePersonal: (id) =>
      asked(() =>
        engine.write(async (trx) => {
          await trx.deleteFrom('personal').where('case_id', '=', id).execute();
        }),
      ),
    forgetReceived: (before) =>
      asked(() =>
        engine.write(async (trx) => {
          await trx.deleteFrom('received').where('at', '<', Date.parse(before)).execute();
        }),
      ),
    inspect: () => asked(async () => [...(await engine.inspect()), ...(await damagedCases(db))]),
    close: async () => {
      if (isClosed) return;
      isClosed = true;
      await engine.close();
    },
  };
}
