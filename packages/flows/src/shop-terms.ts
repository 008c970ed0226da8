/**
 * The terms of a shop, read from disk.
 */
import { readFileSync } from 'node:fs';
import type { Policy } from '@keyturn/core';
import { loadPolicy, prettifyIssues } from '@keyturn/core/load';

/** A file of terms cannot be used; the message says where and why. */
export class TermsError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'TermsError';
  }
}

/**
 * Reads and checks the terms on which a shop takes parts back, YAML or JSON.
 *
 * @throws TermsError when there is no such file, or it has issues.
 */
export function shopTerms(path: string): Policy {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (cause) {
    throw new TermsError(`${path}: cannot be read: ${(cause as Error).message}`);
  }
  const result = loadPolicy({ path, text });
  if (result.type === 'issues') throw new TermsError(prettifyIssues(result.issues));
  return result.policy;
}
