import { expect, test } from 'vitest';
import { noisyLikelihoods } from './noisy-likelihoods.ts';

const close = (row: readonly number[]): readonly number[] =>
  row.map((value) => expect.closeTo(value, 12) as number);

test.each([
  // .9 x .9 + .1 x .5 and .9 x .1 + .1 x .5.
  { title: 'all answers without neighbours', e: 0.1, neighbours: undefined, row: [0.86, 0.14] },
  // .9 x .9 + .1 x .1 and .9 x .1 + .1 x .9.
  { title: 'the other of two answers', e: 0.1, neighbours: [[1], [0]], row: [0.82, 0.18] },
  { title: 'nothing without mistakes', e: 0, neighbours: undefined, row: [0.9, 0.1] },
  { title: 'everything when all is guessed', e: 1, neighbours: undefined, row: [0.5, 0.5] },
])('mistakes move $title', ({ e, neighbours, row }) => {
  expect(noisyLikelihoods([0.9, 0.1], e, neighbours)).toEqual(close(row));
});

test('a slow crank is mistaken for its neighbours only', () => {
  const answers = noisyLikelihoods([0, 0, 1, 0], 0.2, [[1], [0, 2], [1, 3], [2]]);
  expect(answers).toEqual(close([0, 0.1, 0.8, 0.1]));
});

test('an answer without neighbours is never mistaken', () => {
  expect(noisyLikelihoods([0.5, 0.5], 0.2, [[], [0]])).toEqual(close([0.6, 0.4]));
});

test.each([
  { title: 'an error rate above 1', row: [1, 0], e: 1.1, code: 'out-of-range' },
  { title: 'a probability below 0', row: [1.1, -0.1], e: 0.1, code: 'out-of-range' },
  { title: 'a row that misses an answer', row: [0.5, 0.4], e: 0.1, code: 'not-a-distribution' },
  { title: 'no answers', row: [], e: 0.1, code: 'not-a-distribution' },
  {
    title: 'a neighbour that is no answer',
    row: [1, 0],
    e: 0.1,
    to: [[2], []],
    code: 'out-of-range',
  },
  { title: 'half a neighbour', row: [1, 0], e: 0.1, to: [[0.5], []], code: 'out-of-range' },
])('refuses $title', ({ row, e, to, code }) => {
  expect(() => noisyLikelihoods(row, e, to)).toThrow(expect.objectContaining({ code }));
});
