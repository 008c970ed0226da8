import { CasesError, type CasesErrorCode } from './cases-error.ts';

/** Primary result codes of SQLite, as its documentation numbers them. */
const codes: Readonly<Record<number, readonly [CasesErrorCode, string]>> = {
  5: ['busy', 'another program is writing to it'],
  8: ['read-only', 'it may not be written to'],
  10: ['unreachable', 'the disk failed while it was read or written'],
  11: ['damaged', 'it is damaged'],
  13: ['full', 'there is no room left on the disk'],
  14: ['unreachable', 'it cannot be opened'],
  26: ['damaged', 'it is not a store of cases'],
};

/** What a failure of SQLite means for whoever uses the store; anything else as it is. */
export function sqliteError(file: string, error: unknown): unknown {
  if (error instanceof CasesError || !(error instanceof Error)) return error;
  const { errcode } = error as Error & { readonly errcode?: number };
  // The lowest byte is the primary code; the rest says more exactly where.
  const known = errcode === undefined ? undefined : codes[errcode & 0xff];
  if (known === undefined) return error;
  const [code, reason] = known;
  return new CasesError(code, `the store ${file} was not changed: ${reason}`, error);
}
