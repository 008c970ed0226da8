import { describe, expect, test } from 'vitest';
import { contradictionIn, type MadeCheck } from './contradiction.ts';

/** Flat battery, cable, something rare. */
const priors = Float64Array.of(0.6, 0.39, 0.01);

/** A check of two outcomes: P(yes) with each fault, and what came of it. */
function check(id: string, yes: readonly [number, number, number], share: number): MadeCheck {
  return { id, rows: [yes, yes.map((one) => 1 - one)], shares: [share, 1 - share] };
}

const lampsDim = (share: number) => check('lamps-dim', [0.995, 0.02, 0.02], share);
const restLow = (share: number) => check('rest-low', [0.995, 0.02, 0.02], share);
const boostHelps = (share: number) => check('boost-helps', [0.97, 0.03, 0.03], share);

describe('findings that contradict each other', () => {
  test('are told, and the one that fits least is named', () => {
    const found = contradictionIn([lampsDim(1), restLow(0), boostHelps(1)], priors);
    expect(found).toMatchObject({ suspect: 'rest-low' });
    // By hand: 0.6 × 0.995 × 0.005 × 0.97 + (0.39 + 0.01) × 0.02 × 0.98 × 0.03.
    expect(found!.surprise).toBeCloseTo(-Math.log(0.00289545 + 0.0002352), 6);
  });

  test('are none where all speak for one fault', () => {
    expect(contradictionIn([lampsDim(1), restLow(1), boostHelps(1)], priors)).toBeUndefined();
    expect(contradictionIn([lampsDim(0), restLow(0), boostHelps(0)], priors)).toBeUndefined();
  });

  test('are none where a rare fault explains them', () => {
    const only = (id: string, share: number) => check(id, [0.001, 0.001, 0.95], share);
    expect(contradictionIn([only('whirr', 1), only('grind', 1)], priors)).toBeUndefined();
  });

  test('are none for want of a second finding', () => {
    expect(contradictionIn([lampsDim(0)], priors)).toBeUndefined();
    expect(contradictionIn([], priors)).toBeUndefined();
  });

  test('are none where the odd one is borderline', () => {
    expect(contradictionIn([lampsDim(1), restLow(0.5), boostHelps(1)], priors)).toBeUndefined();
  });

  test('are the same each time, in whatever order', () => {
    const made = [lampsDim(1), restLow(0), boostHelps(1)];
    const first = contradictionIn(made, priors);
    expect(contradictionIn(made, priors)).toEqual(first);
    expect(contradictionIn(made.toReversed(), priors)?.suspect).toBe(first?.suspect);
  });

  test('go by the beliefs that the context gave', () => {
    const certain = Float64Array.of(0.001, 0.998, 0.001);
    const made = [lampsDim(1), restLow(1)];
    expect(contradictionIn(made, priors)).toBeUndefined();
    expect(contradictionIn(made, certain)).toBeUndefined();
  });
});
