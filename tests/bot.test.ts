/**
 * The bot against a local server of the Bot API: what a messenger and its people may do to it.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import {
  CasesError,
  createMemoryStore,
  openPostgresStore,
  openSqliteStore,
  type CaseStore,
} from '@keyturn/cases';
import { shippedTexts } from '@keyturn/flows';
import { keyturn } from '@keyturn/telegram';
import { Bot, BotError } from 'grammy';
import type { Message } from 'grammy/types';
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import { openDatabase } from '../packages/cases/src/sqlite-database.ts';
import { createSqliteStore } from '../packages/cases/src/sqlite-store.ts';
import { me, token, type Fault, type Sent, type Writer } from './support/bot-api.ts';
import { driver, startBot, type RunningBot } from './support/bot-driver.ts';
import { noStart } from './support/no-start.ts';
import { startPostgres, type PostgresServer } from './support/postgres.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const writer: Writer = { person: 42, language: 'en' };
const group = -1001;

async function started(options: Parameters<typeof startBot>[0] = {}): Promise<RunningBot> {
  const running = await startBot(options);
  onTestFinished(running.stop);
  return running;
}

const textsOf = (sent: readonly Sent[]): readonly string[] => sent.map(({ text }) => text);
const counted = (sent: readonly Sent[], words: string): number =>
  sent.filter(({ text }) => text.includes(words)).length;

const codeOf = (error: unknown): unknown => {
  const cause: unknown = error instanceof BotError ? error.error : error;
  return cause instanceof CasesError ? cause.code : cause;
};

/** From the first word to the proof of the repair, as a driver at home taps and types it. */
async function wholeCase(running: RunningBot): Promise<readonly Sent[]> {
  const person = driver(running, writer);
  await person.say('my car does not start');
  for (const label of ['at home', 'yes, safe', 'petrol']) await person.tap(label);
  await person.say('it just clicks fast, and the battery is 2 years old');
  for (let turns = 0; turns < 60 && !isOver(person.all()); turns += 1) {
    const { text, keys } = person.keyboard();
    if (text.includes('is it safe to go on')) await person.tap(0);
    else if (text.includes('Which of these do you have')) await person.say('boost leads');
    else if (text.includes('does the engine turn') && keys.length > 6) await person.tap(0);
    else await person.tap('I don’t know');
  }
  return person.all();
}

const isOver = (sent: readonly Sent[]): boolean =>
  sent.some(({ keys }) => keys.some(({ text }) => text === 'Begin a new case'));

describe('a whole case', () => {
  test('goes from the first word to a summary that can be passed on', async () => {
    const running = await started();
    const sent = await wholeCase(running);
    expect(counted(sent, 'Most likely at fault')).toBeGreaterThan(0);
    const summary = sent.find(({ text }) => text.startsWith('Summary, to be passed on'));
    expect(summary?.text).toContain('What happens at start: fast clicking.');
    expect(summary?.text).toContain('2 years');
    expect(summary?.keys).toEqual([]);
    expect(sent.at(-1)?.keys.map(({ text }) => text)).toEqual(['Begin a new case']);
    expect(running.errors).toEqual([]);
    expect(running.api.refused).toEqual([]);
  });

  test('says every caution in a message of its own, before its confirmation', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    const sent = await person.tap('in a traffic lane');
    const caution = sent.findIndex(({ text }) => text.startsWith('DANGER\n'));
    expect(sent[caution]?.keys).toEqual([]);
    expect(sent[caution]?.entities).toEqual([{ type: 'bold', offset: 0, length: 6 }]);
    expect(sent[caution + 1]?.text).toContain('is it safe to go on');
    expect(sent[caution + 1]?.keys.map(({ text }) => text)).toEqual(['Yes, it is safe', 'I can’t']);
  });

  test('a “yes” that was written before the caution is no confirmation of it', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    await person.tap('in a traffic lane');
    const date = Math.floor(Date.now() / 1000) - 30;
    running.api.write(writer, 'yes', { date });
    await running.quiet();
    expect(textsOf(person.all()).slice(-3).join('\n')).toMatch(
      /written before this caution.*DANGER.*is it safe to go on/s,
    );
    expect((await person.say('yes'))[0]?.text).toContain('is everyone safe where you are?');
  });

  test('marks picks on the message that they were tapped on', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    for (const label of ['at home', 'yes, safe', 'petrol']) await person.tap(label);
    await person.say('silent');
    await person.say('4 years');
    const keyboard = person.keyboard();
    expect(keyboard.text).toContain('Which of these do you have at hand?');
    expect(await person.tap(0)).toEqual([]);
    expect(await person.tap(10)).toEqual([]);
    expect(keyboard.edits).toBe(2);
    expect(keyboard.keys.filter(({ text }) => text.startsWith('✓'))).toHaveLength(2);
    const [next] = await person.tap('That is all');
    expect(next?.text).toContain('voltmeter and hand tools');
    expect(running.api.refused).toEqual([]);
  });

  test('is begun, repeated, put aside and explained by commands', async () => {
    const running = await started();
    const person = driver(running, writer);
    expect((await person.say('/start'))[0]?.text).toContain('Where is the vehicle');
    await person.tap('at home');
    expect((await person.say('/again'))[0]?.text).toContain('is everyone safe');
    expect((await person.say('/help'))[0]?.text).toContain('Tap an answer');
    expect((await person.say('/stop'))[0]?.text).toContain('Nothing is lost');
    expect((await person.say('/start'))[0]?.text).toMatch(/We go on where we were.*everyone safe/s);
    expect((await person.say('/new'))[0]?.text).toContain('Where is the vehicle');
  });

  test.each([
    ['a voice', { voice: { file_id: 'a', file_unique_id: 'b', duration: 1 } }],
    ['a picture', { photo: [] }],
  ] as const)('answers %s with what it can read', async (_, more) => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    running.api.write(writer, '', more as unknown as Partial<Message>);
    await running.quiet();
    expect(person.all().at(-1)?.text).toMatch(/Only text can be read.*Where is the vehicle/s);
  });

  test('keeps hostile text as text', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    const [answer] = await person.say('<b>x</b> [a](tg://user?id=1) *_~`\uD800\u202E');
    expect(answer?.text).toContain('<b>x</b> [a](tg://user?id=1) *_~`');
    expect(answer?.text).not.toContain('\u202E');
    expect(answer?.entities).toEqual([]);
    expect(running.api.refused).toEqual([]);
  });
});

