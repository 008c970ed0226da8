/**
 * The store in the browser, in IndexedDB as that of the dispatcher's desk.
 */
import { openDB, type DBSchema } from 'idb';
import type { CounterReturn } from '../return/counter-return.ts';
import type { Shop } from '../shop/shop.ts';
import type { CounterStore } from './counter-store.ts';

interface Shelves extends DBSchema {
  readonly returns: { readonly key: string; readonly value: CounterReturn };
  readonly shop: { readonly key: string; readonly value: Shop };
}

/** The version of the shelves. */
const version = 1;

/** The one shop on its shelf. */
const theShop = 'shop';

/** Opens the store of a name. Rejects where the browser keeps nothing. */
export async function openBrowserCounterStore(name: string): Promise<CounterStore> {
  const db = await openDB<Shelves>(name, version, {
    upgrade: (fresh) => {
      fresh.createObjectStore('returns', { keyPath: 'id' });
      fresh.createObjectStore('shop');
    },
  });
  const channel = new BroadcastChannel(name);
  const tell = (): void => {
    channel.postMessage('changed');
  };
  return {
    read: async () => ({
      returns: await db.getAll('returns'),
      shop: (await db.get('shop', theShop)) ?? null,
    }),
    keep: async (back) => {
      const write = db.transaction('returns', 'readwrite');
      const theirs = await write.store.get(back.id);
      if ((theirs?.version ?? 0) !== back.version - 1) return { type: 'conflict', theirs };
      await Promise.all([write.store.put(back), write.done]);
      tell();
      return { type: 'kept' };
    },
    remove: async (id) => {
      await db.delete('returns', id);
      tell();
    },
    keepShop: async (shop) => {
      await (shop === null ? db.delete('shop', theShop) : db.put('shop', shop, theShop));
      tell();
    },
    watch: (changed) => {
      const listen = (): void => {
        changed();
      };
      channel.addEventListener('message', listen);
      return () => {
        channel.removeEventListener('message', listen);
      };
    },
  };
}
