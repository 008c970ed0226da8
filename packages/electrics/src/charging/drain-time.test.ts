import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { daysToLose, drainTime, type DrainedBattery } from './drain-time.ts';
import type { BatteryTechnology } from '../limits/limit-context.ts';
import { stateOfCharge } from '../battery/state-of-charge.ts';
import { crankingPowerNeed } from '../tables/cranking-power-need.ts';
import { selfDischarge, selfDischargePart } from '../tables/self-discharge.ts';
import {
  startingLimitTemperature,
  type StartingLimitVehicle,
} from '../tables/starting-limit-temperature.ts';

describe('the tables behind it', () => {
  test('an engine needs 155, 210 and 350 % in the cold (trade chart of power against need)', () => {
    expect(crankingPowerNeed.rows).toEqual([
      [-29, 3.5],
      [-18, 2.1],
      [0, 1.55],
      [27, 1],
    ]);
    expect(crankingPowerNeed.source.provenance).toBe('published');
    expect(crankingPowerNeed.source.text).toContain('trade chart');
  });

  test('a wet battery loses 0.0003, 0.001 and 0.0025 of gravity a day (TM 9-6140-200-14)', () => {
    expect(selfDischarge.rows).toEqual([
      [10, 0.0003],
      [27, 0.001],
      [38, 0.0025],
    ]);
    expect(selfDischarge.source.provenance).toBe('published');
    expect(selfDischarge.source.text).toContain('TM 9-6140-200-14');
  });

  test('other plates discharge more slowly (common practice, no source)', () => {
    expect(selfDischargePart.source.provenance).toBe('common practice');
    for (const { low, high } of Object.values(selfDischargePart.rows)) {
      expect(low).toBeGreaterThan(0);
      expect(low).toBeLessThan(high);
      expect(high).toBeLessThanOrEqual(1);
    }
  });

  test('cars start down to -18 to -25 Cel, trucks to -15 to -20 (university course)', () => {
    expect(startingLimitTemperature.rows).toEqual({
      car: { lowC: -25, highC: -18 },
      truck: { lowC: -20, highC: -15 },
    });
    expect(startingLimitTemperature.source.provenance).toBe('published');
  });
});

describe('40 % of 60 Ah is lost', () => {
  // Computed: 24 A.h over the drain.
  const fixtures = [
    [50, 20],
    [100, 10],
    [300, 3.3],
    [1000, 1],
  ] as const;

  test.each(fixtures)('by %d mA in %d d', (drainMa, days) => {
    expect(daysToLose({ drainMa, capacityAh: 60, lostPart: 0.4 })).toBeCloseTo(days, 1);
  });

  test.each(fixtures)('by %d mA in %d d, within what a full battery stands', (drainMa, days) => {
    for (const temperatureC of [27, 10, 0]) {
      const { low, high } = drainTime({ drainMa, capacityAh: 60, temperatureC });
      expect(low).toBeLessThanOrEqual(days);
      expect(high).toBeGreaterThanOrEqual(days);
    }
  });

  test('never without a drain', () => {
    expect(daysToLose({ drainMa: 0, capacityAh: 60, lostPart: 0.4 })).toBe(Infinity);
    expect(daysToLose({ drainMa: 0, capacityAh: 60, lostPart: 0 })).toBe(0);
  });
});

