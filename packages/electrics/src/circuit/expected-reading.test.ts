import {
  assert,
  constantFrom,
  double,
  integer,
  option,
  property,
  record,
  subarray,
} from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ElectricsError } from '../electrics-error.ts';
import { interpolate } from '../interpolate.ts';
import { loadTestVoltage } from '../limits/battery-load.ts';
import type { LimitContext } from '../limits/limit-context.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import { openCircuitVoltage } from '../tables/open-circuit-voltage.ts';
import { usualRatings } from '../tables/usual-rating.ts';
import { soundCables, soundJoints } from '../tables/sound-resistance.ts';
import { batteryVoltage } from './battery-model.ts';
import { expectedReading, expectedReadings, type ExpectedReading } from './expected-reading.ts';
import { bestValues, vehicleCircuit, vehicleKind, vehicleSpans } from './vehicle-circuit.ts';

const petrol = { fuel: 'petrol', displacement: 2, temperature: 20 } as const;
const diesel = { fuel: 'diesel', displacement: 2, temperature: 20 } as const;
const truck = { nominal: 24, fuel: 'diesel', displacement: 10, temperature: 20 } as const;

function expected(name: ExpectedReading, context: LimitContext): SourcedInterval {
  const found = expectedReading(name, context);
  if (found === undefined) throw new Error(`${name}: nothing to expect`);
  return found;
}

const drops = ['drop.clamp', 'drop.positive', 'drop.ground', 'drop.contacts'] as const;

describe('the cranking current of a sound vehicle (common practice, no source)', () => {
  test.each<readonly [string, LimitContext, number, number]>([
    ['petrol 1.2 L, warm', { ...petrol, displacement: 1.2 }, 120, 200],
    ['petrol 2.0 L, warm', petrol, 120, 200],
    ['petrol 3.0 L, warm', { ...petrol, displacement: 3 }, 160, 260],
    ['diesel 1.6 L, warm', { ...diesel, displacement: 1.6 }, 200, 350],
    ['diesel 2.2 L, warm', { ...diesel, displacement: 2.2 }, 200, 350],
    ['diesel V8 6.5 L, warm', { ...diesel, displacement: 6.5 }, 350, 600],
    ['petrol 2.0 L at 0 Cel, 1.4 times', { ...petrol, temperature: 0 }, 168, 280],
    ['petrol 2.0 L at -18 Cel, 1.8 times', { ...petrol, temperature: -18 }, 216, 360],
    ['diesel 2.0 L at -18 Cel, 1.8 times', { ...diesel, temperature: -18 }, 360, 630],
    ['a truck of 24 V', truck, 250, 400],
  ])('%s is %j: %d to %d A', (_, context, low, high) => {
    const span = expected('crank-current', context);
    expect(span.unit).toBe('A');
    expect(span.best).toBeGreaterThan(low);
    expect(span.best).toBeLessThan(high);
    // The usual range, and neither a single figure nor anything at all.
    expect(span.low).toBeGreaterThan(0.85 * low);
    expect(span.high).toBeLessThan(1.15 * high);
    expect(span.high - span.low).toBeGreaterThan(0.15 * span.best);
    expect(span.high - span.low).toBeLessThan(0.5 * span.best);
  });

  test.each([90, 150, 190, 260])("honours the owner's %d A when warm", (expectedCurrent) => {
    for (const vehicle of [petrol, diesel, truck, { temperature: 20 }]) {
      const { low, best, high } = expected('crank-current', { ...vehicle, expectedCurrent });
      expect(best / expectedCurrent).toBeCloseTo(1, 1);
      expect(low).toBeLessThan(expectedCurrent);
      expect(high).toBeGreaterThan(expectedCurrent);
      expect(high - low).toBeLessThan(0.35 * best);
    }
  });

  test("takes more than the owner's warm figure in frost", () => {
    const cold = { ...petrol, expectedCurrent: 190, temperature: -18 };
    expect(expected('crank-current', cold).low).toBeGreaterThan(1.4 * 190);
  });

  test("the owner's figure is that of a sound battery: the usual one says nothing new of a flat one", () => {
    const expectedCurrent = expected('crank-current', petrol).best;
    for (const restVoltage of [11.7, 12, 12.4]) {
      const flat = { ...petrol, restVoltage };
      const { best } = expected('crank-current', { ...flat, expectedCurrent });
      expect(best).toBeCloseTo(expected('crank-current', flat).best, 6);
    }
  });
});

