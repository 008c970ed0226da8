/**
 * `npm run -s outcomes -- …`: enters, takes back, exports, imports and reports confirmed causes.
 * Exits 0 when it is done, 1 when something cannot be used, 2 on wrong use.
 */
import process, { argv, stderr, stdout } from 'node:process';
import { runOutcomes } from './run-outcomes.ts';

process.exitCode = runOutcomes({ args: argv.slice(2), stdout, stderr });
