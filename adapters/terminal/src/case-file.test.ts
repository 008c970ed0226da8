import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { CaseEvent } from '@keyturn/core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  caseOf,
  CaseFileError,
  continueCaseFile,
  createCaseFile,
  readCaseFile,
  readEvents,
} from './case-file.ts';
import { shippedFlow } from '@keyturn/flows';

const { chart } = shippedFlow('no-start', 'en');
const at = '2026-01-05T08:00:00.000Z';
const opened: CaseEvent = {
  type: 'opened',
  format: 1,
  at,
  id: 'one',
  flow: { id: chart.flow.id, version: chart.flow.version },
  context: {},
  notAsked: [],
};
const answered: CaseEvent = {
  type: 'answered',
  at,
  check: 'place',
  answer: ['home'],
};
const lineOf = (event: unknown): string => `${JSON.stringify(event)}\n`;

let folder = '';
let file = '';

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'case-file-'));
  file = path.join(folder, 'case.jsonl');
});

afterEach(() => rmSync(folder, { recursive: true }));

describe('a case file', () => {
  test('gives back what was kept', () => {
    const keeper = createCaseFile(file);
    expect(keeper.keep([opened])).toBeUndefined();
    expect(keeper.keep([answered])).toBeUndefined();
    expect(readCaseFile(file)).toMatchObject({ events: [opened, answered], isTorn: false });
  });

  test('is never made over another', () => {
    writeFileSync(file, 'mine');
    expect(() => createCaseFile(file)).toThrow(/exists already/);
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });

  test('loses a torn last line, and is whole again with the next event', () => {
    writeFileSync(file, lineOf(opened) + lineOf(answered).slice(0, 30));
    const kept = readCaseFile(file);
    expect(kept).toMatchObject({ events: [opened], isTorn: true });
    continueCaseFile(file, kept).keep([answered]);
    expect(readFileSync(file, 'utf8')).toBe(lineOf(opened) + lineOf(answered));
  });

  test('takes a last line that lacks only its line break', () => {
    writeFileSync(file, (lineOf(opened) + lineOf(answered)).trimEnd());
    const kept = readCaseFile(file);
    expect(kept).toMatchObject({ events: [opened, answered], isTorn: false });
    continueCaseFile(file, kept).keep([answered]);
    expect(readFileSync(file, 'utf8')).toBe(lineOf(opened) + lineOf(answered) + lineOf(answered));
  });

  test('tries again what could not be written', () => {
    const keeper = createCaseFile(path.join(folder, 'gone.jsonl'));
    keeper.discard();
    expect(keeper.keep([opened])).toMatch(/no such file/);
    expect(keeper.isBehind()).toBe(true);
    writeFileSync(keeper.path, '');
    expect(keeper.keep([answered])).toBeUndefined();
    expect(keeper.isBehind()).toBe(false);
    expect(readFileSync(keeper.path, 'utf8')).toBe(lineOf(opened) + lineOf(answered));
  });

  test.each([
    ['a line that is not JSON', `${lineOf(opened)}oops\n${lineOf(answered)}`, /line 2 is broken/],
    ['an event of no known type', lineOf(opened) + lineOf({ type: 'x', at }), /line 2 is broken/],
    ['nothing', '', /holds no case/],
    [
      'a flow that is named like a path',
      lineOf({ ...opened, flow: { id: '../x', version: '1' } }),
      /line 1/,
    ],
  ])('with %s is refused by its line', (_, text, message) => {
    expect(() => readEvents(file, text)).toThrow(CaseFileError);
    expect(() => readEvents(file, text)).toThrow(message);
  });

  test.each([
    [
      'another format',
      [{ ...opened, format: 2 }, answered],
      /format 2; this version reads format 1/,
    ],
    [
      'another version of the flow',
      [{ ...opened, flow: { id: 'no-start', version: '0' } }],
      /belongs to no-start 0/,
    ],
    ['an answer before the opening', [answered], /begins with/],
    ['a check that the flow does not have', [opened, { ...answered, check: 'aura' }], /line 2/],
  ])('with %s is refused in so many words', (_, events, message) => {
    expect(() => caseOf(chart, file, events as CaseEvent[])).toThrow(message);
  });
});
