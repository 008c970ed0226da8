/**
 * The programs as they are built and as people start them; started from source, each would be
 * compiled anew with every start.
 */
import path from 'node:path';
import { prepare, root } from '../../tools/prepare.mjs';

/** Where a program of the terminal lies, built from the sources as they are now. */
export async function builtProgram(name: string): Promise<string> {
  await prepare();
  return path.join(root, 'adapters/terminal/dist', name);
}
