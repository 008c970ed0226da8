import { assert, constantFrom, double, option, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LimitContext } from '../limits/limit-context.ts';
import { soundCables, soundJoints } from '../tables/sound-resistance.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import { solveCircuit } from './solve-circuit.ts';
import { spreadOver } from './spread.ts';
import { bestValues, vehicleCircuit, vehicleKind, vehicleSpans } from './vehicle-circuit.ts';

const petrol: LimitContext = { fuel: 'petrol', displacement: 2, temperature: 20 };
const { clamp } = soundJoints.rows;
const { positive, ground } = soundCables.rows;

describe('a figure of a circuit', () => {
  test('that goes by nothing unknown has no spread', () => {
    expect(spreadOver(petrol, ({ motor }) => motor.brushV)).toEqual({
      low: 0.6,
      best: 0.6,
      high: 0.6,
    });
  });

  test('that goes by one unknown alone has its ends', () => {
    const span = spreadOver(petrol, ({ positiveClampOhm }) => 1000 * positiveClampOhm);
    expect(span.low).toBeCloseTo(clamp.low, 12);
    expect(span.best).toBeCloseTo(clamp.best, 12);
    expect(span.high).toBeCloseTo(clamp.high, 12);
  });

  test('that falls as the unknown rises has them exchanged', () => {
    const span = spreadOver(petrol, ({ positiveClampOhm }) => -1000 * positiveClampOhm);
    expect(span.low).toBeCloseTo(-clamp.high, 12);
    expect(span.high).toBeCloseTo(-clamp.low, 12);
  });

  // JCGM 100:2008, 5.1.2: what does not hang together adds as squares.
  test('that goes by two adds their effects as squares, upwards and downwards apart', () => {
    const span = spreadOver(
      petrol,
      ({ positiveCableOhm, groundCableOhm }) => 1000 * (positiveCableOhm + groundCableOhm),
    );
    // 0.9 and 0.5 mOhm; down by 0.4 and 0.2, up by 0.6 and 0.5.
    expect(span.best).toBeCloseTo(1.4, 12);
    expect(span.best - span.low).toBeCloseTo(Math.hypot(0.4, 0.2), 12);
    expect(span.high - span.best).toBeCloseTo(Math.hypot(0.6, 0.5), 12);
    expect([positive.best - positive.low, ground.high - ground.best]).toEqual([
      expect.closeTo(0.4, 12),
      expect.closeTo(0.5, 12),
    ]);
  });

  test('that is least at the usual value only reaches upwards, by the farther end', () => {
    const span = spreadOver(petrol, ({ positiveClampOhm }) =>
      Math.abs(1000 * positiveClampOhm - clamp.best),
    );
    expect(span.low).toBeCloseTo(0, 12);
    expect(span.best).toBeCloseTo(0, 12);
    expect(span.high).toBeCloseTo(clamp.high - clamp.best, 12);
  });

  test('has for its best the circuit of the usual vehicle', () => {
    const current = (circuit: CrankingCircuit): number => solveCircuit(circuit).currentA;
    const usual = vehicleCircuit(
      bestValues(vehicleSpans(petrol, 'petrol')),
      vehicleKind(petrol, 'petrol'),
    );
    expect(spreadOver(petrol, current).best).toBe(current(usual));
  });
});

describe('a fuel that is not known', () => {
  const current = (circuit: CrankingCircuit): number => solveCircuit(circuit).currentA;
  const of = (fuel: LimitContext['fuel'], nominal: 12 | 24 = 12) =>
    spreadOver({ ...petrol, fuel, nominal }, current);

  test('spreads over both, with their middle as best figure', () => {
    const both = of(undefined);
    expect(both.low).toBe(of('petrol').low);
    expect(both.high).toBe(of('diesel').high);
    expect(both.best).toBeCloseTo((of('petrol').best + of('diesel').best) / 2, 9);
  });

  test('is diesel at 24 V', () => {
    expect(of(undefined, 24)).toEqual(of('diesel', 24));
  });
});

test('of any vehicle the best figure lies between its ends', () => {
  const optional = (min: number, max: number) =>
    option(double({ min, max, noNaN: true }), { nil: undefined });
  assert(
    property(
      record({
        nominal: constantFrom(12, 24, undefined),
        fuel: constantFrom('petrol', 'diesel', undefined),
        displacement: optional(0.6, 13),
        temperature: optional(-40, 50),
        batteryAge: optional(0, 15),
        restVoltage: optional(1, 30),
      }),
      constantFrom('speed', 'currentA', 'postV', 'motorV', 'torqueNm'),
      (context, figure) => {
        const { low, best, high } = spreadOver(context, (circuit) => solveCircuit(circuit)[figure]);
        expect(Number.isFinite(low) && Number.isFinite(high)).toBe(true);
        expect(low).toBeLessThanOrEqual(best);
        expect(best).toBeLessThanOrEqual(high);
      },
    ),
  );
});
