/**
 * One change put into a database within a transaction that is already open. Everything is read and
 * judged before anything is written, so that a change that cannot be taken leaves no trace.
 */
import { sql, type Kysely, type SelectQueryBuilder } from 'kysely';
import type { CaseChange, Change, Committed, ConversationChange } from './change.ts';
import { digestOf } from './digest.ts';
import { keptEvents } from './reading.ts';
import { forEachKind, statement } from './statement.ts';
import type { Kind, Tables } from './tables.ts';

type Db = Kysely<Tables>;

/** Judges and writes one change. */
export async function applyChange(db: Db, kind: Kind, change: Change): Promise<Committed> {
  const refused = await refusalOf(db, kind, change);
  if (refused !== undefined) return refused;
  const at = Date.parse(change.at);
  if (change.received !== undefined) await insertReceived(db, { key: change.received, at });
  if (change.case !== undefined) await writeCase(db, change.case, at);
  if (change.conversation !== undefined) await writeConversation(db, change.conversation);
  for (const [field, value] of Object.entries(change.personal ?? {})) {
    await putPersonal(db, { id: change.case?.after.id ?? '', field, value });
  }
  for (const { to, body } of change.outgoing ?? []) {
    await insertOutgoing(db, { to, body: JSON.stringify(body), at });
  }
  for (const { conversation, name, dueAt } of change.timers ?? []) {
    await deleteTimer(db, { conversation, name });
    if (dueAt === undefined) continue;
    await insertTimer(db, { conversation, name, dueAt: Date.parse(dueAt) });
  }
  return { type: 'kept' };
}

const insertReceived = statement(['key', 'at'], (db, { key, at }) =>
  db.insertInto('received').values({ key, at }),
);

const putPersonal = statement(['id', 'field', 'value'], (db, { id, field, value }) =>
  db
    .insertInto('personal')
    .values({ case_id: id, field, value })
    .onConflict((conflict) => conflict.columns(['case_id', 'field']).doUpdateSet({ value })),
);

const insertOutgoing = statement(['to', 'body', 'at'], (db, { to, body, at }) =>
  db
    .insertInto('outgoing')
    .values({ to, body, due_at: at, attempts: sql.lit(0), taken_until: sql.lit(null) }),
);

const deleteTimer = statement(['conversation', 'name'], (db, { conversation, name }) =>
  db.deleteFrom('timers').where('conversation', '=', conversation).where('name', '=', name),
);

const insertTimer = statement(
  ['conversation', 'name', 'dueAt'],
  (db, { conversation, name, dueAt }) =>
    db
      .insertInto('timers')
      .values({ conversation, name, due_at: dueAt, taken_until: sql.lit(null) }),
);

/**
 * Why a change cannot be taken; undefined where it can. What came in is looked up after the versions:
 * one that was just taken at the same moment has changed them, and is repeated, not in conflict.
 */
async function refusalOf(db: Db, kind: Kind, change: Change): Promise<Committed | undefined> {
  const conflict = await conflictOf(db, kind, change);
  if (change.received !== undefined) {
    const known = await selectReceived(db, { key: change.received });
    if (known.length > 0) return { type: 'repeated' };
  }
  return conflict;
}

const selectReceived = statement(['key'], (db, { key }) =>
  db.selectFrom('received').select('key').where('key', '=', key),
);

/** What another writer has changed in between; undefined where nobody has. */
async function conflictOf(db: Db, kind: Kind, change: Change): Promise<Committed | undefined> {
  if (change.case !== undefined) {
    const { expected, after } = change.case;
    const [row] = await versionOfCase[kind](db, { id: after.id });
    const version = row?.version ?? 0;
    if (version !== expected) {
      const since = await keptEvents(db, after.id, Math.min(expected, version));
      return { type: 'conflict', over: 'case', version, since };
    }
  }
  if (change.conversation !== undefined) {
    const { key, expected } = change.conversation;
    const [row] = await versionOfConversation[kind](db, { key });
    const version = row?.version ?? 0;
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

const versionOfCase = forEachKind((kind) =>
  statement(['id'], (db, { id }) =>
    held(db.selectFrom('cases').select('version').where('id', '=', id), kind),
  ),
);

const versionOfConversation = forEachKind((kind) =>
  statement(['key'], (db, { key }) =>
    held(db.selectFrom('conversations').select('version').where('key', '=', key), kind),
  ),
);

async function writeCase(db: Db, { expected, events, after }: CaseChange, at: number) {
  const snapshot = JSON.stringify(after);
  const { id, events: version } = after;
  const write = expected === 0 ? insertCase : updateCase;
  await write(db, { id, version, snapshot, digest: digestOf(snapshot), at });
  for (const [index, event] of events.entries()) {
    await insertEvent(db, { id, number: expected + index + 1, body: JSON.stringify(event) });
  }
}

const insertCase = statement(
  ['id', 'version', 'snapshot', 'digest', 'at'],
  (db, { id, version, snapshot, digest, at }) =>
    db.insertInto('cases').values({ id, version, snapshot, digest, changed_at: at }),
);

const updateCase = statement(
  ['id', 'version', 'snapshot', 'digest', 'at'],
  (db, { id, version, snapshot, digest, at }) =>
    db.updateTable('cases').set({ version, snapshot, digest, changed_at: at }).where('id', '=', id),
);

const insertEvent = statement(['id', 'number', 'body'], (db, { id, number, body }) =>
  db.insertInto('events').values({ case_id: id, number, body }),
);

async function writeConversation(db: Db, { key, expected, body }: ConversationChange) {
  const write = expected === 0 ? insertConversation : updateConversation;
  await write(db, { key, version: expected + 1, body: JSON.stringify(body) });
}

const insertConversation = statement(['key', 'version', 'body'], (db, { key, version, body }) =>
  db.insertInto('conversations').values({ key, version, body }),
);

const updateConversation = statement(['key', 'version', 'body'], (db, { key, version, body }) =>
  db.updateTable('conversations').set({ version, body }).where('key', '=', key),
);
