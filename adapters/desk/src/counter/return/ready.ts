/**
 * Since when a part that waits stands here, and from when on it can be gone on with, by the clock of
 * this desk.
 */
import { readyFrom } from '@keyturn/sheets';
import type { CounterReturn } from './counter-return.ts';

/** Since when it has stood here, ISO 8601: put aside, or come over the counter. */
export function hereSince({ aside, openedAt }: CounterReturn): string {
  return aside ?? openedAt;
}

/**
 * From when on it can be gone on with at the earliest, ISO 8601; undefined where it does not wait, or
 * nobody can say how long.
 */
export function readyAt(back: CounterReturn): string | undefined {
  const { case: kase } = back.sitting;
  const isWaiting = back.aside !== null || kase.state.decision !== null;
  return isWaiting ? readyFrom(kase, hereSince(back)) : undefined;
}
