import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openCase, positionOf, turn, type CaseEvent, type Input } from '@keyturn/core';
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { builtProgram } from './support/built-program.ts';
import { noStart } from './support/no-start.ts';

const program = await builtProgram('outcomes/main.js');

// Each test starts the program several times, which a machine busy with other tests may take seconds over.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const at = '2026-01-05T08:00:00.000Z';

/** What is answered in the cases here, in whatever order it is asked. */
const given: Readonly<Record<string, string | number | undefined>> = {
  scene: 'safe',
  complaint: 'slow-crank',
  when: 'after-standing',
  'charge-lamp': 'normal',
  'battery-rest': 12.66,
  'battery-crank': 11.3,
  'crank-current': 120,
  'drop-clamps': 0.03,
  'drop-positive': 0.12,
  'drop-ground': 1.3,
};

/** The events of a case played to its end; what is not given cannot be told. */
function played(id: string, role: string): readonly CaseEvent[] {
  const { chart } = noStart;
  const kit = ['voltmeter', 'clamp-meter', 'helper', 'hand-tools'];
  const context = { role, kit, place: 'workshop', 'vehicle.fuel': 'petrol' };
  let step = openCase(chart, { id, at, context });
  const events = [...step.events];
  for (let turns = 0; turns < 200; turns += 1) {
    const position = positionOf(step.case);
    if (position.awaiting === 'nothing') return events;
    step = turn(chart, step.case, { at, input: inputFor(position) });
    events.push(...step.events);
  }
  throw new Error(`the case never ends: ${JSON.stringify(positionOf(step.case))}`);
}

function inputFor(position: ReturnType<typeof positionOf>): Input {
  if (position.awaiting === 'confirm') return { type: 'confirm' };
  if (position.awaiting === 'wait') return { type: 'waited' };
  if (position.awaiting !== 'answer') return { type: 'resume' };
  const { check } = position;
  const value = given[check];
  if (value === undefined) return { type: 'talk', talk: 'cannot' };
  const form = noStart.chart.flow.checks[check]?.form;
  return {
    type: 'answers',
    answers: [
      {
        check,
        value:
          typeof value === 'string'
            ? [value]
            : { value, unit: form?.kind === 'reading' ? form.unit : 'V' },
      },
    ],
  };
}

const textOf = (events: readonly CaseEvent[]): string =>
  events.map((event) => `${JSON.stringify(event)}\n`).join('');

const first = played('3f0c1d4e-0001', 'mechanic');
const second = played('3f0c1d4e-0002', 'technician');

let folder = '';

const inFolder = (name: string): string => path.join(folder, name);
const read = (name: string): string => readFileSync(inFolder(name), 'utf8');

function layOutCases(): void {
  folder = mkdtempSync(path.join(tmpdir(), 'outcomes-'));
  writeFileSync(inFolder('first.jsonl'), textOf(first));
  writeFileSync(inFolder('second.jsonl'), textOf(second));
}

/** What was said and kept when the first case, and then the second, was confirmed. */
const entered = { said: '', id: '', one: '', both: '' };

const keep = (text: string): void => writeFileSync(inFolder('keyturn-outcomes.json'), text);

beforeAll(async () => {
  layOutCases();
  entered.said = (await run('confirm', 'first.jsonl', '--cause', 'ground-cable')).out;
  entered.one = read('keyturn-outcomes.json');
  const { out } = await run('confirm', 'second.jsonl', '--cause', 'positive-cable');
  entered.id = / as ([\da-f]{32})\./.exec(out)?.[1] ?? '';
  entered.both = read('keyturn-outcomes.json');
  rmSync(folder, { recursive: true });
});

beforeEach(layOutCases);

afterEach(() => rmSync(folder, { recursive: true }));

async function run(...args: readonly string[]) {
  const child = spawn(process.execPath, [program, ...args], { cwd: folder });
  const said = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (text: string) => (said.out += text));
  child.stderr.setEncoding('utf8').on('data', (text: string) => (said.err += text));
  const [code] = (await once(child, 'close')) as [number | null];
  return { code, ...said };
}

