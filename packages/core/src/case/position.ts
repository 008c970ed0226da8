/**
 * Where a case stands, read from its machine's value.
 */
import type { Case } from './case.ts';

/** What a case waits for, and the check or interrupt in hand. */
export type Position =
  | { readonly awaiting: 'answer' | 'confirm' | 'wait'; readonly check: string }
  | { readonly awaiting: 'resume'; readonly interrupt: string }
  | { readonly awaiting: 'nothing' };

const awaited = { caution: 'confirm', wait: 'wait', question: 'answer' } as const;

/** Reads the position of a case. */
export function positionOf(kase: Case): Position {
  if (typeof kase.value !== 'object' || kase.value === null) return { awaiting: 'nothing' };
  const value = kase.value as {
    readonly interrupted?: string;
    readonly case?: Readonly<Record<string, Readonly<Record<string, keyof typeof awaited>>>>;
  };
  if (value.interrupted !== undefined) return { awaiting: 'resume', interrupt: value.interrupted };
  const [stage] = Object.values(value.case ?? {});
  const [place] = Object.entries(stage ?? {});
  return place === undefined
    ? { awaiting: 'nothing' }
    : { awaiting: awaited[place[1]], check: place[0] };
}
