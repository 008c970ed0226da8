import type { Speaker, Understood } from '@keyturn/language';
import { expect, test } from 'vitest';
import { heardBefore } from './heard-before.ts';

type Hearing = Parameters<Speaker['understand']>[1];

const waitingFor = (more: Partial<Hearing>): Hearing => ({
  ...{ awaiting: 'answer', check: 'battery-rest', checks: {}, interrupts: [], answered: [] },
  ...{ kit: [], nominal: 12, lamp: false, today: '2026-01-05' },
  ...more,
});

/** Understands anew each time, and counts. */
function counting() {
  let count = 0;
  const understand = heardBefore((given): Understood => {
    count += 1;
    return { type: 'unclear', code: 'not-understood', given, possible: [] };
  });
  const timesFor = (text: string, hearing: Hearing): number => {
    const before = count;
    expect(understand(text, hearing)).toMatchObject({ given: text });
    return count - before;
  };
  return timesFor;
}

test('what was said before, where the same was waited for, is understood already', () => {
  const timesFor = counting();
  expect(timesFor('12.4', waitingFor({}))).toBe(1);
  expect(timesFor('12.4', waitingFor({}))).toBe(0);
  expect(timesFor('12.5', waitingFor({}))).toBe(1);
});

test.each<[string, Partial<Hearing>]>([
  ['another check', { check: 'headlights' }],
  ['a confirmation', { awaiting: 'confirm' }],
  ['the same later in a case', { answered: ['headlights'] }],
  ['the same where a choice stands', { said: { headlights: ['dim'] } }],
  ['the same with other kit', { kit: ['meter'] }],
  ['the same of a lorry', { nominal: 24 }],
  ['the same of a test lamp', { lamp: true }],
  ['the same on another day', { today: '2026-01-06' }],
])('where %s is waited for it is understood anew', (_, more) => {
  const timesFor = counting();
  expect(timesFor('yes', waitingFor({}))).toBe(1);
  expect(timesFor('yes', waitingFor(more))).toBe(1);
});

test('of what is said no more is remembered than some thousand short texts', () => {
  const timesFor = counting();
  const long = 'it clicked once yesterday and today it does nothing';
  expect([timesFor(long, waitingFor({})), timesFor(long, waitingFor({}))]).toEqual([1, 1]);
  for (let count = 0; count <= 2000; count += 1) timesFor(`${String(count)} V`, waitingFor({}));
  expect(timesFor('2000 V', waitingFor({}))).toBe(0);
  expect(timesFor('0 V', waitingFor({}))).toBe(1);
});
