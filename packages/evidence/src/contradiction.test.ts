import { describe, expect, test } from 'vitest';
import { contradictionIn, type MadeCheck } from './contradiction.ts';
import { defineModel } from './evidence-model.ts';

const model = defineModel(['flat', 'cable', 'rare'], [0.6, 0.39, 0.01]);

/** A check of two outcomes: P(yes) with each fault, and what came of it. */
function check(id: string, yes: readonly [number, number, number], share: number): MadeCheck {
  return { id, rows: [yes, yes.map((one) => 1 - one)], shares: [share, 1 - share] };
}

const lampsDim = (share: number) => check('lamps-dim', [0.995, 0.02, 0.02], share);
const restLow = (share: number) => check('rest-low', [0.995, 0.02, 0.02], share);
const boostHelps = (share: number) => check('boost-helps', [0.97, 0.03, 0.03], share);

describe('findings that contradict each other', () => {
  test('are told, and the one that fits least is named', () => {
    const found = contradictionIn(model, [lampsDim(1), restLow(0), boostHelps(1)]);
    expect(found).toMatchObject({ suspect: 'rest-low' });
    expect(found!.surprise).toBeGreaterThan(found!.usual);
  });

  test('are none where all speak for one fault', () => {
    expect(contradictionIn(model, [lampsDim(1), restLow(1), boostHelps(1)])).toBeUndefined();
    expect(contradictionIn(model, [lampsDim(0), restLow(0), boostHelps(0)])).toBeUndefined();
  });

  test('are none where a rare fault explains them', () => {
    const only = (id: string, share: number) => check(id, [0.001, 0.001, 0.95], share);
    expect(contradictionIn(model, [only('whirr', 1), only('grind', 1)])).toBeUndefined();
  });

  test('are none for want of a second finding', () => {
    expect(contradictionIn(model, [lampsDim(0)])).toBeUndefined();
    expect(contradictionIn(model, [])).toBeUndefined();
  });

  test('are none where the odd one is borderline', () => {
    expect(contradictionIn(model, [lampsDim(1), restLow(0.5), boostHelps(1)])).toBeUndefined();
  });

  test('are the same each time, in whatever order', () => {
    const made = [lampsDim(1), restLow(0), boostHelps(1)];
    const first = contradictionIn(model, made);
    expect(contradictionIn(model, made)).toEqual(first);
    expect(contradictionIn(model, made.toReversed())?.suspect).toBe(first?.suspect);
  });

  test('go by the beliefs that the context gave', () => {
    const certain = new Float64Array([0.001, 0.998, 0.001]).map(Math.log);
    const made = [lampsDim(1), restLow(1)];
    expect(contradictionIn(model, made)).toBeUndefined();
    expect(contradictionIn(model, made, certain)).toBeUndefined();
  });
});
