/**
 * The store in one file.
 */
import { sql } from 'kysely';
import type { CaseStore } from './case-store.ts';
import { migrate } from './migrations.ts';
import { openDatabase, type Database } from './sqlite-database.ts';
import { sqliteError } from './sqlite-error.ts';
import { createSqliteStore } from './sqlite-store.ts';

/**
 * Opens the store in a file, or makes it there. An older store is brought up to date, after a copy
 * of it has been put beside it as `<file>.before-<step>`.
 *
 * @throws CasesError `unreachable`, `damaged`, `newer`, `read-only`, `full` or `busy`.
 */
export async function openSqliteStore(file: string): Promise<CaseStore> {
  let database: Database | undefined;
  try {
    database = openDatabase(file);
    const { kysely } = database;
    await migrate(kysely, 'sqlite', async (step) => {
      await sql`vacuum into ${sql.lit(`${file}.before-${step}`)}`.execute(kysely);
    });
  } catch (error) {
    await database?.kysely.destroy();
    throw sqliteError(file, error) as Error;
  }
  return createSqliteStore(database, file);
}
