import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batteryFromPair, type BatteryFromPair, type BatteryPair } from './battery-from-pair.ts';
import { estimatedCrankingAmps, internalResistance } from './internal-resistance.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import { loadCurrent } from './load-current.ts';
import type { MeterAccuracy } from '../quantity/meter-accuracy.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { commonPractice } from '../source.ts';

const benchMeter: MeterAccuracy = { percent: 0.01, digits: 2, counts: 20_000 };

function volts(value: number, meter?: MeterAccuracy): Quantity {
  return meter === undefined ? { value, unit: 'V' } : { value, unit: 'V', meter };
}

function amperes(value: number, meter?: MeterAccuracy): Quantity {
  return meter === undefined ? { value, unit: 'A' } : { value, unit: 'A', meter };
}

function between(low: number, best: number, high: number): SourcedInterval {
  return { low, best, high, unit: 'A', source: commonPractice('lamps') };
}

function estimated(pair: BatteryPair): Extract<BatteryFromPair, { type: 'estimated' }> {
  const result = batteryFromPair(pair);
  if (result.type !== 'estimated') throw new Error(result.reason);
  return result;
}

describe('a battery from a pair of readings', () => {
  test('by hand: 12.6 V, 10.2 V at 160 A, limits of error 0.083 V, 0.071 V and 3.5 A', () => {
    const { resistance } = estimated({
      rest: volts(12.6),
      loaded: volts(10.2),
      load: amperes(160),
      temperatureC: 20,
    });
    // 2.246 V / 163.5 A, 2.4 V / 160 A, 2.554 V / 156.5 A.
    expect(resistance.low).toBeCloseTo(13.737, 3);
    expect(resistance.best).toBeCloseTo(15, 9);
    expect(resistance.high).toBeCloseTo(16.319, 3);
    expect(resistance.unit).toBe('mOhm');
    expect(resistance.source.provenance).toBe('computed');
  });

  test('by hand: 12.5 V, 11.5 V at lamps of 10 to 12 A', () => {
    const { resistance } = estimated({
      rest: volts(12.5),
      loaded: volts(11.5),
      load: between(10, 11, 12),
      temperatureC: 20,
    });
    // Limits 0.0825 V and 0.0775 V: 0.84 V / 12 A, 1 V / 11 A, 1.16 V / 10 A.
    expect(resistance.low).toBeCloseTo(70, 6);
    expect(resistance.best).toBeCloseTo(90.909, 3);
    expect(resistance.high).toBeCloseTo(116, 6);
    expect(resistance.source.text).toContain('lamps');
  });

  test('readings of the assumed meters give what internalResistance gives', () => {
    const { resistance } = estimated({
      rest: volts(12.5),
      loaded: { value: 9700, unit: 'mV' },
      load: amperes(180),
      temperatureC: 20,
    });
    const { low, best, high } = internalResistance(12.5, 9.7, 180);
    expect(resistance.low).toBeCloseTo(low, 6);
    expect(resistance.best).toBeCloseTo(best, 6);
    expect(resistance.high).toBeCloseTo(high, 6);
  });

  test('a load in mA is the same load', () => {
    const load = between(10, 11, 12);
    const small = {
      low: 10_000,
      best: 11_000,
      high: 12_000,
      unit: 'mA',
      source: load.source,
    } as const;
    const pair = { rest: volts(12.5), loaded: volts(11.5), temperatureC: 20 };
    expect(estimated({ ...pair, load: small }).resistance.high).toBeCloseTo(
      estimated({ ...pair, load }).resistance.high,
      9,
    );
  });

  test('the cranking current reaches from the highest resistance to the lowest', () => {
    // 5.4 V of 12.6 V at -18 Cel and 4.1 V of 12.6 V at half: SAE J537 7.2 V, load test 8.5 V.
    const { crankingAmps, resistance } = estimated({
      rest: volts(12.6),
      loaded: volts(10.2),
      load: amperes(160),
      temperatureC: -18,
    });
    expect(crankingAmps.low).toBeCloseTo(5400 / 16.3195, 1);
    expect(crankingAmps.best).toBeCloseTo(Math.sqrt(360 * 546.667), 1);
    expect(crankingAmps.high).toBeCloseTo(8200 / 13.737, 1);
    expect(crankingAmps.unit).toBe('A');
    expect(estimatedCrankingAmps(resistance.best, -18).low).toBeGreaterThan(crankingAmps.low);
  });

  test('its lamps may be the load, as loadCurrent gives them', () => {
    const load = loadCurrent(
      [
        { kind: 'h4-dipped', count: 2 },
        { kind: 'w5w', count: 4 },
      ],
      11.6,
    );
    if (load.type !== 'current') throw new Error(load.reason);
    const { resistance } = estimated({
      rest: volts(12.4),
      loaded: volts(11.6),
      load: load.current,
      temperatureC: 10,
    });
    expect(resistance.low).toBeCloseTo(((0.8 - 0.16) / load.current.high) * 1000, 6);
    expect(resistance.high).toBeCloseTo(((0.8 + 0.16) / load.current.low) * 1000, 6);
    expect(resistance.source.text).toContain('UN Regulation 37');
  });
});

