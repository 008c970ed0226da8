import { readFileSync } from 'node:fs';
import path from 'node:path';
import { format } from 'node:util';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import * as electrics from './index.ts';
import * as tables from './tables.ts';

const readme = readFileSync(path.join(import.meta.dirname, '../README.md'), 'utf8');

test('the example of the README prints what stands beside it', () => {
  const example = /```ts\n([^`]*)```/.exec(readme)![1]!;
  const code = example.replace(/^import [^;]*;/, '');
  const printed: string[] = [];
  const log = (...shown: readonly unknown[]): unknown => printed.push(format(...shown));
  runInNewContext(code, { ...electrics, console: { log } });
  const promised = [...code.matchAll(/ \/\/ (.*)$/gm)].map(([, comment]) => comment);
  expect(promised.length).toBeGreaterThan(0);
  expect(printed).toEqual(promised);
});

test('every function that the README names is exported', () => {
  const groups = readme.slice(readme.indexOf('| group'), readme.indexOf('Misuse'));
  const names = [...groups.matchAll(/`(\w+)`/g)].map(([, name]) => name!);
  expect(names.length).toBeGreaterThan(20);
  expect(names.filter((name) => !Object.hasOwn({ ...electrics, ...tables }, name))).toEqual([]);
});
