/**
 * One change put into a database within a transaction that is already open. Everything is read and
 * judged before anything is written, so that a change that cannot be taken leaves no trace.
 */
import { sql, type SelectQueryBuilder } from 'kysely';
import type { CaseChange, Change, Committed, ConversationChange } from './change.ts';
import { digestOf } from './digest.ts';
import { keptEvents } from './reading.ts';
import { statement, type Work } from './statement.ts';
import type { Kind, Tables } from './tables.ts';

/** Judges and writes one change. */
export function* applyChange(change: Change): Work<Committed> {
  const refused = yield* refusalOf(change);
  if (refused !== undefined) return refused;
  const at = Date.parse(change.at);
  if (change.received !== undefined) yield* insertReceived({ key: change.received, at });
  if (change.case !== undefined) yield* writeCase(change.case, at);
  if (change.conversation !== undefined) yield* writeConversation(change.conversation);
  for (const [field, value] of Object.entries(change.personal ?? {})) {
    yield* putPersonal({ id: change.case?.after.id ?? '', field, value });
  }
  for (const { to, body } of change.outgoing ?? []) {
    yield* insertOutgoing({ to, body: JSON.stringify(body) });
  }
  for (const { conversation, name, dueAt } of change.timers ?? []) {
    yield* deleteTimer({ conversation, name });
    if (dueAt === undefined) continue;
    yield* insertTimer({ conversation, name, dueAt: Date.parse(dueAt) });
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

/** Due at once, by no clock: one that is set back before it is taken would hold up the address. */
const insertOutgoing = statement(['to', 'body'], (db, { to, body }) =>
  db
    .insertInto('outgoing')
    .values({ to, body, due_at: sql.lit(0), attempts: sql.lit(0), taken_until: sql.lit(null) }),
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
function* refusalOf(change: Change): Work<Committed | undefined> {
  const conflict = yield* conflictOf(change);
  if (change.received !== undefined) {
    const known = yield* selectReceived({ key: change.received });
    if (known.length > 0) return { type: 'repeated' };
  }
  return conflict;
}

const selectReceived = statement(['key'], (db, { key }) =>
  db.selectFrom('received').select('key').where('key', '=', key),
);

/** What another writer has changed in between; undefined where nobody has. */
function* conflictOf(change: Change): Work<Committed | undefined> {
  if (change.case !== undefined) {
    const { expected, after } = change.case;
    const [row] = yield* versionOfCase({ id: after.id });
    const version = row?.version ?? 0;
    if (version !== expected) {
      const since = yield* keptEvents(after.id, Math.min(expected, version));
      return { type: 'conflict', over: 'case', version, since };
    }
  }
  if (change.conversation !== undefined) {
    const { key, expected } = change.conversation;
    const [row] = yield* versionOfConversation({ key });
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

const versionOfCase = statement(['id'], (db, { id }, kind) =>
  held(db.selectFrom('cases').select('version').where('id', '=', id), kind),
);

const versionOfConversation = statement(['key'], (db, { key }, kind) =>
  held(db.selectFrom('conversations').select('version').where('key', '=', key), kind),
);

function* writeCase({ expected, events, after }: CaseChange, at: number): Work<void> {
  const snapshot = JSON.stringify(after);
  const { id, events: version } = after;
  const write = expected === 0 ? insertCase : updateCase;
  yield* write({ id, version, snapshot, digest: digestOf(snapshot), at });
  for (const [index, event] of events.entries()) {
    yield* insertEvent({ id, number: expected + index + 1, body: JSON.stringify(event) });
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

function* writeConversation({ key, expected, body }: ConversationChange): Work<void> {
  const write = expected === 0 ? insertConversation : updateConversation;
  yield* write({ key, version: expected + 1, body: JSON.stringify(body) });
}

const insertConversation = statement(['key', 'version', 'body'], (db, { key, version, body }) =>
  db.insertInto('conversations').values({ key, version, body }),
);

const updateConversation = statement(['key', 'version', 'body'], (db, { key, version, body }) =>
  db.updateTable('conversations').set({ version, body }).where('key', '=', key),
);
