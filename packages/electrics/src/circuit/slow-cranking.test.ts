import { assert, constantFrom, double, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LimitContext } from '../limits/limit-context.ts';
import type { Quantity } from '../quantity/quantity.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import { expectedReading } from './expected-reading.ts';
import { slowCranking, type SlowCranking } from './slow-cranking.ts';
import { solveCircuit } from './solve-circuit.ts';
import {
  bestValues,
  vehicleCircuit,
  vehicleKind,
  vehicleSpans,
  type VehicleValues,
} from './vehicle-circuit.ts';

type Vehicle = LimitContext & { readonly fuel: 'petrol' | 'diesel' };
type Fault = {
  readonly values?: Partial<VehicleValues>;
  readonly motor?: Partial<CrankingCircuit['motor']>;
};

function circuitOf(vehicle: Vehicle, { values, motor }: Fault): CrankingCircuit {
  const sound = bestValues(vehicleSpans(vehicle, vehicle.fuel));
  const circuit = vehicleCircuit({ ...sound, ...values }, vehicleKind(vehicle, vehicle.fuel));
  return { ...circuit, motor: { ...circuit.motor, ...motor } };
}

/** Told from the current of a simulated vehicle, as a clamp meter shows it. */
function told(vehicle: Vehicle, fault: Fault): SlowCranking {
  const { currentA } = solveCircuit(circuitOf(vehicle, fault));
  const result = slowCranking({ value: Math.round(currentA), unit: 'A', resolution: 1 }, vehicle);
  if (result === undefined) throw new Error('no current to expect');
  return result;
}

const vehicles: readonly Vehicle[] = [
  { fuel: 'petrol', displacement: 2, temperature: 20 },
  { fuel: 'petrol', displacement: 2, temperature: -10 },
  { fuel: 'diesel', displacement: 2, temperature: 20 },
  { fuel: 'diesel', displacement: 2, temperature: -10 },
  { fuel: 'diesel', displacement: 10, nominal: 24, temperature: 20 },
];

// What the current means: TM 10-3930-671-24 pp. F-299 to F-309 and an automotive training text.
describe.each(vehicles)('a simulated vehicle that cranks slowly, %j', (vehicle) => {
  const speed = (fault: Fault): number => solveCircuit(circuitOf(vehicle, fault)).speed;

  test.each<readonly [string, Fault]>([
    ['an engine that drags', { values: { drag: 2.5 } }],
    ['a starter that rubs', { motor: { frictionA: 250 } }],
  ])('draws too much: %s', (_, fault) => {
    expect(speed(fault)).toBeLessThan(0.9 * speed({}));
    expect(told(vehicle, fault).tooMuchCurrent).toBeGreaterThan(0.99);
  });

  test.each<readonly [string, Fault]>([
    ['a worn battery', { values: { health: 0.3 } }],
    ['a battery a quarter full', { values: { restV: 12.06 } }],
    ['a bad positive cable', { values: { positiveMohm: 25 } }],
    ['a bad ground', { values: { groundMohm: 25 } }],
    ['burnt contacts', { values: { contactsMohm: 25 } }],
    ['a weak motor with worn brushes', { motor: { brushV: 4 } }],
    ['a weak motor of high resistance', { motor: { resistanceOhm: 0.025 } }],
  ])('does not draw too much: %s', (_, fault) => {
    const { tooMuchCurrent, usualCurrent, tooLittleCurrent } = told(vehicle, fault);
    expect(speed(fault)).toBeLessThan(0.95 * speed({}));
    expect(tooMuchCurrent).toBeLessThan(0.001);
    expect(usualCurrent + tooLittleCurrent).toBeGreaterThan(0.999);
  });

  test('draws its usual current when nothing is wrong', () => {
    expect(told(vehicle, {}).usualCurrent).toBeGreaterThan(0.99);
  });
});

test('in frost a resistance shows as too little current', () => {
  const cold: Vehicle = { fuel: 'diesel', displacement: 2, temperature: -10 };
  expect(told(cold, { values: { groundMohm: 25 } }).tooLittleCurrent).toBeGreaterThan(0.99);
});

