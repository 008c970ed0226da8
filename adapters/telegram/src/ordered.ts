/**
 * Work in order within a chat, side by side across chats.
 */

interface Waiting {
  readonly number: number;
  readonly run: () => Promise<void>;
}

/** Runs work one after another under each key; what waits is taken in the order of its numbers. */
export interface Ordered {
  readonly run: <Result>(
    key: string,
    number: number,
    work: () => Promise<Result>,
  ) => Promise<Result>;
}

/** Makes an order. */
export function createOrdered(): Ordered {
  const queues = new Map<string, Waiting[]>();

  const drain = async (key: string, queue: Waiting[]): Promise<void> => {
    // What came in at the same moment is put in order before the first is taken.
    await Promise.resolve();
    for (let next = queue.shift(); next !== undefined; next = queue.shift()) await next.run();
    queues.delete(key);
  };

  return {
    run: (key, number, work) =>
      new Promise((resolve, reject) => {
        const known = queues.get(key);
        const queue = known ?? [];
        queue.push({ number, run: () => work().then(resolve, reject) });
        queue.sort((one, other) => one.number - other.number);
        if (known !== undefined) return;
        queues.set(key, queue);
        void drain(key, queue);
      }),
  };
}
