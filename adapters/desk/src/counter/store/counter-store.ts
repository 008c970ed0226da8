/**
 * Where the counter keeps its returns: the seam at which a server comes in. The page knows no other.
 */
import type { CounterReturn } from '../return/counter-return.ts';
import type { Shop } from '../shop/shop.ts';

/** All that is kept. */
export interface CounterBook {
  readonly returns: readonly CounterReturn[];
  /** The shop whose file was chosen last; null where none was. */
  readonly shop: Shop | null;
}

/** Kept; or not, since another window kept another version first: theirs, gone where it was removed. */
export type KeptReturn =
  | { readonly type: 'kept' }
  | { readonly type: 'conflict'; readonly theirs: CounterReturn | undefined };

/** A store of returns. Every change is whole or not at all. */
export interface CounterStore {
  readonly read: () => Promise<CounterBook>;
  /** Keeps a return whose version is one more than that of the one kept; a new one has version 1. */
  readonly keep: (back: CounterReturn) => Promise<KeptReturn>;
  readonly remove: (id: string) => Promise<void>;
  readonly keepShop: (shop: Shop | null) => Promise<void>;
  /** Calls `changed` whenever another window has changed something. Gives what ends that. */
  readonly watch: (changed: () => void) => () => void;
}
