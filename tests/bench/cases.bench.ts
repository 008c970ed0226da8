/**
 * What it costs to keep a turn: a case read, and one turn of it committed so that it outlives a
 * loss of power.
 *
 * Baselines, in the same run: the same with a thousand stored cases where there are a million; and
 * a bare insertion of one row of the same size, committed alone, by the same library. All cases but
 * the first, which is a real one, are copies of it.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openSqliteStore, type CaseStore } from '@keyturn/cases';
import type { Case } from '@keyturn/core';
import { DatabaseSync } from '@photostructure/sqlite';
import { answered, at, changeOf, opened } from '../support/kept-turns.ts';

const few = 1_000;
const many = 1_000_000;
const rounds = 15;
const turnsInRound = 100;

const folder = mkdtempSync(path.join(tmpdir(), 'cases-bench-'));
const print = (line: string): boolean => process.stdout.write(`${line}\n`);
const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
const idOf = (index: number): string => `case ${String(index).padStart(7, '0')}`;

/** A store with so many cases, each opened and answered twice. */
async function filled(count: number): Promise<CaseStore> {
  const file = path.join(folder, `${String(count)}.sqlite`);
  const store = await openSqliteStore(file);
  const first = opened(idOf(0));
  const second = answered(first.case, 'scene', 'safe');
  const third = answered(second.case, 'drive', 'petrol');
  for (const step of [first, second, third]) await store.commit(changeOf(step));
  await store.close();
  const database = new DatabaseSync(file);
  database.exec(`
    create temp table counted as
      with recursive counting(n) as (
        select 1 union all select n + 1 from counting where n < ${String(count - 1)}
      )
      select printf('case %07d', n) as id from counting;
    insert into cases
      select counted.id, version, snapshot, digest, changed_at from counted, cases
      where cases.id = '${idOf(0)}' order by counted.id;
    insert into events
      select counted.id, number, body from counted, events
      where events.case_id = '${idOf(0)}' order by counted.id, number;
  `);
  database.close();
  return openSqliteStore(file);
}

let lastTurn = 0;

/** Reads a case and keeps one turn of it. */
async function keepTurn(store: CaseStore, id: string): Promise<void> {
  lastTurn += 1;
  const received = `turn ${String(lastTurn)}`;
  const kept = await store.read(id);
  if (kept === undefined) throw new Error(`${id} is not there`);
  const before = JSON.parse(kept.snapshot) as Case;
  const events = [{ type: 'time-passed', at } as const];
  const after = { ...before, id, events: before.events + 1 };
  const { type } = await store.commit({
    at,
    received,
    case: { expected: kept.version, events, after },
  });
  if (type !== 'kept') throw new Error(type);
}

/** Milliseconds that one of so many turns takes, one after the other or all at once. */
async function turnMs(store: CaseStore, count: number, isAtOnce: boolean): Promise<number> {
  const ids = Array.from({ length: turnsInRound }, (_, index) =>
    idOf(((lastTurn + index * 7919) * 104_729) % count),
  );
  const begin = performance.now();
  if (isAtOnce) await Promise.all([...new Set(ids)].map((id) => keepTurn(store, id)));
  else for (const id of ids) await keepTurn(store, id);
  return (performance.now() - begin) / (isAtOnce ? new Set(ids).size : ids.length);
}

const [small, large] = [await filled(few), await filled(many)];
const bare = new DatabaseSync(path.join(folder, 'bare.sqlite'));
bare.exec('pragma journal_mode = wal; pragma synchronous = full; create table rows (body text)');
const insert = bare.prepare('insert into rows values (?)');
const row = 'x'.repeat(900);

function bareMs(): number {
  const begin = performance.now();
  for (let index = 0; index < turnsInRound; index += 1) insert.run(row);
  return (performance.now() - begin) / turnsInRound;
}

const measured = {
  bare: [] as number[],
  few: [] as number[],
  many: [] as number[],
  together: [] as number[],
};
// Interleaved, so that a slow moment of the machine falls on all; the first round warms up.
for (let round = -1; round < rounds; round += 1) {
  const times = {
    bare: bareMs(),
    few: await turnMs(small, few, false),
    many: await turnMs(large, many, false),
    together: await turnMs(large, many, true),
  };
  if (round < 0) continue;
  for (const name of ['bare', 'few', 'many', 'together'] as const) measured[name].push(times[name]);
}

const ratio = (one: readonly number[], other: readonly number[]): string =>
  median(one.map((value, index) => value / (other[index] ?? 1))).toFixed(2);
const ms = (values: readonly number[]): string => `${median(values).toFixed(3)} ms`;
print(`one row committed alone, bare: ${ms(measured.bare)}`);
print(`a turn among ${String(few)} cases: ${ms(measured.few)}`);
print(
  `a turn among ${String(many)} cases: ${ms(measured.many)}, ` +
    `${ratio(measured.many, measured.few)} × that (at most 1.1 ×), ` +
    `${ratio(measured.many, measured.bare)} × the bare row`,
);
print(
  `a turn of ${String(turnsInRound)} at once: ${ms(measured.together)}, ` +
    `${ratio(measured.together, measured.bare)} × the bare row committed alone`,
);
await Promise.all([small.close(), large.close()]);
rmSync(folder, { recursive: true });
