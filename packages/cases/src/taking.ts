/**
 * Work taken from a database by one of several that share it. On PostgreSQL what another is just
 * taking is passed over (`SKIP LOCKED`), so that nobody waits.
 */
import { sql, type RawBuilder } from 'kysely';
import type { Delivery, DueTimer, Outgoing, Taking } from './case-store.ts';
import type { Json } from './change.ts';
import { builtAnew, statement, type Work } from './statement.ts';

/** Takes what is to be sent: for each address the oldest, where that is due and nobody has it. */
export function* takeOutgoing(taking: Taking): Work<Outgoing[]> {
  const now = Date.parse(taking.now);
  const { of = '', limit, forMs } = taking;
  const rows = yield* oldestOutgoing({ now, of, ofLength: lengthOf(of), limit });
  if (rows.length === 0) return [];
  const ids = rows.map(({ id }) => id);
  yield* builtAnew((db) =>
    db
      .updateTable('outgoing')
      .set((row) => ({ attempts: row('attempts', '+', 1), taken_until: now + forMs }))
      .where('id', 'in', ids),
  );
  return rows.map(({ id, to, body, attempts, taken_until }) => ({
    id,
    to,
    body: JSON.parse(body) as Json,
    attempts,
    isUnsure: taken_until !== null,
  }));
}

const oldestOutgoing = statement(
  ['now', 'of', 'ofLength', 'limit'],
  (db, { now, of, ofLength, limit }, kind) => {
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
  },
);

/** Says what became of something that was taken. */
export function* settle(id: number, delivery: Delivery): Work<void> {
  if (delivery.type === 'over') yield* deleteOutgoing({ id });
  else yield* postponeOutgoing({ id, notBefore: Date.parse(delivery.notBefore) });
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
export function* takeDue(taking: Taking): Work<DueTimer[]> {
  const now = Date.parse(taking.now);
  const { of = '', limit, forMs } = taking;
  const rows = yield* dueTimers({ now, of, ofLength: lengthOf(of), limit });
  for (const { conversation, name } of rows) {
    yield* takeTimer({ conversation, name, until: now + forMs });
  }
  return rows.map(({ conversation, name, due_at }) => ({
    conversation,
    name,
    dueAt: new Date(due_at).toISOString(),
  }));
}

const dueTimers = statement(
  ['now', 'of', 'ofLength', 'limit'],
  (db, { now, of, ofLength, limit }, kind) => {
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
  },
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
