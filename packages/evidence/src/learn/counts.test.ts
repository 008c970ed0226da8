import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addOutcome,
  answerCountsOf,
  emptyCounts,
  mergeCounts,
  pooledCounts,
  readCounts,
  refuseOtherFlow,
  removeOutcome,
} from '../index.ts';
import type { Counts, CountsResult, Outcome } from '../index.ts';

const flow = { id: 'no-start', version: '1' };
const none = emptyCounts(flow);

const worn: Outcome = {
  id: 'a1',
  flow,
  role: 'mechanic',
  channel: 'terminal',
  cause: 'battery-worn',
  answers: { lamps: ['dim'], history: ['lights-left-on', 'damp'], 'battery-rest/2': ['ready'] },
};
const again: Outcome = { ...worn, id: 'a2', answers: { lamps: ['bright'], history: ['damp'] } };
const driver: Outcome = { ...worn, id: 'a3', role: 'driver', cause: 'starter-motor' };

function got(result: CountsResult): Counts {
  if (result.type === 'refused') throw new Error(result.message);
  return result.counts;
}

const all = (outcomes: readonly Outcome[]): Counts =>
  outcomes.reduce((counts, outcome) => got(addOutcome(counts, outcome)), none);

const text = (counts: Counts): string => JSON.stringify(counts);

/** Outcomes each of its own id, over names of which some are those of every object. */
const name = fc.constantFrom('constructor', 'battery-worn', 'b', '7', 'to-string', 'has-fuel');
const outcomes: fc.Arbitrary<readonly Outcome[]> = fc
  .array(
    fc.record({
      role: fc.constantFrom('driver', 'mechanic', 'constructor'),
      channel: fc.constantFrom('terminal', 'other'),
      cause: name,
      answers: fc.dictionary(name, fc.array(name, { maxLength: 3 }), { noNullPrototype: true }),
    }),
    { maxLength: 12 },
  )
  .map((some) => some.map((outcome, index) => ({ ...outcome, id: `o${index}`, flow })));

describe('counts', () => {
  test('hold each confirmed cause by role and channel, and each question with its answers', () => {
    expect(all([worn, again, driver]).groups).toEqual({
      driver: {
        terminal: {
          'starter-motor': {
            confirmed: 1,
            checks: {
              'battery-rest/2': { done: 1, answers: { ready: 1 } },
              history: { done: 1, answers: { damp: 1, 'lights-left-on': 1 } },
              lamps: { done: 1, answers: { dim: 1 } },
            },
          },
        },
      },
      mechanic: {
        terminal: {
          'battery-worn': {
            confirmed: 2,
            checks: {
              'battery-rest/2': { done: 1, answers: { ready: 1 } },
              history: { done: 2, answers: { damp: 2, 'lights-left-on': 1 } },
              lamps: { done: 2, answers: { bright: 1, dim: 1 } },
            },
          },
        },
      },
    });
  });

  test('are written alike in whatever order the outcomes came', () => {
    expect(text(all([driver, again, worn]))).toBe(text(all([worn, again, driver])));
  });

  test('are pooled over all, or told by role or channel', () => {
    const counts = all([worn, again, driver, { ...worn, id: 'a4', role: 'driver' }]);
    const confirmed = (group?: object): unknown =>
      Object.fromEntries(
        Object.entries(pooledCounts(counts, group)).map(([id, seen]) => [id, seen.confirmed]),
      );
    expect(confirmed()).toEqual({ 'battery-worn': 3, 'starter-motor': 1 });
    expect(confirmed({ role: 'driver' })).toEqual({ 'battery-worn': 1, 'starter-motor': 1 });
    expect(confirmed({ channel: 'other' })).toEqual({});
    const pooled = pooledCounts(counts);
    expect(answerCountsOf(pooled, 'lamps', 'battery-worn')).toEqual({
      done: 3,
      answers: { bright: 1, dim: 2 },
    });
    expect(answerCountsOf(pooled, 'constructor', 'constructor')).toEqual({ done: 0, answers: {} });
  });

  test('come back to what they were when any outcomes are added and taken back in any order', () => {
    fc.assert(
      fc.property(outcomes, outcomes, fc.nat(), (kept, passing, turn) => {
        const before = all(kept);
        const extra = passing.map((outcome) => ({ ...outcome, id: `x-${outcome.id}` }));
        const full = extra.reduce((counts, outcome) => got(addOutcome(counts, outcome)), before);
        if (extra.length > 0) expect(text(full)).not.toBe(text(before));
        const pivot = extra.length === 0 ? 0 : turn % extra.length;
        const order = [...extra.slice(pivot).reverse(), ...extra.slice(0, pivot)];
        const after = order.reduce((counts, outcome) => got(removeOutcome(counts, outcome)), full);
        expect(text(after)).toBe(text(before));
      }),
    );
  });

  test('of two halves add up to the counts of the whole, either way round', () => {
    fc.assert(
      fc.property(outcomes, fc.nat(), (some, cut) => {
        const half = some.length === 0 ? 0 : cut % some.length;
        const [left, right] = [all(some.slice(0, half)), all(some.slice(half))];
        expect(text(got(mergeCounts(left, right)))).toBe(text(all(some)));
        expect(text(got(mergeCounts(right, left)))).toBe(text(all(some)));
      }),
    );
  });

  test('are read back from JSON as they were', () => {
    fc.assert(
      fc.property(outcomes, (some) => {
        const read = readCounts(JSON.parse(text(all(some))));
        expect(read).toEqual({ type: 'counts', counts: all(some) });
      }),
    );
  });

  test('are read alike in whatever order their names stand', () => {
    const counts = all([worn, again, driver]);
    const turned = (value: unknown): unknown =>
      typeof value === 'object'
        ? Object.fromEntries(
            Object.entries(value as object)
              .reverse()
              .map(([key, inner]: [string, unknown]) => [key, turned(inner)]),
          )
        : value;
    expect(JSON.stringify(turned(counts))).not.toBe(text(counts));
    const read = readCounts(turned(counts));
    expect(read.type === 'counts' && text(read.counts)).toBe(text(counts));
  });

  test('hold ids and whole numbers only', () => {
    const leaves = (value: unknown): unknown[] =>
      typeof value === 'object' ? Object.values(value as object).flatMap(leaves) : [value];
    expect(leaves(all([worn, driver]).groups).every(Number.isInteger)).toBe(true);
    expect(Object.values(all([worn]).outcomes)).toEqual([expect.stringMatching(/^[\da-f]{8}$/)]);
  });
});