describe('how long a battery stands with a drain', () => {
  test('by hand: 60 Ah wet, 50 mA, standing at 27 Cel, started at 0 Cel', () => {
    const { low, best, high, unit, source } = drainTime({
      drainMa: 50,
      capacityAh: 60,
      temperatureC: 0,
      standingC: 27,
      technology: 'flooded',
    });
    // Itself 0.001 of 0.15 a day, 0.4 A.h, and a fifth of that; drained 1.2 A.h a day.
    // Lost at most 40 %: 24 A.h / 1.6 A.h.
    expect(low).toBeCloseTo(15, 9);
    // Strain 2.3846 now and 9.8209 at -25 Cel, so that 0.2428 is needed: 45.43 A.h / 1.28 A.h.
    expect(high).toBeCloseTo(35.49, 1);
    // Halfway: 0.4214 is needed and 0.24 A.h a day lost: 34.72 A.h / 1.44 A.h.
    expect(best).toBeCloseTo(24.11, 1);
    expect(unit).toBe('d');
    expect(source.provenance).toBe('computed');
  });

  test('at the starting limit a full battery cranks, and stands no time', () => {
    const at = (temperatureC: number, vehicle: StartingLimitVehicle): number =>
      drainTime({ drainMa: 50, capacityAh: 60, temperatureC, vehicle }).high;
    expect(at(-25, 'car')).toBeCloseTo(0, 9);
    expect(at(-24.5, 'car')).toBeGreaterThan(0);
    expect(at(-20, 'truck')).toBeCloseTo(0, 9);
    expect(at(-19.5, 'truck')).toBeGreaterThan(0);
    expect(at(-29, 'car')).toBe(0);
  });

  test('at the warmer end of the starting limit it may stand no time', () => {
    expect(drainTime({ drainMa: 50, capacityAh: 60, temperatureC: -18 }).low).toBeCloseTo(0, 9);
    expect(drainTime({ drainMa: 50, capacityAh: 60, temperatureC: -17 }).low).toBeGreaterThan(0);
  });

  test('half charged, by its rest voltage, it stands less long', () => {
    const battery = { drainMa: 50, capacityAh: 60, temperatureC: 10 } as const;
    const half = drainTime({ ...battery, stateOfCharge: stateOfCharge(12.24, 'flooded') });
    const full = drainTime(battery);
    expect(half.low).toBe(0);
    expect(half.best).toBeLessThan(full.best / 2);
    expect(half.high).toBeLessThan(full.high);
  });

  test('without a drain the self-discharge remains, whatever the capacity', () => {
    const battery = {
      drainMa: 0,
      temperatureC: 27,
      standingC: 38,
      technology: 'flooded',
    } as const;
    const small = drainTime({ ...battery, capacityAh: 40 });
    const large = drainTime({ ...battery, capacityAh: 100 });
    // 40 % of a full charge at 0.0025 of 0.15 a day.
    expect(small.low).toBeCloseTo(24, 9);
    expect(large.low).toBeCloseTo(small.low, 9);
    expect(large.best).toBeCloseTo(small.best, 9);
    expect(large.high).toBeCloseTo(small.high, 9);
  });

  test('no time is longer than a year (common practice, no source)', () => {
    expect(drainTime({ drainMa: 0, capacityAh: 60, temperatureC: 27, technology: 'agm' })).toEqual(
      expect.objectContaining({ best: 365, high: 365 }),
    );
  });

  test('a technology not known is as wide as all of them', () => {
    const battery = { drainMa: 20, capacityAh: 60, temperatureC: 10 } as const;
    const any = drainTime(battery);
    for (const technology of ['flooded', 'efb', 'agm', 'gel'] as const) {
      const known = drainTime({ ...battery, technology });
      expect(known.low).toBeGreaterThanOrEqual(any.low);
      expect(known.high).toBeLessThanOrEqual(any.high);
    }
  });

  test('where it stands is not known: as wide as from 10 to 27 Cel', () => {
    const battery = { drainMa: 20, capacityAh: 60, temperatureC: 10 } as const;
    const any = drainTime(battery);
    expect(any.low).toBe(drainTime({ ...battery, standingC: 27 }).low);
    expect(any.high).toBe(drainTime({ ...battery, standingC: 10 }).high);
  });

  test.each<readonly [string, Partial<DrainedBattery>]>([
    ['a drain below 0', { drainMa: -1 }],
    ['a drain that is no number', { drainMa: Number.NaN }],
    ['no capacity', { capacityAh: 0 }],
    ['a start at 61 Cel', { temperatureC: 61 }],
    ['a stand at 39 Cel', { standingC: 39 }],
    ['a charge of 110 %', { stateOfCharge: { low: 90, best: 100, high: 110, unit: '%' } }],
    ['a charge out of order', { stateOfCharge: { low: 90, best: 80, high: 100, unit: '%' } }],
  ])('%s is refused', (_, wrong) => {
    const battery = { drainMa: 50, capacityAh: 60, temperatureC: 10, ...wrong };
    expect(() => drainTime(battery)).toThrow('value-out-of-range');
  });

  test('a charge in volts is refused', () => {
    const volts = { low: 12, best: 12.2, high: 12.4, unit: 'V' } as const;
    expect(() =>
      drainTime({ drainMa: 50, capacityAh: 60, temperatureC: 10, stateOfCharge: volts }),
    ).toThrow('unit-mismatch');
  });
});

describe('for any battery', () => {
  const drainMa = fc.double({ min: 0, max: 3000, noNaN: true });
  const capacityAh = fc.double({ min: 20, max: 250, noNaN: true });
  const temperatureC = fc.double({ min: -45, max: 50, noNaN: true });
  const battery: fc.Arbitrary<DrainedBattery> = fc.record({
    drainMa,
    capacityAh,
    temperatureC,
    standingC: fc.option(fc.double({ min: -30, max: 38, noNaN: true }), { nil: undefined }),
    technology: fc.option(fc.constantFrom<BatteryTechnology>('flooded', 'efb', 'agm', 'gel'), {
      nil: undefined,
    }),
    vehicle: fc.option(fc.constantFrom<StartingLimitVehicle>('car', 'truck'), { nil: undefined }),
  });

  function expectNoLonger(shorter: DrainedBattery, longer: DrainedBattery): void {
    // A part in 1e9 is left to rounding.
    const [least, most] = [drainTime(shorter), drainTime(longer)];
    for (const end of ['low', 'best', 'high'] as const) {
      expect(least[end]).toBeLessThanOrEqual(most[end] * (1 + 1e-9));
    }
  }

  test('the ends are finite and in order', () => {
    fc.assert(
      fc.property(battery, (any) => {
        const { low, best, high } = drainTime(any);
        expect(low >= 0 && low <= best && best <= high && Number.isFinite(high)).toBe(true);
      }),
    );
  });

  test('more drain never lasts longer', () => {
    fc.assert(
      fc.property(battery, drainMa, (any, more) => {
        expectNoLonger({ ...any, drainMa: any.drainMa + more }, any);
      }),
    );
  });

  test('more capacity never lasts less long', () => {
    fc.assert(
      fc.property(battery, capacityAh, (any, more) => {
        expectNoLonger(any, { ...any, capacityAh: any.capacityAh + more });
      }),
    );
  });

  test('a colder start never lasts longer', () => {
    fc.assert(
      fc.property(battery, temperatureC, (any, other) => {
        expectNoLonger(
          { ...any, temperatureC: Math.min(any.temperatureC, other) },
          { ...any, temperatureC: Math.max(any.temperatureC, other) },
        );
      }),
    );
  });
});
