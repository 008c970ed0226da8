import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandWeights } from '../conformance/band-weights.ts';
import type { Bound } from '../conformance/bound.ts';
import { freezingPoint } from '../battery/electrolyte.ts';
import type { LimitContext } from './limit-context.ts';
import { limitParts } from './limit-parts.ts';
import { isLimitName, limit, limitNames, type LimitName } from './limit.ts';
import type { Meter } from '../quantity/meter.ts';
import type { UnitCode } from '../quantity/unit.ts';

const exact: Meter = { percent: 0, digits: 0, digit: 0 };

function boundOf(name: LimitName, context: LimitContext = {}): Bound {
  const result = limit(name, context);
  if (result.type === 'unknown') {
    throw new Error(`${name} is unknown, missing ${result.missing.join(', ')}`);
  }
  return result.bound;
}

/** The probability that an exact reading is above the limit. */
function above(value: number, name: LimitName, context: LimitContext = {}): number {
  const bound = boundOf(name, context);
  const [, weight = NaN] = bandWeights({ value, unit: bound.unit }, [bound], exact);
  return weight;
}

type Row = readonly [LimitName, LimitContext, number, number];

function expectZone(name: LimitName, context: LimitContext, low: number, high: number): void {
  const bound = boundOf(name, context);
  expect(bound.low).toBeCloseTo(low, 3);
  expect(bound.high).toBeCloseTo(high, 3);
}

describe('battery at rest', () => {
  test.each<Row>([
    // TM 5-3805-262-20 para 5-9: 12.0 V is 25 %, 12.4 V is 75 %.
    ['battery.rest.flat', {}, 12, 12],
    ['battery.rest.full', { technology: 'flooded' }, 12.4, 12.4],
    ['battery.rest.full', { technology: 'efb' }, 12.4, 12.4],
    ['battery.rest.full', { technology: 'agm' }, 12.6, 12.6],
    ['battery.rest.full', { technology: 'gel' }, 12.6, 12.6],
    ['battery.rest.full', {}, 12.4, 12.6],
    ['battery.rest.surface', { technology: 'flooded' }, 12.9, 12.9],
    ['battery.rest.surface', { technology: 'agm' }, 13.1, 13.1],
    ['battery.rest.surface', {}, 12.9, 13.1],
    ['battery.rest.charging', {}, 13.4, 13.8],
    ['battery.rest.frozen', {}, 11.8, 11.8],
  ])('%s %j', expectZone);

  test.each<Row>([
    ['battery.rest.full', { technology: 'flooded', temperature: 0 }, 12.4, 12.4],
    ['battery.rest.full', { technology: 'flooded', temperature: -1 }, 12.35, 12.4],
    ['battery.rest.full', { technology: 'flooded', temperature: -30 }, 12.35, 12.4],
    ['battery.rest.full', { temperature: -8 }, 12.35, 12.6],
    ['battery.rest.flat', { temperature: -8, nominal: 24 }, 23.9, 24],
    ['battery.rest.frozen', { temperature: -20 }, 11.8, 11.8],
  ])('frost opens the limit by 0.05 V a battery, no more: %s %j', expectZone);

  test('12.1 V at -18 Cel is a low charge, not a cold battery', () => {
    expect(above(12.1, 'battery.rest.full', { technology: 'flooded', temperature: -18 })).toBe(0);
  });
});

