import type { Flow } from './flow.ts';
import type { Issue } from './issue.ts';

/** A flow, or everything that is wrong with its files. */
export type LoadResult =
  | { readonly type: 'flow'; readonly flow: Flow }
  | { readonly type: 'issues'; readonly issues: readonly Issue[] };
