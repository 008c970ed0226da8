/**
 * `npm run -s sheet -- …`: writes a sheet of a case. Exits 0 when it is written, 1 when something
 * cannot be used, 2 on wrong use.
 */
import process, { argv, env, stderr, stdout } from 'node:process';
import { runSheet } from './run-sheet.ts';

process.exitCode = await runSheet({
  args: argv.slice(2),
  env,
  stdout,
  stderr,
  now: () => new Date(),
  timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
});
