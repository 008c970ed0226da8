import type { Bound } from '../conformance/bound.ts';

/** A limit as computed: its bound, or the names of what is missing to compute it. */
export type LimitResult =
  | { readonly type: 'bound'; readonly bound: Bound }
  | { readonly type: 'unknown'; readonly missing: readonly string[] };

/** The result for a limit that is known. */
export function knownLimit(bound: Bound): LimitResult {
  return { type: 'bound', bound };
}

/** The result for a limit that cannot be given until what is named is known. */
export function unknownLimit(...missing: readonly string[]): LimitResult {
  return { type: 'unknown', missing };
}
