/**
 * A store over a database of either kind; how work is done on it is the kind's own.
 */
import { applyChange } from './apply-change.ts';
import type { CaseStore, Damage } from './case-store.ts';
import { CasesError } from './cases-error.ts';
import { erasePersonal, forgetReceived } from './erasing.ts';
import {
  damagedCases,
  earliestDue,
  keptCase,
  keptConversation,
  keptEvents,
  keptPersonal,
} from './reading.ts';
import { requireChange } from './require-change.ts';
import type { Work } from './statement.ts';
import { settle, takeDue, takeOutgoing } from './taking.ts';

/** What one kind of database does in its own way. Work may be begun anew where it failed. */
export interface Engine {
  /** Does work that only reads. */
  readonly read: <Result>(work: () => Work<Result>) => Promise<Result>;
  /** Does work of one statement that writes. */
  readonly write: <Result>(work: () => Work<Result>) => Promise<Result>;
  /** Does work that writes, all or nothing. */
  readonly within: <Result>(work: () => Work<Result>) => Promise<Result>;
  /**
   * The same for work that takes what other work put in; where several things are kept at once it
   * comes last, so that what was just put in is taken without being waited for.
   */
  readonly take: <Result>(work: () => Work<Result>) => Promise<Result>;
  /** Damage of the database as a whole. */
  readonly inspect: () => Promise<readonly Damage[]>;
  /** What a failure means for whoever uses the store. */
  readonly errorOf: (error: unknown) => unknown;
  readonly close: () => Promise<void>;
}

/** A store over an engine. */
export function createSqlStore(engine: Engine): CaseStore {
  let isClosed = false;
  const asked = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    if (isClosed) throw new CasesError('closed', 'the store has been closed');
    try {
      return await work();
    } catch (error) {
      throw engine.errorOf(error);
    }
  };
  const read = <Result>(work: () => Work<Result>): Promise<Result> =>
    asked(() => engine.read(work));
  const write = <Result>(work: () => Work<Result>): Promise<Result> =>
    asked(() => engine.write(work));
  const take = <Result>(work: () => Work<Result>): Promise<Result> =>
    asked(() => engine.take(work));
  return {
    commit: (change) =>
      asked(() => {
        requireChange(change);
        return engine.within(() => applyChange(change));
      }),
    read: (id) => read(() => keptCase(id)),
    events: (id, after = 0) => read(() => keptEvents(id, after)),
    conversation: (key) => read(() => keptConversation(key)),
    takeOutgoing: (taking) => take(() => takeOutgoing(taking)),
    settle: (id, delivery) => write(() => settle(id, delivery)),
    takeDue: (taking) => take(() => takeDue(taking)),
    nextDue: async () => {
      const due = await read(earliestDue);
      return due === undefined ? undefined : new Date(due).toISOString();
    },
    personal: (id) => read(() => keptPersonal(id)),
    erasePersonal: (id) => write(() => erasePersonal(id)),
    forgetReceived: (before) => write(() => forgetReceived(before)),
    inspect: async () => [...(await asked(engine.inspect)), ...(await read(damagedCases))],
    close: async () => {
      if (isClosed) return;
      isClosed = true;
      await engine.close();
    },
  };
}
