import { assert, double, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BatteryModel } from './battery-model.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import { engineTorque } from './engine-load.ts';
import { solveCircuit, solveStanding } from './solve-circuit.ts';

/** No overvoltage, no brushes, no friction, no hold-in current: what can be solved by hand. */
const plain: CrankingCircuit = {
  battery: { emfV: 12, resistanceOhm: 0.01, polarisationV: 0, polarisationA: 100 },
  positiveClampOhm: 0,
  negativeClampOhm: 0,
  positiveCableOhm: 0.001,
  groundCableOhm: 0.0005,
  contactsOhm: 0.0005,
  controlOhm: Infinity,
  solenoid: { pullInOhm: 0.16, holdInOhm: 0.72, operateV: 7, releaseV: 3.5 },
  motor: { emfPerSpeed: 0.4, resistanceOhm: 0.008, brushV: 0, frictionA: 0, efficiency: 1 },
  engine: { constantNm: 80, oilNmPerRoot: 0 },
};

const usual: CrankingCircuit = {
  ...plain,
  battery: { emfV: 12.6, resistanceOhm: 0.0035, polarisationV: 0.4, polarisationA: 140 },
  positiveClampOhm: 0.0001,
  negativeClampOhm: 0.0001,
  positiveCableOhm: 0.0009,
  controlOhm: 0.05,
  motor: { emfPerSpeed: 0.36, resistanceOhm: 0.0051, brushV: 0.6, frictionA: 25, efficiency: 0.9 },
  engine: { constantNm: 14, oilNmPerRoot: 4.2 },
};

const revolutionsPerMinute = 60 / (2 * Math.PI);

describe('a starting circuit solved by hand', () => {
  test('the torque sets the current, and Ohm what is left for the speed', () => {
    // 80 N.m / 0.4 N.m/A = 200 A; 12 V - 200 A × 20 mOhm = 8 V; 8 V / 0.4 V.s = 20 rad/s.
    const { state, ...figures } = solveCircuit(plain);
    expect(state).toBe('turning');
    expect(figures.currentA).toBeCloseTo(200, 9);
    expect(figures.postV).toBeCloseTo(10, 9);
    expect(figures.positiveV).toBeCloseTo(0.2, 9);
    expect(figures.groundV).toBeCloseTo(0.1, 9);
    expect(figures.contactsV).toBeCloseTo(0.1, 9);
    expect(figures.motorV).toBeCloseTo(9.6, 9);
    expect(figures.speed).toBeCloseTo(20 * revolutionsPerMinute, 8);
  });

  test('an engine that is locked draws what the resistances let through', () => {
    // 12 V / 20 mOhm = 600 A.
    const locked = solveCircuit({ ...plain, engine: { constantNm: Infinity, oilNmPerRoot: 0 } });
    expect(locked).toMatchObject({ state: 'standing', speed: 0, torqueNm: 0 });
    expect(locked.currentA).toBeCloseTo(600, 8);
    expect(locked.postV).toBeCloseTo(6, 8);
  });

  test('an engine that is too heavy for the current does not turn', () => {
    // 600 A × 0.4 N.m/A = 240 N.m.
    const load = (constantNm: number) => ({ ...plain, engine: { constantNm, oilNmPerRoot: 0 } });
    expect(solveCircuit(load(239)).state).toBe('turning');
    expect(solveCircuit(load(241)).state).toBe('standing');
  });

  test('open contacts carry the whole voltage, and only the holding current flows', () => {
    // 12 V / (10 mOhm + 0.5 mOhm + 50 mOhm + 720 mOhm)
    const open = solveCircuit({ ...plain, controlOhm: 0.05, contactsOhm: Infinity });
    expect(open.state).toBe('open');
    expect(open.currentA).toBeCloseTo(12 / 0.7805, 9);
    expect(open.contactsV).toBeCloseTo(12 - (12 / 0.7805) * 0.0105, 9);
    expect(open.positiveV).toBe(0);
    expect(open.motorA).toBe(0);
  });

  test('an open cable carries the whole voltage', () => {
    const open = solveCircuit({ ...plain, positiveCableOhm: Infinity });
    expect(open).toMatchObject({ state: 'open', currentA: 0, contactsV: 0, positiveV: 12 });
  });

  test('a battery that the holding current alone brings below its brushes gives the motor none', () => {
    // 0.7 V / (500 + 0.5 + 50 + 720 mOhm) leaves 0.42 V of the 0.6 V that the brushes take.
    const battery = { emfV: 0.7, resistanceOhm: 0.5, polarisationV: 0, polarisationA: 100 };
    const motor = { ...plain.motor, brushV: 0.6 };
    const weak = { ...plain, battery, motor, controlOhm: 0.05 };
    for (const solved of [solveCircuit(weak), solveStanding(weak)]) {
      expect(solved).toMatchObject({ state: 'open', motorA: 0, positiveV: 0, contactsV: 0 });
      expect(solved.currentA).toBeCloseTo(0.7 / 1.2705, 9);
      expect(solved.motorV).toBeCloseTo((0.7 * 0.77) / 1.2705, 9);
    }
  });

  test('an open ground leaves nothing at all flowing', () => {
    const open = solveCircuit({ ...usual, groundCableOhm: Infinity });
    expect(open).toMatchObject({ state: 'open', currentA: 0, postV: 12.6, controlV: 0, speed: 0 });
  });
});

