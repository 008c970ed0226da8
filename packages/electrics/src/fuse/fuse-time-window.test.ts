import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fuseTimeWindow, type FuseTimeWindow } from './fuse-time-window.ts';
import { fuseEarliestOpening, fuseLatestOpening } from '../tables/fuse-opening-time.ts';

describe('opening times of blade fuses', () => {
  test.each([
    // ISO 8820-3 and SAE J1284, from memory. The rival is the longer time of other texts.
    [110, 360_000, undefined],
    [135, 0.75, undefined],
    [160, 0.25, undefined],
    [200, 0.15, undefined],
    [350, 0.04, 0.08],
    [600, 0.02, 0.03],
  ])('%d %%: not before %d s (from memory)', (percent, leastS, rivalS) => {
    const row = fuseEarliestOpening.rows.find((each) => each.percent === percent)!;
    expect(row.leastS).toBe(leastS);
    expect(row.rivalS).toBe(rivalS);
    expect(fuseEarliestOpening.source.provenance).toBe('from memory');
  });

  test.each([
    // ISO 8820-3 as a relay data sheet cites it; 160 % from memory.
    [135, 1800, 'reported'],
    [160, 50, 'from memory'],
    [200, 5, 'reported'],
    [350, 0.5, 'reported'],
    [600, 0.1, 'reported'],
  ])('%d %%: at the latest after %d s (%s)', (percent, mostS, provenance) => {
    const row = fuseLatestOpening.rows.find((each) => each.percent === percent)!;
    expect(row.mostS).toBe(mostS);
    expect(row.source.provenance).toBe(provenance);
  });

  test('600 s at 135 % (fuse data sheets, from memory) is a rival and proves nothing', () => {
    expect(fuseLatestOpening.rows[0]).toMatchObject({ percent: 135, rivalS: 600 });
    expect(fuseTimeWindow({ currentA: 13.5, ratingA: 10 })).toMatchObject({
      latest: { valueS: 1800 },
    });
  });
});

describe('when a 10 A blade fuse opens', () => {
  test.each([
    [0, 360_000, undefined],
    [10, 360_000, undefined],
    [11, 360_000, undefined],
    [11.1, 0.75, undefined],
    [13.4, 0.75, undefined],
    [13.5, 0.75, 1800],
    [13.6, 0.25, 1800],
    [16, 0.25, 50],
    [20, 0.15, 5],
    [25, 0.04, 5],
    [35, 0.04, 0.5],
    [60, 0.02, 0.1],
    [100, 0, 0.1],
  ])('%d A: not before %d s, at the latest %s s', (currentA, earliestS, latestS) => {
    const window = fuseTimeWindow({ currentA, ratingA: 10 });
    expect(window.earliest.valueS).toBe(earliestS);
    expect(window.type).toBe(latestS === undefined ? 'need-not-open' : 'opens');
    expect(window.type === 'opens' ? window.latest.valueS : undefined).toBe(latestS);
  });

  test.each([7.5, 15, 20, 30])('110 and 135 %% of %d A are those rows exactly', (ratingA) => {
    expect(fuseTimeWindow({ currentA: 1.1 * ratingA, ratingA }).earliest.valueS).toBe(360_000);
    expect(fuseTimeWindow({ currentA: (135 * ratingA) / 100, ratingA }).type).toBe('opens');
  });

  test('more current never opens it later', () => {
    const amperes = fc.double({ min: 0, max: 400, noNaN: true });
    const latest = (window: FuseTimeWindow): number =>
      window.type === 'opens' ? window.latest.valueS : Infinity;
    fc.assert(
      fc.property(amperes, amperes, (one, other) => {
        const less = fuseTimeWindow({ currentA: Math.min(one, other), ratingA: 20 });
        const more = fuseTimeWindow({ currentA: Math.max(one, other), ratingA: 20 });
        expect(more.earliest.valueS).toBeLessThanOrEqual(less.earliest.valueS);
        expect(latest(more)).toBeLessThanOrEqual(latest(less));
        expect(more.earliest.valueS).toBeLessThan(latest(more));
      }),
    );
  });

  test.each([
    [-1, 10],
    [1, 0],
    [Number.NaN, 10],
  ])('%d A through a fuse of %d A is refused', (currentA, ratingA) => {
    expect(() => fuseTimeWindow({ currentA, ratingA })).toThrow('value-out-of-range');
  });
});
