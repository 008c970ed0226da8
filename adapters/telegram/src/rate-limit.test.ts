import { expect, test } from 'vitest';
import { createRateLimit } from './rate-limit.ts';

test('a person may send so much at once, is told once, and may go on after a while', () => {
  const { ask: allowance } = createRateLimit({ burst: 2, perSecond: 0.5 });
  expect([1, 2, 3, 4].map(() => allowance(1, 0))).toEqual(['take', 'take', 'tell', 'drop']);
  expect(allowance(2, 0)).toBe('take');
  expect(allowance(1, 1000)).toBe('drop');
  expect(allowance(1, 2000)).toBe('take');
  expect(allowance(1, 2000)).toBe('tell');
});

test('a clock that is set back gives nothing, and takes nothing away', () => {
  const { ask: allowance } = createRateLimit({ burst: 1, perSecond: 1 });
  expect(allowance(1, 10_000)).toBe('take');
  expect(allowance(1, 0)).toBe('tell');
  expect(allowance(1, 1000)).toBe('take');
});

test('persons who wrote long ago are forgotten first', () => {
  const { ask: allowance } = createRateLimit({ burst: 1, perSecond: 0.001 });
  for (let person = 0; person <= 10_000; person += 1) allowance(person, 0);
  expect(allowance(0, 0)).toBe('take');
  expect(allowance(10_000, 0)).toBe('tell');
});

test('what comes again because it could not be kept is not counted again', () => {
  const { ask, giveBack } = createRateLimit({ burst: 1, perSecond: 0.001 });
  for (let time = 0; time < 100; time += 1) {
    expect(ask(1, time)).toBe('take');
    giveBack(1);
  }
  expect(ask(1, 100)).toBe('take');
  expect(ask(1, 101)).toBe('tell');
});
