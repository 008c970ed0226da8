/**
 * What an update costs the bot, over a store in a file, against the local server of the Bot API.
 *
 * Baseline, in the same run and against the same server: a bare handler of the library that commits
 * one row of the size of a kept turn and replies, fetched and confirmed in the same way. Both are
 * driven by people who write again as soon as they are answered, and measured in turn: bare, bot,
 * bot, bare, so that neither gains by its place.
 *
 * Whoever answers as the one before finds reckoned already which check is worth most, and what was
 * typed understood. So a second kind of people has the vehicles of the case cards, one after
 * another, in all languages, and figures that nobody else reads; they go on to their verdict. What
 * they do next is worked out from their case in the store, which counts against the bot.
 *
 * The response times are those of many people at once, each of whom takes their time to think, and
 * begins a new case once one is over; those of the first minutes count, as many as are given. The
 * number of people, their time, the minutes, and the number of updates over which memory is watched
 * come from the environment: BENCH_CHATS, BENCH_THINK_SECONDS, BENCH_MINUTES, BENCH_UPDATES.
 *
 * It ends, and says what is missing, where somebody has had no answer for a minute. A process that
 * is stopped for longer than a message may take to send comes to that: its messages go out twice,
 * and whoever is ahead of the questions is not answered as expected.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { openSqliteStore, readCase } from '@keyturn/cases';
import { positionOf } from '@keyturn/core';
import { shippedTexts } from '@keyturn/flows';
import { createSpeaker, localeTags } from '@keyturn/language';
import { pollUpdates } from '@keyturn/telegram';
import { DatabaseSync } from '@photostructure/sqlite';
import { Bot } from 'grammy';
import { BotApi, token, type Sent, type Writer } from '../support/bot-api.ts';
import { caseOf, startBot } from '../support/bot-driver.ts';
import { nextActs, type Act, type Figure } from '../support/card-acts.ts';
import { cards, noStart } from '../support/no-start.ts';

const given = (name: string, otherwise: number): number => Number(process.env[name] ?? otherwise);
const chats = given('BENCH_CHATS', 1000);
const thinkSeconds = given('BENCH_THINK_SECONDS', 10);
const minutes = given('BENCH_MINUTES', 5);
const updates = given('BENCH_UPDATES', 100_000);
const [rounds, ownRounds, sideBySide, turnsEach] = [8, 4, 50, 8];

/** So many have vehicles of their own at once: two for each language. */
const ownAtOnce = 12;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

const folder = mkdtempSync(path.join(tmpdir(), 'bot-bench-'));
const print = (line: string): boolean => process.stdout.write(`${line}\n`);
const sorted = (values: readonly number[]): readonly number[] => values.toSorted((a, b) => a - b);
const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? Number.NaN;
const median = (values: readonly number[]): number => quantile(values, 0.5);

/** What is written and tapped, over and over. */
type Acts = readonly Act[];

const say = (text: string): Act => ({ type: 'say', text });
const tap = (key: number): Act => ({ type: 'tap', key });

/** A case up to the first checks that are chosen by their worth, then a new one. All answer alike. */
const whole: Acts = [
  ...[say('/new'), tap(3), tap(0), tap(0), tap(2)],
  ...[say('6 years'), say('none'), say('why')],
];

/** The beginning of a case, where the next question stands in the flow. */
const asWritten: Acts = [say('/new'), tap(3), tap(0), tap(0)];

/** A server, and who waits for the next message with keys to each chat. */
interface Line {
  readonly api: BotApi;
  readonly waiting: Map<number, Waiting>;
  /** What its bot reported. */
  readonly errors: readonly unknown[];
}

/** Somebody who waits for an answer. */
interface Waiting {
  readonly act: Act;
  readonly answered: (sent: Sent) => void;
  /** What came meanwhile and was no answer. */
  other?: string;
  /** For how many looks of the watch. */
  looks: number;
}

let lastPerson = 0;

/** How long each answer took, and whether the person left before the end. */
interface Ended {
  readonly times: readonly number[];
  readonly isLeft: boolean;
}

/** Somebody who writes and taps; one whose time to think never ends has left. */
class Person implements Ended {
  readonly writer: Writer;
  readonly times: number[] = [];
  isLeft = false;
  readonly #line: Line;
  readonly #think: () => number;
  #keyboard: Sent | undefined;

  constructor(line: Line, language: string, think: () => number = () => 0) {
    lastPerson += 1;
    this.writer = { person: lastPerson, language };
    this.#line = line;
    this.#think = think;
  }

