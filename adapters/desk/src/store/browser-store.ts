/**
 * The store in the browser: IndexedDB, since two hundred cases are more than plain storage holds;
 * through `idb`, which is a kilobyte and gives promises where IndexedDB has events. Another window
 * of the same browser is a second desk.
 */
import { openDB, type DBSchema } from 'idb';
import type { Caller, DeskCase } from '../case/desk-case.ts';
import type { DeskOutcome } from '../case/outcome.ts';
import type { DeskStore } from './desk-store.ts';

interface Shelves extends DBSchema {
  readonly cases: { readonly key: string; readonly value: DeskCase };
  /** Apart from the cases, so that what is technical can be passed on without the person. */
  readonly callers: { readonly key: string; readonly value: Caller };
  readonly outcomes: { readonly key: string; readonly value: DeskOutcome };
}

/** The version of the shelves. */
const version = 1;

/** Opens the store of a name. Rejects where the browser keeps nothing. */
export async function openBrowserStore(name: string): Promise<DeskStore> {
  const db = await openDB<Shelves>(name, version, {
    upgrade: (fresh) => {
      fresh.createObjectStore('cases', { keyPath: 'id' });
      fresh.createObjectStore('callers');
      fresh.createObjectStore('outcomes', { keyPath: 'id' });
    },
  });
  const channel = new BroadcastChannel(name);
  const tell = (): void => {
    channel.postMessage('changed');
  };
  return {
    read: async () => {
      const read = db.transaction(['cases', 'callers', 'outcomes']);
      const [cases, ids, callers, outcomes] = await Promise.all([
        read.objectStore('cases').getAll(),
        read.objectStore('callers').getAllKeys(),
        read.objectStore('callers').getAll(),
        read.objectStore('outcomes').getAll(),
      ]);
      return {
        cases,
        callers: Object.fromEntries(ids.map((id, index) => [id, callers[index] ?? {}])),
        outcomes,
      };
    },
    keep: async (kase) => {
      const write = db.transaction('cases', 'readwrite');
      const theirs = await write.store.get(kase.id);
      if ((theirs?.version ?? 0) !== kase.version - 1) return { type: 'conflict', theirs };
      await Promise.all([write.store.put(kase), write.done]);
      tell();
      return { type: 'kept' };
    },
    keepCaller: async (id, caller) => {
      await db.put('callers', caller, id);
      tell();
    },
    close: async (id, outcome) => {
      const write = db.transaction(['cases', 'callers', 'outcomes'], 'readwrite');
      await Promise.all([
        write.objectStore('cases').delete(id),
        write.objectStore('callers').delete(id),
        ...(outcome === undefined ? [] : [write.objectStore('outcomes').put(outcome)]),
        write.done,
      ]);
      tell();
    },
    reopen: async (kase, caller, outcome) => {
      const write = db.transaction(['cases', 'callers', 'outcomes'], 'readwrite');
      await Promise.all([
        write.objectStore('cases').put(kase),
        write.objectStore('callers').put(caller, kase.id),
        ...(outcome === undefined ? [] : [write.objectStore('outcomes').delete(outcome)]),
        write.done,
      ]);
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
