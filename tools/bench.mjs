import { readdirSync } from 'node:fs';
import path from 'node:path';
import { argv, exit, stderr, stdout } from 'node:process';
import { pathToFileURL } from 'node:url';
import { prepare, root } from './prepare.mjs';

const ending = '.bench.ts';
const folder = path.join(root, 'tests/bench');

await prepare();
const { register } = await import('tsx/esm/api');
register();

const names = readdirSync(folder)
  .filter((file) => file.endsWith(ending))
  .map((file) => file.slice(0, -ending.length))
  .sort();
const wanted = argv.slice(2);
const unknown = wanted.filter((name) => !names.includes(name));
if (unknown.length > 0) {
  stderr.write(`No bench is called ${unknown.join(', ')}; there are: ${names.join(', ')}.\n`);
  exit(1);
}

// One after another: each is a script that measures the built packages and prints its own table.
for (const name of wanted.length > 0 ? wanted : names) {
  stdout.write(`\n== ${name}\n`);
  await import(pathToFileURL(path.join(folder, name + ending)).href);
}