describe('battery under load', () => {
  test.each([
    // Load-test table of the Battery Council International, as printed in service manuals.
    [100, 9.6],
    [70, 9.6],
    [60, 9.5],
    [50, 9.4],
    [40, 9.3],
    [30, 9.1],
    [20, 8.9],
    [10, 8.7],
    [0, 8.5],
    // Between the printed steps, in proportion.
    [65, 9.55],
    [35, 9.2],
    [5, 8.6],
  ])('the load test asks at %d degF for %d V', (fahrenheit, volts) => {
    const temperature = (fahrenheit - 32) / 1.8;
    expectZone('battery.load-test.minimum', { temperature }, volts, volts);
  });

  test('without a temperature it is the zone from freezing to 21 Cel', () => {
    expectZone('battery.load-test.minimum', {}, 9.1, 9.6);
  });

  test('at -18 Cel a battery may be loaded, below it is warmed first', () => {
    expectZone('battery.load-test.minimum', { temperature: -18 }, 8.5, 8.5);
    expect(limit('battery.load-test.minimum', { temperature: -18.1 })).toEqual({
      type: 'unknown',
      missing: ['battery warmer than -18 Cel'],
    });
  });

  test.each<Row>([
    ['battery.lamps.failed', {}, 11, 11],
    ['battery.lamps.good', {}, 11.7, 11.9],
    ['battery.tester.poor', { rating: 600, ratingStandard: 'en' }, 360, 360],
    ['battery.tester.strong', { rating: 600, ratingStandard: 'en' }, 480, 480],
    ['battery.tester.poor', { rating: 600 }, 324, 396],
    ['battery.tester.poor', { rating: 600, ratingStandard: 'sae', nominal: 24 }, 360, 360],
    ['battery.recharged.cell-down', {}, 11, 11],
    ['battery.recharged.cell-down', { nominal: 24 }, 22, 23.6],
    ['battery.recharged.full', { technology: 'flooded' }, 12.5, 12.5],
    ['battery.recharged.full', { technology: 'agm' }, 12.7, 12.7],
    ['battery.recharged.full', {}, 12.5, 12.7],
    ['battery.halves.equal', {}, 0.3, 0.3],
    ['battery.halves.equal', { nominal: 24 }, 0.3, 0.3],
  ])('%s %j', expectZone);

  test('a tester says nothing without a label', () => {
    const unknown = { type: 'unknown', missing: ['rating'] };
    expect(limit('battery.tester.poor', {})).toEqual(unknown);
    expect(limit('battery.tester.strong', {})).toEqual(unknown);
  });
});

describe('battery while cranking', () => {
  test.each<Row>([
    ['battery.crank.low', { fuel: 'petrol', temperature: 25 }, 9.6, 9.6],
    ['battery.crank.low', { temperature: 10 }, 9.4, 9.4],
    ['battery.crank.low', { fuel: 'petrol', temperature: -5 }, 8.96, 8.96],
    ['battery.crank.low', { fuel: 'petrol', temperature: -5.1 }, 8.2564, 8.9564],
    ['battery.crank.low', { fuel: 'diesel', temperature: 25 }, 8.9, 9.6],
    ['battery.crank.low', { fuel: 'petrol' }, 9.1, 9.6],
    ['battery.crank.low', { fuel: 'diesel' }, 8.4, 9.6],
    ['battery.crank.low', { temperature: -30 }, 7.8, 8.5],
    // TM 5-3895-382-24, Table 29: 8 to 10, 7 to 9, 6 to 8 V by temperature.
    ['battery.crank.collapsed', { temperature: 21 }, 7, 8],
    ['battery.crank.collapsed', { temperature: 18.5 }, 7, 8],
    ['battery.crank.collapsed', { temperature: 15 }, 6.7941, 7.7941],
    ['battery.crank.collapsed', { temperature: 1.5 }, 6, 7],
    ['battery.crank.collapsed', { temperature: 1 }, 5.9697, 6.9697],
    ['battery.crank.collapsed', { temperature: -15 }, 5, 6],
    ['battery.crank.collapsed', { temperature: -30 }, 5, 6],
    ['battery.crank.collapsed', {}, 6, 8],
  ])('%s %j', expectZone);

  test('8.7 V at -8 Cel is borderline for petrol, at 21 Cel it is low', () => {
    const weight = above(8.7, 'battery.crank.low', { fuel: 'petrol', temperature: -8 });
    expect(weight).toBeGreaterThan(0.05);
    expect(weight).toBeLessThan(0.95);
    expect(above(8.7, 'battery.crank.low', { fuel: 'petrol', temperature: 21 })).toBe(0);
  });
});

