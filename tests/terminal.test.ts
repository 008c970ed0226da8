/**
 * The terminal: as a program of its own where it is begun, broken off and ended, and elsewhere as
 * that program runs it, within the process of the tests, which has the flow and its words already.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { PassThrough } from 'node:stream';
import { addOutcome, emptyCounts } from '@keyturn/evidence';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { runTerminal } from '../adapters/terminal/src/run-terminal.ts';
import { builtProgram } from './support/built-program.ts';
import { noStart } from './support/no-start.ts';

const program = await builtProgram('main.js');

// A program is started anew, which a machine busy with other tests may take seconds over.
vi.setConfig({ testTimeout: 60_000 });

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'terminal-'));
});

afterEach(() => rmSync(folder, { recursive: true }));

function start(args: readonly string[]) {
  const child = spawn(process.execPath, [program, ...args], { cwd: folder });
  const heard = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (text: string) => (heard.out += text));
  child.stderr.setEncoding('utf8').on('data', (text: string) => (heard.err += text));
  const ended = once(child, 'close').then(([code, signal]) => ({
    code: code as number | null,
    signal: signal as string | null,
    ...heard,
  }));
  const hears = async (text: string): Promise<void> => {
    while (!heard.out.includes(text)) await once(child.stdout, 'data');
  };
  return { child, ended, hears };
}

/** Starts the program and gives it its whole input at once. */
async function runProgram(args: readonly string[], input: string) {
  const { child, ended } = start(args);
  child.stdin.end(input);
  return ended;
}

/** Runs the same without a program of its own. */
async function run(args: readonly string[], input: string) {
  const heard = { out: '', err: '' };
  const code = await runTerminal({
    args,
    program,
    env: {},
    stdin: new PassThrough().end(input),
    stdout: { write: (text) => (heard.out += text) },
    stderr: { write: (text) => (heard.err += text) },
    now: () => new Date(),
    onInterrupt: () => undefined,
  });
  return { code, ...heard };
}

const inFolder = (name: string): string => path.join(folder, name);

const lines = (...all: readonly string[]): string => all.map((line) => `${line}\n`).join('');

/** From the complaint to a verdict and the proof of the repair, as a professional types it. */
const groundCable = lines(
  ...['workshop', '1', 'petrol', 'slow crank', '3 years', '1 3 10 11', 'none', '2'],
  '12.66 rest, 11.3 crank, 120 A, 0.03 clamps, 0.12 positive drop, 1.3 ground drop',
  ...['done', '1', 'it starts', '1', '0.05 V', '14.3 V'],
);

const events = (file: string): Record<string, unknown>[] =>
  readFileSync(inFolder(file), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);

const columns = (line: string): number => Array.from(line).length;

describe('the program', () => {
  test('plays the demonstration to a proved repair where nothing is given', async () => {
    const { code, out, err } = await runProgram([], '');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('DEMONSTRATION');
    expect(out).toContain('Proved by measurement.');
    expect(out).toContain('the measurements prove the repair');
    expect(out).not.toContain('\u001b');
    expect(out.split('\n').filter((line) => columns(line) > 80)).toEqual([]);
    expect(readdirSync(folder)).toEqual([]);
  });

  test('takes the lines of its input as the answers and keeps the case', async () => {
    const { code, out, err } = await runProgram(['--case', 'a.jsonl'], groundCable);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('> 12.66 rest, 11.3 crank, 120 A');
    expect(out).toContain('At fault: Bad ground cable');
    expect(out).toContain('the measurements prove the repair');
    expect(out).toContain('a.jsonl');
    expect(out).not.toContain('\u001b');
    expect(out.split('\n').filter((line) => columns(line) > 80)).toEqual([]);
    expect(events('a.jsonl').map(({ check }) => check)).toContain('charging');
  });

  test('names a file for the case where none is named', async () => {
    const { code, out } = await runProgram([], lines('home'));
    const [file] = readdirSync(folder);
    expect(file).toMatch(/^keyturn-case-\d{8}-\d{6}\.jsonl$/);
    expect(code).toBe(0);
    expect(out).toContain(file);
  });

  test('loses no answer when it is killed, and goes on with the case', async () => {
    const { child, ended, hears } = start(['--case', 'a.jsonl']);
    child.stdin.write(lines('home', 'safe'));
    await hears('What does the vehicle run on?');
    child.kill('SIGKILL');
    expect((await ended).signal).toBe('SIGKILL');
    const { code, out } = await run([inFolder('a.jsonl')], lines('petrol'));
    expect(code).toBe(0);
    expect(out).toContain('Answers so far: 2');
    expect(out).toContain('What drives it: petrol.');
    expect(events('a.jsonl')).toHaveLength(4);
  });

  test('puts the case aside on Ctrl-C', async () => {
    const { child, ended, hears } = start(['--case', 'a.jsonl']);
    child.stdin.write(lines('home'));
    await hears('Before anything else');
    child.kill('SIGINT');
    const { code, out } = await ended;
    expect(code).toBe(0);
    expect(out).toContain('Go on with it by');
    expect(events('a.jsonl')).toHaveLength(2);
  });

  test('refuses a file that is not there with exit code 1', async () => {
    const { code, err } = await runProgram(['none.jsonl'], '');
    expect(code).toBe(1);
    expect(err).toContain('there is no such file');
  });

  test.each([
    ['an unknown option', ['--colour'], '--help'],
    ['an unknown language', ['--locale', 'xx'], 'there is: en'],
  ])('refuses %s with exit code 2', async (_, args, said) => {
    const { code, out, err } = await runProgram(args, '');
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(said);
    expect(existsSync(inFolder('a.jsonl'))).toBe(false);
  });

  test('explains itself with --help', async () => {
    const { code, out } = await runProgram(['--help'], '');
    expect(code).toBe(0);
    expect(out).toContain('Exit codes');
  });

  test('puts its first question to a program that waits for it', async () => {
    const { child, ended, hears } = start(['--json', '--case', 'a.jsonl']);
    await hears('"position"');
    child.stdin.end('home\n');
    expect((await ended).code).toBe(0);
    expect(events('a.jsonl')).toHaveLength(2);
  });
});

