/**
 * A database in one file, as the query builder wants it.
 */
import { DatabaseSync, type DatabaseSyncInstance } from '@photostructure/sqlite';
import { Kysely, SqliteDialect, type SqliteDatabase, type SqliteStatement } from 'kysely';
import type { Tables } from './tables.ts';

/** How long to wait for another program that writes, milliseconds. */
const busyMs = 5000;

/** Opens a file, or makes it. What is committed outlives a loss of power. */
export function openDatabase(file: string): Kysely<Tables> {
  const database = new DatabaseSync(file, { timeout: busyMs, enableForeignKeyConstraints: true });
  database.exec('pragma journal_mode = wal; pragma synchronous = full');
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database: withStatements(database) }) });
}

/** Preparing a statement costs as much as running it, so each is prepared once. */
function withStatements(database: DatabaseSyncInstance): SqliteDatabase {
  const prepared = new Map<string, SqliteStatement>();
  const statementOf = (sql: string): SqliteStatement => {
    const known = prepared.get(sql);
    if (known !== undefined) return known;
    const statement = database.prepare(sql);
    const made: SqliteStatement = {
      reader: statement.columns().length > 0,
      all: (values) => statement.all(...(values as [])) as unknown[],
      run: (values) => statement.run(...(values as [])),
      iterate: (values) => statement.iterate(...(values as [])) as IterableIterator<unknown>,
    };
    // Lists of several lengths each make a statement of their own.
    if (prepared.size >= mostStatements) prepared.clear();
    prepared.set(sql, made);
    return made;
  };
  return {
    close: () => {
      // Statements still held would leave the log beside the file; what is in it goes into the file.
      database.exec('pragma wal_checkpoint(truncate)');
      database.close();
    },
    prepare: statementOf,
  };
}

const mostStatements = 200;
