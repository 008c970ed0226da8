/**
 * What is read from a database of either kind.
 */
import type { CaseEvent } from '@keyturn/core';
import type { Kysely } from 'kysely';
import type { Damage, KeptCase, Conversation } from './case-store.ts';
import type { Json } from './change.ts';
import { isSound } from './read-case.ts';
import { statement } from './statement.ts';
import type { Tables } from './tables.ts';

type Db = Kysely<Tables>;

/** A case, or undefined. */
export async function keptCase(db: Db, id: string): Promise<KeptCase | undefined> {
  const [row] = await selectCase(db, { id });
  return row;
}

const selectCase = statement(['id'], (db, { id }) =>
  db.selectFrom('cases').select(['id', 'version', 'snapshot', 'digest']).where('id', '=', id),
);

/** The events of a case after the first `after` ones. */
export async function keptEvents(db: Db, id: string, after: number): Promise<CaseEvent[]> {
  const rows = await selectEvents(db, { id, after });
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
export async function keptConversation(db: Db, key: string): Promise<Conversation | undefined> {
  const [row] = await selectConversation(db, { key });
  return row && { version: row.version, body: JSON.parse(row.body) as Json };
}

const selectConversation = statement(['key'], (db, { key }) =>
  db.selectFrom('conversations').select(['version', 'body']).where('key', '=', key),
);

/** What is personal about a case. */
export async function keptPersonal(db: Db, id: string): Promise<Record<string, string>> {
  const rows = await db
    .selectFrom('personal')
    .select(['field', 'value'])
    .where('case_id', '=', id)
    .orderBy('field')
    .execute();
  return Object.fromEntries(rows.map(({ field, value }) => [field, value]));
}

/** The earliest time of a timer or of something to be sent, milliseconds since 1970. */
export async function earliestDue(db: Db): Promise<number | undefined> {
  const times = await Promise.all(
    (['timers', 'outgoing'] as const).map((table) =>
      db
        .selectFrom(table)
        .select((row) => row.fn.min('due_at').as('due'))
        .executeTakeFirst(),
    ),
  );
  const due = times.flatMap((row) => (row?.due ? [row.due] : []));
  return due.length === 0 ? undefined : Math.min(...due);
}

/** Cases at a time that are looked through for damage. */
const page = 500;

/** Cases whose events have gaps, or whose snapshot is not what was kept. */
export async function damagedCases(db: Db): Promise<Damage[]> {
  const damages: Damage[] = [];
  let last = '';
  for (;;) {
    const rows = await db
      .selectFrom('cases')
      .leftJoin('events', 'events.case_id', 'cases.id')
      .select(['cases.id', 'cases.version', 'cases.snapshot', 'cases.digest'])
      .select((row) => [row.fn.count('events.number').as('count')])
      .select((row) => [row.fn.max('events.number').as('last')])
      .where('cases.id', '>', last)
      .groupBy(['cases.id', 'cases.version', 'cases.snapshot', 'cases.digest'])
      .orderBy('cases.id')
      .limit(page)
      .execute();
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
