import { batteryVoltage } from './battery-model.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import { engineTorque } from './engine-load.ts';
import { increasingRoot } from './increasing-root.ts';

/**
 * The circuit with the solenoid's contacts closed, in V, A, /min and N.m. `turning`: the engine
 * turns at a steady speed; `standing`: current flows and it does not turn; `open`: no current
 * reaches the motor.
 *
 * Drops are as a meter reads them, from post to clamp, post to main stud, body to post, and across
 * the solenoid's two studs; `controlV` stands at its control terminal and `motorV` at the motor,
 * both against the starter's body. `currentA` is the battery's, with the solenoid's holding current.
 */
export type CrankingSolution = {
  readonly state: 'turning' | 'standing' | 'open';
  readonly currentA: number;
  readonly motorA: number;
  readonly holdingA: number;
  readonly postV: number;
  readonly positiveClampV: number;
  readonly negativeClampV: number;
  readonly positiveV: number;
  readonly groundV: number;
  readonly contactsV: number;
  readonly controlV: number;
  readonly motorV: number;
  readonly backEmfV: number;
  readonly speed: number;
  readonly torqueNm: number;
};

const revolutionsPerMinute = 60 / (2 * Math.PI);

/** Resistance that the whole current passes outside the battery. */
function sharedOhm(circuit: CrankingCircuit): number {
  return circuit.positiveClampOhm + circuit.negativeClampOhm + circuit.groundCableOhm;
}

/** Resistance that only the motor's current passes outside the motor. */
function motorPathOhm(circuit: CrankingCircuit): number {
  return circuit.positiveCableOhm + circuit.contactsOhm;
}

/** Voltage from the positive clamp to the starter's body with the battery giving `currentA`. */
function voltageAtStarter(circuit: CrankingCircuit, currentA: number): number {
  return batteryVoltage(circuit.battery, currentA) - sharedOhm(circuit) * currentA;
}

/** Current of the hold-in winding at a voltage between clamp and body. */
function holdingCurrent({ controlOhm, solenoid }: CrankingCircuit, voltageV: number): number {
  return voltageV / (controlOhm + solenoid.holdInOhm);
}

/** The motor's back-EMF in V when the battery gives `currentA`: the higher that is, the lower. */
function backEmf(circuit: CrankingCircuit, currentA: number): number {
  const voltageV = voltageAtStarter(circuit, currentA);
  const motorA = currentA - holdingCurrent(circuit, voltageV);
  const { resistanceOhm, brushV } = circuit.motor;
  return voltageV - (motorPathOhm(circuit) + resistanceOhm) * motorA - brushV;
}

/** Torque at the crankshaft that is left to speed the engine up; below 0 it slows down. */
function spareTorque(circuit: CrankingCircuit, currentA: number): number {
  const { motor, engine } = circuit;
  const holdingA = holdingCurrent(circuit, voltageAtStarter(circuit, currentA));
  const speed = Math.max(0, backEmf(circuit, currentA)) / motor.emfPerSpeed;
  const drive = motor.emfPerSpeed * motor.efficiency * (currentA - holdingA - motor.frictionA);
  return drive - engineTorque(engine, speed);
}

/** More current than the circuit can ever carry. */
function shortCircuitCurrent(circuit: CrankingCircuit): number {
  const { battery, solenoid } = circuit;
  return (
    battery.emfV / (battery.resistanceOhm + sharedOhm(circuit)) + battery.emfV / solenoid.holdInOhm
  );
}

/** The current at which the motor stands still. */
function standingCurrent(circuit: CrankingCircuit): number {
  return increasingRoot((currentA) => -backEmf(circuit, currentA), 0, shortCircuitCurrent(circuit));
}

/** True where no current can reach the motor. */
function isOpen(circuit: CrankingCircuit): boolean {
  const { resistanceOhm, brushV } = circuit.motor;
  return (
    !Number.isFinite(motorPathOhm(circuit) + sharedOhm(circuit) + resistanceOhm) ||
    circuit.battery.emfV <= brushV
  );
}

