import { expect, test } from 'vitest';
import { createOrdered } from './ordered.ts';

const soon = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

test('work of one chat runs one after another, in the order of its numbers', async () => {
  const ordered = createOrdered();
  const log: string[] = [];
  const work = (name: string) => async () => {
    log.push(`${name} begins`);
    await soon();
    log.push(`${name} ends`);
  };
  await Promise.all([2, 1, 3].map((number) => ordered.run('a', number, work(String(number)))));
  expect(log).toEqual(['1', '2', '3'].flatMap((name) => [`${name} begins`, `${name} ends`]));
});

test('work of several chats runs side by side', async () => {
  const ordered = createOrdered();
  const log: string[] = [];
  await Promise.all(
    ['a', 'b'].map((key) =>
      ordered.run(key, 1, async () => {
        log.push(`${key} begins`);
        await soon();
        log.push(`${key} ends`);
      }),
    ),
  );
  expect(log.slice(0, 2)).toEqual(['a begins', 'b begins']);
});

test('work that fails fails alone', async () => {
  const ordered = createOrdered();
  const failing = ordered.run('a', 1, () => Promise.reject(new Error('no room')));
  const next = ordered.run('a', 2, () => Promise.resolve('done'));
  await expect(failing).rejects.toThrow('no room');
  expect(await next).toBe('done');
});