describe('internal resistance of a sound battery', () => {
  // From 12.5 V to 9.7 V at 180 A.
  const weak = (2.8 / 180) * 1000;

  test.each<readonly [string, LimitContext]>([
    ['petrol, warm', { fuel: 'petrol', temperature: 20 }],
    ['diesel, warm', { fuel: 'diesel', temperature: 20 }],
    ['nothing known', {}],
    ['temperature not known', { fuel: 'petrol' }],
    ['label of 600 A', { rating: 600, ratingStandard: 'sae', temperature: 20 }],
  ])('9.7 V at only 180 A is a worn battery: %s', (_, context) => {
    expect(above(weak, 'battery.resistance.worn', context)).toBeGreaterThan(0.95);
  });

  test.each<readonly [string, number, LimitContext]>([
    // Healthy 60 A.h at 20 Cel: 4 to 8 mOhm, common practice, no source.
    ['8 mOhm, petrol, warm', 8, { fuel: 'petrol', temperature: 20 }],
    ['6 mOhm, label of 600 A', 6, { rating: 600, ratingStandard: 'en', temperature: 20 }],
    ['12 mOhm at -18 Cel, petrol', 12, { fuel: 'petrol', temperature: -18 }],
    ['14 mOhm, 24 V', 14, { nominal: 24, fuel: 'petrol', temperature: 20 }],
  ])('%s is sound', (_, resistance, context) => {
    expect(above(resistance, 'battery.resistance.worn', context)).toBeLessThan(0.05);
  });

  test.each<Row>([
    ['battery.resistance.worn', { fuel: 'petrol', temperature: 27 }, 9, 12],
    ['battery.resistance.worn', { fuel: 'diesel', temperature: 27 }, 6, 9],
    ['battery.resistance.worn', { temperature: 27 }, 6, 12],
    // 40 % of the cranking power is left at -18 Cel (TM 5-1185).
    ['battery.resistance.worn', { fuel: 'petrol', temperature: -18 }, 22.5, 30],
    ['battery.resistance.worn', { nominal: 24, fuel: 'diesel', temperature: 27 }, 12, 18],
    // SAE J537: 5.4 V / 600 A = 9 mOhm at -18 Cel, 0.4 of it at 27 Cel, divided by 60 %; the load
    // test at half of 600 A: 3.0 V / 300 A.
    ['battery.resistance.worn', { rating: 600, ratingStandard: 'sae', temperature: 27 }, 6, 10],
    // EN 50342-1: 5.1 V / 600 A.
    ['battery.resistance.worn', { rating: 600, ratingStandard: 'en', temperature: 27 }, 5.6667, 10],
    // The temperature not known: 10 Cel (9.4 V in the load test) to 27 Cel.
    ['battery.resistance.worn', { rating: 600, ratingStandard: 'sae' }, 6, 10.6667],
    // 65 % of the cranking power is left at 0 Cel, a quarter at -29 Cel.
    ['battery.resistance.worn', { fuel: 'petrol', temperature: 0 }, 13.8462, 18.4615],
    ['battery.resistance.worn', { fuel: 'petrol', temperature: -29 }, 36, 48],
    // A DIN figure has another test and does not count.
    ['battery.resistance.worn', { rating: 300, ratingStandard: 'din', temperature: 27 }, 6, 12],
  ])('%s %j', expectZone);
});

describe('voltage drop', () => {
  test.each<Row>([
    ['drop.clamp', {}, 0.1, 0.1],
    ['drop.clamp', { nominal: 24 }, 0.2, 0.2],
    ['contacts.high', {}, 0.3, 0.3],
    ['contacts.high', { nominal: 24 }, 0.6, 0.6],
    // TM 10-3930-671-24: 0.20 V for 100 A; ±17.5 %, common practice, no source.
    ['drop.positive', { crankCurrent: 200 }, 0.33, 0.47],
    ['drop.ground', { crankCurrent: 200 }, 0.33, 0.47],
    ['drop.positive', { crankCurrent: 200, batteryLocation: 'boot' }, 0.495, 0.705],
    ['drop.positive', { crankCurrent: 200, batteryLocation: 'seat' }, 0.4125, 0.5875],
    ['drop.ground', { crankCurrent: 200, batteryLocation: 'boot' }, 0.33, 0.47],
    ['drop.positive', { crankCurrent: 200, nominal: 24 }, 0.33, 0.47],
    ['drop.positive', { crankCurrent: 15 }, 0.1, 0.1],
    // Expected: 120 to 200 A, and 2.5 to 5 times 160 A where the engine does not turn.
    ['drop.ground', { fuel: 'petrol', displacement: 1.6, temperature: 20 }, 0.198, 0.47],
    ['drop.ground', { fuel: 'petrol', displacement: 1.6, turning: false }, 0.66, 1.88],
  ])('%s %j', expectZone);

  test('a sound 25 mm2 cable of 1.5 m passes at 200 A (IEC 60228 class 5: 0.234 V)', () => {
    expect(above(0.234, 'drop.positive', { crankCurrent: 200 })).toBeLessThan(0.01);
  });

  test('a sound 50 mm2 cable of 4.5 m to the boot passes at 250 A and 80 Cel (0.537 V)', () => {
    const context: LimitContext = { crankCurrent: 250, batteryLocation: 'boot' };
    expect(above(0.537, 'drop.positive', context)).toBeLessThan(0.05);
  });

  test('one loose joint of 3 mOhm fails at 200 A (0.600 V)', () => {
    expect(above(0.6 + 0.2, 'drop.positive', { crankCurrent: 200 })).toBeGreaterThan(0.99);
    expect(above(0.6, 'drop.positive', { crankCurrent: 200 })).toBeGreaterThan(0.99);
  });

  test.each<Row>([
    ['contacts.open', { crankVoltage: 12, restVoltage: 12.6 }, 6, 9.6],
    ['contacts.open', { restVoltage: 12.6 }, 6.3, 10.08],
    ['contacts.open', { restVoltage: 25, nominal: 24 }, 12.5, 20],
    ['contacts.open', { nominal: 24 }, 8, 20.16],
  ])('open contacts stand under a part of the battery voltage: %s %j', expectZone);
});

