import { expect, test } from 'vitest';
import { CasesError } from './cases-error.ts';
import { postgresError } from './postgres-error.ts';

const failure = (code: string) => Object.assign(new Error('failed'), { code });

// SQLSTATE classes: PostgreSQL documentation, appendix A.
test.each([
  ['53100', 'full'],
  ['25006', 'read-only'],
  ['08006', 'unreachable'],
  ['57P01', 'unreachable'],
  ['28P01', 'unreachable'],
  ['3D000', 'unreachable'],
  ['XX001', 'damaged'],
  ['ECONNREFUSED', 'unreachable'],
  ['ENOTFOUND', 'unreachable'],
])('%s means %s', (code, meaning) => {
  expect(postgresError(failure(code))).toMatchObject({ name: 'CasesError', code: meaning });
});

test.each([
  'Connection terminated unexpectedly',
  'Client has encountered a connection error and is not queryable',
])('a connection that breaks while it is used means unreachable: %s', (message) => {
  expect(postgresError(new Error(message))).toMatchObject({ code: 'unreachable' });
});

test('what is not known is left as it is', () => {
  const own = new CasesError('closed', 'closed');
  expect(postgresError(own)).toBe(own);
  const other = failure('42601');
  expect(postgresError(other)).toBe(other);
});
