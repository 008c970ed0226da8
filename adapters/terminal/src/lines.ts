/**
 * Where the lines of a conversation come from.
 */
import { createInterface } from 'node:readline';
import type { Case } from '@keyturn/core';

/** The lines of a conversation, one after another. */
export interface Lines {
  /** The next line for the case as it stands; undefined where there are no more. */
  readonly next: (kase: Case) => Promise<string | undefined>;
}

/** Lines of a stream, which can be ended before it ends. */
export interface StreamLines extends Lines {
  /** True where the stream has ended, of itself, without a line. */
  readonly isEmpty: () => boolean;
  /** Waits until it is known whether there is a first line, at most as long as `limit`. */
  readonly isEmptyWithin: (limit: Promise<unknown>) => Promise<boolean>;
  /** No more lines from now on. */
  readonly end: () => void;
}

/**
 * The lines of a stream. The terminal's own line editing is left as it is: nothing is asked of it
 * that a slow or simple connection could not do.
 */
export function streamLines(input: NodeJS.ReadableStream): StreamLines {
  const reader = createInterface({ input, terminal: false, crlfDelay: Infinity });
  const lines = reader[Symbol.asyncIterator]();
  let first: Promise<IteratorResult<string, undefined>> | undefined = lines.next();
  let isEmpty = false;
  let isEnded = false;
  const take = async (): Promise<string | undefined> => {
    const result = await (first ?? lines.next());
    isEmpty = first !== undefined && result.done === true && !isEnded;
    first = undefined;
    return result.done === true ? undefined : result.value;
  };
  return {
    next: take,
    isEmpty: () => isEmpty,
    isEmptyWithin: async (limit) => {
      const known = await Promise.race([first, limit.then(() => undefined)]);
      return known?.done === true && !isEnded;
    },
    end: () => {
      isEnded = true;
      reader.close();
    },
  };
}

/** A typed line without what would move a cursor or ring a bell. */
export function cleanLine(line: string): string {
  return line.replace(/[\p{Cc}\p{Cf}]/gu, ' ');
}
