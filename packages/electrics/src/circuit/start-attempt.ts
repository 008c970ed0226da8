import { batteryVoltage } from './battery-model.ts';
import type { CrankingCircuit } from './cranking-circuit.ts';
import { increasingRoot } from './increasing-root.ts';
import { solveStanding, solveSteady, type CrankingSolution } from './solve-circuit.ts';

/**
 * What happens at the starter while start is held: `silent`, the plunger does not pull in;
 * `rapid-clicking`, the voltage that the motor leaves lets the plunger go, and it pulls in again;
 * `single-click`, it stays in and the engine does not turn; `turning`.
 *
 * `windingA` and `controlV` are those before the contacts close; `standing` is the circuit in the
 * moment when they have closed and `steady` after that, missing where it does not come to that.
 */
export type StartAttempt =
  | {
      readonly outcome: 'silent';
      readonly windingA: number;
      readonly controlV: number;
    }
  | {
      readonly outcome: 'rapid-clicking';
      readonly windingA: number;
      readonly controlV: number;
      readonly standing: CrankingSolution;
    }
  | {
      readonly outcome: 'single-click' | 'turning';
      readonly windingA: number;
      readonly controlV: number;
      readonly standing: CrankingSolution;
      readonly steady: CrankingSolution;
    };

/** Current of both windings, in A, before the contacts close. */
function windingCurrent(circuit: CrankingCircuit): number {
  const { battery, solenoid, motor } = circuit;
  const conductance = 1 / solenoid.holdInOhm + 1 / (solenoid.pullInOhm + motor.resistanceOhm);
  const pathOhm =
    circuit.positiveClampOhm +
    circuit.negativeClampOhm +
    circuit.groundCableOhm +
    circuit.controlOhm;
  if (!Number.isFinite(pathOhm)) return 0;
  return increasingRoot(
    (current) => current - conductance * (batteryVoltage(battery, current) - pathOhm * current),
    0,
    battery.emfV * conductance,
  );
}

/** True where the ampere-turns of both windings are those of `operateV` at the least. */
function pullsIn({ solenoid }: CrankingCircuit, windingA: number): boolean {
  return windingA >= solenoid.operateV * (1 / solenoid.holdInOhm + 1 / solenoid.pullInOhm);
}

/**
 * Holds start on a circuit and tells what the starter does. Whether the plunger stays in is decided
 * in the first moment, before the engine moves, when the battery's voltage is lowest. No side effects.
 */
export function attemptStart(circuit: CrankingCircuit): StartAttempt {
  const { solenoid, motor } = circuit;
  const windingA = windingCurrent(circuit);
  const conductance = 1 / solenoid.holdInOhm + 1 / (solenoid.pullInOhm + motor.resistanceOhm);
  const controlV = windingA / conductance;
  if (!pullsIn(circuit, windingA)) return { outcome: 'silent', windingA, controlV };
  const standing = solveStanding(circuit);
  if (standing.controlV < solenoid.releaseV) {
    return { outcome: 'rapid-clicking', windingA, controlV, standing };
  }
  const steady = solveSteady(circuit, standing);
  const outcome = steady.state === 'turning' ? 'turning' : 'single-click';
  return { outcome, windingA, controlV, standing, steady };
}
