import { oilViscosity } from './oil-viscosity.ts';
import { crankingReference, crankingTorque } from '../tables/cranking-torque.ts';
import type { OilGrade } from '../tables/oil-grade.ts';

/**
 * What the engine resists its cranking with, in N.m at the crankshaft: a torque that is always
 * there (compression, rubbing, gas exchange) and one of the oil that grows with the root of the
 * speed in rad/s. An engine that is locked has an infinite constant torque.
 */
export type EngineLoad = {
  readonly constantNm: number;
  readonly oilNmPerRoot: number;
};

/** What an engine's load goes by; `drag` is how many times the usual torque it needs, 1 or more. */
export type EngineState = {
  readonly fuel: 'petrol' | 'diesel';
  readonly displacementL: number;
  readonly oil: OilGrade;
  readonly temperatureC: number;
  readonly drag: number;
};

const radiansPerSecond = (2 * Math.PI) / 60;

/** Torque in N.m that turns the engine at a speed in rad/s, 0 or more. */
export function engineTorque(load: EngineLoad, speed: number): number {
  return load.constantNm + load.oilNmPerRoot * Math.sqrt(speed);
}

/**
 * The load of an engine by fuel, displacement, oil and temperature.
 *
 * The friction of oiled bearings goes with the root of viscosity times speed (hydrodynamic
 * lubrication); how much torque there is in all is the table `crankingTorque`.
 */
export function engineLoad(engine: EngineState): EngineLoad {
  const { torquePerLitre, oilShare } = crankingTorque.rows[engine.fuel];
  const torque = torquePerLitre * engine.displacementL * engine.drag;
  const thickness =
    oilViscosity(engine.oil, engine.temperatureC) /
    oilViscosity('5W-30', crankingReference.temperature);
  const referenceSpeed = crankingReference.speed * radiansPerSecond;
  return {
    constantNm: torque * (1 - oilShare),
    oilNmPerRoot: torque * oilShare * Math.sqrt(thickness / referenceSpeed),
  };
}
