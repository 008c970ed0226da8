/**
 * How the tables came to be what they are, step by step. A step that has been published is never
 * changed: another follows it.
 */
import { Migrator, type Kysely, type Migration } from 'kysely';
import { CasesError } from './cases-error.ts';
import type { Kind, Tables } from './tables.ts';

/** Brings a database to the newest tables; what calls it says what to do before the first step. */
export async function migrate(
  db: Kysely<Tables>,
  kind: Kind,
  beforeFirstStep: (step: string) => Promise<void>,
): Promise<void> {
  const migrator = new Migrator({
    db,
    provider: { getMigrations: () => Promise.resolve(stepsFor(kind)) },
  });
  const known = Object.keys(stepsFor(kind));
  const done = await stepsDone(db);
  const newer = done.find((name) => !known.includes(name));
  if (newer !== undefined) {
    throw new CasesError(
      'newer',
      `the store was made by a newer version (step “${newer}”); this one knows up to “${known.at(-1) ?? ''}”`,
    );
  }
  const first = known.find((name) => !done.includes(name));
  if (first === undefined) return;
  if (done.length > 0) await beforeFirstStep(first);
  const { error } = await migrator.migrateToLatest();
  if (error instanceof Error) throw error;
}

/** The steps that a database has been through, oldest first. */
async function stepsDone(db: Kysely<Tables>): Promise<readonly string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some(({ name }) => name === 'kysely_migration')) return [];
  const rows = await (db as unknown as Kysely<{ kysely_migration: { name: string } }>)
    .selectFrom('kysely_migration')
    .select('name')
    .orderBy('name')
    .execute();
  return rows.map(({ name }) => name);
}

function stepsFor(kind: Kind): Readonly<Record<string, Migration>> {
  return {
    '0001-cases': {
      up: async (db) => {
        await db.schema
          .createTable('cases')
          .addColumn('id', 'text', (column) => column.primaryKey())
          .addColumn('version', 'integer', (column) => column.notNull())
          .addColumn('snapshot', 'text', (column) => column.notNull())
          .addColumn('digest', 'text', (column) => column.notNull())
          .addColumn('changed_at', 'bigint', (column) => column.notNull())
          .execute();
        await db.schema
          .createTable('events')
          .addColumn('case_id', 'text', (column) => column.notNull().references('cases.id'))
          .addColumn('number', 'integer', (column) => column.notNull())
          .addColumn('body', 'text', (column) => column.notNull())
          .addPrimaryKeyConstraint('events_key', ['case_id', 'number'])
          .execute();
        await db.schema
          .createTable('personal')
          .addColumn('case_id', 'text', (column) => column.notNull().references('cases.id'))
          .addColumn('field', 'text', (column) => column.notNull())
          .addColumn('value', 'text', (column) => column.notNull())
          .addPrimaryKeyConstraint('personal_key', ['case_id', 'field'])
          .execute();
      },
    },
    '0002-conversations': {
      up: async (db) => {
        await db.schema
          .createTable('conversations')
          .addColumn('key', 'text', (column) => column.primaryKey())
          .addColumn('version', 'integer', (column) => column.notNull())
          .addColumn('body', 'text', (column) => column.notNull())
          .execute();
        await db.schema
          .createTable('received')
          .addColumn('key', 'text', (column) => column.primaryKey())
          .addColumn('at', 'bigint', (column) => column.notNull())
          .execute();
        await db.schema.createIndex('received_at').on('received').column('at').execute();
        const number = kind === 'postgres' ? 'bigserial' : 'integer';
        await db.schema
          .createTable('outgoing')
          .addColumn('id', number, (column) =>
            kind === 'postgres' ? column.primaryKey() : column.primaryKey().autoIncrement(),
          )
          .addColumn('to', 'text', (column) => column.notNull())
          .addColumn('body', 'text', (column) => column.notNull())
          .addColumn('due_at', 'bigint', (column) => column.notNull())
          .addColumn('attempts', 'integer', (column) => column.notNull())
          .addColumn('taken_until', 'bigint')
          .execute();
        await db.schema.createIndex('outgoing_to').on('outgoing').columns(['to', 'id']).execute();
        await db.schema
          .createTable('timers')
          .addColumn('conversation', 'text', (column) => column.notNull())
          .addColumn('name', 'text', (column) => column.notNull())
          .addColumn('due_at', 'bigint', (column) => column.notNull())
          .addColumn('taken_until', 'bigint')
          .addPrimaryKeyConstraint('timers_key', ['conversation', 'name'])
          .execute();
        await db.schema.createIndex('timers_due').on('timers').column('due_at').execute();
      },
    },
  };
}