describe('the battery at rest', () => {
  // Battery makers and TM 5-3805-262-20 para 5-9, flooded; a workshop trade table, agm and gel.
  test.each(['flooded', 'agm', 'gel'] as const)(
    '%s: every published figure of a full battery lies within',
    (technology) => {
      const { low, high, unit } = expected('battery.rest', { technology });
      expect(unit).toBe('V');
      for (const { points } of openCircuitVoltage[technology]) {
        const [volts, charge] = points.at(-1)!;
        expect(charge).toBeGreaterThan(95);
        expect(volts).toBeGreaterThanOrEqual(low);
        expect(volts).toBeLessThanOrEqual(high);
      }
    },
  );

  test('is expected from three quarters of charge on, 12.4 V (TM 5-3805-262-20 para 5-9)', () => {
    expect(expected('battery.rest', { technology: 'flooded' }).low).toBe(12.4);
  });

  test('reaches over the 12.8 to 13.0 V of a full agm one (TM 9-6115-730-24 WP 0050)', () => {
    const { low, high } = expected('battery.rest', { technology: 'agm' });
    expect(low).toBeLessThan(12.8);
    expect(high).toBe(13);
  });

  test.each(['agm', 'gel'] as const)('rests higher when %s than when flooded or efb', (sealed) => {
    for (const name of ['battery.rest', 'battery.recharged', 'relay.feed'] as const) {
      for (const technology of ['flooded', 'efb'] as const) {
        const wet = expected(name, { technology });
        const high = expected(name, { technology: sealed });
        expect(high.low).toBeGreaterThan(wet.low);
        expect(high.best).toBeGreaterThan(wet.best);
        expect(high.high).toBeGreaterThan(wet.high);
      }
    }
  });

  test('does not go by what was measured', () => {
    expect(expected('battery.rest', { restVoltage: 11 })).toEqual(expected('battery.rest', {}));
  });

  test("two hours after a full charge is above 12.5 V (a vehicle maker's service manual)", () => {
    expect(expected('battery.recharged', { technology: 'flooded' }).low).toBe(12.5);
    expect(expected('battery.recharged', { technology: 'flooded' }).best).toBe(12.65);
  });

  test('of a 24 V pair differs by at most 0.2 V (common practice, no source)', () => {
    expect(expected('battery.halves', truck)).toMatchObject({ low: 0, high: 0.2, unit: 'V' });
  });
});

describe('the battery under load', () => {
  const labelled = {
    ...petrol,
    technology: 'flooded',
    restVoltage: 12.65,
    batteryAge: 2,
    rating: 600,
    ratingStandard: 'sae',
  } as const;

  // Load-test table of the battery trade, as service manuals print it: 9.6 V at 21 Cel and so on.
  test.each([21, 10, 0, -10, -18])(
    'stays above the least of the load test at %d Cel, even at its lower end',
    (temperature) => {
      const { low, high } = expected('battery.load-test', { ...labelled, temperature });
      expect(low).toBeGreaterThan(loadTestVoltage(temperature));
      expect(high).toBeLessThan(12.65);
    },
  );

  test('gives nothing without a rating', () => {
    expect(expectedReading('battery.load-test', petrol)).toBeUndefined();
    expect(expectedReading('battery.tester', petrol)).toBeUndefined();
  });

  // One battery, labelled after each standard: factors as `ratingConversions` has them.
  test.each([
    ['en', 600],
    ['mca', 780],
    ['din', 364],
    ['iec', 480],
  ] as const)('one battery is the same by its %s label of %d A', (ratingStandard, rating) => {
    const other = { ...labelled, ratingStandard, rating };
    for (const name of ['battery.load-test', 'battery.crank', 'battery.resistance'] as const) {
      const one = expected(name, labelled);
      expect(expected(name, other).best / one.best).toBeCloseTo(1, 2);
    }
  });

  test('a tester finds most of the label (common practice, no source)', () => {
    const { low, best, high, unit } = expected('battery.tester', labelled);
    expect([low, best, high, unit]).toEqual([450, 540, 660, 'A']);
  });

  test('with all lamps on keeps near 12 V (common practice, no source)', () => {
    const { low, high } = expected('battery.lamps', labelled);
    expect(low).toBeGreaterThan(11.9);
    expect(high).toBeLessThan(12.65);
  });

  test('of 60 A.h, sound and warm, has 4 to 8 mOhm (common practice, no source)', () => {
    const { low, best, high, unit } = expected('battery.resistance', { ...labelled, rating: 540 });
    expect(unit).toBe('mOhm');
    expect(low).toBeGreaterThan(4);
    expect(best).toBeLessThan(8);
    expect(high).toBeLessThan(9);
  });

  test('a flatter battery is expected lower: the rest voltage is honoured', () => {
    const names = ['battery.lamps', 'battery.load-test', 'battery.crank', 'relay.feed'] as const;
    for (const name of names) {
      const at = (restVoltage: number) => expected(name, { ...labelled, restVoltage });
      expect(at(12.2).best).toBeLessThan(at(12.6).best - 0.3);
      expect(at(12.2).high).toBeLessThan(at(12.6).high);
    }
  });

  test('an empty battery gives no voltage, never less than none', () => {
    for (const name of ['battery.lamps', 'battery.load-test', 'relay.command'] as const) {
      expect(expected(name, { ...labelled, restVoltage: 0.5 }).low).toBe(0);
    }
  });

  test('one without any voltage still has a resistance', () => {
    const { best } = expected('battery.resistance', { ...labelled, restVoltage: 0 });
    expect(Number.isFinite(best)).toBe(true);
  });
});

