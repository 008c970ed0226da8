import { expect, test } from 'vitest';
import { defineProblem, EvidenceError } from '../index.ts';
import type { CheckDefinition, ProblemDefinition } from '../index.ts';

const check: CheckDefinition = {
  id: 'lamps',
  cost: 1,
  outcomes: ['dim', 'bright'],
  likelihoods: [
    [0.9, 0.1],
    [0.2, 0.8],
  ],
};

const sound: ProblemDefinition = {
  mode: 'terminal',
  faults: [
    { id: 'battery', prior: 3 },
    { id: 'starter', prior: 1 },
  ],
  verdicts: [{ id: 'charge', cost: 10, wrongPenalty: 60, fixes: ['battery'] }],
  setups: [{ id: 'meter', cost: 4 }],
  checks: [check, { ...check, id: 'drop', setups: ['meter'], safety: 2 }],
};

test('a problem is laid out by positions, its priors brought to a sum of 1', () => {
  const problem = defineProblem(sound);
  expect([...problem.priors]).toEqual([0.75, 0.25]);
  expect(problem.checks).toEqual(['lamps', 'drop']);
  expect([...(problem.likelihoods[0] ?? [])]).toEqual([0.9, 0.2, 0.1, 0.8]);
  expect([...problem.fixes]).toEqual([1, 0]);
  expect([...problem.checkSetups]).toEqual([0, 1]);
  expect([...problem.checkSafety]).toEqual([0, 2]);
  expect(Object.isFrozen(problem)).toBe(true);
});

const withCheck = (change: Partial<CheckDefinition>): Partial<ProblemDefinition> => ({
  checks: [{ ...check, ...change }],
});

test.each<[title: string, change: Partial<ProblemDefinition>, code: string, facts: object]>([
  ['no fault', { faults: [] }, 'no-hypotheses', {}],
  ['no verdict', { verdicts: [] }, 'missing-part', { what: 'verdict' }],
  [
    'one fault twice',
    {
      faults: [
        { id: 'battery', prior: 1 },
        { id: 'battery', prior: 1 },
      ],
    },
    'duplicate-id',
    { what: 'fault', id: 'battery' },
  ],
  ['one check twice', { checks: [check, check] }, 'duplicate-id', { what: 'check', id: 'lamps' }],
  ['a check without outcomes', withCheck({ outcomes: [] }), 'missing-part', { check: 'lamps' }],
  [
    'one outcome twice',
    withCheck({ outcomes: ['dim', 'dim'] }),
    'duplicate-id',
    { what: 'outcome of lamps', id: 'dim' },
  ],
  [
    'a verdict for an unknown fault',
    { verdicts: [{ id: 'tow', cost: 1, wrongPenalty: 0, fixes: ['pump'] }] },
    'unknown-id',
    { what: 'fault', id: 'pump', where: 'verdict tow' },
  ],
  [
    'a setup that is not there',
    withCheck({ setups: ['clamp'] }),
    'unknown-id',
    { what: 'setup', id: 'clamp', where: 'check lamps' },
  ],
  [
    'a requirement of an unknown check',
    withCheck({ requires: [{ check: 'rest', outcomes: ['dim'] }] }),
    'unknown-id',
    { what: 'check', id: 'rest' },
  ],
  [
    'a requirement of an unknown outcome',
    withCheck({ requires: [{ check: 'lamps', outcomes: ['off'] }] }),
    'unknown-id',
    { what: 'outcome of lamps', id: 'off' },
  ],
  ['a cost below 0', withCheck({ cost: -1 }), 'out-of-range', { check: 'lamps', value: -1 }],
  [
    'a cost that is no number',
    { setups: [{ id: 'meter', cost: Number.NaN }] },
    'out-of-range',
    { setup: 'meter', value: Number.NaN },
  ],
  [
    'an infinite penalty',
    { verdicts: [{ id: 'tow', cost: 1, wrongPenalty: Infinity, fixes: [] }] },
    'out-of-range',
    { verdict: 'tow', value: Infinity },
  ],
  [
    'priors that are all 0',
    {
      faults: [
        { id: 'battery', prior: 0 },
        { id: 'starter', prior: 0 },
      ],
    },
    'not-a-distribution',
    { total: 0 },
  ],
  [
    'a row of likelihoods too few',
    withCheck({ likelihoods: [[0.9, 0.1]] }),
    'length-mismatch',
    { check: 'lamps', seen: 1, wanted: 2 },
  ],
  [
    'a likelihood too few',
    withCheck({ likelihoods: [[0.9, 0.1], [1]] }),
    'length-mismatch',
    { check: 'lamps', fault: 'starter', seen: 1, wanted: 2 },
  ],
  [
    'a likelihood above 1',
    withCheck({
      likelihoods: [
        [0.9, 0.1],
        [1.2, -0.2],
      ],
    }),
    'out-of-range',
    { check: 'lamps', fault: 'starter', outcome: 'dim', value: 1.2 },
  ],
  [
    'outcomes that do not sum to 1',
    withCheck({
      likelihoods: [
        [0.9, 0.1],
        [0.5, 0.4],
      ],
    }),
    'not-a-distribution',
    { check: 'lamps', fault: 'starter', total: 0.9 },
  ],
  [
    'a fault that nothing fixes where cases go on',
    { mode: 'continue' },
    'no-way-out',
    { faults: ['starter'] },
  ],
  [
    'more setups than can be told apart',
    { setups: Array.from({ length: 31 }, (_, index) => ({ id: `s${index}`, cost: 1 })) },
    'out-of-range',
    { value: 31 },
  ],
])('refuses %s', (_, change, code, facts) => {
  let thrown: unknown;
  try {
    defineProblem({ ...sound, checks: [check], ...change });
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toBeInstanceOf(EvidenceError);
  expect(thrown).toMatchObject({ code, facts });
});
