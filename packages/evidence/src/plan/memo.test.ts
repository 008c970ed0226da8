import { expect, test } from 'vitest';
import { createMemo, isKnown, placeOf, remember } from './memo.ts';

test('every key keeps its own value, also when there are many and they differ in few bits', () => {
  const memo = createMemo(2);
  const count = 20_000;
  const keyOf = (index: number): Float64Array =>
    Float64Array.of((index % 100) * 3 ** 20, Math.floor(index / 100) * 2 ** 33);
  for (let index = 0; index < count; index += 1) {
    remember(memo, keyOf(index), { value: index, exact: index % 2 === 0, option: index % 7 });
  }
  expect(memo.size).toBe(count);
  for (let index = 0; index < count; index += 1) {
    const place = placeOf(memo, keyOf(index));
    expect(memo.values[place]).toBe(index);
    expect(memo.exact[place]).toBe(index % 2 === 0 ? 1 : 0);
    expect(memo.options[place]).toBe(index % 7);
  }
  expect(isKnown(memo, placeOf(memo, Float64Array.of(1, 1)))).toBe(false);
});

test('a later value replaces an earlier one', () => {
  const memo = createMemo(1);
  const key = Float64Array.of(5);
  remember(memo, key, { value: 1, exact: false, option: -1 });
  remember(memo, key, { value: 2, exact: true, option: 3 });
  expect(memo.size).toBe(1);
  const place = placeOf(memo, key);
  expect(memo.values[place]).toBe(2);
  expect(memo.options[place]).toBe(3);
});
