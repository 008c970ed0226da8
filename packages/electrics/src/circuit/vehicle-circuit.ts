import { convertRating } from '../battery/rating.ts';
import { interpolate } from '../interpolate.ts';
import { batteriesInSeries, type LimitContext } from '../limits/limit-context.ts';
import { possibleDisplacements, type Fuel } from './possible-displacement.ts';
import { batteryHealth } from '../tables/battery-health.ts';
import { crankingReference } from '../tables/cranking-torque.ts';
import { soundCables, soundJoints, type SoundResistance } from '../tables/sound-resistance.ts';
import { starterMotors } from '../tables/starter-motor.ts';
import { usualRatings } from '../tables/usual-rating.ts';
import { batteryModel } from './battery-model.ts';
import type { CrankingCircuit, Solenoid } from './cranking-circuit.ts';
import { engineLoad } from './engine-load.ts';
import { solveCircuit } from './solve-circuit.ts';
import { soundRestVoltage } from './sound-rest-voltage.ts';

/** From the least to the greatest value that a figure of a vehicle may have. */
export type Span = { readonly low: number; readonly best: number; readonly high: number };

/**
 * What the circuit of a sound vehicle goes by: open-circuit voltage of one 12 V battery (V), its
 * rating (A, SAE) and the part of it left, temperature (Cel), displacement (L), how many times the
 * usual torque, and the resistances (mOhm) of one clamp, both cables and the contacts.
 */
export const vehicleFigures = [
  'restV',
  'ratingA',
  'health',
  'temperatureC',
  'displacementL',
  'drag',
  'clampMohm',
  'positiveMohm',
  'groundMohm',
  'contactsMohm',
] as const;

/** The figures of a vehicle, each known or with its spread. */
export type VehicleSpans = Readonly<Record<(typeof vehicleFigures)[number], Span>>;

/** The figures of a vehicle, one value each. */
export type VehicleValues = Readonly<Record<(typeof vehicleFigures)[number], number>>;

/** What does not vary within one vehicle. */
export type VehicleKind = {
  readonly fuel: Fuel;
  readonly technology: NonNullable<LimitContext['technology']>;
  readonly series: number;
};

const exactly = (value: number): Span => ({ low: value, best: value, high: value });
const around = (best: number, part: number): Span => ({
  low: best * (1 - part),
  best,
  high: best * (1 + part),
});

// Data sheets and army manuals, 12 V: pull-in 0.13 to 0.18 Ohm, hold-in 0.5 to 1.0 Ohm; 24 V: 0.16
// to 0.20 and 1.45 to 1.65 Ohm. When they operate and let go is common practice, no source.
const solenoids: Readonly<Record<12 | 24, Solenoid>> = {
  12: { pullInOhm: 0.16, holdInOhm: 0.72, operateV: 7, releaseV: 3.5 },
  24: { pullInOhm: 0.18, holdInOhm: 1.55, operateV: 14, releaseV: 7 },
};

// Brushes of copper and carbon, a gear and the ring gear: common practice, no source.
const brushV = 0.6;
const frictionA = 25;
const efficiency = 0.9;
const controlOhm = 0.01;

// A figure without its standard, or by JIS, says less: common practice, no source.
const ratingSpread = { known: 0.1, unknown: 0.2 };

/** What does not vary within the vehicle of a context, taken to burn `fuel`. */
export function vehicleKind(context: LimitContext, fuel: Fuel): VehicleKind {
  return {
    fuel,
    technology: context.technology ?? 'flooded',
    series: batteriesInSeries(context),
  };
}

function restSpan(context: LimitContext): Span {
  const { restVoltage, technology } = context;
  return restVoltage === undefined
    ? soundRestVoltage(technology)
    : exactly(restVoltage / batteriesInSeries(context));
}

/**
 * The battery's rating in A as SAE J537 would have it, with its spread, by what its label says.
 * Nothing where no rating is known.
 */
export function labelRating({ rating, ratingStandard }: LimitContext): Span | undefined {
  if (rating === undefined) return undefined;
  if (ratingStandard === 'sae' || ratingStandard === 'en')
    return around(rating, ratingSpread.known);
  const converted =
    ratingStandard === undefined ? undefined : convertRating(rating, ratingStandard, 'sae');
  return converted?.type === 'converted' ? converted.current : around(rating, ratingSpread.unknown);
}

/** A battery within its service life: what a sound vehicle has. */
function healthSpan(age: number | undefined): Span {
  if (age === undefined) return { low: 0.75, best: 0.9, high: 1 };
  const health = interpolate(batteryHealth.rows, age);
  return { low: health - 0.1, best: health, high: Math.min(1, health + 0.1) };
}

