#!/usr/bin/env node
/**
 * `npm run bot`: the ready bot.
 */
import { runBot } from './run-bot.ts';

const over = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => over.abort());
}
const { env, stdout, stderr } = process;
process.exitCode = await runBot({ env, stdout, stderr, signal: over.signal });
