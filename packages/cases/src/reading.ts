/**
 * What is read from a database of either kind.
 */
import type { CaseEvent } from '@keyturn/core';
import type { Damage, KeptCase, Conversation } from './case-store.ts';
import type { Json } from './change.ts';
import { isSound } from './read-case.ts';
import { statement, type Work } from './statement.ts';

/** A case, or undefined. */
export function* keptCase(id: string): Work<KeptCase | undefined> {
  const [row] = yield* selectCase({ id });
  return row;
}

const selectCase = statement(['id'], (db, { id }) =>
  db.selectFrom('cases').select(['id', 'version', 'snapshot', 'digest']).where('id', '=', id),
);

/** The events of a case after the first `after` ones. */
export function* keptEvents(id: string, after: number): Work<CaseEvent[]> {
  const rows = yield* selectEvents({ id, after });
  return rows.map(({ body }) => JSON.parse(body) as CaseEvent);
}

const selectEvents = statement(['id', 'after'], (db, { id, after }) =>
  db
    .selectFrom('events')
    .select('body')
    .where('case_id', '=', id)
    .where('number', '>', after)
    .orderBy('number'),
);

/** A conversation, or undefined. */
export function* keptConversation(key: string): Work<Conversation | undefined> {
  const [row] = yield* selectConversation({ key });
  return row && { version: row.version, body: JSON.parse(row.body) as Json };
}

const selectConversation = statement(['key'], (db, { key }) =>
  db.selectFrom('conversations').select(['version', 'body']).where('key', '=', key),
);

/** What is personal about a case. */
export function* keptPersonal(id: string): Work<Record<string, string>> {
  const rows = yield* selectPersonal({ id });
  return Object.fromEntries(rows.map(({ field, value }) => [field, value]));
}

const selectPersonal = statement(['id'], (db, { id }) =>
  db.selectFrom('personal').select(['field', 'value']).where('case_id', '=', id).orderBy('field'),
);

/** The earliest time of a timer or of something to be sent, milliseconds since 1970. */
export function* earliestDue(): Work<number | undefined> {
  const rows = [...(yield* selectTimerDue({})), ...(yield* selectOutgoingDue({}))];
  const due = rows.flatMap((row) => row.due ?? []);
  return due.length === 0 ? undefined : Math.min(...due);
}

const selectTimerDue = statement([], (db) =>
  db.selectFrom('timers').select((row) => row.fn.min<number | null>('due_at').as('due')),
);

const selectOutgoingDue = statement([], (db) =>
  db.selectFrom('outgoing').select((row) => row.fn.min<number | null>('due_at').as('due')),
);

/** Cases at a time that are looked through for damage. */
const page = 500;

/** Cases whose events have gaps, or whose snapshot is not what was kept. */
export function* damagedCases(): Work<Damage[]> {
  const damages: Damage[] = [];
  let last = '';
  for (;;) {
    const rows = yield* selectCounted({ last });
    for (const row of rows) {
      const has = `${String(row.count)} events up to number ${String(row.last)}`;
      if (Number(row.count) !== row.version || row.last !== row.version) {
        damages.push({
          case: row.id,
          what: `${String(row.version)} events expected, ${has} found`,
        });
      }
      if (!isSound(row)) {
        damages.push({ case: row.id, what: 'the snapshot is not what was kept' });
      }
    }
    if (rows.length < page) return damages;
    last = rows.at(-1)?.id ?? '';
  }
}

const selectCounted = statement(['last'], (db, { last }) =>
  db
    .selectFrom('cases')
    .leftJoin('events', 'events.case_id', 'cases.id')
    .select(['cases.id', 'cases.version', 'cases.snapshot', 'cases.digest'])
    .select((row) => [row.fn.count('events.number').as('count')])
    .select((row) => [row.fn.max('events.number').as('last')])
    .where('cases.id', '>', last)
    .groupBy(['cases.id', 'cases.version', 'cases.snapshot', 'cases.digest'])
    .orderBy('cases.id')
    .limit(page),
);