describe('updates', () => {
  test('that come again are taken once, and answered once', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    const update = running.api.tap(writer, person.keyboard(), person.keyboard().keys[3]!);
    running.api.deliver(update);
    await running.quiet();
    running.api.deliver(update);
    await running.quiet();
    expect(counted(person.all(), 'is everyone safe')).toBe(1);
    expect(running.api.answered).toHaveLength(1);
    expect(running.api.refused).toEqual([]);
  });

  test('that come in the wrong order are put right', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    running.api.isReversed = true;
    running.api.deferred(() => {
      running.api.write(writer, 'at home');
      running.api.write(writer, 'yes');
      running.api.write(writer, 'diesel');
    });
    await running.quiet();
    expect(counted(person.all(), 'What drives it: diesel.')).toBe(1);
  });

  test('that cannot be kept are not confirmed, and come again', async () => {
    let isFull = true;
    const kept = createMemoryStore();
    const store: CaseStore = {
      ...kept,
      commit: (change) =>
        isFull ? Promise.reject(new CasesError('full', 'no room')) : kept.commit(change),
    };
    const running = await started({ store });
    const person = driver(running, writer);
    running.api.write(writer, '/start');
    await sleep(300);
    expect(person.all()).toEqual([]);
    expect(running.api.unconfirmed).toBe(1);
    isFull = false;
    await running.quiet();
    expect(counted(person.all(), 'Where is the vehicle')).toBe(1);
  });

  test('that come while the disk is full are kept and answered once there is room', async () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'bot-full-'));
    const file = path.join(folder, 'cases.sqlite');
    await (await openSqliteStore(file)).close();
    const database = openDatabase(file);
    const { kysely: db } = database;
    const running = await startBot({ store: createSqliteStore(database, file) });
    onTestFinished(async () => {
      await running.stop();
      rmSync(folder, { recursive: true });
    });
    const person = driver(running, writer);
    await person.say('/start');
    await person.tap('at home');
    // No page more than there are.
    const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(db);
    const pages = sql.lit(rows[0]!.page_count);
    await sql`pragma max_page_count = ${pages}`.execute(db);
    const newcomers = Array.from({ length: 40 }, (_, index) =>
      driver(running, { person: 500 + index, language: 'en' }),
    );
    for (const { writer: one } of newcomers) running.api.write(one, '/start');
    // Longer than an update that fails for a reason of its own would be tried.
    await vi.waitUntil(() => running.errors.length > 11, { timeout: 50_000 });
    expect(running.api.unconfirmed).toBeGreaterThan(0);
    expect(new Set(running.errors.map((error) => codeOf(error)))).toEqual(new Set(['full']));
    const inHand = person.all().length;
    await sql`pragma max_page_count = 1000000`.execute(db);
    await running.quiet();
    for (const newcomer of newcomers) {
      expect(counted(newcomer.all(), 'Where is the vehicle')).toBe(1);
    }
    expect(person.all()).toHaveLength(inHand);
    expect(textsOf(await person.tap('yes, safe'))[0]).toContain('fuel');
    expect(await running.store.inspect()).toEqual([]);
  });

  test(
    'of one chat wait for each other, those of others do not',
    { timeout: 240_000 },
    async () => {
      const running = await started();
      const persons = Array.from({ length: 1000 }, (_, index) =>
        driver(running, { person: 1 + index, language: 'en' }),
      );
      const words = ['/start', 'at home', 'yes', 'petrol', 'silent'];
      running.api.deferred(() => {
        for (const word of words) {
          for (const { writer: one } of persons) running.api.write(one, word);
        }
      });
      await running.quiet();
      for (const person of persons) {
        const sent = person.all();
        expect(sent).toHaveLength(words.length);
        expect(sent[4]?.text).toContain('What happens at start: nothing at all');
      }
      expect(running.errors).toEqual([]);
      expect(running.api.refused).toEqual([]);
    },
  );
});

