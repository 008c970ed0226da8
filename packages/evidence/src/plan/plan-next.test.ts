import { describe, expect, test } from 'vitest';
import { defineProblem, planNext, policyCost, prospects } from '../index.ts';
import type { CheckDefinition, DiagnosisState, ProblemDefinition } from '../index.ts';

/** Two faults alike in all but their name; only a check tells which. */
const problemWith = (
  checks: readonly (Partial<CheckDefinition> & { readonly id: string })[],
  more: Partial<ProblemDefinition> = {},
) =>
  defineProblem({
    mode: 'terminal',
    faults: [
      { id: 'battery', prior: 1 },
      { id: 'starter', prior: 1 },
    ],
    verdicts: ['battery', 'starter'].map((id) => ({ id, cost: 0, wrongPenalty: 100, fixes: [id] })),
    checks: checks.map((check) => ({
      cost: 5,
      outcomes: ['yes', 'no'],
      likelihoods: [
        [1, 0],
        [0, 1],
      ],
      ...check,
    })),
    ...more,
  });

const useless = [
  [0.5, 0.5],
  [0.5, 0.5],
];

describe('of plans that cost the same', () => {
  test('the first written is taken', () => {
    expect(planNext(problemWith([{ id: 'a' }, { id: 'b' }])).id).toBe('a');
  });

  test('the safer is taken before the first written', () => {
    const problem = problemWith([{ id: 'a', safety: 2 }, { id: 'b', safety: 1 }, { id: 'c' }]);
    expect(planNext(problem).id).toBe('c');
  });

  test('a difference of less than 1e-9 does not count', () => {
    const problem = problemWith([
      { id: 'a', safety: 1, cost: 5 },
      { id: 'b', cost: 5 + 1e-9 },
    ]);
    expect(planNext(problem).id).toBe('b');
    const dearer = problemWith([
      { id: 'a', safety: 1, cost: 5 },
      { id: 'b', cost: 5 + 1e-6 },
    ]);
    expect(planNext(dearer).id).toBe('a');
  });

  test('acting is taken before a check', () => {
    expect(planNext(problemWith([{ id: 'a', cost: 50 }]))).toMatchObject({
      type: 'verdict',
      id: 'battery',
      index: 0,
      value: 50,
      act: 50,
    });
  });
});

describe('setups', () => {
  const setups = [
    { id: 'meter', cost: 30 },
    { id: 'person', cost: 15 },
  ];

  test('are each paid on top of the check, however many it needs', () => {
    const problem = problemWith([{ id: 'a', setups: ['meter', 'person'] }], { setups });
    expect(prospects(problem, {}, 'a').cost).toBe(50);
    expect(planNext(problem)).toMatchObject({ type: 'verdict', value: 50 });
    const paid = planNext(problem, { setupsPaid: ['person'] });
    expect(paid).toMatchObject({ type: 'check', id: 'a', value: 35 });
  });

  test('are paid once in a case, by the first check that needs them', () => {
    const weak = [
      [0.9, 0.1],
      [0.1, 0.9],
    ];
    const both = problemWith(
      [
        { id: 'a', setups: ['person'], likelihoods: weak },
        { id: 'b', setups: ['person'], likelihoods: weak },
      ],
      { setups: [{ id: 'person', cost: 1 }] },
    );
    expect(prospects(both, { done: [{ check: 'a', outcome: 'yes' }] }, 'b').cost).toBe(5);
    const everything = policyCost(both, (_, { done = [] }) =>
      done.length < 2 ? { type: 'check', index: done.length } : { type: 'verdict', index: 0 },
    );
    expect(everything).toBeCloseTo(1 + 5 + 5 + 50, 9);
  });
});

describe('a check that another must come before', () => {
  const problem = problemWith([
    { id: 'lid', cost: 1, likelihoods: useless, outcomes: ['open', 'stuck'] },
    { id: 'level', requires: [{ check: 'lid', outcomes: ['open'] }] },
  ]);

  test('is not possible until then', () => {
    expect(prospects(problem, {}, 'level').isPossible).toBe(false);
    expect(planNext(problem)).toMatchObject({ type: 'check', id: 'lid' });
    // By hand: 1, then even odds of 5 and knowing, or of acting without knowing.
    expect(planNext(problem).value).toBeCloseTo(1 + 0.5 * 5 + 0.5 * 50, 9);
  });

  test.each<[string, DiagnosisState, string]>([
    ['an outcome that will do', { done: [{ check: 'lid', outcome: 'open' }] }, 'level'],
    ['another outcome', { done: [{ check: 'lid', outcome: 'stuck' }] }, 'battery'],
    ['no outcome at all', { done: [{ check: 'lid' }] }, 'battery'],
  ])('after %s', (_, state, id) => {
    expect(planNext(problem, state).id).toBe(id);
  });

  test('and that tells nothing is not asked for its own sake', () => {
    const alone = problemWith([{ id: 'lid', cost: 0, likelihoods: useless }]);
    expect(planNext(alone)).toMatchObject({ type: 'verdict', proof: 'exact' });
  });
});

