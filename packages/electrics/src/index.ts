// Quantities: a number with its UCUM unit, and what the meter adds to it.
export {
  unitCodes,
  isUnit,
  unitDimension,
  type Dimension,
  type UnitCode,
} from './quantity/unit.ts';
export { convert, type Quantity } from './quantity/quantity.ts';
export {
  assumedMeter,
  classAccuracy,
  expandedUncertainty,
  standardUncertainty,
  type Meter,
} from './quantity/meter.ts';
export type { MeterAccuracy } from './quantity/meter-accuracy.ts';
export type { MeterClass } from './tables/meter-classes.ts';
export {
  plausible,
  readingKinds,
  readingRange,
  type ReadingKind,
  type ReadingRange,
} from './quantity/reading-range.ts';
export { ElectricsError, type ElectricsErrorCode, type ElectricsFacts } from './electrics-error.ts';
export type { Interval, SourcedInterval } from './quantity/interval.ts';
export type { Provenance, Source } from './source.ts';

// A reading at a bound: how likely it lies on which side, and what may be accepted.
export {
  acceptance,
  conformanceProbability,
  decide,
  decisiveProbability,
  type Acceptance,
  type Decision,
  type Estimate,
  type GuardBand,
  type Tolerance,
  type ToleranceBounds,
} from './conformance/conformance.ts';
export { globalRisks, type GlobalRisks, type Inspection } from './conformance/global-risks.ts';
export { bandWeights } from './conformance/band-weights.ts';
export { normalProbability } from './conformance/normal-probability.ts';

// Limits: the named bounds between the bands of a reading, computed for a vehicle.
export { isLimitName, limit, limitNames, type LimitName } from './limits/limit.ts';
export { limitParts } from './limits/limit-parts.ts';
export {
  limitsReport,
  referenceVehicle,
  type LimitField,
  type LimitReport,
} from './limits/limits-report.ts';
export { limitsTable } from './limits/limits-table.ts';
export type { LimitResult } from './limits/limit-result.ts';
export { batteriesInSeries } from './limits/limit-context.ts';
export type {
  BatteryLocation,
  BatteryTechnology,
  BoltInto,
  LimitContext,
  PostKind,
  RatingStandard,
  StarterBuild,
  StarterClass,
  StudMaterial,
} from './limits/limit-context.ts';
export type { Bound } from './conformance/bound.ts';

// The starting circuit as a model: currents, voltages and speed of a vehicle, sound or not.
export type { CrankingCircuit, Solenoid, StarterMotor } from './circuit/cranking-circuit.ts';
export {
  batteryModel,
  batteryVoltage,
  openCircuitVoltageAt,
  type BatteryModel,
  type BatteryState,
} from './circuit/battery-model.ts';
export {
  engineLoad,
  engineTorque,
  type EngineLoad,
  type EngineState,
} from './circuit/engine-load.ts';
export { solveCircuit, solveStanding, type CrankingSolution } from './circuit/solve-circuit.ts';
export { attemptStart, type StartAttempt } from './circuit/start-attempt.ts';
export {
  expectedReading,
  expectedReadings,
  type ExpectedReading,
} from './circuit/expected-reading.ts';
export {
  soundCircuit,
  usualStarter,
  vehicleCircuit,
  vehicleKind,
  vehicleSpans,
  type Span,
  type VehicleKind,
} from './circuit/vehicle-circuit.ts';
export { spreadOver } from './circuit/spread.ts';
export type { Fuel } from './circuit/possible-displacement.ts';
export {
  circuitLosses,
  type CircuitLoss,
  type CircuitLosses,
  type LossyPart,
  type MeasuredCircuit,
} from './circuit/circuit-losses.ts';
export { slowCranking, type SlowCranking } from './circuit/slow-cranking.ts';
export { expectedCrankingCurrent, expectedStallCurrent } from './limits/cranking-current-range.ts';
export {
  compressionRate,
  speedByCompressions,
  weakCylinderSign,
  type WeakCylinderSign,
} from './circuit/compression-events.ts';

