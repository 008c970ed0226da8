/**
 * The store in one file.
 */
import { sql, type Kysely } from 'kysely';
import type { CaseStore } from './case-store.ts';
import { migrate } from './migrations.ts';
import { openDatabase } from './sqlite-database.ts';
import { sqliteError } from './sqlite-error.ts';
import { createSqliteStore } from './sqlite-store.ts';
import type { Tables } from './tables.ts';

/**
 * Opens the store in a file, or makes it there. An older store is brought up to date, after a copy
 * of it has been put beside it as `<file>.before-<step>`.
 *
 * @throws CasesError `unreachable`, `damaged`, `newer`, `read-only`, `full` or `busy`.
 */
export async function openSqliteStore(file: string): Promise<CaseStore> {
  let db: Kysely<Tables> | undefined;
  try {
    db = openDatabase(file);
    const opened = db;
    await migrate(opened, 'sqlite', async (step) => {
      await sql`vacuum into ${sql.lit(`${file}.before-${step}`)}`.execute(opened);
    });
  } catch (error) {
    await db?.destroy();
    throw sqliteError(file, error) as Error;
  }
  return createSqliteStore(db, file);
}
