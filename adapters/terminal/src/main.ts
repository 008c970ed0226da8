#!/usr/bin/env node
/**
 * `keyturn`: a case in a terminal, from lines, or as a demonstration.
 */
import process, { argv, env, stderr, stdin, stdout } from 'node:process';
import { runTerminal } from './run-terminal.ts';

// A reader that has seen enough, as `head` does, is no failure.
stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

process.exitCode = await runTerminal({
  args: argv.slice(2),
  program: argv[1] ?? '',
  env,
  stdin,
  stdout,
  stderr,
  now: () => new Date(),
  onInterrupt: (act) => process.once('SIGINT', act),
});
