// The tables themselves, each with its source: the figures that are used, and their rivals.
export type { Figure, FigureTable } from './figure.ts';
export type { Table } from './table.ts';
export {
  accessoryLoads,
  type AccessoryKind,
  type AccessoryLoad,
} from './tables/accessory-loads.ts';
export { aluminiumThreadTorque } from './tables/aluminium-thread.ts';
export { aluminiumConductivity, aluminiumTemperatureCoefficient } from './tables/aluminium.ts';
export {
  availableCapacity,
  availableCrankingPower,
  militaryCrankingPower,
} from './tables/available-cranking-power.ts';
export { batteryHealth } from './tables/battery-health.ts';
export { cellGravitySpread } from './tables/cell-gravity-spread.ts';
export {
  boostRecheck,
  startRecovery,
  type BoostRecheck,
  type StartRecovery,
} from './tables/charge-recovery.ts';
export { chargeResistance } from './tables/charge-resistance.ts';
export {
  chargingWindow,
  type ChargingWindowName,
  type ChargingWindowRow,
} from './tables/charging-window.ts';
export { class2Resistance } from './tables/class-2-resistance.ts';
export { class5Resistance } from './tables/class-5-resistance.ts';
export { class5TinnedResistance } from './tables/class-5-tinned-resistance.ts';
export { copperResistivity, copperTemperatureCoefficient } from './tables/copper.ts';
export {
  controllerResets,
  crankPhases,
  type CrankPhase,
  type Reach,
} from './tables/crank-phases.ts';
export {
  coldCrankingFactor,
  dieselCrankingCurrent,
  inrushMultiple,
  petrolCrankingCurrent,
  printedCrankingCurrents,
  type CrankingCurrentRow,
  type CrankingCurrentRows,
} from './tables/cranking-current.ts';
export { crankingPowerNeed } from './tables/cranking-power-need.ts';
export { crankingSpeeds, starterRatios } from './tables/cranking-speed.ts';
export { crankingTimes } from './tables/cranking-time.ts';
export {
  crankingReference,
  crankingTorque,
  type CrankingTorqueRow,
} from './tables/cranking-torque.ts';
export {
  highStartVoltages,
  highestUsualCrankingVoltage,
  leastCrankingVoltages,
  lowestUsualCrankingVoltage,
  usualCrankingVoltage,
  type CrankingVoltageRow,
} from './tables/cranking-voltage.ts';
export { dropLimits, type DropLimit, type DropPath } from './tables/drop-limits.ts';
export {
  batteryClampTorque,
  batteryInsertTorque,
  softStudTorque,
  starterBatteryTerminalTorque,
  starterSwitchTerminalTorque,
  type StudSize,
  type TorqueRange,
} from './tables/electrical-stud.ts';
export { electrolyteFreezing } from './tables/electrolyte-freezing.ts';
export { fuseColours, type FuseColour, type FuseColourRow } from './tables/fuse-colour.ts';
export {
  fuseDrops,
  fuseFullLoadDropMv,
  fuseResistances,
  type FuseDropRow,
  type FuseResistanceRow,
  type FuseStyle,
} from './tables/fuse-drop.ts';
export {
  fuseEarliestOpening,
  fuseLatestOpening,
  type FuseEarliestRow,
  type FuseLatestRow,
} from './tables/fuse-opening-time.ts';
export {
  gravityCorrection,
  rivalGravityCorrections,
  type GravityCorrection,
} from './tables/gravity-correction.ts';
export {
  awakeDrain,
  keyOffDrainLimits,
  lampLeftOnMa,
  type AwakeDrain,
  type KeyOffDrainRow,
  type KeyOffDrainRule,
} from './tables/key-off-drain-limit.ts';
export { lampRatings, type LampKind, type LampRating } from './tables/lamp-ratings.ts';
export {
  loadTestFigures,
  loadTestMinimum,
  secondMakerLoadTestMinimum,
  steadyLoadTestMinimum,
} from './tables/load-test-minimum.ts';
export {
  generatorSetLoadTest,
  loadTestLoads,
  loadTestProcedure,
  surfaceChargeRemovals,
  type LoadTestLoad,
  type SurfaceChargeRemoval,
} from './tables/load-test-procedure.ts';
export { meterClasses, type MeterClass, type MeterClassRow } from './tables/meter-classes.ts';
export {
  moduleSleepRange,
  moduleSleepWait,
  type ModuleSleepWait,
} from './tables/module-sleep-time.ts';
export { nutFactor, type NutFactorRow, type ThreadCondition } from './tables/nut-factor.ts';
export { oilGrades, type OilGrade, type OilViscosity } from './tables/oil-grade.ts';
export { openCircuitVoltage, type VoltageColumn } from './tables/open-circuit-voltage.ts';
export { proofStress, type PropertyClass } from './tables/property-class.ts';
export {
  generalTorque,
  makerTorque,
  starterMountingTorque,
  type PublishedTorqueRow,
} from './tables/published-torque.ts';
export { ratingConversions, type RatingFactor } from './tables/rating-conversions.ts';
export {
  ratingStandards,
  type RatingLoad,
  type RatingName,
  type RatingStage,
  type RatingTest,
} from './tables/rating-standards.ts';
export { regulatedVoltageByAmbient, type RegulatedVoltageRow } from './tables/regulated-voltage.ts';
export { relayCoils, type RelayCoilRow, type RelayKind } from './tables/relay-coil.ts';
export {
  relayContactDrop,
  relayContinuousCurrent,
  type RelayContactDrop,
} from './tables/relay-contact.ts';
export { restVoltageFigures } from './tables/rest-voltage-figures.ts';
export { restVoltageRises, type RestVoltageRise } from './tables/rest-voltage-temperature.ts';
export {
  rippleLimits,
  rippleRules,
  rippleTestSpeed,
  type RippleLimitRow,
  type RipplePlace,
  type RippleRule,
} from './tables/ripple-limit.ts';
export {
  selfDischarge,
  selfDischargePart,
  type SelfDischargePart,
} from './tables/self-discharge.ts';
export {
  smallSolenoidWindings,
  solenoidWindings,
  windingPulseS,
  type SolenoidByCurrent,
  type SolenoidByResistance,
  type SolenoidKind,
  type WindingSpan,
} from './tables/solenoid-windings.ts';
export {
  soundRestVoltages,
  type SoundVoltage,
  type SoundVoltageByKind,
} from './tables/sound-rest-voltage.ts';
export { soundCables, soundJoints, type SoundResistance } from './tables/sound-resistance.ts';
export {
  almostEmptyGravity,
  armySpecificGravity,
  carSpecificGravity,
  manualSpecificGravity,
  tractionSpecificGravity,
  type GravityRange,
} from './tables/specific-gravity.ts';
export { startRelayCurrents, type StartRelayCurrents } from './tables/start-relay.ts';
export {
  freeRunVerdicts,
  starterFreeRun,
  type FreeRunBand,
  type FreeRunRow,
  type FreeRunSpan,
  type FreeRunVerdict,
  type FreeRunVerdictRow,
} from './tables/starter-free-run.ts';
export { starterMotors, type StarterMotorColumns } from './tables/starter-motor.ts';
export {
  startingLimitTemperature,
  type StartingLimitRow,
  type StartingLimitVehicle,
} from './tables/starting-limit-temperature.ts';
export { stressArea, type BoltSize, type StressAreaRow } from './tables/stress-area.ts';
export { generatorTerminals, terminalDesignations } from './tables/terminal-designation.ts';
export { usualRatings } from './tables/usual-rating.ts';
