import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { OutcomesError } from './outcomes-error.ts';
import { readIfThere, rewrite, writeNew } from './write-whole.ts';

let folder = '';
let file = '';

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'write-whole-'));
  file = path.join(folder, 'a.json');
});

afterEach(() => rmSync(folder, { recursive: true }));

test('a file is written whole, with nothing left beside it', () => {
  rewrite(file, undefined, 'one');
  rewrite(file, 'one', 'two');
  expect(readFileSync(file, 'utf8')).toBe('two');
  expect(readdirSync(folder)).toEqual(['a.json']);
});

test.each([
  ['changed meanwhile', 'one', 'theirs'],
  ['made meanwhile', undefined, 'theirs'],
])('a file that someone else %s is left as it is', (_, before, theirs) => {
  writeFileSync(file, theirs);
  expect(() => rewrite(file, before, 'mine')).toThrow(/by someone else meanwhile/);
  expect(readFileSync(file, 'utf8')).toBe(theirs);
});

test('what cannot take its place leaves nothing behind, and says why', () => {
  mkdirSync(file);
  expect(() => writeNew(file, 'mine', true)).toThrow(OutcomesError);
  expect(readdirSync(folder)).toEqual(['a.json']);
  expect(() => writeNew(path.join(folder, 'none', 'a'), 'mine', false)).toThrow(
    /cannot be written/,
  );
  expect(() => readIfThere(folder)).toThrow(/cannot be read/);
});
