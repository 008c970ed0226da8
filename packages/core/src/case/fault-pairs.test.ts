import { expect, test } from 'vitest';
import { foldPairs, priorsWithPairs, rowOfPair } from './fault-pairs.ts';

test('two faults bring a sign by either of them: noisy or, by hand', () => {
  // Shares .6 and .4 over a background of .05 give .747368.
  const of = (yes: number) => ({ row: { yes, no: 1 - yes }, part: 0 });
  const { row } = rowOfPair(of(0.6), of(0.4), { usual: of(0.05), several: false });
  expect(row['yes']).toBeCloseTo(0.747368, 6);
  expect(row['no']).toBeCloseTo(0.252632, 6);
});

test('of more answers than two the fault counts that shows itself more', () => {
  const usual = { row: { clean: 0.8, corroded: 0.15, loose: 0.05 }, part: 0 };
  const joint = { row: { clean: 0.1, corroded: 0.5, loose: 0.4 }, part: 0 };
  const worn = { row: { clean: 0.7, corroded: 0.25, loose: 0.05 }, part: 0 };
  expect(rowOfPair(worn, joint, { usual, several: false })).toBe(joint);
  expect(rowOfPair(joint, worn, { usual, several: false })).toBe(joint);
});

test('pairs are chance times what the trade sees, together at most .08, and all sum to 1', () => {
  const priors = [0.5, 0.3, 0.2];
  const one = priorsWithPairs(priors, [{ first: 1, second: 2, times: 1 }]);
  expect(one[3]).toBeCloseTo(0.06, 12);
  expect(one.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
  const many = priorsWithPairs(priors, [
    { first: 0, second: 1, times: 10 },
    { first: 1, second: 2, times: 10 },
  ]);
  expect((many[3] ?? 0) + (many[4] ?? 0)).toBeCloseTo(0.08, 12);
  expect(many.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
});

test('a pair counts for the fault that is put right first', () => {
  const folded = foldPairs(Float64Array.of(0.4, 0.3, 0.3), [{ first: 1, second: 0, times: 1 }]);
  expect([...folded]).toEqual([0.4, 0.6]);
});