  /** Does one thing, and waits for the answer. */
  async act(act: Act): Promise<void> {
    const { api, waiting } = this.#line;
    const pause = this.#think();
    this.isLeft ||= pause === Number.POSITIVE_INFINITY;
    if (this.isLeft) return;
    if (pause > 0) await sleep(pause);
    const begin = performance.now();
    const sent = await new Promise<Sent>((answered) => {
      waiting.set(this.writer.person, { act, answered, looks: 0 });
      const on = this.#keyboard;
      const key = act.type === 'tap' ? on && keyOf(on, act.key) : undefined;
      if (on !== undefined && key !== undefined) api.tap(this.writer, on, key);
      else api.write(this.writer, act.type === 'say' ? act.text : String(act.key));
    });
    this.times.push(performance.now() - begin);
    if (sent.keys.length === 0 || sent === this.#keyboard) return;
    this.leave();
    this.#keyboard = sent;
  }

  /** Nothing of what was sent is wanted any more. */
  leave(): void {
    if (this.#keyboard !== undefined) this.#line.api.forget(this.#keyboard);
  }
}

function keyOf({ keys }: Sent, wanted: number | string): Sent['keys'][number] | undefined {
  return typeof wanted === 'number'
    ? keys[wanted]
    : keys.find(({ text }) => text.replace('✓ ', '').startsWith(wanted));
}

/** So many acts of those given, again and again from the first. */
async function alike(person: Person, acts: Acts, turns: number): Promise<Ended> {
  for (let turn = 0; turn < turns && !person.isLeft; turn += 1) {
    await person.act(acts[turn % acts.length] as Act);
  }
  person.leave();
  return person;
}

/** More turns than any card takes. */
const mostTurns = 100;

const speakers = localeTags.map((locale) =>
  createSpeaker({
    locale,
    flowTexts: shippedTexts('no-start', locale),
    checks: noStart.chart.flow.checks,
    role: 'driver',
  }),
);

/** Somebody with the vehicle of a card, up to the verdict; `nth` of all, like nobody before. */
async function ownVehicle(nth: number, think?: () => number): Promise<Ended> {
  const card = cards[(nth * 31) % cards.length]!;
  const spoken = speakers[nth % speakers.length]!;
  const person = new Person(line, spoken.locale, think);
  const asked: string[] = [];
  await person.act(say('/new'));
  for (let turn = 0; turn < mostTurns && !person.isLeft; turn += 1) {
    const id = await caseOf(running.store, person.writer);
    const kase = (await readCase(running.store, noStart.chart, id ?? ''))?.case;
    if (kase === undefined || kase.state.verdict !== null) break;
    const acts = nextActs(kase, { card, spoken, asked, read: (figure) => readBy(nth, figure) });
    for (const act of acts) await person.act(act);
    const position = positionOf(kase);
    if (position.awaiting === 'answer') asked.push(position.check);
  }
  person.leave();
  return person;
}

/** A figure within half a percent of that of the card, to a hundredth, as this person reads it. */
function readBy(nth: number, figure: Figure): Figure {
  const share = 1 + (((nth * 7919) % 1000) - 500) / 1e5;
  return { ...figure, value: Math.round(figure.value * share * 100) / 100, resolution: 0.01 };
}

function listening(api: BotApi): Map<number, Waiting> {
  const waiting = new Map<number, Waiting>();
  api.onSent = (sent) => {
    // The server's own memory is not what is measured.
    api.sent.length = 0;
    api.answered.length = 0;
    const one = waiting.get(sent.chat);
    // A caution is followed by its question, which is what is waited for.
    if (sent.keys.length === 0) api.forget(sent);
    if (sent.keys.length === 0 && !sent.text.startsWith('bare')) {
      if (one !== undefined) one.other = sent.text;
      return;
    }
    waiting.delete(sent.chat);
    one?.answered(sent);
  };
  return waiting;
}

/** Updates a second, of so many people at once who write as soon as they are answered. */
async function rate(people: number, one: () => Promise<Ended>): Promise<number> {
  const begin = performance.now();
  const all = await Promise.all(Array.from({ length: people }, one));
  return all.flatMap(({ times }) => times).length / ((performance.now() - begin) / 1000);
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
  learnsAhead: true,
});
const bareLine: Line = { api: bare.api, waiting: listening(bare.api), errors: [] };
const line: Line = { api: running.api, waiting: listening(running.api), errors: running.errors };

/** So often it is looked after those who wait, milliseconds; so many looks are one too many. */
const [lookMs, mostLooks] = [5_000, 12];

let lookedAt = performance.now();
const watch = setInterval(() => {
  const late = performance.now() - lookedAt - lookMs;
  lookedAt = performance.now();
  // What the bot was sending then is sent again, so that people answer what they have answered.
  if (late > lookMs) print(`everything stood still for ${(late / 1000).toFixed(0)} s`);
  for (const one of [bareLine, line]) {
    for (const person of one.waiting.values()) person.looks += 1;
    const missing = [...one.waiting].filter(([, { looks }]) => looks > mostLooks);
    if (missing.length > 0) throw new Error(missed(one, missing));
  }
}, lookMs);

/** What is missing, and what may tell why. */
function missed({ api, errors }: Line, missing: readonly (readonly [number, Waiting])[]): string {
  const [person, { act, other }] = missing[0]!;
  const what = act.type === 'say' ? `said “${act.text}”` : `tapped key “${String(act.key)}”`;
  return [
    `${String(missing.length)} people have had no answer for a minute`,
    `person ${String(person)} ${what} and was sent ${other === undefined ? 'nothing' : `“${other}”`}`,
    `${String(api.unconfirmed)} updates have not been confirmed`,
    `${String(api.refused.length)} calls were refused${lastOf(api.refused, ({ description }) => description)}`,
    `the bot reported ${String(errors.length)} errors${lastOf(errors, String)}`,
  ].join('; ');
}

function lastOf<One>(all: readonly One[], said: (one: One) => string): string {
  const last = all.at(-1);
  return last === undefined ? '' : `, the last: ${said(last)}`;
}

const bareRate = (): Promise<number> =>
  rate(sideBySide, () => alike(new Person(bareLine, 'en'), [say('x')], turnsEach));
const botRate = (acts: Acts): Promise<number> =>
  rate(sideBySide, () => alike(new Person(line, 'en'), acts, turnsEach));

/** How fast the bot is next to the bare handler, each measured before and after the other. */
async function compare(acts: Acts): Promise<string> {
  const all = { bare: [] as number[], bot: [] as number[], ratio: [] as number[] };
  // The first round warms up.
  for (let round = -1; round < rounds; round += 1) {
    const [bareBefore, bot, botAgain, bareAfter] = [
      await bareRate(),
      await botRate(acts),
      await botRate(acts),
      await bareRate(),
    ];
    if (round < 0) continue;
    all.bare.push(bareBefore, bareAfter);
    all.bot.push(bot, botAgain);
    all.ratio.push(bot / bareBefore, botAgain / bareAfter);
  }
  const { bare, bot, ratio } = all;
  return (
    `${median(bot).toFixed(0)} updates/s, ${median(ratio).toFixed(2)} × the ` +
    `${median(bare).toFixed(0)} of a bare handler that commits one row and replies`
  );
}

print(`the bot, where the next question stands in the flow: ${await compare(asWritten)}`);
print(`the bot, where it is chosen by its worth as well: ${await compare(whole)} (at least 0.5 ×)`);
let lastOwn = 0;
const ownRates: number[] = [];
for (let round = 0; round < ownRounds; round += 1) {
  ownRates.push(await rate(ownAtOnce, () => ownVehicle((lastOwn += 1))));
}
print(
  `the bot, with a vehicle and figures of everybody's own, up to the verdict: ` +
    `${median(ownRates).toFixed(0)} updates/s`,
);

/** How far into their time to think each person is at each act; the same in every run. */
function thinking(index: number): () => number {
  let act = 0;
  return () => {
    act += 1;
    return (((index * 7919 + act * 31) % 1000) / 500) * thinkSeconds * 1000;
  };
}

/** The response times of so many people at once, each of whom does one thing after another. */
async function together(who: string, one: (think: () => number) => Promise<Ended>): Promise<void> {
  const [begun, ends] = [performance.now(), performance.now() + minutes * 60_000];
  const responses: number[] = [];
  let cases = 0;
  const oneAfterAnother = async (index: number): Promise<void> => {
    const think = thinking(index);
    const pause = (): number => {
      const ms = think();
      return performance.now() + ms < ends ? ms : Number.POSITIVE_INFINITY;
    };
    for (let ended: Ended | undefined; ended?.isLeft !== true;) {
      ended = await one(pause);
      responses.push(...ended.times);
      cases += ended.isLeft ? 0 : 1;
    }
  };
  await Promise.all(Array.from({ length: chats }, (_, index) => oneAfterAnother(index)));
  const perSecond = responses.length / ((performance.now() - begun) / 1000);
  print(
    `${String(chats)} people at once ${who} who think for ${String(thinkSeconds)} s each, ` +
      `in ${String(minutes)} minutes (${perSecond.toFixed(0)} updates/s, ${String(cases)} cases to ` +
      `their end): p50 ${quantile(responses, 0.5).toFixed(0)} ms, ` +
      `p99 ${quantile(responses, 0.99).toFixed(0)} ms (at most 250 ms)`,
  );
}

await together('who answer alike', (think) =>
  alike(new Person(line, 'en', think), whole, whole.length),
);
await together('with vehicles of their own', (think) => ownVehicle((lastOwn += 1), think));

/** What is still wanted, MB: what is not is collected first. */
const heap = (): number => {
  // A collection that was under way keeps what was wanted when it began.
  collect();
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
};
const batches = 10;
const memory: number[] = [];
for (let batch = 0; batch < batches; batch += 1) {
  let left = Math.ceil(updates / batches / whole.length);
  // New people all the time, each with a case of their own.
  const lane = async (): Promise<void> => {
    while (left > 0) {
      left -= 1;
      await alike(new Person(line, 'en'), whole, whole.length);
    }
  };
  await Promise.all(Array.from({ length: sideBySide }, lane));
  memory.push(heap());
}
print(
  `heap after each tenth of ${String(updates)} updates: ` +
    `${memory.map((value) => value.toFixed(0)).join(', ')} MB`,
);
clearInterval(watch);
if (line.errors.length > 0) {
  print(`the bot reported ${String(line.errors.length)} errors${lastOf(line.errors, String)}`);
}
await running.stop();
await bare.stop();
rmSync(folder, { recursive: true });