describe('the confirmed cause of a kept case', () => {
  test('is counted with the checks that were done, and holds nothing personal', () => {
    expect(entered.said).toContain('Counted: ground-cable');
    expect(entered.said).toContain('The verdict had said ground-cable');
    expect(JSON.parse(entered.both)).toMatchObject({
      outcomes: [
        {
          role: 'mechanic',
          channel: 'terminal',
          cause: 'ground-cable',
          // A reading is counted by its band.
          answers: {
            complaint: ['slow-crank'],
            'drop-clamps': ['good'],
          },
          forecast: { fault: 'ground-cable' },
        },
        // The verdict had another fault, and what was confirmed is what counts.
        { role: 'technician', cause: 'positive-cable', forecast: { fault: 'ground-cable' } },
      ],
    });
    for (const personal of ['3f0c1d4e', '2026', 'T08', 'workshop', '12.66', 'petrol']) {
      expect(entered.both).not.toContain(personal);
    }
  });

  test('is counted once', async () => {
    keep(entered.one);
    const again = await run('confirm', 'first.jsonl', '--cause', 'positive-cable');
    expect(again).toMatchObject({ code: 1, out: '' });
    expect(again.err).toContain('counted already, with the cause ground-cable');
    expect(read('keyturn-outcomes.json')).toBe(entered.one);
  });

  test('can be taken back to the very bytes there were', async () => {
    keep(entered.both);
    expect(await run('undo', entered.id)).toMatchObject({ code: 0, err: '' });
    expect(read('keyturn-outcomes.json')).toBe(entered.one);
    const never = await run('undo', 'second.jsonl');
    expect(never).toMatchObject({ code: 1, out: '' });
    expect(never.err).toContain('second.jsonl was never counted');
    expect(await run('undo', 'first.jsonl')).toMatchObject({ code: 0, err: '' });
    expect(JSON.parse(read('keyturn-outcomes.json'))).toMatchObject({ outcomes: [] });
  });

  test('is refused without a verdict, by file and line, or when it is no fault', async () => {
    writeFileSync(inFolder('open.jsonl'), textOf(first.slice(0, 4)));
    const open = await run('confirm', 'open.jsonl', '--cause', 'ground-cable');
    expect(open).toMatchObject({ code: 1, out: '' });
    expect(open.err).toContain('open.jsonl, line 4: the case ends there without a verdict');
    const odd = await run('confirm', 'first.jsonl', '--cause', 'constructor');
    expect(odd).toMatchObject({ code: 1, out: '' });
    expect(odd.err).toContain('ground-cable: Bad ground cable');
    writeFileSync(inFolder('broken.jsonl'), textOf(first).replace('"answered"', '"asked"'));
    const broken = await run('confirm', 'broken.jsonl', '--cause', 'ground-cable');
    expect(broken).toMatchObject({ code: 1, out: '' });
    expect(broken.err).toMatch(/broken\.jsonl .*line \d+ is broken/);
    expect(readdirSync(folder)).not.toContain('keyturn-outcomes.json');
  });

  test('is never taken from the verdict', async () => {
    const { code, out, err } = await run('confirm', 'first.jsonl');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('never taken from the verdict');
    expect(readdirSync(folder)).not.toContain('keyturn-outcomes.json');
  });
});

test('counts go from one place to another, and are taken back only where they were entered', async () => {
  keep(entered.both);
  expect(await run('export', 'counts.json')).toMatchObject({ code: 0, err: '' });
  expect(await run('--kept', 'b.json', 'import', 'counts.json')).toMatchObject({
    code: 0,
    err: '',
  });
  const elsewhere = await run('--kept', 'b.json', 'undo', 'first.jsonl');
  expect(elsewhere).toMatchObject({ code: 1, out: '' });
  expect(elsewhere.err).toContain('undo it where it was entered');
  expect(readdirSync(folder).sort()).toEqual([
    'b.json',
    'counts.json',
    'first.jsonl',
    'keyturn-outcomes.json',
    'second.jsonl',
  ]);
});

test('verdicts are reported on by role and channel, in text and as a picture', async () => {
  keep(entered.both);
  const { code, out } = await run('report', '--picture', 'said.svg');
  expect(code).toBe(0);
  expect(out).toMatch(/^all +2 +1 /m);
  expect(out).toMatch(/^role mechanic +1 +1 /m);
  expect(out).toMatch(/^role technician +1 +0 /m);
  expect(out).toMatch(/^channel terminal +2 +1 /m);
  expect(read('said.svg')).toMatch(/^<svg .*<\/svg>\n$/s);
});