describe('a pair that does not tell', () => {
  const load = between(10, 11, 12);

  test('a fall within the error of the meters bounds the resistance only from above', () => {
    // Limits 0.083 V and 0.0825 V: a fall of 0.1 V is at most 0.2655 V, at 10 A.
    const result = batteryFromPair({
      rest: volts(12.6),
      loaded: volts(12.5),
      load,
      temperatureC: 20,
    });
    expect(result).toMatchObject({ type: 'refused', reason: 'fall-not-told' });
    expect(result.type === 'refused' && 'resistanceAtMost' in result).toBe(true);
    if ('resistanceAtMost' in result) {
      expect(result.resistanceAtMost.value).toBeCloseTo(26.55, 6);
      expect(result.resistanceAtMost.unit).toBe('mOhm');
    }
  });

  test('a finer meter tells the same fall', () => {
    const { resistance } = estimated({
      rest: volts(12.6, benchMeter),
      loaded: volts(12.5, benchMeter),
      load,
      temperatureC: 20,
    });
    expect(resistance.low).toBeGreaterThan(7);
  });

  test.each([
    // Ten digits of 0.01 V each, without per cent: what is told begins above 0.2 V.
    ['just below', 12.301, 'refused'],
    ['just above', 12.299, 'estimated'],
  ])('a fall %s the limits of both meters', (_, loadedV, type) => {
    const meter: MeterAccuracy = { percent: 0, digits: 10, counts: 2000 };
    const pair = {
      rest: volts(12.5, meter),
      loaded: volts(loadedV, meter),
      load,
      temperatureC: 20,
    };
    expect(batteryFromPair(pair).type).toBe(type);
  });

  test('without any fall the bound is that of the meters alone', () => {
    const result = batteryFromPair({
      rest: volts(12.5),
      loaded: volts(12.5),
      load,
      temperatureC: 20,
    });
    expect('resistanceAtMost' in result && result.resistanceAtMost.value).toBeCloseTo(16.5, 6);
  });

  test('a voltage under load above the one at rest is refused', () => {
    const result = batteryFromPair({
      rest: volts(12.5),
      loaded: volts(12.6),
      load,
      temperatureC: 20,
    });
    expect(result).toEqual({ type: 'refused', reason: 'rises-under-load' });
  });

  test.each([
    // A clamp of ±(2 % + 30 digits of 0.1 A) cannot tell 3 A from none.
    ['a clamp that cannot tell it from none', amperes(3, { percent: 2, digits: 30, counts: 2000 })],
    ['loads that may draw nothing', between(0, 1, 2)],
  ])('a current by %s is refused', (_, unknown) => {
    const pair = { rest: volts(12.6), loaded: volts(10), load: unknown, temperatureC: 20 };
    expect(batteryFromPair(pair)).toEqual({ type: 'refused', reason: 'current-not-told' });
  });

  test('a temperature that no table reaches is refused', () => {
    const pair = { rest: volts(12.6), loaded: volts(10), load: amperes(150), temperatureC: -40 };
    expect(() => batteryFromPair(pair)).toThrow('value-out-of-range');
  });

  test('volts as load are refused', () => {
    const pair = { rest: volts(12.6), loaded: volts(10), load: volts(12), temperatureC: 20 };
    expect(() => batteryFromPair(pair)).toThrow('unit-mismatch');
  });
});

// Where in its limits of error a meter errs: -1 to 1, its ends often.
const part = fc.oneof(fc.constantFrom(-1, 1), fc.double({ min: -1, max: 1, noNaN: true }));

/** A simulated meter: its accuracy, and the step of its display on the range in use. */
type Simulated = { readonly accuracy: MeterAccuracy; readonly step: number };

const handMeter: Simulated = { accuracy: { percent: 0.5, digits: 2, counts: 2000 }, step: 0.01 };
const clamp: Simulated = { accuracy: { percent: 2, digits: 3, counts: 2000 }, step: 0.1 };
const fineMeter: Simulated = { accuracy: benchMeter, step: 0.001 };

/** What a meter shows of a true value while it errs by a part of its limit: rounded to its step. */
function shown(value: number, { accuracy, step }: Simulated, error: number): number {
  // The per cent are of what is shown, and the rounding takes half a digit of the digits.
  const own = (accuracy.digits - 0.5) * step;
  const read = (value + error * own) / (1 - (error * accuracy.percent) / 100);
  return Math.round(read / step) * step;
}