describe('signals', () => {
  test.each<Row>([
    ['control.absent', {}, 1, 2],
    ['relay.feed.absent', {}, 1, 2],
    ['relay.command.absent', { nominal: 24 }, 2, 4],
    // TM 5-2420-230-24-2 p. 13-33: 1.0 V, 24 V: 2.0 V.
    ['control.low', { crankVoltage: 9.6 }, 8.6, 8.6],
    ['control.low', { crankVoltage: 19.2, nominal: 24 }, 17.2, 17.2],
    ['control.low', { crankVoltage: 7, restVoltage: 12.5 }, 6, 6],
    ['control.low', { restVoltage: 12.6 }, 5, 11.6],
    ['control.low', { restVoltage: 25.2, nominal: 24 }, 10, 23.2],
    ['control.low', { restVoltage: 12.2 }, 3.5, 8.6],
    ['control.low', { restVoltage: 12 }, 2, 6],
    ['control.low', { restVoltage: 11.5 }, 2, 6],
    ['control.low', {}, 2, 7],
    ['control.low', { restVoltage: 12.6, turning: true }, 2, 7],
    ['relay.feed.low', {}, 6.5, 8],
    ['relay.feed.low', { restVoltage: 12.5 }, 11.5, 12],
    ['relay.feed.low', { restVoltage: 25, nominal: 24 }, 23, 24],
    // Relay data sheets: operate voltage 6.5 to 8.0 V.
    ['relay.command.low', { crankVoltage: 9.6 }, 6.5, 8.6],
    ['relay.command.low', { restVoltage: 12.5 }, 6.5, 11.5],
    ['relay.command.low', { crankVoltage: 7 }, 5, 6],
    ['relay.command.low', { crankVoltage: 14, nominal: 24 }, 10, 12],
    ['relay.command.low', { restVoltage: 12 }, 6.5, 11],
    ['relay.command.low', { restVoltage: 11.9 }, 2, 7],
    ['relay.command.low', {}, 2, 7],
  ])('%s %j', expectZone);

  test.each<readonly [string, number, LimitContext]>([
    ['5 V at 11.5 V of rest', 5, { restVoltage: 11.5 }],
    ['5 V, battery not known', 5, {}],
    ['7 V, battery not known', 7, {}],
    ['6 V of 6.5 V while start is held', 6, { crankVoltage: 6.5 }],
    ['6 V while it turns', 6, { restVoltage: 12.4, turning: true }],
  ])('a flat battery alone does not blame the wiring: %s', (_, value, context) => {
    expect(above(value, 'control.low', context)).toBeGreaterThan(0.5);
  });

  test.each([
    ['just below', 8.59, 0],
    ['at', 8.6, 0.5],
    ['just above', 8.61, 1],
  ])('%s a volt under the cranking battery', (_, value, expected) => {
    expect(above(value, 'control.low', { crankVoltage: 9.6 })).toBe(expected);
  });
});

