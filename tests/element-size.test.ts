import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { localeTags } from '@keyturn/language';
import { beforeAll, describe, expect, test } from 'vitest';
import { prepare, root } from '../tools/prepare.mjs';

/** Bytes over the wire, in kB of 1000 bytes. */
function gzipped(file: string): number {
  return (
    gzipSync(readFileSync(path.join(root, 'adapters/element/dist', file)), { level: 9 }).length /
    1000
  );
}

describe('what a page loads of the element', () => {
  beforeAll(prepare, 180_000);

  // At 400 kbit/s a phone takes in 50 kB a second; the first question is to be read within three
  // seconds, of which two round trips and the page itself take more than half.
  test('is at most 10 kB until the first question can be read and answered', () => {
    expect(gzipped('keyturn.js')).toBeLessThan(10);
  });

  // The flow is 16 kB of it; the rest works a case out and shows it: core 31 (of which no-start never
  // reaches the decisions and the terms of a shop, 4), electrics 16 (sources said under "why" 3,
  // limits of the counter 2), i18next 16, xstate 12, planner 11, zod 8, the page with lit-html 14
  // (a tap is held against the question that it was begun on, what a verdict rests on), telling 7.
  test('is at most 136 kB to take a case further by its keys', () => {
    expect(gzipped('keyturn-further.js')).toBeLessThan(136);
  });

  // Words only: every question, how to do it, caution and remedy. Arabic takes two bytes a letter.
  test.each(localeTags)('is at most 36 kB to tell a case in %s', (tag) => {
    expect(gzipped(`texts/${tag}.js`)).toBeLessThan(36);
  });

  // Loaded after the keys answer: figures and units in all the ways in which they are written, what
  // is told beside an answer, denied, left open or of another day, what puts an answer right, what
  // cries danger or tells one by a thing and what it does, what is only a saying, what is learned from
  // phrases, mistyped words; to which of several figures what is said belongs took the last two of it.
  test('is at most 64 kB to understand what is typed', () => {
    expect(gzipped('keyturn-understanding.js')).toBeLessThan(64);
  });

  // How people say the answers and emergencies: a phrase that is not known is a question asked back
  // at the roadside. Some 3,400 phrases take 6 bytes each; words numbered in a list of them, sorted
  // phrases and the like were tried and take as much or more.
  test.each(localeTags)('is at most 46 kB for what people say in %s', (tag) => {
    expect(gzipped(`said/${tag}.js`)).toBeLessThan(46);
  });

  // Drawn after everything else: the words say the same.
  test('is at most 10 kB for the pictures', () => {
    expect(gzipped('keyturn-pictures.js')).toBeLessThan(10);
  });
});
