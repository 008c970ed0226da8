import type { Bound } from '@keyturn/electrics';
import { describe, expect, test } from 'vitest';
import type { AnswerForm } from '../flow/flow.ts';
import { withMaker } from './part-limits.ts';

type Reading = Extract<AnswerForm, { kind: 'reading' }>;

const torque: Reading = {
  kind: 'reading',
  unit: 'N.m',
  bands: [
    { id: 'under', to: 'torque.bolt.under' },
    { id: 'right', to: 'torque.bolt.right' },
    { id: 'over', to: 'above' },
  ],
  lamp: {},
  range: 'torque',
  settledBy: [],
  settledInTime: [],
  good: 'right',
};

const bound = (low: number, high = low): Bound => ({
  low,
  high,
  unit: 'N.m',
  source: { provenance: 'computed', text: 'general' },
});
const general = [bound(38), bound(50)];
const ends = (bounds: readonly (Bound | undefined)[]) =>
  bounds.map((one) => one && [one.low, one.high]);

describe("the maker's figures", () => {
  test('take the place of the general ones on both sides of what is good', () => {
    const bounds = withMaker(general, torque, { low: 65, high: 80, unit: 'N.m' });
    expect(ends(bounds)).toEqual([
      [65, 65],
      [80, 80],
    ]);
    expect(bounds.map((one) => one?.source.provenance)).toEqual(['published', 'published']);
  });

  test('stand alone where there is no general figure', () => {
    const bounds = withMaker([undefined, undefined], torque, { low: 65, high: 80, unit: 'N.m' });
    expect(ends(bounds)).toEqual([
      [65, 65],
      [80, 80],
    ]);
    expect(ends(withMaker([undefined, undefined], torque, { high: 80, unit: 'N.m' }))).toEqual([
      undefined,
      [80, 80],
    ]);
  });

  test('may be in another unit of torque', () => {
    const bounds = withMaker(general, torque, { low: 30, high: 37, unit: '[lbf_av].[ft_i]' });
    expect(bounds[0]?.low).toBeCloseTo(40.675, 3);
    expect(bounds[1]?.high).toBeCloseTo(50.165, 3);
  });

  test('move a general bound that would lie on their wrong side', () => {
    // Where no more than 30 is allowed, the general 38 says nothing.
    expect(ends(withMaker(general, torque, { high: 30, unit: 'N.m' }))).toEqual([
      [30, 30],
      [30, 30],
    ]);
    expect(ends(withMaker(general, torque, { low: 60, unit: 'N.m' }))).toEqual([
      [60, 60],
      [60, 60],
    ]);
    expect(ends(withMaker(general, torque, { high: 60, unit: 'N.m' }))).toEqual([
      [38, 38],
      [60, 60],
    ]);
  });
});