describe('sending', () => {
  const faulty = async (faults: readonly Fault[]) => {
    const running = await started();
    const person = driver(running, writer);
    const left = [...faults];
    running.api.faultOf = (method) => (method === 'sendMessage' ? left.shift() : undefined);
    const begin = Date.now();
    await person.say('/start');
    // What is to be tried again later waits in the store meanwhile.
    while (person.all().length === 0) await sleep(10);
    return { person, running, ms: Date.now() - begin };
  };
  const error = (error_code: number, description: string, parameters = {}): Fault => ({
    type: 'error',
    error: { error_code, description, parameters },
  });

  test('waits for as long as it is told to', async () => {
    const told = error(429, 'Too Many Requests: retry after 2', { retry_after: 2 });
    const { person, ms } = await faulty([told]);
    expect(ms).toBeGreaterThanOrEqual(2000);
    expect(person.all()).toHaveLength(1);
  });

  test('is tried again after a failure of the server', async () => {
    const { person, running } = await faulty([
      error(502, 'Bad Gateway'),
      error(500, 'Internal Server Error'),
    ]);
    expect(person.all()).toHaveLength(1);
    expect(running.errors).toHaveLength(2);
  });

  test('is tried again when nothing is answered', async () => {
    const { person } = await faulty([{ type: 'hang' }]);
    expect(person.all()).toHaveLength(1);
  });

  test('is no less sure where the clock is set on, or the machine was asleep, meanwhile', async () => {
    let asleep = 0;
    const running = await started({ now: () => new Date(Date.now() + asleep) });
    const person = driver(running, writer);
    const left: Fault[] = [{ type: 'hang' }];
    running.api.faultOf = (method) => (method === 'sendMessage' ? left.shift() : undefined);
    running.api.write(writer, '/start');
    await vi.waitUntil(() => left.length === 0);
    asleep = 60_000;
    await vi.waitUntil(() => person.all().length > 0, { timeout: 20_000 });
    await running.quiet();
    expect(textsOf(person.all())).toEqual([expect.stringMatching(/^Let us find out/)]);
    expect((await person.tap('at home')).at(-1)?.text).toContain('everyone safe');
  });

  test('keeps its order however often it is tried', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    const left = [error(500, 'Internal Server Error'), undefined, error(503, 'Unavailable')];
    running.api.faultOf = (method) => (method === 'sendMessage' ? left.shift() : undefined);
    const sent = await person.tap('in a traffic lane');
    expect(textsOf(sent)).toEqual([
      expect.stringContaining('Where the vehicle is: in a traffic lane.'),
      expect.stringContaining('DANGER'),
      expect.stringContaining('is it safe to go on'),
    ]);
  });

  test('ends quietly where the person has blocked the bot', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    running.api.blocked.add(42);
    await person.tap('in a traffic lane');
    expect(running.errors).toEqual([]);
    expect(await running.store.nextDue()).toBeUndefined();
    running.api.blocked.delete(42);
    expect((await person.say('/again')).at(-1)?.text).toContain('is it safe to go on');
  });

  test('sends a message anew where the one to be edited is not there any more', async () => {
    const running = await started();
    const person = driver(running, writer);
    await person.say('/start');
    for (const label of ['at home', 'yes, safe', 'petrol']) await person.tap(label);
    await person.say('silent');
    await person.say('4 years');
    const keyboard = person.keyboard();
    running.api.forget(keyboard);
    const [anew] = await person.tap(0, keyboard);
    expect(anew?.keys.some(({ text }) => text.startsWith('✓'))).toBe(true);
  });
});

