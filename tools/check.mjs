import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { env, execPath, exit, stdout } from 'node:process';
import { packagePlaces } from './build-state.mjs';
import { install, root } from './prepare.mjs';

const lint = ['lint', 'eslint/bin/eslint.js', ['.']];
const types = ['types', 'typescript/bin/tsc', ['-b', '.', 'tests']];
// All that is made after the compiler, noted as done: the tests that follow make none of it anew.
const pages = ['pages', '../tools/prepare.mjs', []];
/** What looks at what was built, and the format, which may come at any time. */
const others = [
  ['format', 'prettier/bin/prettier.cjs', ['--check', '--log-level=warn', '.']],
  [
    'rooms',
    'dependency-cruiser/bin/dependency-cruise.mjs',
    ['--config', '.dependency-cruiser.mjs', 'packages', 'adapters'],
  ],
  ['unused', 'knip/bin/knip.js', []],
  ...packagePlaces(root).map((place) => [
    `face of ${place}`,
    'publint/src/cli.js',
    ['run', place, '--strict'],
  ]),
];

await install();
const failed = [];
// Two at a time. The linter reads sources alone, so it need not wait for what is built.
const linted = check(lint);
const built = check(types).then(() => check(pages));
await Promise.all([built.then(checkOthers), Promise.all([linted, built]).then(checkOthers)]);

const names = failed.join(', ');
stdout.write(`\n${names ? `failed: ${names}` : 'every check holds'}\n`, () => exit(names ? 1 : 0));

/** Goes on with the others, one after another, until none is left. */
async function checkOthers() {
  for (let step = others.shift(); step !== undefined; step = others.shift()) await check(step);
}

/** Says what a step said once it has ended, so that two never talk at once. */
async function check([name, program, args]) {
  const file = path.join(root, 'node_modules', program);
  const child = spawn(execPath, [file, ...args], {
    cwd: root,
    env: { ...(stdout.isTTY ? { FORCE_COLOR: '1' } : {}), ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => said.push(part));
  const [status] = await once(child, 'close');
  stdout.write(`\n== ${name}\n`);
  stdout.write(Buffer.concat(said));
  if (status !== 0) failed.push(name);
}
