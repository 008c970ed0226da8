import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { PassThrough } from 'node:stream';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runTerminal } from './run-terminal.ts';
import { columnsOf } from './wrap.ts';

let folder = '';

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'run-terminal-'));
});

afterEach(() => rmSync(folder, { recursive: true }));

/** A terminal with somebody at it, who types when something has been said. */
function sit(options: { env?: Record<string, string>; columns?: number } = {}) {
  const stdin = Object.assign(new PassThrough(), { isTTY: true });
  let said = '';
  let now = new Date('2026-01-05T08:00:00.000Z');
  let onSaid: (() => void) | undefined;
  let interrupt: () => void = () => undefined;
  const file = path.join(folder, 'case.jsonl');
  const code = runTerminal({
    args: ['--case', file],
    program: 'keyturn',
    env: options.env ?? {},
    stdin,
    stdout: {
      isTTY: true,
      columns: options.columns ?? 80,
      write: (text) => {
        said += text;
        onSaid?.();
      },
    },
    stderr: { write: () => undefined },
    now: () => now,
    onInterrupt: (act) => {
      interrupt = act;
    },
  });
  const prompted = async (): Promise<void> => {
    while (!said.endsWith('> ')) await new Promise<void>((resolve) => (onSaid = resolve));
  };
  return {
    file,
    code,
    said: () => said,
    interrupt: () => interrupt(),
    pass: (minutes: number) => (now = new Date(now.getTime() + minutes * 60_000)),
    /** Types a line; gives what is said upon it, up to the next prompt. */
    type: async (line: string): Promise<string> => {
      await prompted();
      said = '';
      stdin.write(`${line}\n`);
      await prompted();
      return said;
    },
    ready: prompted,
  };
}

describe('a terminal', () => {
  test.each([
    ['bold where it can be', {}, true],
    ['nothing but text where NO_COLOR is set', { NO_COLOR: '1' }, false],
    ['bold where NO_COLOR is empty, as no-color.org has it', { NO_COLOR: '' }, true],
  ])('is given %s', async (_, env, isStyled) => {
    const seat = sit({ env });
    await seat.ready();
    expect(seat.said().includes('\u001b[')).toBe(isStyled);
    seat.interrupt();
    expect(await seat.code).toBe(0);
  });

  test('keeps the case on Ctrl-C and says how to go on with it', async () => {
    const seat = sit();
    await seat.type('at home');
    seat.interrupt();
    expect(await seat.code).toBe(0);
    expect(seat.said().replaceAll(/\s+/g, '')).toContain(`keyturn${seat.file}`);
    expect(readFileSync(seat.file, 'utf8').trim().split('\n')).toHaveLength(2);
  });

  test('of 40 columns is never given a wider line', async () => {
    const seat = sit({ env: { NO_COLOR: '1' }, columns: 40 });
    let all = '';
    for (const line of ['home', 'safe', 'petrol', 'it turns slowly', 'after standing', '9', '?']) {
      all += await seat.type(line);
    }
    for (const line of all.split('\n')) expect(columnsOf(line)).toBeLessThanOrEqual(40);
    seat.interrupt();
    await seat.code;
  });

  test('picks one of several answers that may have been meant by its letter', async () => {
    const seat = sit();
    await seat.type('home');
    expect(await seat.type('safe, some danger')).toContain('   b  yes, safe');
    expect(await seat.type('b')).toContain('Safety where you are: yes, safe.');
    seat.interrupt();
    await seat.code;
  });

  test('tells the time that a wait still takes, and goes on when it is over', async () => {
    const seat = sit();
    const lines = ['home', 'safe', 'petrol', 'it turns slowly', '3 years'];
    for (const line of lines) await seat.type(line);
    await seat.type('voltmeter, charger, load tester');
    let said = await seat.type('rest 11.6');
    for (let turns = 0; turns < 20 && !said.includes('The wait is over at'); turns += 1) {
      said = await seat.type(said.includes('(1 yes') ? '1' : 'can’t');
    }
    expect(said).toContain('The wait is over at');
    expect(await seat.type('')).toContain('Not yet: 120 min to go');
    seat.pass(121);
    expect(await seat.type('')).toContain('after a full charge');
    seat.interrupt();
    await seat.code;
  });
});
