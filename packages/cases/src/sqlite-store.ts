/**
 * A store over the database of one file.
 */
import { sql, type Kysely } from 'kysely';
import { applyChange } from './apply-change.ts';
import type { CaseStore } from './case-store.ts';
import { createGroupCommit } from './group-commit.ts';
import { createSqlStore, type Work } from './sql-store.ts';
import { sqliteError } from './sqlite-error.ts';
import type { Tables } from './tables.ts';

/** A store over an open database; `file` is what it is called in errors. */
export function createSqliteStore(db: Kysely<Tables>, file: string): CaseStore {
  const group = createGroupCommit<Work<unknown>, unknown>((works) =>
    db.connection().execute(async (connection) => {
      // A transaction that reads before it writes could not go on where another writes meanwhile.
      await sql`begin immediate`.execute(connection);
      try {
        const results = [];
        for (const work of works) results.push(await work(connection));
        await sql`commit`.execute(connection);
        return results;
      } catch (error) {
        await sql`rollback`.execute(connection).catch(() => undefined);
        throw error;
      }
    }),
  );
  const within = <Result>(work: Work<Result>): Promise<Result> =>
    group.commit(work) as Promise<Result>;
  return createSqlStore({
    kind: 'sqlite',
    db,
    within,
    write: within,
    errorOf: (error) => sqliteError(file, error),
    commit: (change) => within((connection) => applyChange(connection, 'sqlite', change)),
    inspect: async () => {
      const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db);
      return rows.flatMap(({ integrity_check: what }) => (what === 'ok' ? [] : [{ what }]));
    },
    close: async () => {
      await group.finish();
      await db.destroy();
    },
  });
}
