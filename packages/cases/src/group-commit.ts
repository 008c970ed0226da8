/**
 * Changes of one moment kept together: the disk's flush is what a commit waits for, and one flush
 * serves them all.
 */
import type { Change, Committed } from './change.ts';

/** Takes changes one at a time, keeps them several at a time. */
export interface GroupCommit {
  /** Resolves once the change is kept, or judged; rejects where it alone cannot be kept. */
  readonly commit: (change: Change) => Promise<Committed>;
  /** Resolves when nothing waits any more. */
  readonly finish: () => Promise<void>;
}

interface Waiting {
  readonly change: Change;
  readonly resolve: (committed: Committed) => void;
  readonly reject: (reason: unknown) => void;
}

/** A group holds so many changes at most, so that the first does not wait for long. */
const mostAtOnce = 200;

/**
 * Groups what comes in during one round of the event loop. `keepAll` keeps changes in the order
 * given, all or none, and gives what became of each.
 */
export function createGroupCommit(
  keepAll: (changes: readonly Change[]) => Promise<readonly Committed[]>,
): GroupCommit {
  const waiting: Waiting[] = [];
  let running: Promise<void> | undefined;

  const keepGroup = async (group: readonly Waiting[]): Promise<void> => {
    try {
      const committed = await keepAll(group.map(({ change }) => change));
      group.forEach(({ resolve }, index) => resolve(committed[index] as Committed));
    } catch (error) {
      const [only] = group;
      if (group.length === 1) only?.reject(error);
      // One that cannot be kept must not take the others with it.
      else for (const one of group) await keepGroup([one]);
    }
  };

  const run = async (): Promise<void> => {
    await new Promise((resolve) => setImmediate(resolve));
    while (waiting.length > 0) await keepGroup(waiting.splice(0, mostAtOnce));
    running = undefined;
  };

  return {
    commit: (change) =>
      new Promise((resolve, reject) => {
        waiting.push({ change, resolve, reject });
        running ??= run();
      }),
    finish: async () => running,
  };
}
