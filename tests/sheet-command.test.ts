/**
 * The program `sheet` as a process: a case that the terminal keeps becomes paper.
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
import { whyNoBrowser } from './support/browser.ts';
import { noStart } from './support/no-start.ts';
import { lettersOf, pdfPages } from './support/pdf-text.ts';
import { answers, next, open } from './support/play.ts';

const program = fileURLToPath(new URL('../adapters/terminal/src/sheet/main.ts', import.meta.url));
const loader = import.meta.resolve('tsx');

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
  writeFileSync(
    path.join(folder, 'case.jsonl'),
    events.map((event) => `${JSON.stringify(event)}\n`).join(''),
  );
  writeFileSync(path.join(folder, 'broken.jsonl'), '{"type":"opened"}\n');
});

afterAll(() => rmSync(folder, { recursive: true }));

function run(...args: readonly string[]): { code: number | null; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--conditions', 'source', '--import', loader, program, ...args],
    { cwd: folder, encoding: 'utf8', env: { ...env, TZ: 'Europe/Warsaw' } },
  );
  return { code: status, out: stdout, err: stderr };
}

const at = ['--made', '2026-03-04T10:00Z'];

test('writes a case as text, in the language and the zone that are asked for', () => {
  const { code, out, err } = run('case.jsonl', '--locale', 'de', ...at);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toContain('Fallblatt');
  expect(out).toContain('12,64 V');
  expect(out).toContain('11:00');
});

test('writes it as JSON of the published form, and as HTML without a script', () => {
  const json = run('case.jsonl', '--as', 'json', '--kind', 'technician', ...at);
  expect(sheetShape.parse(JSON.parse(json.out)).kind).toBe('technician');
  const html = run('case.jsonl', '--as', 'html', '--out', 'sheet.html', ...at);
  expect(html).toEqual({ code: 0, out: '', err: '' });
  const page = readFileSync(path.join(folder, 'sheet.html'), 'utf8');
  expect(page).toMatch(/^<!doctype html>/);
  expect(page).not.toContain('<script');
});

test('makes the sheet from a code alone', () => {
  const code = encodeFindings(noStart.chart.flow, measured.case);
  const { code: exit, out } = run(code.toLowerCase(), ...at);
  expect(exit).toBe(0);
  expect(out).toContain('12.64 V');
  expect(out).toContain(code);
});

test.skipIf(whyNoBrowser !== undefined)('prints it to PDF', async () => {
  const { code, err } = run(
    'case.jsonl',
    '--as',
    'pdf',
    '--paper',
    'Letter',
    '--out',
    'sheet.pdf',
    ...at,
  );
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const pages = await pdfPages(readFileSync(path.join(folder, 'sheet.pdf')));
  expect(pages[0]?.width).toBeCloseTo(612, 0);
  expect(lettersOf(pages)).toContain('12.64V');
});

test('never replaces a file unless told to', () => {
  writeFileSync(path.join(folder, 'there.txt'), 'mine');
  const { code, err } = run('case.jsonl', '--out', 'there.txt', ...at);
  expect(code).toBe(1);
  expect(err).toContain('there.txt exists already');
  expect(readFileSync(path.join(folder, 'there.txt'), 'utf8')).toBe('mine');
  expect(run('case.jsonl', '--out', 'there.txt', '--replace', ...at).code).toBe(0);
  expect(readFileSync(path.join(folder, 'there.txt'), 'utf8')).toContain('Case sheet');
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
] as const)('%j ends with what is wrong', (args, code, said) => {
  const ended = run(...args);
  expect(ended.code).toBe(code);
  expect(ended.err).toContain(said);
  expect(ended.out).toBe('');
});
