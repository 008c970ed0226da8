import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SourcedInterval } from '../quantity/interval.ts';
import { loadCurrent, type Load, type LoadKind } from './load-current.ts';
import { accessoryLoads } from '../tables/accessory-loads.ts';
import { lampRatings, type LampKind } from '../tables/lamp-ratings.ts';

function current(loads: readonly Load[], voltageV: number): SourcedInterval {
  const result = loadCurrent(loads, voltageV);
  if (result.type !== 'current') throw new Error(result.reason);
  return result.current;
}

const lampKinds = Object.keys(lampRatings.rows) as LampKind[];
const usableKinds = [...lampKinds, ...Object.keys(accessoryLoads.rows)] as LoadKind[];

describe('lamps', () => {
  test.each<readonly [LampKind, number, number, number]>([
    // Sheets of UN Regulation 37 Revision 7 Amendment 2 (H17) and of ECE/TRANS/WP.29/GRE/2012/34.
    ['h17-main', 35, 37, 13.2],
    ['h17-dipped', 35, 37, 13.2],
    ['py21-5w-bright', 21, 26.5, 13.5],
    ['py21-5w-dim', 5, 6.6, 13.5],
    // UN Regulation 37: rated watts from secondary texts, greatest watts from memory.
    ['h4-main', 60, 75, 13.2],
    ['h4-dipped', 55, 68, 13.2],
    ['h7', 55, 58, 13.2],
    ['h1', 55, 68, 13.2],
    ['h3', 55, 68, 13.2],
    // UN Regulation 37, both from memory.
    ['p21-5w-bright', 21, 26.5, 13.5],
    ['p21-5w-dim', 5, 6.6, 13.5],
    ['p21w', 21, 26.5, 13.5],
    ['py21w', 21, 26.5, 13.5],
    ['r5w', 5, 5.5, 13.5],
    ['w5w', 5, 5.5, 13.5],
    ['r10w', 10, 11, 13.5],
  ])('%s is rated at %d W and takes at most %d W at %d V', (kind, ratedW, greatestW, testV) => {
    expect(lampRatings.rows[kind]).toMatchObject({ ratedW, greatestW, testV });
    expect(current([{ kind }], testV).high * testV).toBeGreaterThanOrEqual(greatestW - 1e-9);
    expect(current([{ kind }], testV).low * testV).toBeCloseTo(ratedW, 9);
  });

  test('only what was read in its sheet counts as published', () => {
    const read = lampKinds.filter(
      (kind) => lampRatings.rows[kind].greatestSource.provenance === 'published',
    );
    expect(read).toEqual(['h17-main', 'h17-dipped', 'py21-5w-bright', 'py21-5w-dim']);
    expect(lampRatings.rows.h7.ratedSource.provenance).toBe('reported');
    expect(lampRatings.rows.h7.greatestSource.provenance).toBe('from memory');
    expect(lampRatings.rows.r5w.ratedSource.provenance).toBe('from memory');
  });

  test.each<readonly [LampKind, number]>([
    // Computed from the watts above, rounded: within 5 % of the best figure.
    ['h4-main', 5.3],
    ['h4-dipped', 4.8],
    ['h7', 4.3],
    ['h1', 4.7],
    ['h3', 4.7],
    ['h17-main', 2.7],
    ['p21-5w-bright', 1.8],
    ['p21-5w-dim', 0.43],
    ['p21w', 1.8],
    ['r5w', 0.38],
    ['r10w', 0.75],
  ])('%s draws about %d A at 12.5 V', (kind, amperes) => {
    const { low, best, high } = current([{ kind }], 12.5);
    expect(low).toBeLessThan(amperes);
    expect(high).toBeGreaterThan(amperes);
    expect(Math.abs(best / amperes - 1)).toBeLessThan(0.05);
  });

  test('H7 by hand at 11 V: 58 W at 13.2 V are 3.97 A, 55 W at 12 V 4.37 A, 55 W at 13.2 V 3.77 A', () => {
    // (11/13.2)^0.55 = 0.9046 and (11/12)^0.55 = 0.9533, from memory.
    const { low, best, high } = current([{ kind: 'h7' }], 11);
    expect(low).toBeCloseTo(3.769, 3);
    expect(best).toBeCloseTo(3.975, 3);
    expect(high).toBeCloseTo(4.369, 3);
  });

  test('two dipped and four parking lamps are 130 W and draw 10 to 12 A: common practice, no source', () => {
    const loads: readonly Load[] = [
      { kind: 'h4-dipped', count: 2 },
      { kind: 'w5w', count: 4 },
    ];
    const { best, low, high } = current(loads, 12.5);
    const watts = loads.map(
      ({ kind, count = 1 }) => count * lampRatings.rows[kind as LampKind].ratedW,
    );
    expect(watts.reduce((sum, one) => sum + one, 0)).toBe(130);
    expect(best).toBeGreaterThan(10);
    expect(best).toBeLessThan(12);
    expect(low).toBeCloseTo(9.5, 1);
    expect(high).toBeCloseTo(11.7, 1);
  });

  test('half of the voltage leaves 0.68 of the current: V to the power of 0.55, from memory', () => {
    const ratio = current([{ kind: 'h4-main' }], 8).best / current([{ kind: 'h4-main' }], 16).best;
    expect(ratio).toBeCloseTo(0.683, 3);
  });
});

