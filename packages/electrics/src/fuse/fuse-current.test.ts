import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fuseCurrent,
  fuseResistance,
  type FuseCurrentResult,
  type MeasuredFuse,
} from './fuse-current.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { fuseDrops, fuseFullLoadDropMv, fuseResistances } from '../tables/fuse-drop.ts';

function carried(fuse: MeasuredFuse): Extract<FuseCurrentResult, { type: 'current' }> {
  const result = fuseCurrent(fuse);
  if (result.type !== 'current') {
    throw new Error(result.type);
  }
  return result;
}

/** As read on a display that shows 0.1 mV. */
function fine(value: number): Quantity {
  return { value, unit: 'mV', resolution: 0.1 };
}

describe('drops and resistances of blade fuses', () => {
  test.each([
    // A training lesson on the voltage drop of fuses.
    [0, 'standard', 10, 1, 130, 7.7],
    // A trade association's service report of June 2017.
    [1, 'mini', 15, 0.1, 22, 4.5],
    [2, 'mini', 15, 1, 218, 4.6],
  ])(
    'row %i: a %s fuse of %d A drops %d mV at %d mA (published), so that it has %d mOhm',
    (index, style, ratingA, dropMv, currentMa, milliohms) => {
      const row = fuseDrops.rows[index]!;
      expect(row).toMatchObject({ style, ratingA, dropMv, currentMa });
      expect(row.source.provenance).toBe('published');
      expect((dropMv / currentMa) * 1000).toBeCloseTo(milliohms, 1);
    },
  );

  test('a standard fuse of 15 A has 4.5 to 4.8 mOhm cold (reported)', () => {
    expect(fuseResistances.rows).toEqual([
      { style: 'standard', ratingA: 15, lowMilliohm: 4.5, highMilliohm: 4.8 },
    ]);
    expect(fuseResistances.source.provenance).toBe('reported');
  });

  test('at its rating a fuse drops 70 to 150 mV (common practice, no source)', () => {
    expect(fuseFullLoadDropMv.rows).toEqual({ low: 70, high: 150 });
    expect(fuseFullLoadDropMv.source.provenance).toBe('common practice');
  });

  test('a published fuse has its own resistance, ±10 %', () => {
    const { low, best, high } = fuseResistance('standard', 15);
    expect(low).toBeCloseTo(4.05, 9);
    expect(best).toBeCloseTo(4.65, 9);
    expect(high).toBeCloseTo(5.28, 9);
  });

  test('another has it in inverse proportion to its rating, ±30 % on both of its ends', () => {
    const { low, best, high } = fuseResistance('mini', 7.5);
    expect(low).toBeCloseTo((67.5 / 7.5) * 0.7, 6);
    expect(best).toBeCloseTo((67.5 + 1000 / 13) / 2 / 7.5, 6);
    expect(high).toBeCloseTo((1000 / 13 / 7.5) * 1.3, 6);
    expect(fuseResistance('mini', 30).best).toBeCloseTo(best / 4, 9);
  });

  test.each([
    ['standard', 10, 'mini'],
    ['standard', 15, 'mini'],
  ] as const)('the published %s fuse of %d A lies within the rule', (style, ratingA, other) => {
    const published = fuseResistance(style, ratingA).best;
    const rule = fuseResistance(other, ratingA === 15 ? 14.999 : ratingA);
    expect(rule.low).toBeLessThan(published);
    expect(rule.high).toBeGreaterThan(published);
  });

  test('it says that it is computed, and that its spread has no source', () => {
    for (const ratingA of [15, 7.5]) {
      const { source } = fuseResistance('mini', ratingA);
      expect(source.provenance).toBe('computed');
      expect(source.text).toContain('common practice');
    }
  });
});

