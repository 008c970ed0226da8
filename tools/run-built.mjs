import path from 'node:path';
import { argv } from 'node:process';
import { pathToFileURL } from 'node:url';
import { prepare, root } from './prepare.mjs';

/**
 * Prepares the checkout, then runs a built program in this very process, so that its input,
 * arguments, exit code and Ctrl-C are the caller's own. `file` is relative to the root.
 */
export async function runBuilt(file) {
  await prepare();
  const program = path.join(root, file);
  argv[1] = program;
  await import(pathToFileURL(program).href);
}