describe('cranking current', () => {
  const petrol = { fuel: 'petrol', displacement: 1.6, temperature: 20 } as const;
  const diesel = { fuel: 'diesel', displacement: 2, temperature: 20 } as const;

  test.each<Row>([
    ['crank-current.none', {}, 20, 40],
    ['crank-current.none', { nominal: 24 }, 20, 40],
    // Normal currents: common practice, no source; ±15 %.
    ['crank-current.low', petrol, 102, 138],
    ['crank-current.high', petrol, 272, 368],
    ['crank-current.low', { ...petrol, displacement: 3 }, 136, 184],
    ['crank-current.high', { ...petrol, displacement: 3 }, 353.6, 478.4],
    ['crank-current.low', diesel, 170, 230],
    ['crank-current.high', diesel, 476, 644],
    ['crank-current.high', { ...diesel, displacement: 6.5 }, 816, 1104],
    ['crank-current.low', { ...petrol, temperature: 0 }, 142.8, 193.2],
    ['crank-current.high', { ...petrol, temperature: -18 }, 489.6, 662.4],
    ['crank-current.high', { ...petrol, temperature: -30 }, 489.6, 662.4],
    ['crank-current.low', { ...petrol, temperature: 10 }, 122.4, 165.6],
    ['crank-current.low', { ...petrol, temperature: 35 }, 102, 138],
    ['crank-current.low', { fuel: 'petrol', displacement: 1.6 }, 102, 193.2],
    ['crank-current.high', { displacement: 1.6, temperature: 20 }, 272, 644],
    ['crank-current.low', { fuel: 'petrol', cylinders: 4, temperature: 20 }, 102, 138],
    ['crank-current.low', { fuel: 'petrol', cylinders: 6, temperature: 20 }, 136, 184],
    ['crank-current.high', { fuel: 'diesel', cylinders: 8, temperature: 20 }, 816, 1104],
    ['crank-current.low', { ...diesel, expectedCurrent: 160, temperature: 20 }, 102, 138],
    ['crank-current.high', { expectedCurrent: 160, temperature: 20 }, 272, 368],
    ['crank-current.low', { ...diesel, displacement: 6, nominal: 24 }, 133.875, 221.375],
  ])('%s %j', expectZone);

  test.each([
    ['just below', 119, 0.05, 0.5],
    ['just above', 121, 0.5, 0.95],
    ['well above', 150, 0.95, 1],
  ])('%s the lower end of normal', (_, value, least, most) => {
    const weight = above(value, 'crank-current.low', petrol);
    expect(weight).toBeGreaterThan(least);
    expect(weight).toBeLessThanOrEqual(most);
  });
});

describe('charging', () => {
  test.each<Row>([
    ['charging.none', {}, 13, 13],
    ['charging.low', {}, 13.5, 13.5],
    ['charging.right', {}, 14.8, 14.8],
    ['charging.right', { temperature: 20 }, 14.8, 14.8],
    // TM 9-6115-464-12, Table 4-5, halved: 15.06 V at -18 Cel.
    ['charging.right', { temperature: -18 }, 14.8, 15.06],
    ['charging.right', { temperature: -7 }, 14.8, 14.87],
    ['charging.right', { temperature: -1.5 }, 14.8, 14.8],
    ['charging.right', { nominal: 24 }, 29.6, 29.6],
    ['charging.none', { nominal: 24 }, 26, 26],
  ])('%s %j', expectZone);
});

describe('age and temperature (common practice, no source)', () => {
  test.each<Row>([
    ['battery.age.new', {}, 2, 2],
    ['battery.age.middle', {}, 5, 5],
    ['battery.frost', {}, -5, -5],
    ['battery.load-test.coldest', {}, -18, -18],
    ['temperature.freezing', {}, 0, 0],
    ['temperature.mild', {}, 15, 15],
    ['battery.age.new', { nominal: 24 }, 2, 2],
    ['temperature.mild', { nominal: 24 }, 15, 15],
  ])('%s %j', expectZone);

  test('the load test is refused just below its coldest temperature, not at it', () => {
    const { low } = boundOf('battery.load-test.coldest');
    expect(limit('battery.load-test.minimum', { temperature: low }).type).toBe('bound');
    expect(limit('battery.load-test.minimum', { temperature: low - 0.1 }).type).toBe('unknown');
  });

  test('the limit of frost stands above the -7 Cel at which a gravity of 1.100 freezes', () => {
    // Army subcourse OD1002, lesson 2.
    expect(boundOf('battery.frost').low).toBeGreaterThan(freezingPoint(1.1).value);
  });
});

