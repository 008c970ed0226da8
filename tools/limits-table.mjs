import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import prettier from 'prettier';
import { prepare, root } from './prepare.mjs';

// The table of limits in the README of electrics is generated from the limits themselves and
// committed, so that it can be read without running anything; a test holds the two against each
// other.
const file = path.join(root, 'packages/electrics/README.md');
const begin = '<!-- limits: begin -->';
const end = '<!-- limits: end -->';

await prepare();
const { limitsTable } = await import(
  pathToFileURL(path.join(root, 'packages/electrics/dist/limits/limits-table.js')).href
);
const readme = readFileSync(file, 'utf8');
const before = readme.slice(0, readme.indexOf(begin) + begin.length);
const after = readme.slice(readme.indexOf(end));
const options = (await prettier.resolveConfig(file)) ?? {};
writeFileSync(
  file,
  await prettier.format(`${before}\n\n${limitsTable()}\n\n${after}`, {
    ...options,
    parser: 'markdown',
  }),
);