function cableSpan(location: LimitContext['batteryLocation']): SoundResistance {
  const { positive, positiveFromBoot, positiveFromSeat } = soundCables.rows;
  if (location === 'boot') return positiveFromBoot;
  return location === 'seat' ? positiveFromSeat : positive;
}

/** The figures of a sound vehicle, as far as its context tells them, but for its engine's drag. */
function spansButDrag(context: LimitContext, fuel: Fuel): Omit<VehicleSpans, 'drag'> {
  const { temperature } = context;
  const [least, greatest] = possibleDisplacements(context, fuel);
  const displacement = { low: least, best: (least + greatest) / 2, high: greatest };
  return {
    restV: restSpan(context),
    ratingA:
      labelRating(context) ??
      around(interpolate(usualRatings.rows[fuel], displacement.best), ratingSpread.unknown),
    health: healthSpan(context.batteryAge),
    temperatureC: temperature === undefined ? { low: 5, best: 15, high: 25 } : exactly(temperature),
    displacementL: displacement,
    clampMohm: soundJoints.rows.clamp,
    positiveMohm: cableSpan(context.batteryLocation),
    groundMohm: soundCables.rows.ground,
    contactsMohm: soundJoints.rows.contacts,
  };
}

/**
 * How many times the usual torque the engine needs: 1 ± 20 %, or as the owner's own figure for a
 * warm start tells, ± 10 %. Common practice, no source.
 */
function dragSpan(context: LimitContext, kind: VehicleKind): Span {
  const { expectedCurrent } = context;
  if (expectedCurrent === undefined) return around(1, 0.2);
  // The owner's figure is that of a sound battery, whatever the one in the car has left.
  const sound = { ...context, restVoltage: undefined };
  const spans = { ...spansButDrag(sound, kind.fuel), drag: exactly(1) };
  const usual = { ...bestValues(spans), temperatureC: crankingReference.temperature };
  const { currentA, holdingA } = solveCircuit(vehicleCircuit(usual, kind));
  const own = holdingA + frictionA;
  return around(Math.max(0.1, (expectedCurrent - own) / (currentA - own)), 0.1);
}

/**
 * The figures of a sound vehicle, as far as its context tells them. The owner's own cranking current
 * says what the engine needs, whatever its size, so that the displacement then has no spread.
 */
export function vehicleSpans(context: LimitContext, fuel: Fuel): VehicleSpans {
  const spans = spansButDrag(context, fuel);
  const { displacementL } = spans;
  return {
    ...spans,
    displacementL:
      context.expectedCurrent === undefined ? displacementL : exactly(displacementL.best),
    drag: dragSpan(context, vehicleKind(context, fuel)),
  };
}

/** The best figure of each. */
export function bestValues(spans: VehicleSpans): VehicleValues {
  return Object.fromEntries(
    vehicleFigures.map((figure) => [figure, spans[figure].best]),
  ) as VehicleValues;
}

/** The usual starter of an engine of so many litres. */
export function usualStarter(
  displacementL: number,
  { fuel, series }: VehicleKind,
): Pick<CrankingCircuit, 'solenoid' | 'motor'> {
  const columns =
    starterMotors.rows[series === 2 ? 'diesel24V' : fuel === 'petrol' ? 'petrol12V' : 'diesel12V'];
  return {
    solenoid: solenoids[series === 2 ? 24 : 12],
    motor: {
      emfPerSpeed: interpolate(columns.emfPerSpeed, displacementL),
      resistanceOhm: interpolate(columns.resistanceOhm, displacementL),
      brushV,
      frictionA,
      efficiency,
    },
  };
}

/** The starting circuit of a vehicle with these figures. */
export function vehicleCircuit(values: VehicleValues, kind: VehicleKind): CrankingCircuit {
  const { fuel, technology, series } = kind;
  const { displacementL, temperatureC, clampMohm } = values;
  const { solenoid, motor } = usualStarter(displacementL, kind);
  return {
    battery: batteryModel({ ...values, technology, series }),
    positiveClampOhm: clampMohm / 1000,
    negativeClampOhm: clampMohm / 1000,
    positiveCableOhm: values.positiveMohm / 1000,
    groundCableOhm: values.groundMohm / 1000,
    contactsOhm: values.contactsMohm / 1000,
    controlOhm,
    solenoid,
    motor,
    engine: engineLoad({ fuel, displacementL, oil: '5W-30', temperatureC, drag: values.drag }),
  };
}

/** The starting circuit of the sound vehicle of a context, by the best figure of each part. */
export function soundCircuit(context: LimitContext, fuel: Fuel): CrankingCircuit {
  return vehicleCircuit(bestValues(vehicleSpans(context, fuel)), vehicleKind(context, fuel));
}