describe('a group', () => {
  const inGroup: Writer = { person: 42, chat: group, language: 'en' };
  const mention = (text: string): [string, Partial<Message>] => [
    `@Invented_bot ${text}`,
    { entities: [{ type: 'mention', offset: 0, length: 13 }] },
  ];

  test('is answered only where the bot is named or answered', async () => {
    const running = await started();
    const person = driver(running, inGroup);
    await person.say('my car does not start');
    await person.say('/start');
    expect(person.all()).toEqual([]);
    running.api.write(inGroup, ...mention('my car does not start'));
    await running.quiet();
    expect(person.all().at(-1)?.text).toContain('Where is the vehicle');
    const reply = { reply_to_message: { from: me } } as unknown as Partial<Message>;
    running.api.write({ ...inGroup, person: 43 }, 'at home', reply);
    await running.quiet();
    expect(person.all().at(-1)?.text).toContain('Where the vehicle is: at home.');
    expect((await person.say('/again@invented_bot')).at(-1)?.text).toContain('everyone safe');
    expect((await person.tap('yes, safe')).at(-1)?.text).toContain('What does the vehicle run on?');
  });

  test('has one case in each thread', async () => {
    const running = await started();
    const one = driver(running, { ...inGroup, thread: 11 });
    const other = driver(running, { ...inGroup, thread: 12 });
    for (const { writer: at } of [one, other]) running.api.write(at, ...mention('hello'));
    await running.quiet();
    await one.tap('at home');
    expect(one.all().at(-1)?.text).toContain('everyone safe');
    expect(other.all()).toHaveLength(1);
    expect(running.api.refused).toEqual([]);
  });
});

describe('abuse', () => {
  test('one who sends too much is told once, and the others are served', async () => {
    let clock = Date.now();
    const running = await started({
      rateLimit: { burst: 5, perSecond: 2 },
      now: () => new Date(clock),
    });
    const person = driver(running, writer);
    running.api.deferred(() => {
      for (let count = 0; count < 20; count += 1) running.api.write(writer, 'hello');
    });
    await running.quiet();
    expect(counted(person.all(), 'more than can be taken in at once')).toBe(1);
    expect(person.all()).toHaveLength(6);
    const other = driver(running, { person: 43, language: 'en' });
    expect(await other.say('/start')).toHaveLength(1);
    clock += 1000;
    expect((await person.say('at home')).at(-1)?.text).toContain('everyone safe');
  });
});

describe('in a bot that does other things as well', () => {
  test('only what belongs to a case is taken', async () => {
    const running = await started({ takes: 'begun' });
    running.bot.on('message', (ctx) => ctx.reply(`other: ${ctx.message.text ?? ''}`));
    const person = driver(running, writer);
    expect(textsOf(await person.say('hello'))).toEqual(['other: hello']);
    expect(textsOf(await person.say('/start'))).toEqual(['other: /start']);
    expect(textsOf(await person.say('/new'))[0]).toContain('Where is the vehicle');
    expect(textsOf(await person.say('at home'))[0]).toContain('is everyone safe');
    expect(textsOf(await person.say('/weather'))).toEqual(['other: /weather']);
  });
});

describe('the store', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'bot-'));
  let server: PostgresServer | undefined;
  beforeAll(async () => {
    server = await startPostgres();
  });
  afterAll(async () => {
    await server?.stop();
    rmSync(folder, { recursive: true });
  });
  const stores: readonly [string, () => Promise<CaseStore>][] = [
    ['a file', () => openSqliteStore(path.join(folder, 'cases.sqlite'))],
    ['a database server', async () => openPostgresStore(await server!.newDatabase())],
  ];

  test.each(stores)('may be %s', async (_, open) => {
    const running = await started({ store: await open() });
    const sent = await wholeCase(running);
    expect(isOver(sent)).toBe(true);
    expect(running.errors).toEqual([]);
    expect(await running.store.inspect()).toEqual([]);
  });

  test('that several machines share has each message sent by one of them', async () => {
    const url = await server!.newDatabase();
    const running = await started({ store: await openPostgresStore(url) });
    const store = await openPostgresStore(url);
    const bot = new Bot(token, { client: { apiRoot: running.api.root } });
    const texts = (locale: string) => shippedTexts('no-start', locale);
    const second = keyturn({ bot, store, chart: noStart.chart, texts });
    await second.start();
    const persons = Array.from({ length: 40 }, (_unused, index) =>
      driver(running, { person: 100 + index, language: 'en' }),
    );
    for (const word of ['/start', 'at home', 'yes', 'petrol']) {
      running.api.deferred(() => {
        for (const { writer: one } of persons) running.api.write(one, word);
      });
      await running.quiet();
    }
    await second.stop();
    await store.close();
    for (const person of persons) expect(person.all()).toHaveLength(4);
  });
});