describe('where a case stands', () => {
  const problem = problemWith([{ id: 'a' }, { id: 'b' }]);

  test('a belief given stands for the findings, in any scale', () => {
    const plan = planNext(problem, { belief: [99, 1] });
    expect(plan).toMatchObject({ type: 'verdict', id: 'battery' });
    expect(plan.value).toBeCloseTo(1, 9);
  });

  test('a finding settles it', () => {
    const done = [{ check: 'a', outcome: 'no' }];
    expect(planNext(problem, { done })).toMatchObject({ id: 'starter', value: 0 });
  });

  test('a check that said nothing is not asked again', () => {
    expect(planNext(problem, { done: [{ check: 'a' }] }).id).toBe('b');
    expect(planNext(problem, { done: [{ check: 'a' }, { check: 'b' }] }).type).toBe('verdict');
  });

  test('a fault ruled out is not reckoned with', () => {
    expect(planNext(problem, { ruledOut: ['battery'] })).toMatchObject({ id: 'starter', value: 0 });
  });

  test.each<[string, DiagnosisState, string]>([
    ['an unknown check', { done: [{ check: 'z', outcome: 'yes' }] }, 'unknown-id'],
    ['an unknown outcome', { done: [{ check: 'a', outcome: 'maybe' }] }, 'unknown-id'],
    ['an unknown setup', { setupsPaid: ['meter'] }, 'unknown-id'],
    ['an unknown fault', { ruledOut: ['pump'] }, 'unknown-id'],
    ['a check done twice', { done: [{ check: 'a' }, { check: 'a' }] }, 'duplicate-id'],
    ['a belief too short', { belief: [1] }, 'length-mismatch'],
    ['a belief below 0', { belief: [1, -1] }, 'out-of-range'],
    ['a belief of nothing', { belief: [0, 0] }, 'impossible-finding'],
    ['every fault ruled out', { ruledOut: ['battery', 'starter'] }, 'impossible-finding'],
    [
      'findings that forbid everything',
      {
        done: [
          { check: 'a', outcome: 'yes' },
          { check: 'b', outcome: 'no' },
        ],
      },
      'impossible-finding',
    ],
  ])('refuses %s', (_, state, code) => {
    expect(() => planNext(problem, state)).toThrow(expect.objectContaining({ code }) as Error);
  });
});

describe('where cases go on', () => {
  const repairs = defineProblem({
    mode: 'continue',
    faults: ['fuel', 'flood', 'coil'].map((id) => ({ id, prior: 1 })),
    verdicts: [
      { id: 'both', cost: 20, wrongPenalty: 0, fixes: ['fuel', 'flood'] },
      { id: 'flood', cost: 4, wrongPenalty: 0, fixes: ['flood'] },
      { id: 'coil', cost: 60, wrongPenalty: 0, fixes: ['coil'] },
      { id: 'tow', cost: 70, wrongPenalty: 0, fixes: ['fuel', 'flood', 'coil'] },
    ],
    checks: [],
  });

  test('repairs may overlap, and the best order is found', () => {
    // By hand: 4, then with 2/3 left 20, then with 1/3 left 60; the others are dearer.
    expect(planNext(repairs)).toMatchObject({ type: 'verdict', id: 'flood' });
    expect(planNext(repairs).value).toBeCloseTo(4 + (2 / 3) * 20 + 60 / 3, 9);
    expect(policyCost(repairs, planNext)).toBeCloseTo(4 + (2 / 3) * 20 + 60 / 3, 9);
  });

  test('a policy that never ends is refused', () => {
    expect(() => policyCost(repairs, () => ({ type: 'verdict', index: 1 }))).toThrow(
      expect.objectContaining({ code: 'no-way-out' }) as Error,
    );
  });

  test('one verdict that covers the rest is taken where it is cheaper', () => {
    expect(planNext(repairs, { belief: [0, 0, 1] })).toMatchObject({ id: 'coil', value: 60 });
    const dear = planNext(repairs, { belief: [1, 0, 9] });
    expect(dear).toMatchObject({ id: 'coil', proof: 'exact' });
    expect(dear.value).toBeCloseTo(60 + 0.1 * 20, 9);
  });
});

test('a policy that repeats a check is refused', () => {
  const problem = problemWith([{ id: 'a', likelihoods: useless }]);
  expect(() => policyCost(problem, () => ({ type: 'check', index: 0 }))).toThrow(
    expect.objectContaining({ code: 'no-way-out', facts: { id: 'a' } }) as Error,
  );
});

test('an unknown check has no prospects', () => {
  expect(() => prospects(problemWith([{ id: 'a' }]), {}, 'z')).toThrow(
    expect.objectContaining({ code: 'unknown-id' }) as Error,
  );
});

describe('the effort of searching', () => {
  // Nine weak checks: many steps tell more than three do.
  const weak = problemWith(
    Array.from({ length: 9 }, (_, index) => ({
      id: `look ${String(index)}`,
      cost: 1 + index / 4,
      likelihoods: [
        [0.62, 0.38],
        [0.38, 0.62],
      ],
    })),
  );

  test('decides how many steps a plan follows; every plan is a real one', () => {
    const whole = planNext(weak);
    const little = planNext(weak, {}, 0.001);
    expect(little.value).toBeGreaterThan(whole.value);
    expect(little.value).toBeLessThan(little.act);
    expect(little.act).toBe(whole.act);
  });

  test.each([0, -1, 1.01, Number.NaN])('of %d is refused', (effort) => {
    expect(() => planNext(weak, {}, effort)).toThrow('an effort must be finite and from');
  });
});
