import { CasesError, type CasesErrorCode } from './cases-error.ts';

/** Classes of SQLSTATE, as PostgreSQL's documentation lists them (appendix A), and what they mean here. */
const classes: Readonly<Record<string, readonly [CasesErrorCode, string]>> = {
  '08': ['unreachable', 'the connection was lost'],
  '25': ['read-only', 'the database may not be written to'],
  '28': ['unreachable', 'the database did not accept the user or the password'],
  '3D': ['unreachable', 'there is no such database'],
  '53': ['full', 'the database server has no room left'],
  '57': ['unreachable', 'the database server is stopping or starting'],
  XX: ['damaged', 'the database is damaged'],
};

/** Failures of the network, by the names that the operating system has for them. */
const network = /^E(?:CONN|HOST|NET|PIPE|TIMEDOUT|AI_)|^ENOTFOUND$/;

/** What the driver says, without a code, of a connection that broke. */
const cut = /^Connection terminated|is not queryable$|^timeout exceeded when trying to connect/;

/** What a failure of PostgreSQL means for whoever uses the store; anything else as it is. */
export function postgresError(error: unknown): unknown {
  if (error instanceof CasesError || !(error instanceof Error)) return error;
  const { code } = error as Error & { readonly code?: string };
  const isCut = cut.test(error.message);
  const known =
    isCut || (code !== undefined && network.test(code))
      ? (['unreachable', 'the database cannot be reached'] as const)
      : classes[code?.slice(0, 2) ?? ''];
  if (known === undefined) return error;
  const [meaning, reason] = known;
  return new CasesError(meaning, `it is not known to be kept: ${reason}`, error);
}
