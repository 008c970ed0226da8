/**
 * A case on disk: JSON Lines, an event a line, appended as they happen, so that a stop at any
 * moment loses nothing that was answered.
 */
import {
  appendFileSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { CaseError, foldCase, type Case, type CaseEvent, type Chart } from '@keyturn/core';
import { readEvent } from './case-event.ts';

/** A case file cannot be used; the message says which, where and why. */
export class CaseFileError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'CaseFileError';
  }
}

/** What a case file holds. */
export interface KeptEvents {
  readonly events: readonly CaseEvent[];
  /** True where the last line was cut off while it was written, and is left out. */
  readonly isTorn: boolean;
  /** How many bytes of the file are kept. */
  readonly bytes: number;
  /** True where the last line is whole, but for its line break. */
  readonly lacksBreak: boolean;
}

/**
 * Reads the events of a case file's text. Only a last line without its line break may be torn; one
 * that lacks nothing else is taken.
 *
 * @throws CaseFileError naming the line that is no event, or that there is none.
 */
export function readEvents(path: string, text: string): KeptEvents {
  const lines = text.split('\n');
  const tail = lines.pop() ?? '';
  const events = lines.map((line, index) => {
    const read = readEvent(line);
    if (read.type === 'event') return read.event;
    throw new CaseFileError(
      `${path} cannot be gone on with: line ${String(index + 1)} is broken, ${read.reason}. ` +
        'Mend or remove that line, or begin a new case.',
    );
  });
  const last = readEvent(tail);
  if (last.type === 'event') events.push(last.event);
  if (events.length === 0) {
    throw new CaseFileError(`${path} holds no case: it has no whole line of one.`);
  }
  const lacksBreak = last.type === 'event';
  const whole = lacksBreak ? text : text.slice(0, text.length - tail.length);
  return {
    events,
    isTorn: tail !== '' && !lacksBreak,
    bytes: Buffer.byteLength(whole),
    lacksBreak,
  };
}

/** Reads a case file. Throws CaseFileError where it cannot be read or is broken. */
export function readCaseFile(path: string): KeptEvents {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (cause) {
    throw new CaseFileError(`${path} cannot be read: ${reasonOf(cause)}.`);
  }
  return readEvents(path, text);
}

/**
 * The case that a file's events make.
 *
 * @throws CaseFileError where they belong to another flow, version or format, or name what the
 *   flow does not have.
 */
export function caseOf(chart: Chart, path: string, events: readonly CaseEvent[]): Case {
  const line = events.findIndex(
    (event) => 'check' in event && chart.flow.checks[event.check] === undefined,
  );
  if (line >= 0) {
    throw new CaseFileError(
      `${path} cannot be gone on with: line ${String(line + 1)} answers a check that this flow does not have.`,
    );
  }
  try {
    return foldCase(chart, events);
  } catch (cause) {
    const reason =
      cause instanceof CaseError
        ? cause.message
        : `its events do not make a case (${reasonOf(cause)})`;
    throw new CaseFileError(`${path} cannot be gone on with: ${reason}. The file is unchanged.`);
  }
}

/** Where the events of a case are kept. */
export interface CaseKeeper {
  readonly path: string;
  /** Appends events; what cannot be written is tried again next time. The reason, where it fails. */
  readonly keep: (events: readonly CaseEvent[]) => string | undefined;
  /** True where something is not written yet. */
  readonly isBehind: () => boolean;
  /** Takes the file away again, where no case came of it. */
  readonly discard: () => void;
}

/**
 * Makes a new case file that did not exist before.
 *
 * @throws CaseFileError where there is one already, or it cannot be made.
 */
export function createCaseFile(path: string): CaseKeeper {
  try {
    writeFileSync(path, '', { flag: 'wx' });
  } catch (cause) {
    throw new CaseFileError(
      (cause as NodeJS.ErrnoException).code === 'EEXIST'
        ? `${path} exists already. Give it without --case to go on with it, or name another file.`
        : `${path} cannot be made: ${reasonOf(cause)}. Name another place with --case FILE.`,
    );
  }
  return keeperOf(path, { bytes: 0, text: '' });
}

/** Goes on with a file that was read; a torn last line is taken off with the first event written. */
export function continueCaseFile(path: string, kept: KeptEvents): CaseKeeper {
  return keeperOf(path, { bytes: kept.bytes, text: kept.lacksBreak ? '\n' : '' });
}

function keeperOf(
  path: string,
  start: { readonly bytes: number; readonly text: string },
): CaseKeeper {
  let { bytes, text } = start;
  return {
    path,
    keep: (events) => {
      text += events.map((event) => `${JSON.stringify(event)}\n`).join('');
      if (text.trim() === '') return undefined;
      try {
        // Whatever stands behind the whole lines is the rest of a write that did not end.
        if (statSync(path).size > bytes) truncateSync(path, bytes);
        appendFileSync(path, text);
        bytes += Buffer.byteLength(text);
        text = '';
        return undefined;
      } catch (cause) {
        return reasonOf(cause);
      }
    },
    isBehind: () => text.trim() !== '',
    discard: () => rmSync(path, { force: true }),
  };
}

function reasonOf(cause: unknown): string {
  const { code, message } = cause as NodeJS.ErrnoException;
  switch (code) {
    case 'ENOENT':
      return 'there is no such file or folder';
    case 'EACCES':
    case 'EPERM':
      return 'it is not allowed';
    case 'EROFS':
      return 'the disk can only be read';
    case 'EISDIR':
      return 'it is a folder';
    case 'ENOSPC':
      return 'the disk is full';
    default:
      return message;
  }
}
