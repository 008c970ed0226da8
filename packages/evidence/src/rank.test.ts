import { expect, test } from 'vitest';
import { defineModel } from './evidence-model.ts';
import { rank } from './rank.ts';

const model = defineModel(['battery', 'starter', 'earth', 'fuel'], [1, 1, 1, 1]);

test('the likeliest comes first, equals in the order of the model', () => {
  const probabilities = Float64Array.of(0.2, 0.3, 0.2, 0.3);
  expect(rank(model, probabilities)).toEqual([
    ['starter', 0.3],
    ['fuel', 0.3],
    ['battery', 0.2],
    ['earth', 0.2],
  ]);
});

test('refuses a row of the wrong length', () => {
  expect(() => rank(model, [1])).toThrow(expect.objectContaining({ code: 'length-mismatch' }));
});
