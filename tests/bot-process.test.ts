/**
 * The ready bot as a program of its own: stopped by force, told to stop, brought updates, and
 * without what it needs.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { build } from 'esbuild';
import { openSqliteStore } from '@keyturn/cases';
import { BotApi, token, type Writer } from './support/bot-api.ts';

// The program takes seconds to start on a busy machine, and some until it knows what is unsure.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const root = fileURLToPath(new URL('..', import.meta.url));
const prepared = path.join(root, '.prepared');
mkdirSync(prepared, { recursive: true });
// Beside the packages, so that the program finds the flows as it does in the checkout.
const built = mkdtempSync(path.join(prepared, 'bot-'));
const program = path.join(built, 'dist/main.mjs');
const writer: Writer = { person: 42, language: 'en' };

let api: BotApi;
let folder = '';
const children = new Set<ChildProcess>();

beforeAll(async () => {
  await build({
    entryPoints: [path.join(root, 'adapters/telegram/src/main.ts')],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'esm',
    conditions: ['source'],
    external: ['@photostructure/sqlite', '@resvg/resvg-js', 'grammy', 'pg'],
    define: {
      'import.meta.url': JSON.stringify(
        new URL('../packages/flows/src/index.ts', import.meta.url).href,
      ),
    },
    banner: {
      js: "import { createRequire as requireFrom } from 'node:module'; const require = requireFrom(process.argv[1]);",
    },
    logLevel: 'error',
  });
}, 60_000);

afterAll(() => rmSync(built, { recursive: true }));

async function opened(): Promise<void> {
  folder = mkdtempSync(path.join(tmpdir(), 'bot-process-'));
  api = await new BotApi().start();
}

afterEach(async () => {
  for (const child of children) {
    child.kill('SIGKILL');
    if (child.exitCode === null && child.signalCode === null) await once(child, 'exit');
  }
  children.clear();
  await api.stop();
  rmSync(folder, { recursive: true, force: true });
});

function start(env: Readonly<Record<string, string>> = {}) {
  const child = spawn(process.execPath, [program], {
    cwd: folder,
    env: { PATH: process.env['PATH'], BOT_TOKEN: token, BOT_API_ROOT: api.root, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  children.add(child);
  const heard = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (text: string) => (heard.out += text));
  child.stderr.setEncoding('utf8').on('data', (text: string) => (heard.err += text));
  const ended = once(child, 'close').then(([code]) => ({ code: code as number | null, ...heard }));
  return { child, heard, ended };
}

async function until(holds: () => boolean): Promise<void> {
  const end = Date.now() + 45_000;
  while (!holds()) {
    if (Date.now() > end)
      throw new Error(`in vain: ${String(holds)}; sent: ${texts().join(' | ')}`);
    await sleep(10);
  }
}

const texts = (): readonly string[] => api.sent.map(({ text }) => text);
const count = (words: string): number => texts().filter((text) => text.includes(words)).length;

describe('the ready bot', () => {
  test('answers, keeps its cases in a folder, and ends cleanly when told to', async () => {
    await opened();
    const { child, heard, ended } = start({ KEYTURN_DATA: 'kept' });
    api.write(writer, '/start');
    await until(() => count('Where is the vehicle') === 1);
    expect(heard.out).toContain('@invented_bot fetches updates');
    expect(api.commands).toHaveLength(6);
    await until(() => api.unconfirmed === 0);
    child.kill('SIGTERM');
    expect(await ended).toMatchObject({ code: 0, err: '' });
    const store = await openSqliteStore(path.join(folder, 'kept/cases.sqlite'));
    expect(await store.conversation('telegram 110201543 42')).toMatchObject({ version: 1 });
    expect(await store.inspect()).toEqual([]);
    await store.close();
    expect(api.refused).toEqual([]);
  });

  test('that is stopped by force while it sends does not send that twice, and asks again', async () => {
    await opened();
    const first = start();
    api.onSent = () => {
      first.child.kill('SIGKILL');
    };
    api.write(writer, '/start');
    await first.ended;
    expect(count('Your safety comes first')).toBe(1);
    api.onSent = () => undefined;
    start();
    await until(() => count('can’t tell whether my last message reached you') === 1);
    expect(count('Your safety comes first')).toBe(1);
    const [old, anew] = api.sent;
    expect(anew?.text).toContain('Where is the vehicle standing now?');
    // The keys of the message that may not have arrived do not answer any more.
    api.tap(writer, old!, old!.keys[3]!);
    await until(() => count('That key belongs to an earlier question') === 1);
    api.tap(writer, anew!, anew!.keys[3]!);
    await until(() => count('Where the vehicle is: at home.') === 1);
  });

  test('that is stopped by force at any moment loses nothing that was written', async () => {
    await opened();
    const words = ['/start', 'at home', 'yes', 'diesel'];
    const people: readonly Writer[] = Array.from({ length: 20 }, (_, index) => ({
      person: 100 + index,
      language: 'en',
    }));
    const kills = 4;
    for (let run = 0; run < kills; run += 1) {
      const { child, ended, heard } = start();
      await until(() => heard.out.includes('fetches updates'));
      api.deferred(() => {
        for (const one of people) api.write(one, words[run]!);
      });
      // Spread over the time in which the twenty are taken and answered.
      await sleep(20 * run);
      child.kill('SIGKILL');
      await ended;
    }
    const { child, ended } = start();
    const answered = (): boolean =>
      people.every(
        ({ person }) =>
          api.messagesTo(person).some(({ text }) => text.includes('What drives it: diesel.')) ||
          api.messagesTo(person).some(({ text }) => text.includes('When you try to start it')),
      );
    await until(answered);
    child.kill('SIGTERM');
    expect((await ended).code).toBe(0);
    for (const { person } of people) {
      const sent = api.messagesTo(person).map(({ text }) => text);
      expect(new Set(sent.filter((text) => !text.includes('can’t tell whether'))).size).toBe(
        sent.filter((text) => !text.includes('can’t tell whether')).length,
      );
    }
    const store = await openSqliteStore(path.join(folder, 'data/cases.sqlite'));
    expect(await store.inspect()).toEqual([]);
    await store.close();
  });

  test('without a token says how to get one, and ends with 2', async () => {
    await opened();
    const { code, out, err } = await start({ BOT_TOKEN: '' }).ended;
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('BOT_TOKEN=123456:ABC-DEF… npm run bot');
    expect(err).toContain('KEYTURN_DATABASE_URL');
  });

  test('with a token that is not known says so without repeating it, and ends with 2', async () => {
    await opened();
    const wrong = '110201543:AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA';
    const { code, out, err } = await start({ BOT_TOKEN: wrong }).ended;
    expect(code).toBe(2);
    expect(err).toContain('does not know this BOT_TOKEN: copy it whole');
    expect(out + err).not.toContain('AAAAAAAA');
  });

  test('that cannot reach the server says so without its token, and tries again', async () => {
    await opened();
    const { child, heard, ended } = start({ BOT_API_ROOT: 'http://127.0.0.1:1', DEBUG: '' });
    await until(() => heard.err.includes('getMe') && heard.err.includes('has a connection'));
    child.kill('SIGTERM');
    const { code, out, err } = await ended;
    expect(code).toBe(0);
    expect(err).toContain('<token>');
    expect(out + err).not.toContain(token);
  });
});

describe('updates that are brought', () => {
  const secret = 'a-secret-of-the-test_only';
  const port = 20_000 + (process.pid % 20_000);

  interface Brought {
    readonly method?: string;
    readonly headers?: Readonly<Record<string, string>>;
    readonly body?: string;
  }

  async function bring({ method = 'POST', headers = {}, body = '{}' }: Brought): Promise<number> {
    const length = { 'content-length': String(Buffer.byteLength(body)) };
    const call = request({ port, host: '127.0.0.1', method, headers: { ...length, ...headers } });
    call.on('error', () => undefined).end(body);
    const [response] = (await once(call, 'response')) as [{ statusCode: number; resume(): void }];
    response.resume();
    return response.statusCode;
  }

  test('are taken with the secret, once, and refused without it', async () => {
    await opened();
    const { child, ended, heard } = start({
      BOT_WEBHOOK_URL: 'https://bot.example.org/hook',
      BOT_WEBHOOK_PORT: String(port),
      BOT_WEBHOOK_SECRET: secret,
    });
    await until(() => api.webhook !== undefined || heard.err !== '');
    expect(api.webhook).toEqual({ url: 'https://bot.example.org/hook', secret });
    const body = JSON.stringify(api.write(writer, '/start'));
    const headers = { 'x-telegram-bot-api-secret-token': secret };
    expect(await bring({ body })).toBe(401);
    const near = `${secret.slice(0, -1)}x`;
    expect(await bring({ body, headers: { 'x-telegram-bot-api-secret-token': near } })).toBe(401);
    expect(await bring({ method: 'GET', headers })).toBe(405);
    expect(await bring({ body: ' '.repeat((1 << 20) + 1), headers })).toBe(413);
    expect(await bring({ body: 'no JSON', headers })).toBe(500);
    expect(texts()).toEqual([]);
    expect(await bring({ body, headers })).toBe(200);
    expect(await bring({ body, headers })).toBe(200);
    await until(() => count('Where is the vehicle') === 1);
    await sleep(200);
    expect(texts()).toHaveLength(1);
    child.kill('SIGTERM');
    expect((await ended).code).toBe(0);
  });
});
