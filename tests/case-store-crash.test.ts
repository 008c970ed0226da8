/**
 * A program that is stopped by force while it keeps turns, again and again: what it was told is
 * kept is kept, nothing is half kept, and nothing can be kept twice.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { setTimeout as sleep } from 'node:timers/promises';
import {
  openPostgresStore,
  openSqliteStore,
  readCase,
  type CaseChange,
  type CaseStore,
} from '@keyturn/cases';
import type { Step } from '@keyturn/core';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answered, at, changeOf, opened } from './support/kept-turns.ts';
import { noStart } from './support/no-start.ts';
import { startPostgres, type PostgresServer } from './support/postgres.ts';

// Within the project, so that the program finds its packages.
const prepared = fileURLToPath(new URL('../.prepared', import.meta.url));
mkdirSync(prepared, { recursive: true });
const folder = mkdtempSync(path.join(prepared, 'case-crash-'));
const writer = path.join(folder, 'writer.mjs');
const turnsFile = path.join(folder, 'turns');
const kills = 200;
/** Up to so long a run may write before it is stopped, milliseconds. */
const longestMs = 150;

const steps: readonly Step[] = (() => {
  const first = opened('CASE');
  const second = answered(first.case, 'scene', 'safe');
  return [first, second, answered(second.case, 'drive', 'petrol')];
})();

const changeAt = (id: string, index: number): CaseChange =>
  JSON.parse(JSON.stringify(changeOf(steps[index]!).case).replaceAll('CASE', id)) as CaseChange;

let server: PostgresServer | undefined;

beforeAll(async () => {
  server = await startPostgres();
  writeFileSync(turnsFile, steps.map((step) => JSON.stringify(changeOf(step).case)).join('\n'));
  await build({
    entryPoints: [fileURLToPath(new URL('support/case-writer.ts', import.meta.url))],
    outfile: writer,
    bundle: true,
    platform: 'node',
    format: 'esm',
    conditions: ['source'],
    external: ['@photostructure/sqlite'],
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    logLevel: 'error',
  });
}, 60_000);

afterAll(async () => {
  await server?.stop();
  rmSync(folder, { recursive: true });
}, 60_000);

/** Runs the writer, stops it by force after a while, and gives what it said: case to last turn. */
async function interruptedRun(place: string, run: string, ms: number) {
  const child = spawn(process.execPath, [writer, place, run, turnsFile], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  let failed = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (said += text));
  child.stderr.setEncoding('utf8').on('data', (text: string) => (failed += text));
  const ended = once(child, 'close');
  while (said === '' && child.exitCode === null) await sleep(5);
  await sleep(ms);
  child.kill('SIGKILL');
  await ended;
  expect(failed).toBe('');
  // A line that was cut off was not told.
  const lines = said.slice(0, said.lastIndexOf('\n')).split('\n');
  return new Map(
    lines.map((line): [string, number] => [line.split(' ')[0]!, Number(line.split(' ')[1])]),
  );
}

async function expectWhole(store: CaseStore, id: string, last: number): Promise<void> {
  const events = await store.events(id);
  const turn = steps.findIndex((step) => step.case.events === events.length);
  expect(turn).toBeGreaterThanOrEqual(last);
  const read = await readCase(store, noStart.chart, id);
  expect(read).toEqual({ case: changeAt(id, turn).after, isRebuilt: false });
  // Its conversation is as far as the case, and the turn cannot be kept twice.
  expect(await store.conversation(id)).toEqual({ version: turn + 1, body: turn });
  const again = { at, received: `${id} ${String(turn)}`, case: changeAt(id, turn) };
  expect(await store.commit(again)).toEqual({ type: 'repeated' });
}

/** A few of the cases of a run: all that were in hand when it was stopped, and some before. */
function someOf(told: ReadonlyMap<string, number>): readonly (readonly [string, number])[] {
  const all = [...told];
  return [...all.slice(-10), ...all.slice(0, 3)];
}

/** A store, where it is, how it is opened, and how many programs write to it and are stopped at once. */
type Place = readonly [
  string,
  () => Promise<string>,
  (place: string) => Promise<CaseStore>,
  number,
];

const places: readonly Place[] = [
  ['a file', () => Promise.resolve(path.join(folder, 'cases.sqlite')), openSqliteStore, 1],
  // A server is shared by several programs, and what one leaves behind must not hold up another.
  ['a database server', async () => (await server?.newDatabase()) ?? '', openPostgresStore, 4],
];

describe.concurrent.each(places)('a store in %s', (_, placed, open, atOnce) => {
  test(
    `loses nothing when its program is stopped by force, ${String(kills)} times`,
    { timeout: 1_200_000 },
    async () => {
      const place = await placed();
      await (await open(place)).close();
      let kept = 0;
      for (let first = 0; first < kills; first += atOnce) {
        const runs = Array.from({ length: atOnce }, (_run, index) => first + index);
        const told = await Promise.all(
          // Spread over the time, the same in every run of the test.
          runs.map((run) => interruptedRun(place, `r${String(run)}`, (run * 61) % longestMs)),
        );
        const store = await open(place);
        for (const one of told) {
          kept += one.size;
          for (const [id, last] of someOf(one)) await expectWhole(store, id, last);
        }
        await store.close();
      }
      expect(kept).toBeGreaterThan(kills);
      const store = await open(place);
      expect(await store.inspect()).toEqual([]);
      await store.close();
    },
  );
});

test('a database server that starts again under load loses nothing that was told', async () => {
  const store = await openPostgresStore((await server?.newDatabase()) ?? '');
  const told = new Map<string, number>();
  const over = new AbortController();
  const goesOn = (): boolean => !over.signal.aborted;
  const refusals: unknown[] = [];
  const working = Array.from({ length: 4 }, async (_, worker) => {
    for (let count = 0; goesOn(); count += 1) {
      const id = `w${String(worker)}-${String(count)}`;
      for (let turn = 0; turn < steps.length && goesOn(); turn += 1) {
        try {
          const conversation = { key: id, expected: turn, body: turn };
          const received = `${id} ${String(turn)}`;
          const change = { at, received, case: changeAt(id, turn), conversation };
          const { type } = await store.commit(change);
          expect(type).not.toBe('conflict');
          told.set(id, turn);
        } catch (error) {
          refusals.push((error as { code?: string }).code ?? error);
          await sleep(20);
          // Nobody knows whether it was kept; the same again is taken once.
          turn -= 1;
        }
      }
    }
  });
  await sleep(500);
  const before = told.size;
  await server?.restart();
  await sleep(700);
  over.abort();
  await Promise.all(working);
  expect(told.size).toBeGreaterThan(before);
  expect(new Set(refusals)).toEqual(new Set(['unreachable']));
  for (const [id, last] of told) await expectWhole(store, id, last);
  expect(await store.inspect()).toEqual([]);
  await store.close();
}, 120_000);

test('a snapshot that is damaged is made again from the events', async () => {
  const store = await openSqliteStore(path.join(folder, 'damaged.sqlite'));
  for (const index of steps.keys()) await store.commit({ at, case: changeAt('a', index) });
  const kept = await store.read('a');
  const worn = {
    ...store,
    read: () => Promise.resolve({ ...kept!, snapshot: kept!.snapshot.replace('petrol', 'diesel') }),
  };
  expect(await readCase(worn, noStart.chart, 'a')).toEqual({
    case: changeAt('a', steps.length - 1).after,
    isRebuilt: true,
  });
  await store.close();
});