describe('the battery while cranking', () => {
  test("stays above 9.6 V at 20 Cel (TM 10-3930-671-24; a vehicle maker's service manual)", () => {
    for (const vehicle of [petrol, diesel, { temperature: 20 }]) {
      const { low, high } = expected('battery.crank', vehicle);
      expect(low).toBeGreaterThan(9.6);
      expect(high).toBeLessThan(12.4);
    }
  });

  // TM 5-3895-382-24, Table 29, of old machines; a sound car lies above its lower ends.
  test.each([
    [20, 8],
    [0, 7],
    [-15, 6],
  ])('at %d Cel lies above the usual least of %d V', (temperature, least) => {
    for (const vehicle of [petrol, diesel]) {
      expect(expected('battery.crank', { ...vehicle, temperature }).low).toBeGreaterThan(least);
    }
  });

  test('at 24 V is about twice that of 12 V, above 18 V (TM 9-2320-211-20)', () => {
    const { low, best } = expected('battery.crank', truck);
    expect(low).toBeGreaterThan(18);
    expect(best / expected('battery.crank', diesel).best).toBeGreaterThan(1.9);
    expect(best / expected('battery.crank', diesel).best).toBeLessThan(2.15);
  });

  test('at 24 V goes by the rest voltage across both batteries', () => {
    const measured = expected('battery.crank', { ...truck, restVoltage: 25.2 });
    expect(measured.best).toBeCloseTo(expected('battery.crank', truck).best, 9);
  });

  test('colder never expects more volts', () => {
    assert(
      property(
        record({
          fuel: constantFrom('petrol', 'diesel', undefined),
          nominal: constantFrom(12, 24),
          displacement: double({ min: 1, max: 8, noNaN: true }),
          batteryAge: double({ min: 0, max: 8, noNaN: true }),
          rating: option(double({ min: 350, max: 1000, noNaN: true }), { nil: undefined }),
        }),
        double({ min: -29, max: 40, noNaN: true }),
        double({ min: 0, max: 40, noNaN: true }),
        constantFrom('battery.crank', 'battery.lamps', 'control.signal'),
        (vehicle, temperature, colder, name) => {
          const warm = expected(name, { ...vehicle, temperature });
          const cold = expected(name, { ...vehicle, temperature: temperature - colder });
          expect(cold.best).toBeLessThanOrEqual(warm.best + 1e-9);
        },
      ),
    );
  });

  test('at a measured current is the voltage of the sound battery at that current', () => {
    const measured = { ...petrol, crankCurrent: 200 };
    const { battery } = vehicleCircuit(
      bestValues(vehicleSpans(measured, 'petrol')),
      vehicleKind(measured, 'petrol'),
    );
    expect(expected('battery.crank', measured).best).toBeCloseTo(batteryVoltage(battery, 200), 12);
  });

  test.each([0, -3])('a clamp that shows %d A was not around the cable', (crankCurrent) => {
    for (const name of ['battery.crank', ...drops] as const) {
      expect(expected(name, { ...petrol, crankCurrent })).toEqual(expected(name, petrol));
    }
  });
});

