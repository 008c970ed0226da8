/**
 * A return at the counter through the command line: with the terms of a shop, put aside, gone on
 * with, and judged together with the case of the vehicle.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { PassThrough } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { compileFlow, foldCase, openCase, turn, type CaseEvent } from '@keyturn/core';
import { shippedFlow } from '@keyturn/flows';
import { encodeFindings } from '@keyturn/sheets';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { runTerminal } from '../adapters/terminal/src/run-terminal.ts';
import { noStart } from './support/no-start.ts';

const terms = fileURLToPath(new URL('../examples/shop-terms.yaml', import.meta.url));

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'counter-'));
});

afterEach(() => rmSync(folder, { recursive: true }));

const file = (name: string): string => path.join(folder, name);

async function run(
  args: readonly string[],
  lines: readonly string[],
): Promise<{ code: number; out: string; err: string }> {
  const said = { out: '', err: '' };
  const stdin = new PassThrough();
  stdin.end(lines.map((line) => `${line}\n`).join(''));
  const code = await runTerminal({
    args,
    program: 'keyturn',
    env: {},
    stdin,
    stdout: { columns: 80, write: (text) => (said.out += text) },
    stderr: { write: (text) => (said.err += text) },
    now: () => new Date('2026-03-31T10:00:00Z'),
    onInterrupt: () => undefined,
  });
  return { code, ...said };
}

const opening = ['--flow', 'starter-return', '--terms', terms];

test('an unused starter in time is taken back, by a day of sale', async () => {
  const lines = ['has the receipt', 'it matches', '2026-03-10', 'not needed', 'never fitted'];
  const { code, out } = await run(
    [...opening, '--case', file('a.jsonl')],
    [...lines, 'sound', 'whole', 'teeth fine', 'dry', 'right part'],
  );
  expect(code).toBe(0);
  expect(out).toContain('March 10, 2026 and within the return window');
  expect(out).toContain('We take it back');
  expect(out).toContain('Consumer law where you live comes first');
  // No price is known, so no amount is told.
  expect(out).not.toContain('€');
});

test('with the price that was paid the amount is told with its arithmetic', async () => {
  const { out } = await run(
    [...opening, '--price', '142,50', '--old-unit-owed', '--case', file('a.jsonl')],
    ['receipt', 'ours', '2026-03-10', 'not needed', 'never fitted'].concat([
      'sound',
      'whole',
      'teeth fine',
      'dry',
      'right part',
    ]),
  );
  // 85 % of 142.50 is 121.125, a half in the customer's favour 121.13; with the deposit 166.13.
  for (const line of ['€142.50 paid', '€21.37: 15 %', '€45.00 deposit', '€166.13 in all']) {
    expect(out).toContain(line);
  }
});

test('a case that has ended is gone on with, and its decision is told once', async () => {
  const kept = file('a.jsonl');
  await run([...opening, '--case', kept], ['receipt', 'ours', '2020-03-30']);
  const { out } = await run([kept], []);
  expect(out.split('We can’t take it back')).toHaveLength(2);
});

test('a day that cannot be, or no day at all, is refused and nothing is lost', async () => {
  const { out } = await run(
    [...opening, '--case', file('a.jsonl')],
    ['receipt', 'ours', '2026-04-01', '2026-02-30', '1926-03-10', '30 Nov 2025'],
  );
  expect(out.replaceAll(/\s+/gu, ' ')).toContain('“1926-03-10” is too long ago');
  expect(out).toContain('“2026-04-01” is still to come');
  expect(out).toContain('“2026-02-30” is no day of the calendar');
  expect(out).toContain('November 30, 2025 and within the warranty');
});

test('a return put aside is gone on with by its file, on the same terms', async () => {
  const kept = file('a.jsonl');
  await run([...opening, '--case', kept], ['receipt', 'ours']);
  const { out } = await run([kept], ['2024-03-30']);
  expect(out).toContain('out of time');
  expect(out).toContain('We can’t take it back');
});

test('the case of the vehicle is taken by its file or its code, and not asked for', async () => {
  const { chart } = noStart;
  const at = '2026-03-01T08:00:00.000Z';
  const opened = openCase(chart, { id: 'v1', at, context: { kit: ['voltmeter', 'helper'] } });
  const readings = { 'battery-rest': 12.68, 'battery-crank': 12.4, 'control-signal': 12.1 };
  const step = turn(chart, opened.case, {
    at,
    input: {
      type: 'answers',
      answers: [
        { check: 'complaint', value: ['single-click'] },
        ...Object.entries({ ...readings, 'drop-positive': 0.02, 'drop-ground': 0.02 }).map(
          ([check, value]) => ({ check, value: { value, unit: 'V', resolution: 0.01 } }),
        ),
      ],
    },
  });
  const events: readonly CaseEvent[] = [...opened.events, ...step.events];
  expect(foldCase(chart, events)).toEqual(step.case);
  const vehicle = file('vehicle.jsonl');
  writeFileSync(vehicle, events.map((event) => `${JSON.stringify(event)}\n`).join(''));
  for (const [index, given] of [vehicle, encodeFindings(chart.flow, step.case)].entries()) {
    const kept = file(`return-${String(index)}.jsonl`);
    const { out, err } = await run([...opening, '--vehicle', given, '--case', kept], ['ours']);
    expect(err).toBe('');
    expect(out).toContain('all else good');
    // A clerk sees of which day it is, and may put it right.
    expect(out).toContain('The case of the vehicle is of March 1, 2026');
    expect(readFileSync(kept, 'utf8')).toContain('"against-part"');
  }
});

test('a vehicle measured before the part was sold says nothing of the part', async () => {
  const { chart } = noStart;
  const at = '2026-03-01T22:30:00.000Z';
  const opened = openCase(chart, { id: 'v3', at, context: { kit: ['voltmeter', 'helper'] } });
  const readings = { 'battery-rest': 12.68, 'battery-crank': 12.4, 'control-signal': 12.1 };
  const step = turn(chart, opened.case, {
    at,
    input: {
      type: 'answers',
      answers: [
        { check: 'complaint', value: ['single-click'] },
        ...Object.entries({ ...readings, 'drop-positive': 0.02, 'drop-ground': 0.02 }).map(
          ([check, value]) => ({ check, value: { value, unit: 'V', resolution: 0.01 } }),
        ),
      ],
    },
  });
  const code = encodeFindings(chart.flow, step.case);
  const kept = file('a.jsonl');
  const start = [...opening, '--vehicle', code, '--case', kept];
  // The part was not in it yet: not on the day after, and not on the very day.
  for (const [day, says] of [
    ['2026-03-02', 'incomplete'],
    ['2026-03-01', 'incomplete'],
    ['2026-02-28', 'against-part'],
  ] as const) {
    await run(start, ['receipt', 'ours', day]);
    const lines = readFileSync(kept, 'utf8').trim().split('\n');
    const events = lines.map((line) => JSON.parse(line) as CaseEvent);
    const flow = compileFlow(shippedFlow('starter-return', 'en').chart.flow);
    const { state } = foldCase(flow, events);
    expect(state.answers['vehicle-proof']?.at(-1), day).toEqual([says]);
    rmSync(kept);
  }
});

test.each([
  ['terms with a gap', ['--terms', 'gap.yaml'], 'months.*expected|where the step before ends'],
  ['terms that are not there', ['--terms', 'none.yaml'], 'cannot be read'],
  ['a price that is none', ['--terms', terms, '--price', 'about 20'], 'is no amount in EUR'],
  [
    'a price in more decimals than the currency has',
    ['--terms', terms, '--price', '142.505'],
    'expected a figure such as 129.00',
  ],
  ['a code that is none', ['--vehicle', 'NOT-A-CODE'], 'neither a file nor the code of a case'],
])('%s are told, and no case is begun', async (_, args, reason) => {
  writeFileSync(
    file('gap.yaml'),
    readFileSync(terms, 'utf8').replace('{ from: 12, to: 24', '{ from: 13, to: 24'),
  );
  const isNamed = (arg: string): boolean => arg.endsWith('.yaml') && arg !== terms;
  const placed = args.map((arg) => (isNamed(arg) ? file(arg) : arg));
  const kept = file('a.jsonl');
  const { code, err } = await run(
    ['--flow', 'starter-return', '--case', kept, ...placed],
    ['ours'],
  );
  expect(code).toBe(1);
  expect(err.replaceAll(/\s+/gu, ' ')).toMatch(new RegExp(reason, 'u'));
  expect(() => readFileSync(kept)).toThrow();
});

test('a flow that takes no part back has no use for terms', async () => {
  const { code, err } = await run(['--terms', terms, '--case', file('a.jsonl')], ['home']);
  expect(code).toBe(1);
  expect(err).toContain('takes no part back');
});

test('a case put right after it was taken for the wrong vehicle is judged without it', async () => {
  const { chart } = noStart;
  const at = '2026-03-01T08:00:00.000Z';
  const { events } = openCase(chart, { id: 'v2', at, context: {} });
  const vehicle = file('vehicle.jsonl');
  writeFileSync(vehicle, events.map((event) => `${JSON.stringify(event)}\n`).join(''));
  const { out } = await run(
    [...opening, '--vehicle', vehicle, '--case', file('a.jsonl')],
    ['correction vehicle says it points elsewhere', 'ours'],
  );
  expect(out).toContain('nothing, or not enough');
  expect(out).toContain('What the vehicle says: something else bad.');
});

test('figures of another part are questioned, never taken', async () => {
  const lines = ['receipt', 'ours', '2025-11-30', 'slow', 'fitted', 'sound', 'whole'];
  const bench = [
    'teeth fine',
    'dry',
    'right part',
    'no marks',
    'free one way',
    'bench, speed meter',
  ];
  const before = [...lines, ...bench, '12 V', 'car', 'geared', 'yes', 'comes out and stays'];
  const { out } = await run(
    [...opening, '--case', file('a.jsonl')],
    [...before, '124 V', '640 Ah', '11.7'],
  );
  const said = out.replaceAll(/\s+/gu, ' ');
  expect(said).toContain('124 V cannot be right for Supply at the starter');
  expect(said).toContain('has a unit that does not fit Supply at the starter');
  expect(said).toContain('11.7 V: The bench feeds it well enough');
});

test('readings of the vehicle are heard by its flow, and said with what they come to', async () => {
  const looks = ['receipt', 'ours', '2025-11-30', 'slow', 'fitted', 'sound', 'whole'];
  const more = ['teeth fine', 'dry', 'right part', 'no marks', 'free one way', 'bench'];
  const bench = ['12 V', 'car', 'geared', 'yes', 'comes out and stays', '12.5 V', '78 A', 'even'];
  const { out } = await run(
    [...opening, '--case', file('a.jsonl')],
    [...looks, ...more, ...bench, 'same', '10.9 cranking, 2.6 on the plus side'],
  );
  const said = out.replaceAll(/\s+/gu, ' ');
  expect(said).toContain('Heard as readings of the vehicle: Battery voltage while starting 10.9 V');
  expect(said).toContain('This points elsewhere: Loss on the plus side 2.6 V (');
  expect(said).toContain('What the vehicle says: something else bad.');
});
