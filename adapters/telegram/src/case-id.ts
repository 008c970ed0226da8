import { randomUUID } from 'node:crypto';

/**
 * A new name for a case: a UUID that begins with the time, version 7 of RFC 9562. Cases that go on
 * at the same time then lie side by side in a store, and fewer pages of it are written.
 */
export function newCaseId(at: Date): string {
  const time = at.getTime().toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${randomUUID().slice(15)}`;
}
