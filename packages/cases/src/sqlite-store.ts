/**
 * A store over the database of one file.
 */
import type { CaseStore } from './case-store.ts';
import { createGroupCommit } from './group-commit.ts';
import { createSqlStore } from './sql-store.ts';
import type { Asked, Database } from './sqlite-database.ts';
import { sqliteError } from './sqlite-error.ts';
import type { Work } from './statement.ts';

/** A store over an open database; `file` is what it is called in errors. */
export function createSqliteStore({ kysely, rowsOf }: Database, file: string): CaseStore {
  const done = <Result>(work: Work<Result>): Result => {
    let step = work.next([]);
    while (step.done !== true) step = work.next(rowsOf(step.value('sqlite')));
    return step.value;
  };
  const group = createGroupCommit<() => Work<unknown>, unknown>((works) => {
    // A transaction that reads before it writes could not go on where another writes meanwhile.
    rowsOf(begin);
    try {
      const results = works.map((work) => done(work()));
      rowsOf(commit);
      return results;
    } catch (error) {
      rollBack();
      throw error;
    }
  });
  const rollBack = (): void => {
    try {
      rowsOf(rollback);
    } catch {
      // What failed has ended the transaction.
    }
  };
  const within = <Result>(work: () => Work<Result>): Promise<Result> =>
    group.commit(work) as Promise<Result>;
  return createSqlStore({
    within,
    write: within,
    take: (work) => group.commitLast(work) as Promise<never>,
    read: (work) => Promise.resolve(done(work())),
    errorOf: (error) => sqliteError(file, error),
    inspect: () => {
      const rows = rowsOf(integrityCheck) as { readonly integrity_check: string }[];
      const wrong = rows.flatMap(({ integrity_check: what }) => (what === 'ok' ? [] : [{ what }]));
      return Promise.resolve(wrong);
    },
    close: async () => {
      await group.finish();
      await kysely.destroy();
    },
  });
}

const alone = (sql: string): Asked => ({ sql, parameters: [] });
const [begin, commit, rollback] = [alone('begin immediate'), alone('commit'), alone('rollback')];
const integrityCheck = alone('pragma integrity_check');