describe('just below, at and just above each sharp limit of 12 V', () => {
  const sharp: readonly (readonly [LimitName, LimitContext, number])[] = [
    ['battery.rest.flat', {}, 12],
    ['battery.rest.full', { technology: 'flooded' }, 12.4],
    ['battery.rest.full', { technology: 'agm' }, 12.6],
    ['battery.rest.surface', { technology: 'efb' }, 12.9],
    ['battery.rest.frozen', {}, 11.8],
    ['battery.lamps.failed', {}, 11],
    ['battery.load-test.minimum', { temperature: 25 }, 9.6],
    ['battery.tester.poor', { rating: 500, ratingStandard: 'sae' }, 300],
    ['battery.tester.strong', { rating: 500, ratingStandard: 'sae' }, 400],
    ['battery.recharged.cell-down', {}, 11],
    ['battery.recharged.full', { technology: 'efb' }, 12.5],
    ['battery.halves.equal', {}, 0.3],
    ['battery.crank.low', { temperature: 25 }, 9.6],
    ['drop.clamp', {}, 0.1],
    ['contacts.high', {}, 0.3],
    ['charging.none', {}, 13],
    ['charging.low', {}, 13.5],
    ['charging.right', {}, 14.8],
    ['battery.age.new', {}, 2],
    ['battery.age.middle', {}, 5],
    ['temperature.mild', {}, 15],
  ];
  test.each(sharp)('%s %j: %d', (name, context, value) => {
    expect(above(value * 0.999, name, context)).toBe(0);
    expect(above(value, name, context)).toBe(0.5);
    expect(above(value * 1.001, name, context)).toBe(1);
  });
});

describe('24 V', () => {
  const doubled: readonly LimitName[] = [
    'battery.rest.flat',
    'battery.rest.full',
    'battery.rest.surface',
    'battery.rest.charging',
    'battery.rest.frozen',
    'battery.lamps.failed',
    'battery.lamps.good',
    'battery.load-test.minimum',
    'battery.recharged.full',
    'battery.crank.collapsed',
    'battery.crank.low',
    'battery.resistance.worn',
    'drop.clamp',
    'contacts.high',
    'control.absent',
    'charging.none',
    'charging.low',
    'charging.right',
  ];
  test.each(doubled)('%s is twice that of 12 V', (name) => {
    const single = boundOf(name, { technology: 'agm', temperature: -8, fuel: 'diesel' });
    const pair = boundOf(name, { technology: 'agm', temperature: -8, fuel: 'diesel', nominal: 24 });
    expect(pair.low).toBeCloseTo(2 * single.low, 9);
    expect(pair.high).toBeCloseTo(2 * single.high, 9);
  });
});

describe('for any vehicle', () => {
  const optional = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
    fc.option(value, { nil: undefined });
  const context: fc.Arbitrary<LimitContext> = fc.record({
    nominal: optional(fc.constantFrom(12 as const, 24 as const)),
    temperature: optional(fc.double({ min: -40, max: 50, noNaN: true })),
    technology: optional(fc.constantFrom('flooded' as const, 'efb' as const, 'agm' as const)),
    rating: optional(fc.double({ min: 200, max: 1000, noNaN: true })),
    ratingStandard: optional(fc.constantFrom('sae' as const, 'en' as const, 'din' as const)),
    fuel: optional(fc.constantFrom('petrol' as const, 'diesel' as const)),
    displacement: optional(fc.double({ min: 0.5, max: 15, noNaN: true })),
    cylinders: optional(fc.integer({ min: 2, max: 12 })),
    turning: optional(fc.boolean()),
    expectedCurrent: optional(fc.double({ min: 60, max: 600, noNaN: true })),
    crankCurrent: optional(fc.double({ min: 0, max: 900, noNaN: true })),
  });

  test('a bound is finite, in order and has a source', () => {
    fc.assert(
      fc.property(context, fc.constantFrom(...limitNames), (vehicle, name) => {
        const result = limit(name, vehicle);
        if (result.type === 'unknown') {
          expect(result.missing.length).toBeGreaterThan(0);
          return;
        }
        const { low, high, source } = result.bound;
        expect(Number.isFinite(low) && Number.isFinite(high) && low <= high).toBe(true);
        expect(source.text).not.toBe('');
      }),
      { numRuns: 3000 },
    );
  });

  test.each<readonly [string, readonly LimitName[]]>([
    [
      'battery at rest',
      ['battery.rest.flat', 'battery.rest.full', 'battery.rest.surface', 'battery.rest.charging'],
    ],
    ['lamps', ['battery.lamps.failed', 'battery.lamps.good']],
    ['cranking battery', ['battery.crank.collapsed', 'battery.crank.low']],
    ['recharged battery', ['battery.recharged.cell-down', 'battery.recharged.full']],
    ['control', ['control.absent', 'control.low']],
    ['relay feed', ['relay.feed.absent', 'relay.feed.low']],
    ['relay command', ['relay.command.absent', 'relay.command.low']],
    ['cranking current', ['crank-current.none', 'crank-current.low', 'crank-current.high']],
    ['charging', ['charging.none', 'charging.low', 'charging.right']],
    ['age', ['battery.age.new', 'battery.age.middle']],
    ['temperature', ['temperature.freezing', 'temperature.mild']],
  ])('%s: its limits ascend', (_, names) => {
    fc.assert(
      fc.property(context, (vehicle) => {
        const middles = names.map((name) => {
          const { low, high } = boundOf(name, vehicle);
          return (low + high) / 2;
        });
        expect(middles).toEqual(middles.toSorted((a, b) => a - b));
      }),
    );
  });
});

