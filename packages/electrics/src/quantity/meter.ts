import { ElectricsError } from '../electrics-error.ts';
import type { MeterAccuracy } from './meter-accuracy.ts';
import { intervalFactor, type Quantity } from './quantity.ts';
import { meterClasses, type MeterClass } from '../tables/meter-classes.ts';
import { unitDefinition, type Dimension, type UnitCode } from './unit.ts';

/**
 * A meter's specification on one range: ±(`percent` of the reading + `digits` × `digit`).
 *
 * `digit` is the step of the display on the range in use, in `unit`; without `unit` it is in the
 * unit of the reading.
 */
export type Meter = {
  readonly percent: number;
  readonly digits: number;
  readonly digit: number;
  readonly unit?: UnitCode | undefined;
};

/**
 * The display of what measures one dimension: one step, or the `steps` of its ranges at 2000
 * counts, finest first. `usualStep` is that of the range most used, so that a coarser step as typed
 * is a rounding by hand; no step as typed makes the digit finer than `finestStep`.
 */
type Display =
  | { readonly step: number }
  | { readonly steps: readonly number[]; readonly usualStep: number; readonly finestStep: number };

type Instrument = {
  readonly unit: UnitCode;
  readonly accuracy: MeterAccuracy;
  readonly display: Display;
};

const usual = meterClasses.rows.usual;

/**
 * A voltmeter and a DC clamp of 2000 counts, and an ohmmeter, whose leads alone have more than a
 * tenth of an ohm: the usual class. Torque: a setting wrench, ±4 %, ISO 6789-1 (from memory).
 * Temperature ±2 K, speed ±(0.5 % + 10 /min): common practice, no source. Everything else is
 * counted or remembered, so that only its rounding makes it uncertain.
 */
const instruments: Readonly<Partial<Record<Dimension, Instrument>>> = {
  voltage: {
    unit: 'V',
    accuracy: usual.voltage,
    display: { steps: [0.001, 0.01, 0.1], usualStep: 0.01, finestStep: 0 },
  },
  current: {
    unit: 'A',
    accuracy: usual.current,
    display: { steps: [0.001, 0.1, 1], usualStep: 0.1, finestStep: 0 },
  },
  resistance: {
    unit: 'Ohm',
    accuracy: usual.resistance,
    display: { steps: [0.1, 1, 10, 100, 1000, 10_000], usualStep: 0.1, finestStep: 0.1 },
  },
  temperature: { unit: 'Cel', accuracy: { percent: 0, digits: 2 }, display: { step: 1 } },
  torque: { unit: 'N.m', accuracy: { percent: 4, digits: 0 }, display: { step: 1 } },
  frequency: { unit: '/min', accuracy: { percent: 0.5, digits: 1 }, display: { step: 10 } },
};

// No hand-held meter reads a milliohm: such a figure is computed or comes from a battery tester.
// ±(5 % + 1 digit) is common practice, no source.
const milliohmMeter: Meter = { percent: 5, digits: 1, digit: 0.1, unit: 'mOhm' };

const exactMeter: Meter = { percent: 0, digits: 0, digit: 0 };

const usualCounts = 2000;

/** What the display showed, in the instrument's unit, as far as it is known. */
type Shown = {
  readonly value: number;
  readonly typed: number | undefined;
  readonly counts: number | undefined;
};

/** The step of the display on which a value was read, in the instrument's unit. */
function displayStep(display: Display, { value, typed, counts = usualCounts }: Shown): number {
  if ('step' in display) {
    return display.step;
  }
  // 6000 counts have the steps of 2000 over wider ranges, 20 000 a tenth of them.
  const finer = counts === usualCounts ? 1 : 10 ** -Math.floor(Math.log10(counts / usualCounts));
  let range = 0;
  for (const step of display.steps) {
    range = step * finer;
    if (value < counts * range) {
      break;
    }
  }
  const coarsest = Math.max(range, display.usualStep * finer);
  const step = typed === undefined ? range : Math.min(typed, coarsest);
  return Math.max(step, display.finestStep);
}

/** The finest step, a power of ten, with which so many counts can show a value. */
function finestStep(value: number, counts: number): number {
  return 10 ** (Math.floor(Math.log10(value / counts)) + 1);
}

function requireAccuracy({ percent, digits, counts }: MeterAccuracy): void {
  const sound =
    percent >= 0 && digits >= 0 && Number.isFinite(percent + digits) && (counts ?? usualCounts) > 0;
  if (!sound) {
    throw new ElectricsError('value-out-of-range', {
      percent: String(percent),
      digits: String(digits),
      counts: String(counts),
      low: 0,
    });
  }
}

