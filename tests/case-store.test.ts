/**
 * What every store of cases does: the same tests for each.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import {
  createMemoryStore,
  openPostgresStore,
  openSqliteStore,
  readCase,
  type CaseStore,
} from '@keyturn/cases';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { answered, at, changeOf, later, opened } from './support/kept-turns.ts';
import { noStart } from './support/no-start.ts';
import { startPostgres, type PostgresServer } from './support/postgres.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'case-store-'));
let server: PostgresServer | undefined;
let files = 0;

beforeAll(async () => {
  server = await startPostgres();
}, 60_000);

afterAll(async () => {
  await server?.stop();
  rmSync(folder, { recursive: true });
}, 60_000);

const kinds: readonly [name: string, open: () => Promise<CaseStore>][] = [
  ['memory', () => Promise.resolve(createMemoryStore())],
  [
    'a file',
    () => {
      files += 1;
      return openSqliteStore(path.join(folder, `${String(files)}.sqlite`));
    },
  ],
  ['a database server', async () => openPostgresStore((await server?.newDatabase()) ?? '')],
];

describe.each(kinds)('a store in %s', (_, open) => {
  let store: CaseStore;

  beforeEach(async () => {
    store = await open();
  });

  afterEach(() => store.close());

  const taking = { now: at, limit: 10, forMs: 60_000 };

  describe('cases', () => {
    test('are read as they were kept, with every event', async () => {
      const first = opened('a');
      const second = answered(first.case, 'scene', 'safe');
      expect(await store.commit(changeOf(first))).toEqual({ type: 'kept' });
      expect(await store.commit(changeOf(second))).toEqual({ type: 'kept' });
      const read = await readCase(store, noStart.chart, 'a');
      expect(read).toEqual({ case: second.case, isRebuilt: false });
      expect(await store.events('a')).toEqual([...first.events, ...second.events]);
      expect(await store.events('a', 1)).toEqual(second.events);
    });

    test('that do not exist are not made up', async () => {
      expect(await readCase(store, noStart.chart, 'none')).toBeUndefined();
      expect(await store.events('none')).toEqual([]);
      expect(await store.conversation('none')).toBeUndefined();
      expect(await store.personal('none')).toEqual({});
    });

    test('changed by somebody else meanwhile are not overwritten, and what changed is told', async () => {
      const first = opened('a');
      await store.commit(changeOf(first));
      const mine = answered(first.case, 'scene', 'safe');
      const theirs = answered(first.case, 'scene', 'unsafe');
      await store.commit(changeOf(theirs));
      const change = changeOf(mine, {
        received: 'update 1',
        conversation: { key: 'chat 1', expected: 0, body: 1 },
        outgoing: [{ to: 'chat 1', body: 'hello' }],
        timers: [{ conversation: 'chat 1', name: 'rest', dueAt: at }],
      });
      expect(await store.commit(change)).toEqual({
        type: 'conflict',
        over: 'case',
        version: theirs.case.events,
        since: theirs.events,
      });
      // Nothing of it was kept, so that it can be tried again.
      expect((await readCase(store, noStart.chart, 'a'))?.case).toEqual(theirs.case);
      expect(await store.conversation('chat 1')).toBeUndefined();
      expect(await store.takeOutgoing(taking)).toEqual([]);
      expect(await store.takeDue(taking)).toEqual([]);
      expect(await store.commit({ at, received: 'update 1' })).toEqual({ type: 'kept' });
    });

    test('are opened once under one id', async () => {
      await store.commit(changeOf(opened('a')));
      const again = await store.commit(changeOf(opened('a')));
      expect(again).toMatchObject({ type: 'conflict', over: 'case', version: 1 });
    });

    test('of which two answers come at once take one of them', async () => {
      const first = opened('a');
      await store.commit(changeOf(first));
      const both = ['safe', 'unsafe'].map((choice) =>
        store.commit(changeOf(answered(first.case, 'scene', choice))),
      );
      const types = (await Promise.all(both)).map(({ type }) => type);
      expect(types.toSorted()).toEqual(['conflict', 'kept']);
      expect(await store.inspect()).toEqual([]);
    });

    test('many at once are all kept', async () => {
      const ids = Array.from({ length: 60 }, (_unused, index) => `case ${String(index)}`);
      await Promise.all(ids.map((id) => store.commit(changeOf(opened(id)))));
      for (const id of ids) expect(await store.events(id)).toHaveLength(1);
      expect(await store.inspect()).toEqual([]);
    });
  });

  describe('what comes in', () => {
    test('twice is taken once', async () => {
      const first = opened('a');
      const change = changeOf(first, {
        received: 'update 7',
        outgoing: [{ to: 'chat 1', body: 'hello' }],
      });
      expect(await store.commit(change)).toEqual({ type: 'kept' });
      expect(await store.commit(change)).toEqual({ type: 'repeated' });
      expect(await store.takeOutgoing(taking)).toHaveLength(1);
      expect(await store.events('a')).toHaveLength(1);
    });

    test('twice at the same moment is taken once', async () => {
      const change = changeOf(opened('a'), { received: 'update 7' });
      const types = (await Promise.all([store.commit(change), store.commit(change)])).map(
        ({ type }) => type,
      );
      expect(types.toSorted()).toEqual(['kept', 'repeated']);
    });

    test('long ago is forgotten when told so', async () => {
      await store.commit({ at, received: 'old' });
      await store.commit({ at: later(10), received: 'new' });
      await store.forgetReceived(later(5));
      expect(await store.commit({ at: later(20), received: 'old' })).toEqual({ type: 'kept' });
      expect(await store.commit({ at: later(20), received: 'new' })).toEqual({ type: 'repeated' });
    });
  });

  describe('conversations', () => {
    test('are replaced whole, and only by who has seen the last version', async () => {
      const key = 'chat 1';
      const body = { language: 'pl', case: 'a', shown: [1, null, true, '…“12,4 V”'] };
      await store.commit({ at, conversation: { key, expected: 0, body: 'first' } });
      await store.commit({ at, conversation: { key, expected: 1, body } });
      expect(await store.conversation(key)).toEqual({ version: 2, body });
      const stale = { at, conversation: { key, expected: 1, body: 'late' } };
      expect(await store.commit(stale)).toEqual({
        type: 'conflict',
        over: 'conversation',
        version: 2,
      });
      expect(await store.conversation(key)).toEqual({ version: 2, body });
    });
  });

  describe('what goes out', () => {
    const send = (to: string, body: string) => store.commit({ at, outgoing: [{ to, body }] });
    const bodies = async (now = at) =>
      (await store.takeOutgoing({ ...taking, now })).map(({ body }) => body);

    test('goes out in its order to each address, one at a time', async () => {
      await send('chat 1', 'one');
      await send('chat 2', 'two');
      await send('chat 1', 'three');
      const first = await store.takeOutgoing(taking);
      expect(first.map(({ body }) => body)).toEqual(['one', 'two']);
      expect(await bodies()).toEqual([]);
      await store.settle(first[0]!.id, { type: 'over' });
      expect(await bodies()).toEqual(['three']);
    });

    test('is tried again at its time, and what follows it waits', async () => {
      await send('chat 1', 'one');
      await send('chat 1', 'two');
      const [one] = await store.takeOutgoing(taking);
      await store.settle(one!.id, { type: 'again', notBefore: later(3) });
      expect(await bodies(later(2))).toEqual([]);
      const [again] = await store.takeOutgoing({ ...taking, now: later(3) });
      expect(again).toMatchObject({ body: 'one', attempts: 1, isUnsure: false });
    });

    test('goes out though the clock is set back before it is taken', async () => {
      await send('chat 1', 'one');
      expect(await bodies(later(-60))).toEqual(['one']);
    });

    test('and was taken by one who never came back is given to another as unsure', async () => {
      await send('chat 1', 'one');
      await store.takeOutgoing(taking);
      expect(await bodies(later(0.5))).toEqual([]);
      const [again] = await store.takeOutgoing({ ...taking, now: later(1) });
      expect(again).toMatchObject({ body: 'one', attempts: 1, isUnsure: true });
    });

    test('is taken by the channel that it is for, where several share a store', async () => {
      await send('text_1', 'one');
      await send('text%1', 'two');
      const of = 'text%';
      const taken = await store.takeOutgoing({ ...taking, of });
      expect(taken.map(({ body }) => body)).toEqual(['two']);
      for (const conversation of ['text_1', 'text%1']) {
        await store.commit({ at, timers: [{ conversation, name: 'wait', dueAt: at }] });
      }
      expect(await store.takeDue({ ...taking, of })).toMatchObject([{ conversation: 'text%1' }]);
    });

    test('is taken no more at a time than asked for', async () => {
      for (const to of ['a', 'b', 'c']) await send(to, to);
      expect(await store.takeOutgoing({ ...taking, limit: 2 })).toHaveLength(2);
      expect(await bodies()).toEqual(['c']);
    });
  });

  describe('timers', () => {
    const set = (name: string, dueAt?: string) =>
      store.commit({
        at,
        timers: [{ conversation: 'chat 1', name, ...(dueAt === undefined ? {} : { dueAt }) }],
      });
    const names = async (now: string) =>
      (await store.takeDue({ ...taking, now })).map(({ name }) => name);

    test('come when they are due, the earliest first, and once', async () => {
      await set('rest', later(120));
      await set('charge', later(60));
      expect(await store.nextDue()).toBe(later(60));
      expect(await names(later(59))).toEqual([]);
      expect(await names(later(120))).toEqual(['charge', 'rest']);
      expect(await names(later(120))).toEqual([]);
    });

    test('are moved or cleared by a later change', async () => {
      await set('rest', later(10));
      await set('rest', later(20));
      expect(await names(later(10))).toEqual([]);
      await set('rest');
      expect(await names(later(30))).toEqual([]);
      expect(await store.nextDue()).toBeUndefined();
    });

    test('taken by one who never came back come again', async () => {
      await set('rest', at);
      expect(await names(at)).toEqual(['rest']);
      expect(await names(later(2))).toEqual(['rest']);
    });

    test('stay due while the clock is set back', async () => {
      await set('rest', later(10));
      expect(await names(later(-60))).toEqual([]);
      expect(await names(later(10))).toEqual(['rest']);
    });
  });

  describe('what is personal', () => {
    test('is kept beside the case and erased without a trace in it', async () => {
      const first = opened('a');
      const personal = { callback: '+00 555 0100', where: 'the invented road, marker 12' };
      await store.commit(changeOf(first, { personal }));
      const second = answered(first.case, 'scene', 'safe');
      await store.commit(changeOf(second, { personal: { callback: '+00 555 0199' } }));
      expect(await store.personal('a')).toEqual({ ...personal, callback: '+00 555 0199' });
      expect(JSON.stringify([await store.read('a'), await store.events('a')])).not.toContain('555');
      await store.erasePersonal('a');
      expect(await store.personal('a')).toEqual({});
      expect((await readCase(store, noStart.chart, 'a'))?.case).toEqual(second.case);
      expect(await store.inspect()).toEqual([]);
    });
  });

  describe('refuses', () => {
    const first = opened('a');
    test.each([
      ['no time', { at: 'noon' }, 'at of the change'],
      ['an empty name', { at, received: '' }, 'received of the change'],
      ['no events', changeOf({ ...first, events: [] }), 'case.events'],
      [
        'a case of other events',
        { at, case: { expected: 4, events: first.events, after: first.case } },
        'case.after',
      ],
      ['personal data of no case', { at, personal: { where: 'here' } }, 'personal'],
      [
        'a timer for no time',
        { at, timers: [{ conversation: 'a', name: 'b', dueAt: '' }] },
        'timers.dueAt',
      ],
    ])('a change with %s', async (_unused, change, said) => {
      await expect(store.commit(change)).rejects.toMatchObject({
        name: 'CasesError',
        code: 'not-a-change',
        message: expect.stringContaining(said) as string,
      });
    });

    test('anything once it is closed', async () => {
      await store.close();
      await expect(store.read('a')).rejects.toMatchObject({ code: 'closed' });
      await expect(store.commit({ at })).rejects.toMatchObject({ code: 'closed' });
    });
  });
});
