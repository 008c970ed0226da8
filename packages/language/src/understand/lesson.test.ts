import { expect, test } from 'vitest';
import { type Learning, lessonOf } from './lesson.ts';

/** Counts how often each step is taken. */
function counted() {
  const taken: string[] = [];
  const learn = function* (): Learning<string> {
    for (const step of ['read', 'fit']) {
      taken.push(step);
      yield;
    }
    return 'learned';
  };
  return { taken, lesson: lessonOf(learn) };
}

test('is learned when it is first asked for, and once', () => {
  const { taken, lesson } = counted();
  expect(taken).toEqual([]);
  expect([lesson(), lesson()]).toEqual(['learned', 'learned']);
  expect(taken).toEqual(['read', 'fit']);
});

test('is learned step by step ahead of that', () => {
  const { taken, lesson } = counted();
  const ahead = lesson.ahead()[Symbol.iterator]();
  ahead.next();
  expect(taken).toEqual(['read']);
  for (let done = false; !done;) done = ahead.next().done === true;
  expect(taken).toEqual(['read', 'fit']);
  expect(lesson()).toBe('learned');
  expect(taken).toEqual(['read', 'fit']);
});

test('learns only what is left where somebody asks in between, and nothing more after that', () => {
  const { taken, lesson } = counted();
  const ahead = lesson.ahead()[Symbol.iterator]();
  ahead.next();
  expect(lesson()).toBe('learned');
  expect(taken).toEqual(['read', 'fit']);
  expect(ahead.next().done).toBe(true);
  expect([...lesson.ahead()]).toEqual([]);
});
