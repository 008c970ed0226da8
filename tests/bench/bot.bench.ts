/**
 * What an update costs the bot, over a store in a file, against the local server of the Bot API.
 *
 * Baseline, in the same run and against the same server: a bare handler of the library that commits
 * one row of the size of a kept turn and replies, fetched and confirmed in the same way. Both are
 * driven by people who write again as soon as they are answered. The response times are those of a
 * thousand people who each take their time to think; their number, their time and the number of
 * updates over which memory is watched come from the environment: BENCH_CHATS, BENCH_THINK_SECONDS,
 * BENCH_UPDATES.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { openSqliteStore } from '@keyturn/cases';
import { pollUpdates } from '@keyturn/telegram';
import { DatabaseSync } from '@photostructure/sqlite';
import { Bot } from 'grammy';
import { BotApi, token, type Sent, type Writer } from '../support/bot-api.ts';
import { startBot } from '../support/bot-driver.ts';

const given = (name: string, otherwise: number): number => Number(process.env[name] ?? otherwise);
const chats = given('BENCH_CHATS', 1000);
const thinkSeconds = given('BENCH_THINK_SECONDS', 20);
const updates = given('BENCH_UPDATES', 5000);
const [rounds, sideBySide, turnsEach] = [5, 50, 8];

const folder = mkdtempSync(path.join(tmpdir(), 'bot-bench-'));
const print = (line: string): boolean => process.stdout.write(`${line}\n`);
const sorted = (values: readonly number[]): readonly number[] => values.toSorted((a, b) => a - b);
const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? Number.NaN;
const median = (values: readonly number[]): number => quantile(values, 0.5);

/** What is written and tapped, over and over: a text, or `@` and the number of a key. */
type Acts = readonly string[];

/**
 * A case up to the first checks that are chosen by their worth, then a new one. All answer alike, so
 * that what was reckoned for one is ready for the next, as it is of the commonest answers alone.
 */
const whole: Acts = ['/new', '@3', '@0', '@0', '@2', '6 years', 'none', 'why'];

/** The beginning of a case, where the next question stands in the flow. */
const asWritten: Acts = ['/new', '@3', '@0', '@0'];

let lastPerson = 0;

/** Somebody who goes through the acts; `ms` of each answer are noted. */
async function person(
  api: BotApi,
  turns: number,
  given: {
    readonly acts: Acts;
    readonly waiting: Map<number, (sent: Sent) => void>;
    readonly think?: () => number;
  },
): Promise<number[]> {
  const { acts } = given;
  lastPerson += 1;
  const writer: Writer = { person: lastPerson, language: 'en' };
  const times: number[] = [];
  let keyboard: Sent | undefined;
  for (let turn = 0; turn < turns; turn += 1) {
    if (given.think !== undefined) await sleep(given.think());
    const act = acts[turn % acts.length] ?? '';
    const begin = performance.now();
    const sent = await new Promise<Sent>((resolve) => {
      given.waiting.set(writer.person, resolve);
      const key = act.startsWith('@') ? keyboard?.keys[Number(act.slice(1))] : undefined;
      if (key !== undefined && keyboard !== undefined) api.tap(writer, keyboard, key);
      else api.write(writer, act);
    });
    times.push(performance.now() - begin);
    if (sent.keys.length === 0) continue;
    if (keyboard !== undefined && keyboard !== sent) api.forget(keyboard);
    keyboard = sent;
  }
  if (keyboard !== undefined) api.forget(keyboard);
  return times;
}

function listening(api: BotApi): Map<number, (sent: Sent) => void> {
  const waiting = new Map<number, (sent: Sent) => void>();
  api.onSent = (sent) => {
    // The server's own memory is not what is measured.
    api.sent.length = 0;
    const resolve = waiting.get(sent.chat);
    // A caution is followed by its question, which is what is waited for.
    if (sent.keys.length === 0) api.forget(sent);
    if (sent.keys.length === 0 && !sent.text.startsWith('bare')) return;
    waiting.delete(sent.chat);
    resolve?.(sent);
  };
  return waiting;
}

