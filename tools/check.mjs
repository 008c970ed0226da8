import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { execPath, exit, stdout } from 'node:process';
import { packagePlaces } from './build-state.mjs';
import { install, root } from './prepare.mjs';

/** What is checked, in order; types come early because they build what later checks look at. */
const steps = [
  ['format', 'prettier/bin/prettier.cjs', ['--check', '--log-level=warn', '.']],
  ['types', 'typescript/bin/tsc', ['-b', '.', 'tests']],
  ['lint', 'eslint/bin/eslint.js', ['.']],
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

await install();
const failed = steps.filter(([name, program, args]) => {
  stdout.write(`\n== ${name}\n`);
  const file = path.join(root, 'node_modules', program);
  const { status } = spawnSync(execPath, [file, ...args], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  return status !== 0;
});

const names = failed.map(([name]) => name).join(', ');
stdout.write(`\n${names ? `failed: ${names}` : 'every check holds'}\n`, () => exit(names ? 1 : 0));
