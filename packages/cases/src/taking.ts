/**
 * Work taken from a database by one of several that share it. On PostgreSQL what another is just
 * taking is passed over (`SKIP LOCKED`), so that nobody waits.
 */
import { sql, type Kysely, type RawBuilder } from 'kysely';
import type { DueTimer, Outgoing, Taking } from './case-store.ts';
import type { Json } from './change.ts';
import type { Kind, Tables } from './tables.ts';

type Db = Kysely<Tables>;

/** Takes what is to be sent: for each address the oldest, where that is due and nobody has it. */
export async function takeOutgoing(db: Db, kind: Kind, taking: Taking): Promise<Outgoing[]> {
  const now = Date.parse(taking.now);
  const oldest = db
    .selectFrom('outgoing')
    .select(['id', 'to', 'body', 'attempts', 'taken_until'])
    .where('due_at', '<=', now)
    .where(beginsWith('outgoing.to', taking.of))
    .where((row) => row.or([row('taken_until', 'is', null), row('taken_until', '<=', now)]))
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('outgoing as older')
            .select('older.id')
            .whereRef('older.to', '=', 'outgoing.to')
            .whereRef('older.id', '<', 'outgoing.id'),
        ),
      ),
    )
    .orderBy('id')
    .limit(taking.limit);
  const rows = await (kind === 'postgres' ? oldest.forUpdate().skipLocked() : oldest).execute();
  if (rows.length === 0) return [];
  await db
    .updateTable('outgoing')
    .set((row) => ({ attempts: row('attempts', '+', 1), taken_until: now + taking.forMs }))
    .where(
      'id',
      'in',
      rows.map(({ id }) => id),
    )
    .execute();
  return rows.map(({ id, to, body, attempts, taken_until }) => ({
    id,
    to,
    body: JSON.parse(body) as Json,
    attempts,
    isUnsure: taken_until !== null,
  }));
}

/** Takes timers that are due and that nobody has. */
export async function takeDue(db: Db, kind: Kind, taking: Taking): Promise<DueTimer[]> {
  const now = Date.parse(taking.now);
  const due = db
    .selectFrom('timers')
    .select(['conversation', 'name', 'due_at'])
    .where('due_at', '<=', now)
    .where(beginsWith('timers.conversation', taking.of))
    .where((row) => row.or([row('taken_until', 'is', null), row('taken_until', '<=', now)]))
    .orderBy('due_at')
    .orderBy('conversation')
    .orderBy('name')
    .limit(taking.limit);
  const rows = await (kind === 'postgres' ? due.forUpdate().skipLocked() : due).execute();
  for (const { conversation, name } of rows) {
    await db
      .updateTable('timers')
      .set({ taken_until: now + taking.forMs })
      .where('conversation', '=', conversation)
      .where('name', '=', name)
      .execute();
  }
  return rows.map(({ conversation, name, due_at }) => ({
    conversation,
    name,
    dueAt: new Date(due_at).toISOString(),
  }));
}

/** A length of its own for the beginning, so that no sign in it means anything to the database. */
function beginsWith(column: string, beginning = ''): RawBuilder<boolean> {
  const length = sql.lit(Array.from(beginning).length);
  return sql<boolean>`substr(${sql.ref(column)}, 1, ${length}) = ${beginning}`;
}
