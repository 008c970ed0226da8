/**
 * Where a case stands, read from its machine's value.
 */
import type { Case } from './case.ts';

/** What a case waits for, and the check or interrupt in hand. */
export type Position =
  | { readonly awaiting: 'answer' | 'confirm' | 'wait'; readonly check: string }
  | { readonly awaiting: 'resume'; readonly interrupt: string }
  | { readonly awaiting: 'nothing' };

/** Reads the position of a case. */
export function positionOf(kase: Case): Position {
  if (typeof kase.value !== 'object' || kase.value === null) return { awaiting: 'nothing' };
  const value = kase.value as {
    readonly interrupted?: string;
    readonly case?: Readonly<Record<string, string>>;
  };
  if (value.interrupted !== undefined) return { awaiting: 'resume', interrupt: value.interrupted };
  const place = Object.values(value.case ?? {})[0];
  if (place === undefined) return { awaiting: 'nothing' };
  const [check = '', before] = place.split('--');
  return {
    awaiting: before === undefined ? 'answer' : awaited[before as keyof typeof awaited],
    check,
  };
}

const awaited = { caution: 'confirm', wait: 'wait' } as const;