describe('what is typed there', () => {
  test('drops a torn last line and says so', async () => {
    await run(['--case', inFolder('a.jsonl')], lines('home', 'safe'));
    const file = inFolder('a.jsonl');
    writeFileSync(file, readFileSync(file, 'utf8').slice(0, -20));
    const { code, out } = await run([inFolder('a.jsonl')], lines('safe'));
    expect(code).toBe(0);
    expect(out).toContain('cut off while it was written');
    expect(events('a.jsonl')).toHaveLength(3);
  });

  test('answers whatever cannot be taken clearly and leaves the case as it is', async () => {
    const wrong = [
      ['', 'Nothing was typed'],
      ['9', '“9” is not one of the answers'],
      ['x'.repeat(10_000), 'too long'],
      ['rest 124 V', 'Did you mean 12.4 V?'],
      ['rest -12.4 V', '-12.4 V cannot be right'],
      ['\u001b[Jxqz\u0007', 'is not one of the answers'],
    ] as const;
    const given = lines(...wrong.map(([line]) => line), 'home');
    const { code, out } = await run(['--case', inFolder('a.jsonl')], given);
    expect(code).toBe(0);
    const answered = out.split('\n> ').slice(1);
    wrong.forEach(([, said], index) => {
      expect(answered[index]!.replaceAll(/\s+/g, ' ')).toContain(said);
    });
    expect(out).not.toContain('\u001b');
    expect(out.split('\n').filter((line) => columns(line) > 80)).toEqual([]);
    expect(events('a.jsonl')).toHaveLength(2);
  });

  test('answers an unknown unit at a reading by naming the unit that fits', async () => {
    const toAge = lines('home', 'safe', 'petrol', 'slow');
    const { out } = await run(['--case', inFolder('a.jsonl')], `${toAge}12 furlongs\n`);
    expect(out).toContain('“12 furlongs”');
    expect(out.replaceAll(/\s+/gu, ' ')).toContain('Possible: a figure (years)');
  });

  test('refuses an older file, unchanged, with exit code 1', async () => {
    await run(['--case', inFolder('a.jsonl')], lines('home'));
    const file = inFolder('a.jsonl');
    const older = readFileSync(file, 'utf8').replace('"format":1', '"format":0');
    writeFileSync(file, older);
    const { code, out, err } = await run([inFolder('a.jsonl')], lines('safe'));
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err.replaceAll('\n', ' ')).toContain('format 0');
    expect(readFileSync(file, 'utf8')).toBe(older);
  });

  test('refuses outcomes that are not there with exit code 1, and keeps no case', async () => {
    const { code, err } = await run(
      ['--case', inFolder('a.jsonl'), '--learned', inFolder('none.json')],
      'home\n',
    );
    expect(code).toBe(1);
    expect(err.replaceAll('\n', ' ')).toContain(
      'none.json is not there: no outcome has been entered yet',
    );
    expect(existsSync(inFolder('a.jsonl'))).toBe(false);
  });

  test('weighs by outcomes that were confirmed', async () => {
    const { flow } = noStart.chart;
    const key = { id: flow.id, version: flow.version };
    let counts = emptyCounts(key);
    for (let index = 0; index < 50; index += 1) {
      const id = `o${String(index)}`;
      const of = { role: 'driver', channel: 'terminal', cause: 'main-fuse', answers: {} };
      const added = addOutcome(counts, { id, flow: key, ...of });
      if (added.type === 'counts') counts = added.counts;
    }
    const kept = { format: 1, flow: key, outcomes: [], imported: [counts] };
    writeFileSync(inFolder('kept.json'), JSON.stringify(kept));
    const likeliest = async (args: readonly string[]): Promise<string | undefined> => {
      const { out } = await run(['--json', ...args], lines('home', 'safe', '1', 'silent'));
      return /"kind":"ranking","faults":\[\["([a-z-]+)"/.exec(out)?.[1];
    };
    expect(
      await likeliest(['--case', inFolder('a.jsonl'), '--learned', inFolder('kept.json')]),
    ).toBe('main-fuse');
    expect(await likeliest(['--case', inFolder('b.jsonl')])).not.toBe('main-fuse');
  });

  test('takes and gives lines of JSON with --json', async () => {
    const given = lines(
      JSON.stringify({ type: 'answers', answers: [{ check: 'place', value: ['home'] }] }),
      'yes, safe',
      'banana',
      '{"type":"nonsense"}',
    );
    const { code, out } = await run(['--json', '--case', inFolder('a.jsonl')], given);
    const steps = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(code).toBe(0);
    expect(steps.map(({ position }) => position)).toEqual([
      { awaiting: 'answer', check: 'place' },
      { awaiting: 'answer', check: 'scene' },
      { awaiting: 'answer', check: 'drive' },
      { awaiting: 'answer', check: 'drive' },
      { awaiting: 'answer', check: 'drive' },
      undefined,
    ]);
    expect(steps[3]).toMatchObject({ unclear: { type: 'unclear', given: 'banana' } });
    expect(steps[4]).toMatchObject({ messages: [{ kind: 'refused', code: 'not-an-input' }] });
    expect(steps[5]).toMatchObject({ end: 'aside', kept: inFolder('a.jsonl') });
  });
});
