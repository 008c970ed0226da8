import { expect, test } from 'vitest';
import { newCaseId } from './case-id.ts';

test('a case is named by its time first, as RFC 9562 has it in its example of version 7', () => {
  const id = newCaseId(new Date('2022-02-22T19:22:22.000Z'));
  expect(id).toMatch(/^017f22e2-79b0-7[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/);
});

test('no two have the same name, and a later one comes after an earlier one', () => {
  const times = Array.from({ length: 1000 }, (_, index) => new Date(1_767_000_000_000 + index));
  const ids = times.map(newCaseId);
  expect(ids.toSorted()).toEqual(ids);
  const atOnce = Array.from({ length: 1000 }, () => newCaseId(times[0]!));
  expect(new Set(atOnce).size).toBe(1000);
});