/** Updates a second, of so many people at once who write as soon as they are answered. */
async function rate(
  api: BotApi,
  waiting: Map<number, (sent: Sent) => void>,
  acts: Acts = whole,
): Promise<number> {
  const begin = performance.now();
  const all = await Promise.all(
    Array.from({ length: sideBySide }, () => person(api, turnsEach, { acts, waiting })),
  );
  return all.flat().length / ((performance.now() - begin) / 1000);
}

/** The bare handler. */
async function startBare() {
  const api = await new BotApi().start();
  const database = new DatabaseSync(path.join(folder, 'bare.sqlite'));
  database.exec(
    'pragma journal_mode = wal; pragma synchronous = full; create table rows (body text)',
  );
  const insert = database.prepare('insert into rows values (?)');
  const row = 'x'.repeat(900);
  const bot = new Bot(token, { client: { apiRoot: api.root } });
  bot.on('message', async (ctx) => {
    insert.run(row);
    await ctx.reply('bare');
  });
  bot.botInfo = await bot.api.getMe();
  const over = new AbortController();
  const onError = (error: unknown): void => {
    throw error as Error;
  };
  const polling = pollUpdates(bot, { signal: over.signal, onError });
  return {
    api,
    stop: async () => {
      over.abort();
      await polling;
      database.close();
      await api.stop();
    },
  };
}

const bare = await startBare();
const running = await startBot({
  store: await openSqliteStore(path.join(folder, 'cases.sqlite')),
});
const [bareWaiting, waiting] = [listening(bare.api), listening(running.api)];

const rates = { bare: [] as number[], asWritten: [] as number[], whole: [] as number[] };
// Interleaved, so that a slow moment of the machine falls on both; the first round warms up.
for (let round = -1; round < rounds; round += 1) {
  const ofBare = await rate(bare.api, bareWaiting);
  const ofWritten = await rate(running.api, waiting, asWritten);
  const ofWhole = await rate(running.api, waiting);
  if (round < 0) continue;
  rates.bare.push(ofBare);
  rates.asWritten.push(ofWritten);
  rates.whole.push(ofWhole);
}
const ratio = (values: readonly number[]): string =>
  median(values.map((value, index) => value / (rates.bare[index] ?? 1))).toFixed(2);
const told = (values: readonly number[]): string =>
  `${median(values).toFixed(0)} updates/s, ${ratio(values)} × that`;
print(
  `a bare handler that commits one row and replies: ${median(rates.bare).toFixed(0)} updates/s`,
);
print(`the bot, where the next question stands in the flow: ${told(rates.asWritten)}`);
print(`the bot, where it is chosen by its worth as well: ${told(rates.whole)} (at least 0.5 ×)`);

const begun = performance.now();
const responses = (
  await Promise.all(
    Array.from({ length: chats }, (_, index) =>
      person(running.api, whole.length, {
        acts: whole,
        waiting,
        // Spread evenly, the same in every run.
        think: () => (((index * 7919 + lastPerson * 31) % 1000) / 500) * thinkSeconds * 1000,
      }),
    ),
  )
).flat();
const perSecond = responses.length / ((performance.now() - begun) / 1000);
print(
  `${String(chats)} people at once who think for ${String(thinkSeconds)} s each ` +
    `(${perSecond.toFixed(0)} updates/s): p50 ${quantile(responses, 0.5).toFixed(0)} ms, ` +
    `p99 ${quantile(responses, 0.99).toFixed(0)} ms (at most 250 ms)`,
);

const heap = (): number => {
  (globalThis as { gc?: () => void }).gc?.();
  return process.memoryUsage().heapUsed / 1e6;
};
const batches = 10;
const memory: number[] = [];
for (let batch = 0; batch < batches; batch += 1) {
  let left = Math.ceil(updates / batches / whole.length);
  // New people all the time, each with a case of their own.
  const lane = async (): Promise<void> => {
    while (left > 0) {
      left -= 1;
      await person(running.api, whole.length, { acts: whole, waiting });
    }
  };
  await Promise.all(Array.from({ length: sideBySide }, lane));
  memory.push(heap());
}
print(
  `heap after each tenth of ${String(updates)} updates: ` +
    `${memory.map((value) => value.toFixed(0)).join(', ')} MB` +
    (typeof (globalThis as { gc?: unknown }).gc === 'function'
      ? ''
      : ' (not collected first: run node with --expose-gc for that)'),
);
await running.stop();
await bare.stop();
rmSync(folder, { recursive: true });
