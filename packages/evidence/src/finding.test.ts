import { describe, expect, test } from 'vitest';
import { defineModel } from './evidence-model.ts';
import { asPrepared, prepareFinding } from './finding.ts';

const model = defineModel(['battery', 'starter'], [1, 1]);

test('a finding is prepared as tempered logarithms, minus infinity where forbidden', () => {
  const { id, logLikelihoods } = prepareFinding(model, {
    id: 'lamps',
    likelihoods: [0.25, 0],
    exponent: 0.5,
  });
  expect(id).toBe('lamps');
  expect(logLikelihoods[0]).toBeCloseTo(-Math.LN2, 15);
  expect(logLikelihoods[1]).toBe(Number.NEGATIVE_INFINITY);
});

describe('refusals name the finding', () => {
  test.each([
    { title: 'below 0', value: -0.01 },
    { title: 'no number', value: Number.NaN },
    { title: 'infinite', value: Number.POSITIVE_INFINITY },
  ])('and the hypothesis, for a likelihood that is $title', ({ value }) => {
    expect(() => prepareFinding(model, { id: 'lamps', likelihoods: [0.5, value] })).toThrow(
      expect.objectContaining({
        code: 'out-of-range',
        facts: { finding: 'lamps', hypothesis: 'starter', value },
        message: expect.stringContaining('finding lamps, hypothesis starter') as string,
      }),
    );
  });

  test.each([0, -1, 1.000001, Number.NaN])('for an exponent of %d', (exponent) => {
    expect(() => prepareFinding(model, { id: 'lamps', likelihoods: [0.5, 0.5], exponent })).toThrow(
      expect.objectContaining({
        code: 'out-of-range',
        facts: { finding: 'lamps', value: exponent },
      }),
    );
  });

  test('for a row that is too short', () => {
    expect(() => prepareFinding(model, { id: 'lamps', likelihoods: [0.5] })).toThrow(
      expect.objectContaining({
        code: 'length-mismatch',
        facts: { finding: 'lamps', seen: 1, wanted: 2 },
      }),
    );
  });

  test('for one prepared for another model', () => {
    const other = defineModel(['battery', 'starter', 'earth'], [1, 1, 1]);
    const prepared = prepareFinding(other, { id: 'lamps', likelihoods: [0.5, 0.5, 0.5] });
    expect(asPrepared(other, prepared)).toBe(prepared);
    expect(() => asPrepared(model, prepared)).toThrow(
      expect.objectContaining({
        code: 'length-mismatch',
        facts: { finding: 'lamps', seen: 3, wanted: 2 },
      }),
    );
  });
});