describe('counts are left as they were, with the reason,', () => {
  const counts = all([worn]);

  test('for an outcome of another version, both named', () => {
    const other = { ...again, flow: { id: 'no-start', version: '2' } };
    const refusal = {
      type: 'refused',
      code: 'other-flow',
      message: 'the counts are of no-start 1, not of no-start 2',
    };
    expect(addOutcome(counts, other)).toEqual(refusal);
    expect(removeOutcome(counts, other)).toEqual(refusal);
    expect(mergeCounts(counts, emptyCounts(other.flow))).toEqual(refusal);
    expect(refuseOtherFlow(counts, other.flow)).toEqual(refusal);
    expect(refuseOtherFlow(counts, { id: 'no-charge', version: '1' })).toMatchObject({
      code: 'other-flow',
    });
    expect(refuseOtherFlow(counts, flow)).toBeUndefined();
  });

  test('for an outcome counted already', () => {
    expect(addOutcome(counts, { ...again, id: 'a1' })).toMatchObject({ code: 'already-counted' });
    expect(mergeCounts(counts, all([again, worn]))).toMatchObject({
      code: 'already-counted',
      message: 'counted already: 1 of the 2 outcomes, the first is a1',
    });
  });

  test.each([
    ['an outcome that was never added', { ...again, id: 'constructor' }],
    ['another cause under an id that was', { ...worn, cause: 'starter-motor' }],
    ['another answer under an id that was', { ...worn, answers: { lamps: ['bright'] } }],
    ['another role under an id that was', { ...worn, role: 'driver' }],
  ])('when %s is taken back', (_, outcome) => {
    expect(removeOutcome(counts, outcome)).toMatchObject({ code: 'not-counted' });
  });

  test.each([
    ['a cause in words', { ...again, cause: 'The battery of Mrs Example' }],
    ['a time as a role', { ...again, role: '2026-01-05T08:00:00Z' }],
    ['an answer in words', { ...again, answers: { lamps: ['very dim, says the owner'] } }],
    ['a question in words', { ...again, answers: { 'Lamps?': ['dim'] } }],
    ['an id that is too long', { ...again, id: 'a'.repeat(81) }],
  ])('for %s', (_, outcome) => {
    expect(addOutcome(counts, outcome)).toMatchObject({ code: 'not-an-id' });
  });
});

describe('what is no counts is refused by its place:', () => {
  const good = JSON.parse(text(all([worn, again]))) as Record<string, never>;
  const changed = (path: readonly string[], value: unknown): unknown => {
    const copy = structuredClone(good) as Record<string, unknown>;
    const last = path.at(-1) ?? '';
    const holder = path
      .slice(0, -1)
      .reduce((inside, key) => inside[key] as Record<string, unknown>, copy);
    if (value === undefined) Reflect.deleteProperty(holder, last);
    else holder[last] = value;
    return copy;
  };
  const fault = ['groups', 'mechanic', 'terminal', 'battery-worn'];
  test.each([
    ['another format', ['format'], 2, 'this reads 1'],
    ['no flow', ['flow'], undefined, 'flow is missing'],
    ['a version in words', ['flow', 'version'], 'one or two', 'version'],
    ['a flow that is a list', ['flow'], [], 'expected an object'],
    ['a mark that is none', ['outcomes', 'a1'], 1, 'eight figures'],
    [
      'an outcome more than causes',
      ['outcomes', 'a9'],
      '00000000',
      'add up to 2, but the outcomes are 3',
    ],
    ['a role in words', ['groups', 'Me'], {}, 'not an id'],
    ['a field more', ['note'], 'hello', 'nothing of that name'],
    ['a count below 1', [...fault, 'checks', 'lamps', 'done'], 0, 'above 0'],
    ['half a case', [...fault, 'confirmed'], 1.5, 'whole number'],
    ['more checks than cases', [...fault, 'checks', 'lamps', 'done'], 3, 'but there are 2'],
    [
      'more answers than checks',
      [...fault, 'checks', 'lamps', 'answers', 'dim'],
      3,
      'but there are 2',
    ],
  ])('%s', (title, path, value, reason) => {
    const read = readCounts(changed(path, value));
    if (read.type !== 'problems') throw new Error('it was read');
    expect(read.problems.map((problem) => problem.reason).join('\n')).toContain(reason);
    const [problem] = read.problems;
    // Which outcome is one too many cannot be told.
    const place = title === 'an outcome more than causes' ? ['groups'] : path;
    expect(place.slice(0, problem?.path.length)).toEqual(problem?.path);
  });

  test.each([[null], [[]], ['counts'], [{}], [{ format: 1, groups: { __proto__: null } }]])(
    '%j',
    (data) => {
      expect(readCounts(data).type).toBe('problems');
    },
  );
});