describe('drops while cranking', () => {
  // TM 10-3930-671-24: 0.20 V for 100 A.
  test.each([petrol, diesel, truck])(
    'of one side are below 2 mOhm times the current, %j',
    (vehicle) => {
      const { best: amperes } = expected('crank-current', vehicle);
      for (const name of ['drop.positive', 'drop.ground'] as const) {
        const { low, high, unit } = expected(name, vehicle);
        expect(unit).toBe('V');
        expect(low).toBeGreaterThan(0);
        expect(high).toBeLessThan(0.002 * amperes);
      }
    },
  );

  test('of a joint and of the contacts are below 0.1 and 0.3 V (handbooks; common practice, no source)', () => {
    for (const vehicle of [petrol, diesel]) {
      expect(expected('drop.clamp', vehicle).high).toBeLessThan(0.1);
      expect(expected('drop.contacts', vehicle).high).toBeLessThan(0.3);
    }
  });

  test('of the positive side are larger from under a seat and largest from the boot', () => {
    const at = (batteryLocation: LimitContext['batteryLocation']) =>
      expected('drop.positive', { ...petrol, batteryLocation });
    expect(at('seat').best).toBeGreaterThan(at('engine-bay').best);
    expect(at('boot').best).toBeGreaterThan(at('seat').best);
    // 3 mOhm, common practice.
    const { best: amperes } = expected('crank-current', petrol);
    expect(at('boot').high).toBeLessThan(0.003 * amperes);
    expect(expected('drop.ground', { ...petrol, batteryLocation: 'boot' }).best).toBeCloseTo(
      expected('drop.ground', petrol).best,
      2,
    );
  });

  test.each([80, 200, 450])('at a measured %d A are the usual resistance times it', (amperes) => {
    const { clamp, contacts } = soundJoints.rows;
    const { positive, ground } = soundCables.rows;
    for (const [name, milliohms] of [
      ['drop.clamp', clamp.best],
      ['drop.positive', clamp.best + positive.best],
      ['drop.ground', clamp.best + ground.best],
      ['drop.contacts', contacts.best],
    ] as const) {
      for (const vehicle of [petrol, diesel, truck]) {
        const { best, source } = expected(name, { ...vehicle, crankCurrent: amperes });
        expect(best).toBeCloseTo((milliohms * amperes) / 1000, 12);
        expect(source.text).toContain('measured current');
      }
    }
  });

  test('at a measured current have the ends of the part as well', () => {
    const { clamp } = soundJoints.rows;
    const { low, high } = expected('drop.clamp', { ...petrol, crankCurrent: 200 });
    expect(low).toBeCloseTo(0.2 * clamp.low, 12);
    expect(high).toBeCloseTo(0.2 * clamp.high, 12);
  });
});

describe('signals', () => {
  test('the start signal loses at most 1.0 V against the battery (TM 5-2420-230-24-2 p. 13-33)', () => {
    for (const vehicle of [petrol, diesel]) {
      const lost =
        expected('battery.crank', vehicle).best - expected('control.signal', vehicle).best;
      expect(lost).toBeGreaterThan(0);
      expect(lost).toBeLessThan(1);
    }
  });

  test('the relay is fed with nearly the rested battery, as measured', () => {
    const { low, best, high } = expected('relay.feed', { ...petrol, restVoltage: 12.5 });
    expect([low, best, high]).toEqual([
      expect.closeTo(12.2, 9),
      expect.closeTo(12.4, 9),
      expect.closeTo(12.5, 9),
    ]);
  });

  test('a pair of 24 V loses twice as much on the way to the relay', () => {
    const { low, high } = expected('relay.command', { ...truck, restVoltage: 25.2 });
    expect(low).toBeCloseTo(25.2 - 1.6, 9);
    expect(high).toBeCloseTo(25.2 - 0.2, 9);
  });
});

describe('charging', () => {
  // TM 9-6115-464-12, Table 4-5, halved.
  test.each([
    [-18, 14.6, 15.06],
    [4, 14.32, 14.68],
    [27, 14, 14.3],
    [49, 13.66, 14.02],
  ])('at %d Cel is %f to %f V', (temperature, low, high) => {
    const window = expected('charging', { temperature });
    expect(window.low).toBeCloseTo(low, 9);
    expect(window.high).toBeCloseTo(high, 9);
  });

  test('without a temperature is 13.5 to 14.8 V (common practice, no source)', () => {
    expect(expected('charging', {})).toMatchObject({ low: 13.5, high: 14.8, unit: 'V' });
  });
});

test.each([
  'battery.rest',
  'battery.recharged',
  'relay.feed',
  'relay.command',
  'charging',
] as const)('%s of 24 V is that of 12 V twice', (name) => {
  const one = expected(name, { technology: 'flooded' });
  const pair = expected(name, { technology: 'flooded', nominal: 24 });
  expect(pair.low).toBeCloseTo(2 * one.low, 9);
  expect(pair.best).toBeCloseTo(2 * one.best, 9);
  expect(pair.high).toBeCloseTo(2 * one.high, 9);
});

const optional = (min: number, max: number) =>
  option(double({ min, max, noNaN: true }), { nil: undefined });

