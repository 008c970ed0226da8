import { assert, constantFrom, double, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { interpolate } from '../interpolate.ts';
import type { LimitContext } from '../limits/limit-context.ts';
import { loadTestVoltage } from '../limits/battery-load.ts';
import { starterMotors } from '../tables/starter-motor.ts';
import { batteryModel, batteryVoltage, openCircuitVoltageAt } from './battery-model.ts';
import { engineLoad, engineTorque } from './engine-load.ts';
import { oilViscosity } from './oil-viscosity.ts';
import { solveCircuit } from './solve-circuit.ts';
import { attemptStart } from './start-attempt.ts';
import {
  bestValues,
  vehicleCircuit,
  vehicleKind,
  vehicleSpans,
  type VehicleValues,
} from './vehicle-circuit.ts';

function circuitOf(
  context: LimitContext & { readonly fuel: 'petrol' | 'diesel' },
  change: Partial<VehicleValues> = {},
) {
  const values = { ...bestValues(vehicleSpans(context, context.fuel)), ...change };
  return vehicleCircuit(values, vehicleKind(context, context.fuel));
}

const petrol = { fuel: 'petrol', displacement: 1.6, temperature: 20 } as const;
const diesel = { fuel: 'diesel', displacement: 2, temperature: 20 } as const;
const sound = { ratingA: 600, health: 1, restV: 12.65, technology: 'flooded', series: 1 } as const;

describe('the battery', () => {
  test('gives its rating at 7.2 V and -18 Cel when new and full (SAE J537, as reported)', () => {
    const model = batteryModel({ ...sound, temperatureC: -18 });
    expect(batteryVoltage(model, 600)).toBeCloseTo(7.2, 9);
  });

  test.each([21, 10, 0, -10, -18])(
    'passes the load test at %d Cel when new (load-test table as service manuals print it)',
    (temperatureC) => {
      const model = batteryModel({ ...sound, temperatureC });
      expect(batteryVoltage(model, 300)).toBeGreaterThan(loadTestVoltage(temperatureC));
    },
  );

  test('has 4 to 8 mOhm when of 60 A.h, sound and warm (common practice, no source)', () => {
    const model = batteryModel({ ...sound, ratingA: 540, temperatureC: 20 });
    const milliohms = (1000 * (model.emfV - batteryVoltage(model, 150))) / 150;
    expect(milliohms).toBeGreaterThan(4);
    expect(milliohms).toBeLessThan(8);
  });

  test.each([
    [75, 'flooded', 12.45],
    [50, 'flooded', 12.24],
    [90, 'agm', 12.8],
  ] as const)('at %d %% of charge a %s one rests at %f V', (charge, technology, volts) => {
    expect(openCircuitVoltageAt(charge, technology)).toBeCloseTo(volts, 9);
  });
});

describe('the oil', () => {
  test.each([
    ['5W-30', 40, 65],
    ['5W-30', 100, 11],
    ['20W-50', 40, 160],
  ] as const)('%s has its own viscosity at %d Cel: %d mm2/s', (grade, temperature, viscosity) => {
    expect(oilViscosity(grade, temperature)).toBeCloseTo(viscosity, 6);
  });

  test('in frost the first figure of the grade decides how thick it is', () => {
    const thickness = (['0W-20', '5W-30', '10W-40', '15W-40', '20W-50'] as const).map((grade) =>
      oilViscosity(grade, -20),
    );
    expect(thickness).toEqual([...thickness].sort((a, b) => a - b));
  });

  test('is some ten times as thick at -18 Cel as at 20 Cel (common practice, no source)', () => {
    const ratio = oilViscosity('5W-30', -18) / oilViscosity('5W-30', 20);
    expect(ratio).toBeGreaterThan(8);
    expect(ratio).toBeLessThan(20);
  });
});

describe('the starter of the 1.4 kW class (a service manual)', () => {
  const { emfPerSpeed, resistanceOhm } = starterMotors.rows.petrol12V;
  const pinionTurns = 12;

  test('stands still at 4.0 V with 780 A', () => {
    expect(780 * interpolate(resistanceOhm, 2)).toBeCloseTo(4, 1);
  });

  test('gives 9.1 to 10.4 N.m at the pinion with 300 A', () => {
    const torque = (interpolate(emfPerSpeed, 2) / pinionTurns) * 300;
    expect(torque).toBeGreaterThan(9.1 * 0.95);
    expect(torque).toBeLessThan(10.4 * 1.05);
  });
});

describe('a sound vehicle (common practice, no source, unless named)', () => {
  test.each([
    [{ fuel: 'petrol', displacement: 1 }, 118, 200],
    [{ fuel: 'petrol', displacement: 2 }, 120, 200],
    [{ fuel: 'petrol', displacement: 2.5 }, 160, 260],
    [{ fuel: 'petrol', displacement: 3.5 }, 160, 260],
    [{ fuel: 'diesel', displacement: 1.5 }, 200, 350],
    [{ fuel: 'diesel', displacement: 2.2 }, 200, 350],
    [{ fuel: 'diesel', displacement: 6.5 }, 350, 600],
    [{ fuel: 'diesel', displacement: 10, nominal: 24 }, 250, 400],
  ] as const)('%j draws its usual %d to %d A when warm', (vehicle, low, high) => {
    const { currentA } = solveCircuit(circuitOf({ ...vehicle, temperature: 20 }));
    expect(currentA).toBeGreaterThan(low);
    expect(currentA).toBeLessThan(high);
  });

  test.each([
    [petrol, 180, 300],
    [diesel, 150, 250],
  ])('%j turns at its usual %d to %d /min when warm', (vehicle, low, high) => {
    const { speed } = solveCircuit(circuitOf(vehicle));
    expect(speed).toBeGreaterThan(low);
    expect(speed).toBeLessThan(high);
  });

  test.each([
    [0, 1.4],
    [-18, 1.8],
  ])('draws more at %d Cel: about %f times the warm current', (temperature, factor) => {
    for (const vehicle of [petrol, diesel]) {
      const warm = solveCircuit(circuitOf(vehicle)).currentA;
      const cold = solveCircuit(circuitOf({ ...vehicle, temperature })).currentA;
      expect(cold / warm / factor).toBeGreaterThan(0.88);
      expect(cold / warm / factor).toBeLessThan(1.12);
    }
  });

  // TM 5-3895-382-24, Table 29: 8 to 10 V, 7 to 9 V, 6 to 8 V; car batteries of today lie above.
  test.each([
    [20, 9.6, 12],
    [0, 8, 11.5],
    [-18, 7, 10],
  ])('keeps a usual voltage while cranking at %d Cel: %f to %f V', (temperature, low, high) => {
    for (const vehicle of [petrol, diesel]) {
      const { postV } = solveCircuit(circuitOf({ ...vehicle, temperature }));
      expect(postV).toBeGreaterThan(low);
      expect(postV).toBeLessThan(high);
    }
  });

  test('loses no more than 2 mOhm a side lose (TM 10-3930-671-24)', () => {
    for (const vehicle of [petrol, diesel]) {
      const { positiveV, groundV, currentA } = solveCircuit(circuitOf(vehicle));
      expect(positiveV).toBeLessThan(0.002 * currentA);
      expect(groundV).toBeLessThan(0.002 * currentA);
    }
  });

  test("draws the owner's own figure when warm", () => {
    const { currentA } = solveCircuit(circuitOf({ ...petrol, expectedCurrent: 190 }));
    expect(currentA).toBeGreaterThan(185);
    expect(currentA).toBeLessThan(195);
  });

  test('colder never cranks faster', () => {
    assert(
      property(
        record({
          fuel: constantFrom('petrol', 'diesel'),
          displacement: double({ min: 1, max: 6, noNaN: true }),
          restVoltage: double({ min: 11.6, max: 12.9, noNaN: true }),
          temperature: double({ min: -29, max: 40, noNaN: true }),
          colder: double({ min: 0, max: 30, noNaN: true }),
        }),
        ({ fuel, colder, ...context }) => {
          const warm = solveCircuit(circuitOf({ ...context, fuel }));
          const temperature = context.temperature - colder;
          const cold = solveCircuit(circuitOf({ ...context, fuel, temperature }));
          expect(cold.speed).toBeLessThanOrEqual(warm.speed + 1e-6);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a larger engine, thicker oil or a tighter one never takes less torque', () => {
    const at = {
      fuel: 'petrol',
      displacementL: 2,
      oil: '5W-30',
      temperatureC: 0,
      drag: 1,
    } as const;
    const torque = (change: object): number => engineTorque(engineLoad({ ...at, ...change }), 20);
    expect(torque({ displacementL: 2.5 })).toBeGreaterThan(torque({}));
    expect(torque({ oil: '20W-50' })).toBeGreaterThan(torque({}));
    expect(torque({ drag: 1.5 })).toBeGreaterThan(torque({}));
    expect(torque({ fuel: 'diesel' })).toBeGreaterThan(torque({}));
  });
});

describe('start held', () => {
  const outcome = (change: Partial<VehicleValues>, fault: object = {}): string =>
    attemptStart({ ...circuitOf(petrol, change), ...fault }).outcome;

  test.each([
    ['a sound vehicle turns', {}, {}, 'turning'],
    ['a battery at half of its charge still turns a warm engine', { restV: 12.24 }, {}, 'turning'],
    ['an almost empty battery chatters', { restV: 11.95 }, {}, 'rapid-clicking'],
    ['a worn-out battery chatters', { health: 0.15 }, {}, 'rapid-clicking'],
    ['a bad clamp chatters', {}, { positiveClampOhm: 0.02 }, 'rapid-clicking'],
    ['a bad ground chatters', {}, { groundCableOhm: 0.02 }, 'rapid-clicking'],
    ['burnt contacts click once', {}, { contactsOhm: Infinity }, 'single-click'],
    ['a loose clamp leaves all silent', {}, { positiveClampOhm: 0.2 }, 'silent'],
    ['an open control wire leaves all silent', {}, { controlOhm: Infinity }, 'silent'],
    ['a bad joint in the control circuit leaves all silent', {}, { controlOhm: 0.3 }, 'silent'],
  ])('%s', (_, change, fault, expected) => {
    expect(outcome(change, fault)).toBe(expected);
  });

  test('an engine that is locked clicks once', () => {
    const circuit = circuitOf(petrol);
    const engine = { constantNm: Infinity, oilNmPerRoot: 0 };
    expect(attemptStart({ ...circuit, engine }).outcome).toBe('single-click');
  });

  // The pull-in winding returns to ground through the motor.
  test('open brushes leave the plunger out', () => {
    const circuit = circuitOf(petrol);
    const motor = { ...circuit.motor, resistanceOhm: Infinity };
    expect(attemptStart({ ...circuit, motor }).outcome).toBe('silent');
  });

  // TM 5-2420-230-24-2 p. 13-33: 69 to 97 A at 10 V; a vehicle maker: 60 to 85 A.
  test('both windings draw 60 to 97 A at 10 V, the hold-in winding 10 to 20 A', () => {
    const { solenoid } = circuitOf(petrol);
    const both = 10 / solenoid.pullInOhm + 10 / solenoid.holdInOhm;
    expect(both).toBeGreaterThan(60);
    expect(both).toBeLessThan(97);
    expect(10 / solenoid.holdInOhm).toBeGreaterThan(10);
    expect(10 / solenoid.holdInOhm).toBeLessThan(20);
  });
});
