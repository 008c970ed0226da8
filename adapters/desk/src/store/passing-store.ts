/**
 * A store for a browser that keeps nothing: the desk works, and forgets when it is closed.
 */
import type { Caller, DeskCase } from '../case/desk-case.ts';
import type { DeskOutcome } from '../case/outcome.ts';
import type { DeskStore } from './desk-store.ts';

/** A store in memory. */
export function createPassingStore(): DeskStore {
  const cases = new Map<string, DeskCase>();
  const callers = new Map<string, Caller>();
  const outcomes: DeskOutcome[] = [];
  return {
    read: () =>
      Promise.resolve({
        cases: [...cases.values()],
        callers: Object.fromEntries(callers),
        outcomes: [...outcomes],
      }),
    keep: (kase) => {
      cases.set(kase.id, kase);
      return Promise.resolve({ type: 'kept' });
    },
    keepCaller: (id, caller) => {
      callers.set(id, caller);
      return Promise.resolve();
    },
    close: (id, outcome) => {
      cases.delete(id);
      callers.delete(id);
      if (outcome !== undefined) outcomes.push(outcome);
      return Promise.resolve();
    },
    reopen: (kase, caller, outcome) => {
      cases.set(kase.id, kase);
      callers.set(kase.id, caller);
      const counted = outcomes.findIndex(({ id }) => id === outcome);
      if (counted >= 0) outcomes.splice(counted, 1);
      return Promise.resolve();
    },
    watch: () => () => undefined,
  };
}
