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

  // The flow is 15 kB of it; the engine (statechart, decisions and terms, evidence by the hidden
  // states of the circuit, planner, electrics), understanding and the page are 147 kB; growth beyond
  // that is to be noticed.
  test('is at most 164 kB to take a case further', () => {
    expect(gzipped('keyturn-further.js')).toBeLessThan(164);
  });

  // Drawn after everything else: the words say the same.
  test('is at most 15 kB for the pictures', () => {
    expect(gzipped('keyturn-pictures.js')).toBeLessThan(15);
  });

  // Words only: every question, caution and remedy, and how people say the answers and emergencies,
  // which is more than half of it: a phrase that is not known is a question asked back at the
  // roadside. Arabic takes two bytes a letter.
  test.each(localeTags)('is at most 77 kB for the language %s', (tag) => {
    expect(gzipped(`texts/${tag}.js`)).toBeLessThan(77);
  });
});
