import { createHash } from 'node:crypto';

/** A short digest of a text, by which damage to it is noticed: the start of its SHA-256, in hex. */
export function digestOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}
