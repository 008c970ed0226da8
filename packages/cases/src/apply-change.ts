/**
 * One change put into a database within a transaction that is already open. Everything is read and
 * judged before anything is written, so that a change that cannot be taken leaves no trace.
 */
import type { CaseEvent } from '@keyturn/core';
import type { Kysely, SelectQueryBuilder } from 'kysely';
import type { CaseChange, Change, Committed, ConversationChange } from './change.ts';
import { digestOf } from './digest.ts';
import type { Kind, Tables } from './tables.ts';

type Db = Kysely<Tables>;

/** Judges and writes one change. */
export async function applyChange(db: Db, kind: Kind, change: Change): Promise<Committed> {
  const refused = await refusalOf(db, kind, change);
  if (refused !== undefined) return refused;
  const at = Date.parse(change.at);
  if (change.received !== undefined) {
    await db.insertInto('received').values({ key: change.received, at }).execute();
  }
  if (change.case !== undefined) await writeCase(db, change.case, at);
  if (change.conversation !== undefined) await writeConversation(db, change.conversation);
  for (const [field, value] of Object.entries(change.personal ?? {})) {
    await db
      .insertInto('personal')
      .values({ case_id: change.case?.after.id ?? '', field, value })
      .onConflict((conflict) => conflict.columns(['case_id', 'field']).doUpdateSet({ value }))
      .execute();
  }
  const outgoing = change.outgoing ?? [];
  if (outgoing.length > 0) {
    const rows = outgoing.map(({ to, body }) => ({
      to,
      body: JSON.stringify(body),
      due_at: at,
      attempts: 0,
      taken_until: null,
    }));
    await db.insertInto('outgoing').values(rows).execute();
  }
  for (const { conversation, name, dueAt } of change.timers ?? []) {
    const timer = db.deleteFrom('timers').where('conversation', '=', conversation);
    await timer.where('name', '=', name).execute();
    if (dueAt === undefined) continue;
    const row = { conversation, name, due_at: Date.parse(dueAt), taken_until: null };
    await db.insertInto('timers').values(row).execute();
  }
  return { type: 'kept' };
}

/**
 * Why a change cannot be taken; undefined where it can. What came in is looked up after the versions:
 * one that was just taken at the same moment has changed them, and is repeated, not in conflict.
 */
async function refusalOf(db: Db, kind: Kind, change: Change): Promise<Committed | undefined> {
  const conflict = await conflictOf(db, kind, change);
  if (change.received !== undefined) {
    const known = db.selectFrom('received').select('key').where('key', '=', change.received);
    if ((await known.executeTakeFirst()) !== undefined) return { type: 'repeated' };
  }
  return conflict;
}

/** What another writer has changed in between; undefined where nobody has. */
async function conflictOf(db: Db, kind: Kind, change: Change): Promise<Committed | undefined> {
  if (change.case !== undefined) {
    const { expected, after } = change.case;
    const row = db.selectFrom('cases').select('version').where('id', '=', after.id);
    const version = (await held(row, kind).executeTakeFirst())?.version ?? 0;
    if (version !== expected) {
      const since = await db
        .selectFrom('events')
        .select('body')
        .where('case_id', '=', after.id)
        .where('number', '>', Math.min(expected, version))
        .orderBy('number')
        .execute();
      return {
        type: 'conflict',
        over: 'case',
        version,
        since: since.map(({ body }) => JSON.parse(body) as CaseEvent),
      };
    }
  }
  if (change.conversation !== undefined) {
    const { key, expected } = change.conversation;
    const row = db.selectFrom('conversations').select('version').where('key', '=', key);
    const version = (await held(row, kind).executeTakeFirst())?.version ?? 0;
    if (version !== expected) return { type: 'conflict', over: 'conversation', version };
  }
  return undefined;
}

/** Where several write at once, nobody else may change the row until the transaction ends. */
function held<Row>(
  row: SelectQueryBuilder<Tables, 'cases' | 'conversations', Row>,
  kind: Kind,
): SelectQueryBuilder<Tables, 'cases' | 'conversations', Row> {
  return kind === 'postgres' ? row.forUpdate() : row;
}

async function writeCase(db: Db, { expected, events, after }: CaseChange, at: number) {
  const snapshot = JSON.stringify(after);
  const row = { version: after.events, snapshot, digest: digestOf(snapshot), changed_at: at };
  if (expected === 0)
    await db
      .insertInto('cases')
      .values({ id: after.id, ...row })
      .execute();
  else await db.updateTable('cases').set(row).where('id', '=', after.id).execute();
  const bodies = events.map((event, index) => ({
    case_id: after.id,
    number: expected + index + 1,
    body: JSON.stringify(event),
  }));
  await db.insertInto('events').values(bodies).execute();
}

async function writeConversation(db: Db, { key, expected, body }: ConversationChange) {
  const row = { version: expected + 1, body: JSON.stringify(body) };
  if (expected === 0)
    await db
      .insertInto('conversations')
      .values({ key, ...row })
      .execute();
  else await db.updateTable('conversations').set(row).where('key', '=', key).execute();
}