describe('a simulated battery', () => {
  // Every load leaves more than 2 V, below which a meter would change to a finer range.
  const battery = fc.record({
    emfV: fc.double({ min: 11.8, max: 12.9, noNaN: true }),
    ohms: fc.double({ min: 0.003, max: 0.09, noNaN: true }),
    currentA: fc.double({ min: 5, max: 100, noNaN: true }),
  });
  const errors = fc.tuple(part, part, part);

  test('has its true resistance inside, whatever its meters err within their specification', () => {
    fc.assert(
      fc.property(battery, errors, ({ emfV, ohms, currentA }, [rest, loaded, current]) => {
        const result = batteryFromPair({
          rest: volts(shown(emfV, handMeter, rest), handMeter.accuracy),
          loaded: volts(shown(emfV - ohms * currentA, handMeter, loaded), handMeter.accuracy),
          load: amperes(shown(currentA, clamp, current), clamp.accuracy),
          temperatureC: 20,
        });
        const truth = ohms * 1000;
        if (result.type === 'estimated') {
          expect(result.resistance.low).toBeLessThanOrEqual(truth + 1e-9);
          expect(result.resistance.high).toBeGreaterThanOrEqual(truth - 1e-9);
        } else if (result.reason === 'fall-not-told') {
          expect(result.resistanceAtMost.value).toBeGreaterThanOrEqual(truth - 1e-9);
        } else {
          expect(result.reason).toBe('rises-under-load');
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('has its true resistance inside, wherever the load lies in its interval', () => {
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(battery, errors, place, ({ emfV, ohms, currentA }, [rest, loaded], where) => {
        const low = currentA * (1 - 0.3 * where);
        const high = currentA * (1 + 0.3 * (1 - where));
        const result = batteryFromPair({
          rest: volts(shown(emfV, fineMeter, rest), benchMeter),
          loaded: volts(shown(emfV - ohms * currentA, fineMeter, loaded), benchMeter),
          load: between(low, (low + high) / 2, high),
          temperatureC: 20,
        });
        if (result.type !== 'estimated') throw new Error(result.reason);
        expect(result.resistance.low).toBeLessThanOrEqual(ohms * 1000 + 1e-9);
        expect(result.resistance.high).toBeGreaterThanOrEqual(ohms * 1000 - 1e-9);
      }),
      { numRuns: 1000 },
    );
  });

  test('has no narrower an interval where the load has a wider one', () => {
    const margin = fc.double({ min: 0, max: 0.4, noNaN: true });
    fc.assert(
      fc.property(battery, margin, margin, ({ emfV, ohms, currentA }, less, more) => {
        const at = (spread: number): BatteryFromPair =>
          batteryFromPair({
            rest: volts(emfV),
            loaded: volts(emfV - ohms * currentA),
            load: between(currentA * (1 - spread), currentA, currentA * (1 + spread)),
            temperatureC: 20,
          });
        const narrow = at(less);
        const wide = at(less + more);
        expect(wide.type).toBe(narrow.type);
        if (narrow.type === 'estimated' && wide.type === 'estimated') {
          expect(wide.resistance.low).toBeLessThanOrEqual(narrow.resistance.low);
          expect(wide.resistance.high).toBeGreaterThanOrEqual(narrow.resistance.high);
          expect(wide.crankingAmps.low).toBeLessThanOrEqual(narrow.crankingAmps.low);
          expect(wide.crankingAmps.high).toBeGreaterThanOrEqual(narrow.crankingAmps.high);
        }
        if ('resistanceAtMost' in narrow && 'resistanceAtMost' in wide) {
          expect(wide.resistanceAtMost.value).toBeGreaterThanOrEqual(narrow.resistanceAtMost.value);
        }
      }),
    );
  });
});

describe('cold-cranking current by an interval of resistance', () => {
  test('reaches as far as both of its ends do', () => {
    const span = estimatedCrankingAmps({ low: 8, best: 9, high: 10, unit: 'mOhm' }, -18);
    expect(span.low).toBeCloseTo(540, 9);
    expect(span.high).toBeCloseTo(8200 / 8, 9);
    expect(span.best).toBeCloseTo(estimatedCrankingAmps(9, -18).best, 9);
  });

  test('is the same in Ohm', () => {
    const span = estimatedCrankingAmps({ low: 0.008, best: 0.009, high: 0.01, unit: 'Ohm' }, -18);
    expect(span.low).toBeCloseTo(540, 9);
  });

  test.each([
    ['may be none', { low: 0, best: 9, high: 10, unit: 'mOhm' }],
    ['has no upper end', { low: 8, best: 9, high: Infinity, unit: 'mOhm' }],
    ['has its ends exchanged', { low: 10, best: 9, high: 8, unit: 'mOhm' }],
  ] as const)('is refused where the resistance %s', (_, resistance) => {
    expect(() => estimatedCrankingAmps(resistance, 20)).toThrow('value-out-of-range');
  });
});