// The battery: charge, electrolyte, internal resistance, rating and what it can crank.
export { stateOfCharge, stateOfChargeByGravity } from './battery/state-of-charge.ts';
export {
  correctedSpecificGravity,
  freezingPoint,
  specificGravityVoltage,
} from './battery/electrolyte.ts';
export {
  estimatedCrankingAmps,
  internalResistance,
  type ReasonedInterval,
} from './battery/internal-resistance.ts';
export {
  batteryFromPair,
  type BatteryFromPair,
  type BatteryPair,
} from './battery/battery-from-pair.ts';
export {
  loadCurrent,
  type ConstantPowerKind,
  type Load,
  type LoadCurrent,
  type LoadKind,
} from './battery/load-current.ts';
export type { LampKind } from './tables/lamp-ratings.ts';
export type { AccessoryKind } from './tables/accessory-loads.ts';
export type { RatingName } from './tables/rating-standards.ts';
export {
  convertRating,
  loadTestCurrent,
  type LabelRating,
  type LoadTestCurrent,
  type RatingConversion,
  type RatingRefusal,
} from './battery/rating.ts';

// Conductors: resistance, expected drops, and whether a drop is the cable's or a connection's.
export { awgAreaMm2, awgDiameterMm } from './conductor/wire-gauge.ts';
export {
  conductorResistance,
  copperResistance,
  type Conductor,
  type ConductorMake,
  type ConductorMaterial,
  type ConductorRun,
  type ConductorSize,
} from './conductor/conductor.ts';
export { cableDrop, expectedDrop, type LoadedCable } from './conductor/cable.ts';
export {
  sizeThatIsEnough,
  type CableTask,
  type EnoughSize,
} from './conductor/size-that-is-enough.ts';
export {
  cableOrConnection,
  type CableOrConnection,
  type CableVerdict,
  type DropPart,
  type MeasuredCable,
} from './conductor/cable-or-connection.ts';

// Fasteners: clamp load and torque of bolts, and the much lower torques of electrical studs.
export {
  boltTorque,
  proofLoad,
  type Bolt,
  type BoltJoint,
  type BoltTorque,
} from './fastener/fastener.ts';
export {
  studTorque,
  terminalTorque,
  type Stud,
  type Terminal,
  type TerminalTorque,
  type TorqueCaution,
} from './fastener/stud-torque.ts';
export type { BoltSize } from './tables/stress-area.ts';
export type { PropertyClass } from './tables/property-class.ts';
export type { ThreadCondition } from './tables/nut-factor.ts';
export type { StudSize } from './tables/electrical-stud.ts';

// Charging proved, and what drains a battery that stands.
export { regulatedVoltageWindow } from './charging/regulated-voltage.ts';
export { rippleVerdict, type RippleReading, type RippleResult } from './charging/ripple.ts';
export { keyOffDrain, type KeyOffDrainResult } from './charging/key-off-drain.ts';
export { daysToLose, drainTime, type DrainedBattery } from './charging/drain-time.ts';

// Fuses, relays, solenoid windings, terminals and the starter on the bench.
export { fuseTimeWindow, type FuseTime, type FuseTimeWindow } from './fuse/fuse-time-window.ts';
export {
  fuseCurrent,
  fuseResistance,
  type FuseCurrentResult,
  type MeasuredFuse,
} from './fuse/fuse-current.ts';
export type { FuseStyle } from './tables/fuse-drop.ts';
export { fuseColour } from './fuse/fuse-colour.ts';
export {
  coilCheck,
  contactCheck,
  relayContinuousLimit,
  type CoilCheck,
  type ContactCheck,
  type MeasuredContacts,
} from './relay/relay.ts';
export type { RelayKind } from './tables/relay-coil.ts';
export { terminalDesignation, type TerminalDesignation } from './relay/terminal-designation.ts';
export {
  windingCheck,
  windingResistance,
  type MeasuredWinding,
  type Winding,
  type WindingCheck,
} from './starter/solenoid-windings.ts';
export { freeRunVerdict, type FreeRunResult } from './starter/starter-free-run.ts';
