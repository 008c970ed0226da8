import { expect, test } from 'vitest';
import type { Change, Committed } from './change.ts';
import { createGroupCommit } from './group-commit.ts';

const change = (received: string): Change => ({ at: '2026-01-05T08:00:00Z', received });

test('changes of one moment are kept together, in their order', async () => {
  const groups: (string | undefined)[][] = [];
  const group = createGroupCommit((changes: readonly Change[]) => {
    groups.push(changes.map(({ received }) => received));
    return changes.map((): Committed => ({ type: 'kept' }));
  });
  await Promise.all(['a', 'b', 'c'].map((key) => group.commit(change(key))));
  await group.commit(change('d'));
  expect(groups).toEqual([['a', 'b', 'c'], ['d']]);
});

test('what takes from others comes after them, whenever it was asked for', async () => {
  const groups: (string | undefined)[][] = [];
  const group = createGroupCommit((changes: readonly Change[]) => {
    groups.push(changes.map(({ received }) => received));
    return changes.map((): Committed => ({ type: 'kept' }));
  });
  const [taking, ...others] = [group.commitLast, group.commit, group.commit];
  await Promise.all([taking(change('t')), ...others.map((commit, at) => commit(change(`${at}`)))]);
  expect(groups).toEqual([['0', '1', 't']]);
  await group.commitLast(change('alone'));
  expect(groups.at(-1)).toEqual(['alone']);
});

test('each is told what became of it alone', async () => {
  const group = createGroupCommit((changes: readonly Change[]) =>
    changes.map(({ received }): Committed => ({ type: received === 'b' ? 'repeated' : 'kept' })),
  );
  const types = await Promise.all(['a', 'b'].map((key) => group.commit(change(key))));
  expect(types).toEqual([{ type: 'kept' }, { type: 'repeated' }]);
});

test('one that cannot be kept does not take the others with it', async () => {
  const group = createGroupCommit((changes: readonly Change[]) => {
    if (changes.some(({ received }) => received === 'b')) throw new Error('no room');
    return changes.map((): Committed => ({ type: 'kept' }));
  });
  const all = ['a', 'b', 'c'].map((key) => group.commit(change(key)));
  const settled = await Promise.allSettled(all);
  expect(settled.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
  await group.finish();
});