/** Whatever a flow may know of a vehicle, readings of a broken one among it. */
const contexts = record({
  nominal: constantFrom(12, 24, undefined),
  temperature: optional(-60, 90),
  technology: constantFrom('flooded', 'efb', 'agm', 'gel', undefined),
  rating: optional(50, 2000),
  ratingStandard: constantFrom('sae', 'en', 'din', 'iec', 'jis', 'mca', undefined),
  fuel: constantFrom('petrol', 'diesel', undefined),
  displacement: optional(0.5, 20),
  cylinders: option(integer({ min: 1, max: 16 }), { nil: undefined }),
  batteryLocation: constantFrom('engine-bay', 'boot', 'seat', undefined),
  batteryAge: optional(0, 30),
  turning: constantFrom(true, false, undefined),
  expectedCurrent: optional(1, 2000),
  restVoltage: optional(0.1, 36),
  crankVoltage: optional(0, 36),
  crankCurrent: optional(-5, 2000),
});

describe('of any vehicle', () => {
  test('every reading has its best figure between its ends, none below 0, and a source', () => {
    assert(
      property(contexts, (context) => {
        for (const name of expectedReadings) {
          const found = expectedReading(name, context);
          if (found === undefined) {
            expect(context.rating).toBeUndefined();
            continue;
          }
          const { low, best, high, source } = found;
          expect(Number.isFinite(low) && Number.isFinite(best) && Number.isFinite(high)).toBe(true);
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(best);
          expect(best).toBeLessThanOrEqual(high);
          expect(source.text).not.toBe('');
        }
      }),
      { numRuns: 300 },
    );
  });

  test('an unknown fuel spreads over both', () => {
    assert(
      property(contexts, constantFrom(...expectedReadings), (context, name) => {
        const both = expectedReading(name, { ...context, fuel: undefined });
        for (const fuel of context.nominal === 24 ? (['diesel'] as const) : fuels) {
          const one = expectedReading(name, { ...context, fuel });
          expect(one?.low ?? 0).toBeGreaterThanOrEqual(both?.low ?? 0);
          expect(one?.high ?? 0).toBeLessThanOrEqual(both?.high ?? 0);
        }
      }),
    );
  });
});

const fuels = ['petrol', 'diesel'] as const;

describe('what is not known widens what to expect', () => {
  const facts = [
    'displacement',
    'rating',
    'ratingStandard',
    'temperature',
    'technology',
    'restVoltage',
    'batteryAge',
    'batteryLocation',
  ] as const;

  /** Every fact is as it is taken to be where nobody knows it. */
  const usual = (fuel: (typeof fuels)[number]): LimitContext => {
    const displacement = fuel === 'petrol' ? 2.25 : 3.75;
    return {
      fuel,
      displacement,
      rating: interpolate(usualRatings.rows[fuel], displacement),
      ratingStandard: 'sae',
      temperature: 15,
      technology: 'flooded',
      restVoltage: 12.6,
      batteryAge: 3,
      batteryLocation: 'engine-bay',
    };
  };

  test.each(fuels)('of a usual %s vehicle', (fuel) => {
    const vehicle = usual(fuel);
    const known = subarray([...facts]).map((unknown): LimitContext => ({
      ...vehicle,
      ...Object.fromEntries(unknown.map((fact) => [fact, undefined])),
    }));
    assert(
      property(
        known,
        constantFrom(...facts),
        constantFrom(...expectedReadings),
        (context, fact, name) => {
          const more = expectedReading(name, { ...context, [fact]: vehicle[fact] });
          const less = expectedReading(name, { ...context, [fact]: undefined });
          if (more === undefined || less === undefined) return;
          expect(less.low).toBeLessThanOrEqual(more.low + 1e-9);
          expect(less.high).toBeGreaterThanOrEqual(more.high - 1e-9);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test.each(['temperature', 'rating', 'displacement', 'restVoltage'] as const)(
    'the cranking voltage, by the %s',
    (fact) => {
      const vehicle = usual('petrol');
      const width = (context: LimitContext): number => {
        const { low, high } = expected('battery.crank', context);
        return high - low;
      };
      expect(width({ ...vehicle, [fact]: undefined })).toBeGreaterThan(1.01 * width(vehicle));
    },
  );
});

test('an unknown name from outside is refused with its name', () => {
  for (const name of ['battery.tired', 'toString', '']) {
    const refused = (): unknown => expectedReading(name as ExpectedReading, petrol);
    expect(refused).toThrow(ElectricsError);
    expect(refused).toThrow(`reading-unknown: reading ${name}`);
  }
});
