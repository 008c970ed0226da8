import { expect, test } from 'vitest';
import { floorLikelihoods, LIKELIHOOD_FLOOR } from './floor-likelihoods.ts';

test.each([
  { title: 'forbidden by physics', seen: 0, kept: 0 },
  { title: 'below the floor', seen: 1e-9, kept: 0.001 },
  { title: 'just below the floor', seen: 0.000999, kept: 0.001 },
  { title: 'at the floor', seen: 0.001, kept: 0.001 },
  { title: 'just above the floor', seen: 0.001001, kept: 0.001001 },
  { title: 'certain', seen: 1, kept: 1 },
])('a likelihood $title becomes $kept', ({ seen, kept }) => {
  expect(floorLikelihoods([seen])).toEqual([kept]);
});

test('the floor is thirty decibans below certainty', () => {
  expect(10 * Math.log10(1 / LIKELIHOOD_FLOOR)).toBeCloseTo(30, 12);
});
