// Quantities: a number with its UCUM unit, and what the meter adds to it.
export { unitCodes, isUnit, unitDimension, type Dimension, type UnitCode } from './unit.ts';
export { convert, type Quantity } from './quantity.ts';
export { assumedMeter, standardUncertainty, type Meter } from './meter.ts';
export {
  plausible,
  readingKinds,
  readingRange,
  type ReadingKind,
  type ReadingRange,
} from './reading-range.ts';
export { ElectricsError, type ElectricsErrorCode, type ElectricsFacts } from './electrics-error.ts';

// Limits: the named bounds between the bands of a reading, computed for a vehicle.
export { isLimitName, limit, limitNames, type LimitName } from './limit.ts';
export type { LimitResult } from './limit-result.ts';
export type {
  BatteryLocation,
  BatteryTechnology,
  LimitContext,
  RatingStandard,
} from './limit-context.ts';
export type { Bound } from './bound.ts';
export type { Provenance, Source } from './source.ts';
export { bandWeights } from './band-weights.ts';

// The battery: charge, electrolyte, internal resistance and what it can crank.
export { stateOfCharge, stateOfChargeByGravity } from './state-of-charge.ts';
export { correctedSpecificGravity, freezingPoint, specificGravityVoltage } from './electrolyte.ts';
export {
  estimatedCrankingAmps,
  internalResistance,
  type ReasonedInterval,
} from './internal-resistance.ts';
export type { Interval } from './interval.ts';

// The starting circuit: the current to expect and what cables drop.
export { expectedCrankingCurrent, expectedStallCurrent } from './limits/cranking-current-range.ts';
export {
  awgAreaMm2,
  awgDiameterMm,
  cableDrop,
  copperResistance,
  type Conductor,
  type ConductorSize,
  type LoadedCable,
} from './copper-resistance.ts';