/** The same circuit by other means: bisection on the speed, and within it on the current. */
function bisect(value: (x: number) => number, low: number, high: number): number {
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (value(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function batteryBy({ emfV, resistanceOhm, polarisationV, polarisationA }: BatteryModel) {
  return (amperes: number) =>
    emfV -
    amperes * resistanceOhm -
    polarisationV * Math.log(amperes / polarisationA + Math.hypot(amperes / polarisationA, 1));
}

function solvedByBisection(circuit: CrankingCircuit) {
  const { motor, solenoid, engine } = circuit;
  const post = batteryBy(circuit.battery);
  const shared = circuit.positiveClampOhm + circuit.negativeClampOhm + circuit.groundCableOhm;
  const path = circuit.positiveCableOhm + circuit.contactsOhm + motor.resistanceOhm;
  const motorAt = (speed: number): { amperes: number; motorA: number } => {
    const amperes = bisect(
      (one) => {
        const starter = post(one) - shared * one;
        const held = starter / (circuit.controlOhm + solenoid.holdInOhm);
        return path * (one - held) + motor.brushV + motor.emfPerSpeed * speed - starter;
      },
      0,
      20_000,
    );
    const starter = post(amperes) - shared * amperes;
    return { amperes, motorA: amperes - starter / (circuit.controlOhm + solenoid.holdInOhm) };
  };
  const speed = bisect(
    (one) =>
      engineTorque(engine, one) -
      motor.emfPerSpeed * motor.efficiency * (motorAt(one).motorA - motor.frictionA),
    0,
    200,
  );
  return { speed: speed * revolutionsPerMinute, amperes: motorAt(speed).amperes };
}

const between = (min: number, max: number) => double({ min, max, noNaN: true });

/** Circuits from sound to bad, 12 V and 24 V; the engine may be too heavy to turn. */
const circuits = record({
  emfV: between(9, 26),
  batteryOhm: between(0.002, 0.04),
  polarisationV: between(0, 0.8),
  polarisationA: between(30, 300),
  clampOhm: between(0, 0.02),
  positiveOhm: between(0.0003, 0.05),
  groundOhm: between(0.0002, 0.05),
  contactsOhm: between(0.0001, 0.02),
  controlOhm: between(0.02, 1),
  emfPerSpeed: between(0.3, 1.4),
  motorOhm: between(0.003, 0.02),
  frictionA: between(0, 60),
  constantNm: between(2, 200),
  oilNmPerRoot: between(0, 40),
}).map((one): CrankingCircuit => ({
  battery: {
    emfV: one.emfV,
    resistanceOhm: one.batteryOhm,
    polarisationV: one.polarisationV,
    polarisationA: one.polarisationA,
  },
  positiveClampOhm: one.clampOhm,
  negativeClampOhm: one.clampOhm / 2,
  positiveCableOhm: one.positiveOhm,
  groundCableOhm: one.groundOhm,
  contactsOhm: one.contactsOhm,
  controlOhm: one.controlOhm,
  solenoid: usual.solenoid,
  motor: {
    emfPerSpeed: one.emfPerSpeed,
    resistanceOhm: one.motorOhm,
    brushV: 0.6,
    frictionA: one.frictionA,
    efficiency: 0.9,
  },
  engine: { constantNm: one.constantNm, oilNmPerRoot: one.oilNmPerRoot },
}));

describe('a starting circuit solved for its current', () => {
  test('bisection on the speed finds the same current and speed', () => {
    assert(
      property(circuits, (circuit) => {
        const solved = solveCircuit(circuit);
        if (solved.state !== 'turning') return;
        const { speed, amperes } = solvedByBisection(circuit);
        expect(solved.currentA).toBeCloseTo(amperes, 6);
        expect(solved.speed).toBeCloseTo(speed, 4);
      }),
      { numRuns: 60 },
    );
  });

  test('what the battery gives is what the parts take and the engine receives', () => {
    assert(
      property(circuits, (circuit) => {
        const solved = solveCircuit(circuit);
        const { battery, motor, solenoid, engine } = circuit;
        const { currentA, motorA, holdingA } = solved;
        const speed = solved.speed / revolutionsPerMinute;
        const given = battery.emfV * currentA;
        const inBattery = (battery.emfV - solved.postV) * currentA;
        const inJoints =
          (circuit.positiveClampOhm + circuit.negativeClampOhm + circuit.groundCableOhm) *
          currentA ** 2;
        const inPath = (circuit.positiveCableOhm + circuit.contactsOhm) * motorA ** 2;
        const inControl = (circuit.controlOhm + solenoid.holdInOhm) * holdingA ** 2;
        const inMotor = motor.resistanceOhm * motorA ** 2 + motor.brushV * motorA;
        const inFriction = motor.emfPerSpeed * speed * motor.frictionA;
        const toEngine = solved.state === 'turning' ? engineTorque(engine, speed) * speed : 0;
        const inGear = (toEngine / motor.efficiency) * (1 - motor.efficiency);
        const taken =
          inBattery +
          inJoints +
          inPath +
          inControl +
          inMotor +
          (speed > 0 ? inFriction : 0) +
          toEngine +
          inGear;
        expect(Math.abs(given - taken) / given).toBeLessThan(1e-9);
      }),
      { numRuns: 500 },
    );
  });

  test.each([
    [
      'battery',
      (c: CrankingCircuit, by: number): CrankingCircuit => ({
        ...c,
        battery: { ...c.battery, resistanceOhm: c.battery.resistanceOhm + by },
      }),
    ],
    [
      'positive clamp',
      (c: CrankingCircuit, by: number): CrankingCircuit => ({
        ...c,
        positiveClampOhm: c.positiveClampOhm + by,
      }),
    ],
    [
      'negative clamp',
      (c: CrankingCircuit, by: number): CrankingCircuit => ({
        ...c,
        negativeClampOhm: c.negativeClampOhm + by,
      }),
    ],
    [
      'positive cable',
      (c: CrankingCircuit, by: number): CrankingCircuit => ({
        ...c,
        positiveCableOhm: c.positiveCableOhm + by,
      }),
    ],
    [
      'ground cable',
      (c: CrankingCircuit, by: number): CrankingCircuit => ({
        ...c,
        groundCableOhm: c.groundCableOhm + by,
      }),
    ],
    [
      'contacts',
      (c: CrankingCircuit, by: number): CrankingCircuit => ({
        ...c,
        contactsOhm: c.contactsOhm + by,
      }),
    ],
  ])('more resistance of the %s never draws more current nor turns faster', (_, worse) => {
    assert(
      property(circuits, between(0, 0.1), (circuit, by) => {
        const better = solveCircuit(circuit);
        const other = solveCircuit(worse(circuit, by));
        const slack = 1e-9 * better.currentA;
        expect(other.currentA).toBeLessThanOrEqual(better.currentA + slack);
        expect(other.speed).toBeLessThanOrEqual(better.speed + 1e-7);
      }),
      { numRuns: 200 },
    );
  });

  test('a heavier engine never turns faster nor draws less current', () => {
    assert(
      property(circuits, between(0, 100), (circuit, by) => {
        const light = solveCircuit(circuit);
        const { constantNm, oilNmPerRoot } = circuit.engine;
        const heavy = solveCircuit({
          ...circuit,
          engine: { constantNm: constantNm + by, oilNmPerRoot },
        });
        expect(heavy.speed).toBeLessThanOrEqual(light.speed + 1e-7);
        expect(heavy.currentA).toBeGreaterThanOrEqual(light.currentA * (1 - 1e-9));
      }),
      { numRuns: 200 },
    );
  });

  test('a fuller battery never turns the engine slower', () => {
    assert(
      property(circuits, between(0, 2), (circuit, by) => {
        const { battery } = circuit;
        const fuller = { ...circuit, battery: { ...battery, emfV: battery.emfV + by } };
        expect(solveCircuit(fuller).speed).toBeGreaterThanOrEqual(
          solveCircuit(circuit).speed - 1e-7,
        );
      }),
      { numRuns: 200 },
    );
  });

  test('the first moment draws at least as much as steady cranking', () => {
    assert(
      property(circuits, (circuit) => {
        const { currentA, postV } = solveCircuit(circuit);
        const first = solveStanding(circuit);
        expect(first.currentA).toBeGreaterThanOrEqual(currentA * (1 - 1e-9));
        expect(first.postV).toBeLessThanOrEqual(postV + 1e-9);
      }),
      { numRuns: 200 },
    );
  });
});
