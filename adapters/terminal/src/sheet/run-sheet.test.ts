/**
 * A case that the terminal keeps becomes paper: the program run in this process, and once as one.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { env } from 'node:process';
import { fileURLToPath } from 'node:url';
import { encodeFindings } from '@keyturn/sheets';
import { sheetShape } from '@keyturn/sheets/schema';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { whyNoBrowser } from '../../../../tests/support/browser.ts';
import { noStart } from '../../../../tests/support/no-start.ts';
import { lettersOf, pdfPages } from '../../../../tests/support/pdf-text.ts';
import { answers, next, open } from '../../../../tests/support/play.ts';
import { runSheet } from './run-sheet.ts';

let folder = '';

const opened = open({ place: 'home' });
const measured = next(
  opened.case,
  answers({
    complaint: 'slow-crank',
    'battery-rest': { value: 12.64, unit: 'V', resolution: 0.01 },
  }),
);

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'sheet-'));
  const events = [...opened.events, ...measured.events];
  writeFileSync(fileOf('case.jsonl'), events.map((event) => `${JSON.stringify(event)}\n`).join(''));
  writeFileSync(path.join(folder, 'broken.jsonl'), '{"type":"opened"}\n');
});

afterAll(() => rmSync(folder, { recursive: true }));

async function run(
  ...args: readonly string[]
): Promise<{ code: number; out: string; err: string }> {
  const heard = { out: '', err: '' };
  const code = await runSheet({
    args,
    env,
    stdout: { write: (text) => (heard.out += String(text)) },
    stderr: { write: (text) => (heard.err += text) },
    now: () => new Date('2026-03-04T10:00:00Z'),
    timeZone: 'Europe/Warsaw',
  });
  return { code, ...heard };
}

const fileOf = (name: string): string => path.join(folder, name);

test('writes a case as text, in the language and the zone that are asked for', async () => {
  const { code, out, err } = await run(fileOf('case.jsonl'), '--locale', 'de');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain('Fallblatt');
  expect(out).toContain('12,64 V');
  expect(out).toContain('11:00');
});

test('writes it as JSON of the published form, and as HTML without a script', async () => {
  const json = await run(fileOf('case.jsonl'), '--as', 'json', '--kind', 'technician');
  expect(sheetShape.parse(JSON.parse(json.out)).kind).toBe('technician');
  const html = await run(fileOf('case.jsonl'), '--as', 'html', '--out', fileOf('sheet.html'));
  expect(html).toEqual({ code: 0, out: '', err: '' });
  const page = readFileSync(fileOf('sheet.html'), 'utf8');
  expect(page).toMatch(/^<!doctype html>/);
  expect(page).not.toContain('<script');
});

test('makes the sheet from a code alone', async () => {
  const code = encodeFindings(noStart.chart.flow, measured.case);
  const { code: exit, out } = await run(code.toLowerCase());
  expect(exit).toBe(0);
  expect(out).toContain('12.64 V');
  expect(out).toContain(code);
});

test.skipIf(whyNoBrowser !== undefined)('prints it to PDF', async () => {
  const { code, err } = await run(
    'case.jsonl',
    '--as',
    'pdf',
    '--paper',
    'Letter',
    '--out',
    'sheet.pdf',
  );
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const pages = await pdfPages(readFileSync(fileOf('sheet.pdf')));
  expect(pages[0]?.width).toBeCloseTo(612, 0);
  expect(lettersOf(pages)).toContain('12.64V');
});

test('never replaces a file unless told to', async () => {
  writeFileSync(fileOf('there.txt'), 'mine');
  const { code, err } = await run(fileOf('case.jsonl'), '--out', fileOf('there.txt'));
  expect(code).toBe(1);
  expect(err).toContain('there.txt exists already');
  expect(readFileSync(fileOf('there.txt'), 'utf8')).toBe('mine');
  const replaced = await run(fileOf('case.jsonl'), '--out', fileOf('there.txt'), '--replace');
  expect(replaced.code).toBe(0);
  expect(readFileSync(fileOf('there.txt'), 'utf8')).toContain('Case sheet');
});

test.each([
  [['nowhere.jsonl'], 1, 'nowhere.jsonl cannot be read'],
  [['broken.jsonl'], 1, 'line 1 is broken'],
  [['KT1ABCDEFGHJKMNP'], 1, 'its checksum fails'],
  [['case.jsonl', '--link', 'x'.repeat(3000)], 1, 'too long for a QR code'],
  [[], 2, 'name one file of a case'],
  [['case.jsonl', '--as', 'docx'], 2, 'it takes text, html, pdf, json'],
  [['case.jsonl', '--paper', 'A5'], 2, 'it takes A4, Letter'],
  [['case.jsonl', '--locale', 'xx'], 2, 'there is no language “xx”'],
  [['case.jsonl', '--made', 'soon'], 2, 'it takes a time'],
  [['case.jsonl', '--colour'], 2, '--colour'],
] as const)('%j ends with what is wrong', async (args, code, said) => {
  const ended = await run(...args.map((one) => (/\.jsonl$/.test(one) ? fileOf(one) : one)));
  expect(ended.code).toBe(code);
  expect(ended.err).toContain(said);
  expect(ended.out).toBe('');
});

test('runs as a program of its own', () => {
  const program = fileURLToPath(new URL('main.ts', import.meta.url));
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--conditions', 'source', '--import', import.meta.resolve('tsx'), program, '--help'],
    { cwd: folder, encoding: 'utf8' },
  );
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
});