describe('accessories', () => {
  test.each<readonly [LoadKind, number, number, number]>([
    // Vehicle makers' service manuals at 14.5 V: 4 to 6 A, 6 to 8 A, at most 7 A.
    ['window-motor-moving', 14.5, 4, 8],
    // A vehicle maker's service manual: at least 14.5 A; 30 A is common practice, no source.
    ['window-motor-stalled', 14.5, 14.5, 30],
    // Common practice, no source.
    ['rear-window-heater', 12.5, 12, 20],
    ['horn-pair', 12.5, 8, 12],
    ['blower-full', 12.5, 15, 25],
  ])('%s at %d V draws %d to %d A', (kind, voltage, least, most) => {
    const { low, high } = current([{ kind }], voltage);
    expect(low).toBeCloseTo(least, 9);
    expect(high).toBeCloseTo(most, 9);
  });

  test('a rear-window heater of 150 to 250 W is its 12 to 20 A at 12.5 V', () => {
    const { low, high } = current([{ kind: 'rear-window-heater' }], 12.5);
    expect([low * 12.5, high * 12.5]).toEqual([150, 250]);
  });

  test('a heater draws less at a lower voltage, a moving window motor does not', () => {
    expect(current([{ kind: 'rear-window-heater' }], 10).best).toBeCloseTo(12.8, 9);
    expect(current([{ kind: 'window-motor-moving' }], 10).best).toBe(6);
  });

  test('window motors are published, the rest is common practice', () => {
    const { rows } = accessoryLoads;
    expect(rows['window-motor-moving'].source.provenance).toBe('published');
    expect(rows['window-motor-stalled'].source.text).toContain('opens in 4 to 40 s');
    for (const kind of ['rear-window-heater', 'horn-pair', 'blower-full'] as const) {
      expect(rows[kind].source.provenance).toBe('common practice');
    }
  });
});

describe('loads together', () => {
  test.each(['led-lamp', 'gas-discharge-lamp'] as const)('%s is no load to go by', (kind) => {
    const loads: readonly Load[] = [{ kind: 'h7', count: 2 }, { kind }];
    expect(loadCurrent(loads, 12.5)).toEqual({ type: 'refused', kind, reason: 'constant-power' });
  });

  test('the source names every text once, with how well it is founded', () => {
    const { source } = current([{ kind: 'h7' }, { kind: 'h1' }, { kind: 'horn-pair' }], 12);
    expect(source.provenance).toBe('computed');
    expect(source.text.split('; ')).toEqual([
      'UN Regulation 37, rated watts, as secondary texts print them (reported)',
      'UN Regulation 37, greatest watts at the test voltage (from memory)',
      'filament current goes with the voltage to the power of 0.55 (from memory)',
      'pair of horns: 8 to 12 A (common practice)',
    ]);
  });

  test.each<readonly [string, readonly Load[], number]>([
    ['nothing switched on', [], 12],
    ['half a lamp', [{ kind: 'h7', count: 0.5 }], 12],
    ['no lamp', [{ kind: 'h7', count: 0 }], 12],
    ['a voltage below 8 V', [{ kind: 'h7' }], 7.99],
    ['a voltage above 16 V', [{ kind: 'h7' }], 16.01],
    ['a voltage that is no number', [{ kind: 'h7' }], NaN],
  ])('%s is refused', (_, loads, voltage) => {
    expect(() => loadCurrent(loads, voltage)).toThrow('value-out-of-range');
  });

  test('every load is an interval around its best figure that never falls with the voltage', () => {
    const volts = fc.double({ min: 8, max: 15.9, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...usableKinds), volts, (kind, voltage) => {
        const { low, best, high } = current([{ kind }], voltage);
        expect(low).toBeLessThan(best);
        expect(best).toBeLessThanOrEqual(high);
        expect(current([{ kind }], voltage + 0.1).best).toBeGreaterThanOrEqual(best);
      }),
    );
  });

  test('one load more never draws less', () => {
    const load = fc.record({
      kind: fc.constantFrom(...usableKinds),
      count: fc.integer({ min: 1, max: 6 }),
    });
    fc.assert(
      fc.property(fc.array(load, { minLength: 1, maxLength: 5 }), load, (loads, more) => {
        const before = current(loads, 12);
        const after = current([...loads, more], 12);
        expect(after.low).toBeGreaterThan(before.low);
        expect(after.high - after.low).toBeGreaterThan(before.high - before.low);
      }),
    );
  });
});