describe('a starter that runs free on the bench', () => {
  test.each<Row>([
    // A vehicle maker's service manual: free running at 11.0 V; TM 9-4940-568-34: at 20 V.
    ['starter.bench.supply', {}, 11, 11],
    ['starter.bench.supply', { nominal: 24 }, 20, 20],
    ['starter.bench.none', {}, 5, 5],
    ['starter.bench.low', {}, 30, 30],
    // 90 A of a car's starter by its maker, 130 A and 110 A in TM 5-3895-382-24 and TM 5-3810-303-24.
    ['starter.bench.high', { starterClass: 'car' }, 85, 105],
    ['starter.bench.high', { starterClass: 'heavy' }, 120, 140],
    ['starter.bench.high', {}, 85, 140],
    ['starter.bench.high', { nominal: 24, starterClass: 'car' }, 100, 120],
    ['starter.bench.speed', { starterBuild: 'geared' }, 2500, 2500],
    ['starter.bench.speed', { starterBuild: 'direct' }, 5500, 5500],
    ['starter.bench.speed', {}, 2500, 5500],
  ])('%s %j', expectZone);
});

describe('a battery that comes back', () => {
  test.each<Row>([
    ['battery.received.reversed', {}, 0, 0],
    // TM 9-6140-200-14: discharged below 10.5 V a battery is harmed.
    ['battery.received.deep', {}, 10.5, 10.5],
    ['battery.case.cold', {}, 0, 0],
    ['battery.case.hot', {}, 45, 45],
    // TM 9-6140-200-14 (1998) and TM 5-3805-281-24-2 differ twofold.
    ['battery.cells.even', {}, 0.025, 0.025],
    ['battery.cells.recheck', {}, 0.05, 0.05],
    ['battery.stand-loss', {}, 0.1, 0.1],
  ])('%s %j', expectZone);
});

