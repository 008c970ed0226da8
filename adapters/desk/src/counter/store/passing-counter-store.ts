/**
 * A store for a browser that keeps nothing: the counter works, and forgets when it is closed.
 */
import type { CounterReturn } from '../return/counter-return.ts';
import type { Shop } from '../shop/shop.ts';
import type { CounterStore } from './counter-store.ts';

/** A store in memory. */
export function createPassingCounterStore(): CounterStore {
  const returns = new Map<string, CounterReturn>();
  let shop: Shop | null = null;
  return {
    read: () => Promise.resolve({ returns: [...returns.values()], shop }),
    keep: (back) => {
      returns.set(back.id, back);
      return Promise.resolve({ type: 'kept' });
    },
    remove: (id) => {
      returns.delete(id);
      return Promise.resolve();
    },
    keepShop: (chosen) => {
      shop = chosen;
      return Promise.resolve();
    },
    watch: () => () => undefined,
  };
}
