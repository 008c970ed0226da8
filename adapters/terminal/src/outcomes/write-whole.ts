/**
 * Files written whole or not at all: beside their place first, then renamed into it.
 */
import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import process from 'node:process';
import { OutcomesError } from './outcomes-error.ts';

/** Reads a file; nothing where there is none. Throws OutcomesError where it cannot be read. */
export function readIfThere(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw new OutcomesError(`${file} cannot be read: ${(cause as Error).message}`);
  }
}

/**
 * Writes a new file.
 *
 * @throws OutcomesError where there is one already and it is not to be replaced, or where it cannot
 *   be written; then nothing is changed.
 */
export function writeNew(file: string, content: string | Uint8Array, isToReplace: boolean): void {
  if (!isToReplace && existsSync(file)) {
    throw new OutcomesError(`${file} exists already: name another file, or add --replace`);
  }
  writeWhole(file, content);
}

/**
 * Writes a file anew that was read before.
 *
 * @throws OutcomesError where it is no longer what was read, or cannot be written; then nothing is
 *   changed.
 */
export function rewrite(file: string, before: string | undefined, text: string): void {
  if (readIfThere(file) !== before) {
    throw new OutcomesError(`${file} was changed by someone else meanwhile: try once more`);
  }
  writeWhole(file, text);
}

function writeWhole(file: string, content: string | Uint8Array): void {
  const beside = `${file}.${process.pid}.part`;
  try {
    const handle = openSync(beside, 'wx');
    try {
      writeFileSync(handle, content);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(beside, file);
  } catch (cause) {
    rmSync(beside, { force: true });
    throw new OutcomesError(`${file} cannot be written: ${(cause as Error).message}`);
  }
}