describe('torque of a fitting, where the maker gives none', () => {
  const steel = { boltInto: 'steel' } as const;
  // Three quarters of the proof load of ISO 898-1 (from memory), nut factor 0.15 to 0.20.
  test.each([
    ['M6', '8.8', 7.9, 10.5],
    ['M8', '8.8', 19.1, 25.5],
    ['M10', '8.8', 37.8, 50.5],
    ['M12', '8.8', 66, 88],
    ['M6', '10.9', 11.3, 15],
    ['M8', '10.9', 27.3, 36.5],
    ['M10', '10.9', 54.2, 72.2],
    ['M12', '10.9', 94.5, 125.9],
  ] as const)('%s of class %s into steel: %d to %d N.m', (boltSize, boltClass, under, right) => {
    const context = { ...steel, boltSize, boltClass };
    expect(Math.abs(boundOf('torque.bolt.under', context).low - under)).toBeLessThan(0.051);
    expect(Math.abs(boundOf('torque.bolt.right', context).high - right)).toBeLessThan(0.051);
  });

  test.each<Row>([
    // A harvester maker's manual: 9, 20, 40 and 70 N.m into cast aluminium; a tenth round them.
    ['torque.bolt.under', { boltSize: 'M6', boltInto: 'aluminium' }, 8.1, 8.1],
    ['torque.bolt.right', { boltSize: 'M8', boltInto: 'aluminium' }, 22, 22],
    ['torque.bolt.under', { boltSize: 'M10', boltInto: 'aluminium', boltClass: '10.9' }, 36, 36],
    ['torque.bolt.right', { boltSize: 'M10', boltInto: 'aluminium', boltClass: '10.9' }, 44, 44],
    ['torque.bolt.under', { boltSize: 'M12', boltInto: 'aluminium' }, 63, 63],
    ['torque.bolt.right', { boltSize: 'M12', boltInto: 'aluminium' }, 77, 77],
    // What is not known widens the bound.
    ['torque.bolt.under', { ...steel, boltSize: 'M10' }, 37.845, 54.1575],
    ['torque.bolt.right', { ...steel, boltSize: 'M10' }, 50.46, 72.21],
    ['torque.bolt.under', { boltSize: 'M10', boltClass: '8.8' }, 36, 37.845],
    ['torque.bolt.right', { boltSize: 'M10', boltClass: '8.8' }, 44, 50.46],
    // Common practice, no source.
    ['torque.stud.under', { studSize: 'M6', studMaterial: 'copper' }, 3, 3],
    ['torque.stud.right', { studSize: 'M6', studMaterial: 'copper' }, 5, 5],
    ['torque.stud.under', { studSize: 'M8' }, 8, 8],
    ['torque.stud.right', { studSize: 'M8' }, 12, 12],
    ['torque.stud.under', { studSize: 'M10', studMaterial: 'brass' }, 15, 15],
    ['torque.stud.right', { studSize: 'M10', studMaterial: 'brass' }, 20, 20],
    ['torque.post.under', { postKind: 'tapered' }, 5, 5],
    ['torque.post.right', { postKind: 'tapered' }, 8, 8],
    // A battery maker's installation manual, Table 2.
    ['torque.post.under', { postKind: 'insert-m6' }, 4.5, 4.5],
    ['torque.post.right', { postKind: 'insert-m8' }, 10.7, 10.7],
    ['torque.post.right', { postKind: 'insert-m10' }, 16, 16],
    // One battery or two: what is dead is dead.
    ['stud.dead', {}, 0.5, 0.5],
    ['stud.dead', { nominal: 24 }, 0.5, 0.5],
  ])('%s %j', expectZone);

  test.each<readonly [LimitName, LimitContext, string]>([
    ['torque.bolt.right', {}, 'boltSize'],
    ['torque.bolt.right', { boltSize: 'M14', boltInto: 'aluminium' }, 'torque into aluminium'],
    ['torque.stud.right', {}, 'studSize'],
    ['torque.stud.right', { studSize: 'M8', studMaterial: 'steel' }, 'torque of steel studs'],
    ['torque.post.under', {}, 'postKind'],
    ['charging.right', { smartCharging: true }, 'the charging voltage that the vehicle asks for'],
    ['charging.none', { smartCharging: true }, 'the charging voltage that the vehicle asks for'],
    ['charging.low', { smartCharging: true }, 'the charging voltage that the vehicle asks for'],
  ])('there is no %s for %j', (name, context, missing) => {
    expect(limit(name, context)).toEqual({ type: 'unknown', missing: [missing] });
  });

  test('a copper stud M8 shears where a steel bolt M8 is not tight yet', () => {
    const stud = boundOf('torque.stud.right', { studSize: 'M8', studMaterial: 'copper' });
    const bolt = boundOf('torque.bolt.under', { ...steel, boltSize: 'M8', boltClass: '8.8' });
    expect(stud.high).toBeLessThan(bolt.low);
  });
});

describe('names of limits', () => {
  test('each has its limit', () => {
    const units = new Set<UnitCode>(['V', 'A', 'mOhm', 'Cel', 'a', '/min', '1', 'N.m']);
    for (const name of limitNames) {
      expect(isLimitName(name)).toBe(true);
      const context: LimitContext = {
        rating: 600,
        ratingStandard: 'en',
        boltSize: 'M10',
        studSize: 'M8',
        postKind: 'tapered',
      };
      expect(units.has(boundOf(name, context).unit)).toBe(true);
    }
    expect(new Set(limitNames).size).toBe(limitNames.length);
  });

  test.each(['battery.rest', 'toString', ''])('%j is none', (text) => {
    expect(isLimitName(text)).toBe(false);
  });

  test('an unknown name from outside is refused with its name', () => {
    const fromOutside: string = 'battery.rest.tired';
    const refusal = 'limit-unknown: limit battery.rest.tired';
    expect(() => limit(fromOutside as LimitName, {})).toThrow(refusal);
    expect(() => limitParts(fromOutside as LimitName)).toThrow(refusal);
  });
});
