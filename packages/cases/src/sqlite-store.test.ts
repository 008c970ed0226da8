import {
  copyFileSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { sql } from 'kysely';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Change } from './change.ts';
import { migrate } from './migrations.ts';
import { openSqliteStore } from './open-sqlite.ts';
import { openDatabase, type Database } from './sqlite-database.ts';
import { createSqliteStore } from './sqlite-store.ts';

const at = '2026-01-05T08:00:00.000Z';

let folder = '';
let file = '';

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'sqlite-store-'));
  file = path.join(folder, 'cases.sqlite');
});

afterEach(() => rmSync(folder, { recursive: true }));

const saying = (key: string, length = 10): Change => ({
  at,
  received: key,
  conversation: { key, expected: 0, body: 'x'.repeat(length) },
});

async function migrated(): Promise<Database> {
  const database = openDatabase(file);
  await migrate(database.kysely, 'sqlite', () => Promise.resolve());
  return database;
}

describe('a store in a file', () => {
  test('is there again when it is opened again', async () => {
    const first = await openSqliteStore(file);
    await first.commit(saying('chat 1'));
    await first.close();
    const second = await openSqliteStore(file);
    expect(await second.conversation('chat 1')).toMatchObject({ version: 1 });
    expect(await second.commit(saying('chat 1'))).toEqual({ type: 'repeated' });
    await second.close();
  });

  test('keeps what was asked for before it was closed', async () => {
    const first = await openSqliteStore(file);
    const asked = Promise.all(['a', 'b', 'c'].map((key) => first.commit(saying(key))));
    await first.close();
    expect((await asked).map(({ type }) => type)).toEqual(['kept', 'kept', 'kept']);
    const second = await openSqliteStore(file);
    expect(await second.conversation('c')).toMatchObject({ version: 1 });
    await second.close();
  });

  test('gives out in the moment of keeping what is asked for before', async () => {
    const store = await openSqliteStore(file);
    const taking = store.takeOutgoing({ now: at, limit: 10, forMs: 1000 });
    const kept = store.commit({ ...saying('chat 1'), outgoing: [{ to: 'chat 1', body: 'hello' }] });
    expect(await kept).toEqual({ type: 'kept' });
    expect(await taking).toMatchObject([{ to: 'chat 1', body: 'hello', isUnsure: false }]);
    await store.close();
  });

  test('on a full disk refuses, loses nothing, and goes on when there is room', async () => {
    const database = await migrated();
    const store = createSqliteStore(database, file);
    const db = database.kysely;
    await store.commit(saying('before'));
    await sql`pragma max_page_count = 60`.execute(db);
    await expect(store.commit(saying('large', 400_000))).rejects.toMatchObject({
      code: 'full',
      message: expect.stringContaining('no room left') as string,
    });
    expect(await store.conversation('large')).toBeUndefined();
    expect(await store.conversation('before')).toMatchObject({ version: 1 });
    await sql`pragma max_page_count = 100000`.execute(db);
    expect(await store.commit(saying('large', 400_000))).toEqual({ type: 'kept' });
    expect(await store.inspect()).toEqual([]);
    await store.close();
  });

  test('of several changes at once keeps those that have room', async () => {
    const database = await migrated();
    const store = createSqliteStore(database, file);
    const db = database.kysely;
    await sql`pragma max_page_count = 60`.execute(db);
    const asked = [saying('small 1'), saying('large', 400_000), saying('small 2')];
    const settled = await Promise.allSettled(asked.map((change) => store.commit(change)));
    expect(settled.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    await store.close();
  });

  test('that may only be read says so and is still read', async () => {
    const database = await migrated();
    const store = createSqliteStore(database, file);
    const db = database.kysely;
    await store.commit(saying('before'));
    await sql`pragma query_only = on`.execute(db);
    await expect(store.commit(saying('after'))).rejects.toMatchObject({ code: 'read-only' });
    expect(await store.conversation('before')).toMatchObject({ version: 1 });
    await store.close();
  });

  test('that is no store is refused and left as it is', async () => {
    writeFileSync(file, 'a letter to a friend, and a long one at that. '.repeat(20));
    await expect(openSqliteStore(file)).rejects.toMatchObject({
      code: 'damaged',
      message: expect.stringContaining(file) as string,
    });
    expect(statSync(file).size).toBe(920);
  });

  test('in no folder is refused', async () => {
    const nowhere = path.join(folder, 'none', 'cases.sqlite');
    await expect(openSqliteStore(nowhere)).rejects.toMatchObject({ code: 'unreachable' });
  });

  test('whose end is cut off is found damaged', async () => {
    const store = await openSqliteStore(file);
    for (let index = 0; index < 40; index += 1) await store.commit(saying(String(index), 4000));
    await store.close();
    const copy = path.join(folder, 'copy.sqlite');
    copyFileSync(file, copy);
    truncateSync(copy, statSync(copy).size - 3 * 4096);
    const damage = openSqliteStore(copy).then(async (cut) => {
      const found = await cut.inspect();
      await cut.close();
      return found.length > 0 ? 'damaged' : 'sound';
    });
    expect(await damage.catch((error: unknown) => (error as { code: string }).code)).toBe(
      'damaged',
    );
  });
});

describe('a store of another version', () => {
  test('of an older one is brought up to date, and a copy is left', async () => {
    const { kysely: db } = await migrated();
    await db.insertInto('cases').values(caseRow).execute();
    for (const table of ['conversations', 'received', 'outgoing', 'timers'] as const) {
      await db.schema.dropTable(table).execute();
    }
    await sql`delete from kysely_migration where name = '0002-conversations'`.execute(db);
    await db.destroy();
    const store = await openSqliteStore(file);
    expect(await store.read('a')).toMatchObject({ version: 1 });
    expect(await store.commit(saying('chat 1'))).toEqual({ type: 'kept' });
    await store.close();
    expect(readdirSync(folder)).toContain('cases.sqlite.before-0002-conversations');
    const { kysely: copy } = openDatabase(`${file}.before-0002-conversations`);
    expect(await copy.selectFrom('cases').selectAll().execute()).toEqual([caseRow]);
    await copy.destroy();
  });

  test('of a newer one is refused, naming the step that is not known', async () => {
    const { kysely: db } = await migrated();
    await sql`insert into kysely_migration values ('9999-later', ${at})`.execute(db);
    await db.destroy();
    await expect(openSqliteStore(file)).rejects.toMatchObject({
      code: 'newer',
      message: expect.stringContaining('9999-later') as string,
    });
  });

  test('of this one is opened without a copy', async () => {
    await (await openSqliteStore(file)).close();
    await (await openSqliteStore(file)).close();
    expect(readdirSync(folder).filter((name) => name.includes('before'))).toEqual([]);
  });
});

const caseRow = { id: 'a', version: 1, snapshot: '{}', digest: '', changed_at: 0 };