function withAccuracy(meter: Meter, accuracy: MeterAccuracy | undefined): Meter {
  return accuracy === undefined
    ? meter
    : { ...meter, percent: accuracy.percent, digits: accuracy.digits };
}

/**
 * The accuracy of a class of meter for a reading in `unit`; undefined where no such meter reads it.
 *
 * Source: `meterClasses`, common practice, no source.
 *
 * @example
 * classAccuracy('fine', 'mV'); // ±(0.1 % + 2 of 6000 counts)
 */
export function classAccuracy(meterClass: MeterClass, unit: UnitCode): MeterAccuracy | undefined {
  const row: Readonly<Partial<Record<Dimension, MeterAccuracy>>> = meterClasses.rows[meterClass];
  return unit === milliohmMeter.unit ? undefined : row[unitDefinition(unit).dimension];
}

/**
 * The meter of a reading: as accurate as `quantity.meter` says, else as the usual class.
 *
 * The step of its display is assumed from what was read and typed. Nobody types more digits than
 * the display shows, so the step as typed is the digit. But a small voltage may be read on the 20 V
 * range as well as on a finer one, and people round: the digit is no coarser than the usual range's
 * 0.01 V, or 0.1 V from 20 V on. "0.15" was read in steps of 0.01 V, "0.150" in steps of 0.001 V,
 * "12.4" in steps of 0.01 V and then rounded. Without a resolution the digit is that of the range.
 * Where the counts were said, the digit is one that they can show. Throws `unit-unknown`, and
 * `value-out-of-range` for an accuracy that is none.
 */
export function assumedMeter(quantity: Quantity): Meter {
  const { meter, resolution } = quantity;
  if (meter !== undefined) {
    requireAccuracy(meter);
  }
  if (quantity.unit === 'mOhm') {
    return withAccuracy(milliohmMeter, meter);
  }
  const instrument = instruments[unitDefinition(quantity.unit).dimension];
  if (instrument === undefined) {
    return withAccuracy({ ...exactMeter, digit: resolution ?? 0 }, meter);
  }
  const { unit, accuracy, display } = instrument;
  const scale = intervalFactor(quantity.unit, unit);
  const value = Math.abs(quantity.value * scale);
  const typed = resolution === undefined ? undefined : resolution * scale;
  const counts = meter?.counts;
  const step = displayStep(display, { value, typed, counts });
  const isShown = counts === undefined || value < counts * step;
  const digit = isShown ? step : finestStep(value, counts);
  const { percent, digits } = meter ?? accuracy;
  return { percent, digits, digit, unit };
}

/**
 * The standard uncertainty of a reading, in the reading's unit: u² = (a/√3)² + (r/√12)².
 *
 * a is the meter's limit, ±(percent of the reading + digits × digit), taken as a rectangle, and r
 * the step in which the value was typed: "12.4" has been rounded, or read on a coarse display, and
 * its own ±0.05 V comes on top of the meter's. Without a resolution the second term is left out.
 * Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
 *
 * Without `meter` the one of `assumedMeter` is meant. Throws `unit-unknown`, `unit-mismatch`, and
 * `value-out-of-range` for an accuracy that is none.
 *
 * @example
 * standardUncertainty({ value: 12.4, unit: 'V' }); // 0.0473
 */
export function standardUncertainty(
  quantity: Quantity,
  meter: Meter = assumedMeter(quantity),
): number {
  const scale = intervalFactor(meter.unit ?? quantity.unit, quantity.unit);
  const limit =
    (Math.abs(quantity.value) * meter.percent) / 100 + meter.digits * meter.digit * scale;
  return Math.hypot(limit / Math.sqrt(3), (quantity.resolution ?? 0) / Math.sqrt(12));
}

const coverageFactor = 2;

/**
 * The expanded uncertainty U of a reading, in the reading's unit: the true value lies within ±U
 * with a probability of some 95 % or more.
 *
 * Source: JCGM 100:2008, 6.2.1 and 6.3.3, with the coverage factor k = 2 (from memory). Throws as
 * `standardUncertainty` does.
 *
 * @example
 * expandedUncertainty({ value: 12.4, unit: 'V' }); // 0.095
 */
export function expandedUncertainty(quantity: Quantity, meter?: Meter): number {
  return coverageFactor * standardUncertainty(quantity, meter);
}
