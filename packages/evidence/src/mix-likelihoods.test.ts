import { expect, test } from 'vitest';
import { mixLikelihoods } from './mix-likelihoods.ts';

const above = [0.036819, 0.9];
const below = [0.963181, 0.1];

// Reading 12.42 V, bound 12.40 V, u = .05 V: the normal distribution puts .655422 above.
test('a reading near a bound carries both branches by weight', () => {
  const [first, second] = mixLikelihoods([above, below], [0.655422, 0.344578]);
  expect(first).toBeCloseTo(0.356023, 6);
  expect(second).toBeCloseTo(0.624338, 6);
});

test('only the ratios of the weights count', () => {
  expect(mixLikelihoods([above, below], [3, 1])).toEqual(
    mixLikelihoods([above, below], [0.75, 0.25]),
  );
});

test('all the weight on one branch is that branch', () => {
  expect(mixLikelihoods([above, below], [0, 2])).toEqual(below);
});

test.each([
  { title: 'a weight too few', rows: [above, below], weights: [1], code: 'length-mismatch' },
  { title: 'rows of unlike length', rows: [above, [1]], weights: [1, 1], code: 'length-mismatch' },
  { title: 'a weight below 0', rows: [above, below], weights: [2, -1], code: 'out-of-range' },
  { title: 'weights all 0', rows: [above, below], weights: [0, 0], code: 'not-a-distribution' },
  { title: 'no branch', rows: [], weights: [], code: 'not-a-distribution' },
])('refuses $title', ({ rows, weights, code }) => {
  expect(() => mixLikelihoods(rows, weights)).toThrow(expect.objectContaining({ code }));
});
