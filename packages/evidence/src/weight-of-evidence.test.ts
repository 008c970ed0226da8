import { expect, test } from 'vitest';
import { defineModel } from './evidence-model.ts';
import { posterior } from './posterior.ts';
import { weightOfEvidence } from './weight-of-evidence.ts';

const model = defineModel(['battery', 'starter', 'earth'], [0.5, 0.3, 0.2]);
const even = defineModel(['full', 'weak'], [1, 1]);

test('ten to one is ten decibans, whatever the prior', () => {
  const finding = { id: 'lamps', likelihoods: [1, 0.1, 0.1] };
  expect(weightOfEvidence(model, [finding], 'battery')[0]?.decibans).toBeCloseTo(10, 12);
});

// 12.40 V under N(12.6, .10) and N(12.2, .15), both widened by u = .05 V; worked by hand.
test('densities of 1.133717 and .720417 per volt weigh 1.9692 decibans', () => {
  const finding = { id: 'rest-voltage', likelihoods: [0.720417, 1.133717] };
  expect(weightOfEvidence(even, [finding], 'weak')[0]?.decibans).toBeCloseTo(1.9692, 4);
});

test('a finding alike for all weighs nothing', () => {
  const finding = { id: 'colour', likelihoods: [0.3, 0.3, 0.3] };
  expect(weightOfEvidence(model, [finding], 'earth')[0]?.decibans).toBeCloseTo(0, 12);
});

test('a claim may be several hypotheses: what one repair cures', () => {
  const findings = [{ id: 'drop', likelihoods: [0.1, 0.6, 0.9] }];
  const [weight] = weightOfEvidence(model, findings, (name) => name !== 'battery');
  // P(drop | starter or earth) = (.3 x .6 + .2 x .9) / .5 = .72, against .1 for the battery.
  expect(weight?.decibans).toBeCloseTo(10 * Math.log10(7.2), 12);
});

test('it still weighs finely where the belief has rounded to 1', () => {
  const strong = Array.from({ length: 10 }, (_, index) => ({
    id: `check-${index}`,
    likelihoods: [1, 0.001],
  }));
  expect(posterior(even, strong)[0]).toBe(1);
  const weights = weightOfEvidence(even, strong, 'full');
  expect(weights.map(({ decibans }) => decibans)).toEqual(
    strong.map(() => expect.closeTo(30, 9) as number),
  );
});

test.each([
  { claim: 'full', decibans: [Number.POSITIVE_INFINITY, 0] },
  { claim: 'weak', decibans: [Number.NEGATIVE_INFINITY, 0] },
])(
  'proof weighs without end for or against $claim, and nothing after it',
  ({ claim, decibans }) => {
    const findings = [
      { id: 'proof', likelihoods: [0.5, 0] },
      { id: 'later', likelihoods: [0.1, 0.9] },
    ];
    expect(weightOfEvidence(even, findings, claim).map((weight) => weight.decibans)).toEqual(
      decibans,
    );
  },
);

test('refuses findings that forbid every hypothesis', () => {
  const findings = [
    { id: 'first', likelihoods: [1, 0] },
    { id: 'second', likelihoods: [0, 1] },
  ];
  expect(() => weightOfEvidence(even, findings, 'full')).toThrow(
    expect.objectContaining({
      code: 'impossible-finding',
      facts: { findings: ['first', 'second'] },
    }),
  );
});

test('refuses a hypothesis the model does not have', () => {
  expect(() => weightOfEvidence(model, [], 'flywheel')).toThrow(
    expect.objectContaining({ code: 'unknown-hypothesis', facts: { hypothesis: 'flywheel' } }),
  );
});
