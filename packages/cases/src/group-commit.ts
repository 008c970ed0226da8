/**
 * What is written in one moment kept together: the disk's flush is what a commit waits for, and one
 * flush serves them all.
 */

/** Takes work that writes one at a time, keeps several at a time. */
export interface GroupCommit<Work, Result> {
  /** Resolves once it is kept; rejects where it alone cannot be kept. */
  readonly commit: (work: Work) => Promise<Result>;
  /** The same for work that takes what others put in: in its group it comes after all of them. */
  readonly commitLast: (work: Work) => Promise<Result>;
  /** Resolves when nothing waits any more. */
  readonly finish: () => Promise<void>;
}

interface Waiting<Work, Result> {
  readonly work: Work;
  readonly resolve: (result: Result) => void;
  readonly reject: (reason: unknown) => void;
}

/** A group holds so many changes at most, so that the first does not wait for long. */
const mostAtOnce = 200;

/**
 * Groups what comes in during one round of the event loop. `keepAll` keeps all in the order
 * given, all or none, and gives what became of each.
 */
export function createGroupCommit<Work, Result>(
  keepAll: (all: readonly Work[]) => readonly Result[],
): GroupCommit<Work, Result> {
  const waiting: Waiting<Work, Result>[] = [];
  const last: Waiting<Work, Result>[] = [];
  let running: Promise<void> | undefined;

  const keepGroup = (group: readonly Waiting<Work, Result>[]): void => {
    try {
      const results = keepAll(group.map(({ work }) => work));
      group.forEach(({ resolve }, index) => resolve(results[index] as Result));
    } catch (error) {
      const [only] = group;
      if (group.length === 1) only?.reject(error);
      // One that cannot be kept must not take the others with it.
      else for (const one of group) keepGroup([one]);
    }
  };

  const run = async (): Promise<void> => {
    await new Promise((resolve) => setImmediate(resolve));
    while (waiting.length + last.length > 0) {
      keepGroup([...waiting.splice(0, mostAtOnce), ...last.splice(0)]);
    }
    running = undefined;
  };

  const added = (to: Waiting<Work, Result>[], work: Work): Promise<Result> =>
    new Promise((resolve, reject) => {
      to.push({ work, resolve, reject });
      running ??= run();
    });

  return {
    commit: (work) => added(waiting, work),
    commitLast: (work) => added(last, work),
    finish: async () => running,
  };
}
