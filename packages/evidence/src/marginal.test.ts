import { expect, test } from 'vitest';
import { defineModel } from './evidence-model.ts';
import { marginal } from './marginal.ts';

const model = defineModel(['battery/low', 'battery/half', 'starter'], [0.2, 0.3, 0.5]);

test.each([
  {
    claim: 'the battery at any charge',
    test: (name: string) => name.startsWith('battery/'),
    sum: 0.5,
  },
  { claim: 'anything', test: () => true, sum: 1 },
  { claim: 'nothing', test: () => false, sum: 0 },
])('$claim has probability $sum', ({ test: accepts, sum }) => {
  expect(marginal(model, model.priors, accepts)).toBeCloseTo(sum, 15);
});

test('one hypothesis may be named', () => {
  expect(marginal(model, model.priors, 'battery/half')).toBe(0.3);
});

test('refuses an unknown name and a row of the wrong length', () => {
  expect(() => marginal(model, model.priors, 'battery')).toThrow(
    expect.objectContaining({ code: 'unknown-hypothesis' }),
  );
  expect(() => marginal(model, [0.5, 0.5], 'starter')).toThrow(
    expect.objectContaining({ code: 'length-mismatch', facts: { seen: 2, wanted: 3 } }),
  );
});