describe('the current through a fuse by its drop', () => {
  test.each([
    ['standard', 10, 1, 0.13],
    ['mini', 15, 0.1, 0.022],
    ['mini', 15, 1, 0.218],
  ] as const)('%s %d A, %d mV: %d A, as published', (style, ratingA, dropMv, currentA) => {
    const { current } = carried({ drop: fine(dropMv), ratingA, style });
    expect(current.best / currentA).toBeGreaterThan(0.99);
    expect(current.best / currentA).toBeLessThan(1.01);
    expect(current.low).toBeLessThan(currentA);
    expect(current.high).toBeGreaterThan(currentA);
    expect(current.unit).toBe('A');
  });

  test('by hand: 1.0 mV ±0.255 mV across 7.69 mOhm ±10 %', () => {
    const { current } = carried({ drop: fine(1), ratingA: 10, style: 'standard' });
    expect(current.low).toBeCloseTo(0.745 / (76.92 * 1.1 * 1.0002) / 0.1, 3);
    expect(current.high).toBeCloseTo(1.255 / (76.92 * 0.9) / 0.1, 3);
  });

  test('0.1 mV is not told from none by a display of 0.1 mV, 0.3 mV just is', () => {
    const at = (drop: Quantity): boolean => carried({ drop, ratingA: 15, style: 'mini' }).resolved;
    expect(at(fine(0.1))).toBe(false);
    expect(at(fine(0.2))).toBe(false);
    expect(at(fine(0.3))).toBe(true);
  });

  test('a display of 1 mV shows nothing of a drain of 50 mA', () => {
    // 50 mA leaves 0.2 mV, which such a display shows as 0.
    const { current, resolved } = carried({
      drop: { value: 0, unit: 'mV', resolution: 1 },
      ratingA: 15,
      style: 'mini',
    });
    expect(resolved).toBe(false);
    expect(current.low).toBe(0);
    expect(current.high).toBeGreaterThan(0.05);
  });

  test('below 0.3 mV the meter is most of the spread, at 10 mV the fuse is', () => {
    const relative = (dropMv: number): number => {
      const { low, best, high } = carried({
        drop: fine(dropMv),
        ratingA: 15,
        style: 'mini',
      }).current;
      return (high - low) / best;
    };
    expect(relative(0.3)).toBeGreaterThan(1.5);
    expect(relative(10)).toBeLessThan(0.35);
  });

  test('the leads may be either way round', () => {
    const forward = fuseCurrent({ drop: fine(2), ratingA: 10, style: 'standard' });
    expect(fuseCurrent({ drop: fine(-2), ratingA: 10, style: 'standard' })).toEqual(forward);
  });

  test('at its rating a fuse is hot, and the interval reaches down to what that means', () => {
    const { current } = carried({ drop: fine(70), ratingA: 10, style: 'standard' });
    expect(current.best).toBeGreaterThan(9);
    expect(current.low).toBeLessThan(10 * (70 / 150));
  });

  test('150 mV may be a loaded fuse, 12 V is an open one', () => {
    expect(fuseCurrent({ drop: fine(150), ratingA: 10, style: 'mini' }).type).toBe('current');
    expect(
      fuseCurrent({ drop: { value: 12.3, unit: 'V' }, ratingA: 10, style: 'mini' }),
    ).toMatchObject({ type: 'no-sound-fuse', greatestDropMv: 150 });
  });

  test('a larger drop never means less current', () => {
    const drop = fc.double({ min: 0, max: 140, noNaN: true });
    fc.assert(
      fc.property(drop, drop, fc.constantFrom(5, 10, 15, 30), (one, other, ratingA) => {
        const at = (dropMv: number): number =>
          carried({ drop: fine(dropMv), ratingA, style: 'standard' }).current.best;
        expect(at(Math.max(one, other))).toBeGreaterThanOrEqual(at(Math.min(one, other)));
        const { low, best, high } = carried({
          drop: fine(one),
          ratingA,
          style: 'standard',
        }).current;
        expect(low <= best && best <= high).toBe(true);
      }),
    );
  });

  test('a rating of 0 or of 41 A, and a drop in ampere, are refused', () => {
    for (const ratingA of [0, 41]) {
      expect(() => fuseCurrent({ drop: fine(1), ratingA, style: 'mini' })).toThrow(
        'value-out-of-range',
      );
    }
    expect(() =>
      fuseCurrent({ drop: { value: 1, unit: 'A' }, ratingA: 10, style: 'mini' }),
    ).toThrow('unit-mismatch');
  });
});
