/**
 * Work taken from a database by one of several that share it. On PostgreSQL what another is just
 * taking is passed over (`SKIP LOCKED`), so that nobody waits.
 */
import { sql, type Kysely, type RawBuilder } from 'kysely';
import type { Delivery, DueTimer, Outgoing, Taking } from './case-store.ts';
import type { Json } from './change.ts';
import { forEachKind, statement } from './statement.ts';
import type { Kind, Tables } from './tables.ts';

type Db = Kysely<Tables>;

/** Takes what is to be sent: for each address the oldest, where that is due and nobody has it. */
export async function takeOutgoing(db: Db, kind: Kind, taking: Taking): Promise<Outgoing[]> {
  const now = Date.parse(taking.now);
  const { of = '', limit, forMs } = taking;
  const rows = await oldestOutgoing[kind](db, { now, of, ofLength: lengthOf(of), limit });
  if (rows.length === 0) return [];
  await db
    .updateTable('outgoing')
    .set((row) => ({ attempts: row('attempts', '+', 1), taken_until: now + forMs }))
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

const oldestOutgoing = forEachKind((kind) =>
  statement(['now', 'of', 'ofLength', 'limit'], (db, { now, of, ofLength, limit }) => {
    const oldest = db
      .selectFrom('outgoing')
      .select(['id', 'to', 'body', 'attempts', 'taken_until'])
      .where('due_at', '<=', now)
      .where(beginsWith('outgoing.to', of, ofLength))
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
      .limit(limit);
    return kind === 'postgres' ? oldest.forUpdate().skipLocked() : oldest;
  }),
);

/** Says what became of something that was taken. */
export async function settle(db: Db, id: number, delivery: Delivery): Promise<void> {
  if (delivery.type === 'over') await deleteOutgoing(db, { id });
  else await postponeOutgoing(db, { id, notBefore: Date.parse(delivery.notBefore) });
}

const deleteOutgoing = statement(['id'], (db, { id }) =>
  db.deleteFrom('outgoing').where('id', '=', id),
);

const postponeOutgoing = statement(['id', 'notBefore'], (db, { id, notBefore }) =>
  db
    .updateTable('outgoing')
    .set({ due_at: notBefore, taken_until: sql.lit(null) })
    .where('id', '=', id),
);

/** Takes timers that are due and that nobody has. */
export async function takeDue(db: Db, kind: Kind, taking: Taking): Promise<DueTimer[]> {
  const now = Date.parse(taking.now);
  const { of = '', limit, forMs } = taking;
  const rows = await dueTimers[kind](db, { now, of, ofLength: lengthOf(of), limit });
  for (const { conversation, name } of rows) {
    await takeTimer(db, { conversation, name, until: now + forMs });
  }
  return rows.map(({ conversation, name, due_at }) => ({
    conversation,
    name,
    dueAt: new Date(due_at).toISOString(),
  }));
}

const dueTimers = forEachKind((kind) =>
  statement(['now', 'of', 'ofLength', 'limit'], (db, { now, of, ofLength, limit }) => {
    const due = db
      .selectFrom('timers')
      .select(['conversation', 'name', 'due_at'])
      .where('due_at', '<=', now)
      .where(beginsWith('timers.conversation', of, ofLength))
      .where((row) => row.or([row('taken_until', 'is', null), row('taken_until', '<=', now)]))
      .orderBy('due_at')
      .orderBy('conversation')
      .orderBy('name')
      .limit(limit);
    return kind === 'postgres' ? due.forUpdate().skipLocked() : due;
  }),
);

const takeTimer = statement(
  ['conversation', 'name', 'until'],
  (db, { conversation, name, until }) =>
    db
      .updateTable('timers')
      .set({ taken_until: until })
      .where('conversation', '=', conversation)
      .where('name', '=', name),
);

/** By its length, so that no sign in the beginning means anything to the database. */
function beginsWith(column: string, beginning: never, length: never): RawBuilder<boolean> {
  return sql<boolean>`substr(${sql.ref(column)}, 1, ${length}) = ${beginning}`;
}

/** In characters as both databases count them. */
function lengthOf(beginning: string): number {
  return Array.from(beginning).length;
}