/** The solution in which only the hold-in winding draws current, or nothing does. */
function solveOpen(circuit: CrankingCircuit): CrankingSolution {
  const isWhole = Number.isFinite(sharedOhm(circuit));
  const currentA = isWhole
    ? increasingRoot(
        (current) => current - holdingCurrent(circuit, voltageAtStarter(circuit, current)),
        0,
        shortCircuitCurrent(circuit),
      )
    : 0;
  const voltageV = isWhole ? voltageAtStarter(circuit, currentA) : 0;
  return {
    ...nodesAt(circuit, { currentA, voltageV, motorA: 0 }),
    state: 'open',
    // What is open carries the whole voltage, and nothing else drops any.
    positiveV: Number.isFinite(circuit.positiveCableOhm)
      ? nodeDrop(circuit.positiveClampOhm, currentA)
      : voltageV,
    contactsV: Number.isFinite(circuit.contactsOhm) ? 0 : voltageV,
    motorV: Number.isFinite(motorPathOhm(circuit)) ? voltageV : 0,
  };
}

function nodeDrop(ohm: number, currentA: number): number {
  return currentA === 0 ? 0 : ohm * currentA;
}

/** Every figure that follows from the currents. */
function nodesAt(
  circuit: CrankingCircuit,
  at: { readonly currentA: number; readonly voltageV: number; readonly motorA: number },
): CrankingSolution {
  const { currentA, voltageV, motorA } = at;
  const { motor, solenoid, engine } = circuit;
  const holdingA = currentA - motorA;
  const positiveClampV = nodeDrop(circuit.positiveClampOhm, currentA);
  const contactsV = nodeDrop(circuit.contactsOhm, motorA);
  const cableV = nodeDrop(circuit.positiveCableOhm, motorA);
  const motorV = voltageV - cableV - contactsV;
  const backEmfV = Math.max(0, motorV - nodeDrop(motor.resistanceOhm, motorA) - motor.brushV);
  const speed = motorA > 0 ? backEmfV / motor.emfPerSpeed : 0;
  return {
    state: 'turning',
    currentA,
    motorA,
    holdingA,
    postV: batteryVoltage(circuit.battery, currentA),
    positiveClampV,
    negativeClampV: nodeDrop(circuit.negativeClampOhm, currentA),
    positiveV: positiveClampV + cableV,
    groundV: nodeDrop(circuit.negativeClampOhm + circuit.groundCableOhm, currentA),
    contactsV,
    controlV: holdingA * solenoid.holdInOhm,
    motorV,
    backEmfV: motorA > 0 ? backEmfV : 0,
    speed: speed * revolutionsPerMinute,
    torqueNm: speed > 0 ? engineTorque(engine, speed) : 0,
  };
}

function solutionAt(circuit: CrankingCircuit, currentA: number): CrankingSolution {
  const voltageV = voltageAtStarter(circuit, currentA);
  const motorA = currentA - holdingCurrent(circuit, voltageV);
  return nodesAt(circuit, { currentA, voltageV, motorA });
}

/** The circuit in the first moment, with the contacts closed and the engine still at rest. */
export function solveStanding(circuit: CrankingCircuit): CrankingSolution {
  if (isOpen(circuit)) return solveOpen(circuit);
  const standing = solutionAt(circuit, standingCurrent(circuit));
  // Brushes only take voltage: one that does not reach what they take drives no current at all.
  if (standing.motorA <= 0) return solveOpen(circuit);
  return {
    ...standing,
    state: 'standing',
    backEmfV: 0,
    speed: 0,
    torqueNm: 0,
  };
}

/**
 * Current, voltages and speed of a starting circuit with the solenoid's contacts closed, once the
 * speed is steady.
 *
 * Kirchhoff's laws with the balance of torques, solved for the battery's current. No side effects.
 */
export function solveCircuit(circuit: CrankingCircuit): CrankingSolution {
  return solveSteady(circuit, solveStanding(circuit));
}

/** The same, where the first moment has been solved. */
export function solveSteady(
  circuit: CrankingCircuit,
  standing: CrankingSolution,
): CrankingSolution {
  if (standing.state === 'open' || !(spareTorque(circuit, standing.currentA) > 0)) return standing;
  const currentA = increasingRoot((current) => spareTorque(circuit, current), 0, standing.currentA);
  return solutionAt(circuit, currentA);
}
