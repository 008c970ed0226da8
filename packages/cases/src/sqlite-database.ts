/**
 * A database in one file.
 */
import { DatabaseSync, type DatabaseSyncInstance } from '@photostructure/sqlite';
import { Kysely, SqliteDialect, type SqliteDatabase, type SqliteStatement } from 'kysely';
import type { Tables } from './tables.ts';

/** A statement and the values that it leaves open. */
export interface Asked {
  readonly sql: string;
  readonly parameters: readonly unknown[];
}

/** A database that is open. */
export interface Database {
  /** Runs a statement, and gives the rows that it reads. */
  readonly rowsOf: (asked: Asked) => readonly unknown[];
  /** The same database for the query builder, which puts the tables up; ends it as well. */
  readonly kysely: Kysely<Tables>;
}

/** How long to wait for another program that writes, milliseconds. */
const busyMs = 5000;

/** Opens a file, or makes it. What is committed outlives a loss of power. */
export function openDatabase(file: string): Database {
  const opened = new DatabaseSync(file, { timeout: busyMs, enableForeignKeyConstraints: true });
  // The log is written back every 2,000 pages: less often than usual, since a million cases change
  // pages of their own; yet not so seldom that a page that changes every turn is looked for at length.
  opened.exec(
    'pragma journal_mode = wal; pragma synchronous = full; pragma wal_autocheckpoint = 2000',
  );
  const database = withStatements(opened);
  return {
    kysely: new Kysely<Tables>({ dialect: new SqliteDialect({ database }) }),
    rowsOf: ({ sql, parameters }) => {
      const prepared = database.prepare(sql);
      if (prepared.reader) return prepared.all(parameters);
      prepared.run(parameters);
      return [];
    },
  };
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
