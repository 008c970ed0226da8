import type { Input } from '@keyturn/core';

/** What tapping a key does. */
export type Tap =
  | { readonly type: 'input'; readonly input: Input }
  /** Of several that may hold, this one is picked, or no longer is. */
  | { readonly type: 'pick'; readonly option: string }
  /** Those that are picked are the answer. */
  | { readonly type: 'take'; readonly check: string }
  | { readonly type: 'begin' };
