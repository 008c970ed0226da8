import type { BatteryModel } from './battery-model.ts';
import type { EngineLoad } from './engine-load.ts';

/**
 * A starter motor with permanent magnets, its gear and the ring gear, all brought to the
 * crankshaft: a voltage of `emfPerSpeed` V for every rad/s, and as many N.m for every ampere above
 * `frictionA`, of which `efficiency` (above 0 to 1) arrives. Brushes take `brushV`.
 */
export type StarterMotor = {
  readonly emfPerSpeed: number;
  readonly resistanceOhm: number;
  readonly brushV: number;
  readonly frictionA: number;
  readonly efficiency: number;
};

/**
 * The solenoid's two windings, of equal turns. The pull-in winding returns to ground through the
 * motor. Both together pull the plunger in from `operateV` on; the hold-in winding alone lets go
 * below `releaseV`.
 */
export type Solenoid = {
  readonly pullInOhm: number;
  readonly holdInOhm: number;
  readonly operateV: number;
  readonly releaseV: number;
};

/**
 * The whole circuit while start is held. Resistances are Infinity where it is open: between each
 * post and its clamp, from clamp to starter main stud, across the solenoid's contacts, from the
 * starter's body to the clamp of the other post, and in the control circuit from clamp to solenoid.
 */
export type CrankingCircuit = {
  readonly battery: BatteryModel;
  readonly positiveClampOhm: number;
  readonly negativeClampOhm: number;
  readonly positiveCableOhm: number;
  readonly groundCableOhm: number;
  readonly contactsOhm: number;
  readonly controlOhm: number;
  readonly solenoid: Solenoid;
  readonly motor: StarterMotor;
  readonly engine: EngineLoad;
};