describe('a reading at an end of what to expect', () => {
  const vehicle: Vehicle = { fuel: 'petrol', displacement: 2, temperature: 20 };
  const { low, best, high } = expectedReading('crank-current', vehicle)!;
  const clamp = { percent: 2, digits: 3 };

  test.each([
    ['the lower end', low, 0.5, 'tooLittleCurrent'],
    ['the upper end', high, 0.5, 'tooMuchCurrent'],
    ['the middle', best, 1, 'usualCurrent'],
    ['far below', 30, 1, 'tooLittleCurrent'],
    ['far above', 600, 1, 'tooMuchCurrent'],
  ] as const)('%s, %f A: %f of %s', (_, value, share, which) => {
    const reading: Quantity = { value, unit: 'A', meter: clamp };
    expect(slowCranking(reading, vehicle)?.[which]).toBeCloseTo(share, 3);
  });

  test('is decided by a clamp that does not err', () => {
    const exact = { percent: 0, digits: 0 };
    const at = (value: number) => slowCranking({ value, unit: 'A', meter: exact }, vehicle);
    expect(at(low - 0.1)).toMatchObject({ tooLittleCurrent: 1, usualCurrent: 0 });
    expect(at(low)).toMatchObject({ tooLittleCurrent: 0.5, usualCurrent: 0.5 });
    expect(at(best)).toMatchObject({ usualCurrent: 1 });
    expect(at(high + 0.1)).toMatchObject({ tooMuchCurrent: 1, usualCurrent: 0 });
  });

  test('says with what it was compared', () => {
    const reading: Quantity = { value: 170, unit: 'A' };
    expect(slowCranking(reading, vehicle)?.expected).toEqual(
      expectedReading('crank-current', vehicle),
    );
  });

  test('is the same in mA', () => {
    const inAmperes = slowCranking({ value: 200, unit: 'A', meter: clamp }, vehicle);
    const inMilliamperes = slowCranking({ value: 200_000, unit: 'mA', meter: clamp }, vehicle);
    expect(inMilliamperes?.tooMuchCurrent).toBeCloseTo(inAmperes?.tooMuchCurrent ?? NaN, 2);
  });

  test("goes by the owner's own figure: 250 A is no longer too much", () => {
    const reading: Quantity = { value: 250, unit: 'A' };
    const owned = { ...vehicle, expectedCurrent: 250 };
    expect(slowCranking(reading, vehicle)?.tooMuchCurrent).toBeGreaterThan(0.99);
    expect(slowCranking(reading, owned)?.usualCurrent).toBeGreaterThan(0.99);
  });
});

test('volts are no current', () => {
  expect(() => slowCranking({ value: 9.6, unit: 'V' }, {})).toThrow('unit-mismatch');
});

test('of any current the shares are probabilities, 1 together, and more is never less often too much', () => {
  assert(
    property(
      record({
        fuel: constantFrom('petrol', 'diesel', undefined),
        displacement: double({ min: 1, max: 6, noNaN: true }),
        temperature: double({ min: -25, max: 35, noNaN: true }),
      }),
      double({ min: 0, max: 1500, noNaN: true }),
      double({ min: 0, max: 200, noNaN: true }),
      (context, value, more) => {
        const exact = { percent: 0, digits: 3 };
        const at = (amperes: number): SlowCranking =>
          slowCranking({ value: amperes, unit: 'A', resolution: 1, meter: exact }, context)!;
        const one = at(value);
        const shares = [one.tooMuchCurrent, one.usualCurrent, one.tooLittleCurrent];
        for (const share of shares) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        const other = at(value + more);
        expect(other.tooMuchCurrent).toBeGreaterThanOrEqual(one.tooMuchCurrent - 1e-12);
        expect(other.tooLittleCurrent).toBeLessThanOrEqual(one.tooLittleCurrent + 1e-12);
      },
    ),
  );
});
