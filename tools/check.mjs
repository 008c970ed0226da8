import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { env, execPath, exit, stdout } from 'node:process';
import { packagePlaces } from './build-state.mjs';
import { install, root } from './prepare.mjs';

const format = ['format', 'prettier/bin/prettier.cjs', ['--check', '--log-level=warn', '.']];
const types = ['types', 'typescript/bin/tsc', ['-b', '.', 'tests']];
const lint = ['lint', 'eslint/bin/eslint.js', ['.']];
const built = [
  [
    'rooms',
    'dependency-cruiser/bin/dependency-cruise.mjs',
    ['--config', '.dependency-cruiser.mjs', 'packages', 'adapters'],
  ],
  ['unused', 'knip/bin/knip.js', []],
  // All that is made after the compiler, noted as done: the tests that follow make none of it anew.
  ['pages', '../tools/prepare.mjs', []],
  ...packagePlaces(root).map((place) => [
    `face of ${place}`,
    'publint/src/cli.js',
    ['run', place, '--strict'],
  ]),
];

/** What is checked, two lists side by side: whatever follows the types looks at what they built. */
const rounds = [
  [[format], [types]],
  [[lint], built],
];

await install();
const failed = [];
for (const lists of rounds) await Promise.all(lists.map(checkInTurn));

const names = failed.join(', ');
stdout.write(`\n${names ? `failed: ${names}` : 'every check holds'}\n`, () => exit(names ? 1 : 0));

async function checkInTurn(steps) {
  for (const step of steps) await check(step);
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
