import type { Quantity } from './quantity.ts';
import { intervalFactor } from './quantity.ts';
import { unitDefinition, type Dimension, type UnitCode } from './unit.ts';

/**
 * A meter's specification: ±(`percent` of the reading + `digits` × `digit`).
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
 * What is assumed of a meter for one dimension. `ranges` are its ranges as [up to, digit]; beyond
 * them the digit is `digit`. `usualDigit` is that of the range most used, so that a coarser step as
 * typed is a rounding by hand.
 */
type AssumedMeter = {
  readonly unit: UnitCode;
  readonly percent: number;
  readonly digits: number;
  readonly digit: number;
  readonly display?: {
    readonly ranges: readonly (readonly [upTo: number, digit: number])[];
    readonly usualDigit: number;
  };
};

/**
 * Voltage: a hand-held meter of 2000 counts, ±(0.5 % + 2 digits): the form of manufacturers'
 * accuracy statements; a usual figure, no standard sets one. Current: a DC clamp, ±(2 % + 3
 * digits), common practice, no source. Torque: a setting wrench, ±4 %, ISO 6789-1 (from memory).
 * Temperature ±2 K, resistance ±(1 % + 3 digits), speed ±(0.5 % + 10 /min): common practice, no
 * source. Everything else is counted or remembered, so that
 * only its rounding makes it uncertain.
 */
const assumedMeters: Readonly<Partial<Record<Dimension, AssumedMeter>>> = {
  voltage: {
    unit: 'V',
    percent: 0.5,
    digits: 2,
    digit: 0.1,
    display: {
      ranges: [
        [2, 0.001],
        [20, 0.01],
      ],
      usualDigit: 0.01,
    },
  },
  current: {
    unit: 'A',
    percent: 2,
    digits: 3,
    digit: 1,
    display: {
      ranges: [
        [2, 0.001],
        [200, 0.1],
      ],
      usualDigit: 0.1,
    },
  },
  resistance: { unit: 'Ohm', percent: 1, digits: 3, digit: 0.1 },
  temperature: { unit: 'Cel', percent: 0, digits: 2, digit: 1 },
  torque: { unit: 'N.m', percent: 4, digits: 0, digit: 1 },
  frequency: { unit: '/min', percent: 0.5, digits: 1, digit: 10 },
};

// No hand-held meter reads a milliohm: such a figure is computed or comes from a battery tester.
// ±(5 % + 1 digit) is common practice, no source.
const milliohmMeter: Meter = { percent: 5, digits: 1, digit: 0.1, unit: 'mOhm' };

const exactMeter: Meter = { percent: 0, digits: 0, digit: 0 };

/** The step of the display on which a value was read, in the assumed meter's unit. */
function displayDigit(value: number, typed: number | undefined, assumed: AssumedMeter): number {
  const { digit, display } = assumed;
  if (display === undefined) {
    return digit;
  }
  const range = display.ranges.find(([upTo]) => value < upTo)?.[1] ?? digit;
  return typed === undefined ? range : Math.min(typed, Math.max(range, display.usualDigit));
}

/**
 * The meter assumed for a reading when nobody has said which was used.
 *
 * Nobody types more digits than the display shows, so the step as typed is the digit. But a small
 * voltage may be read on the 20 V range as well as on a finer one, and people round: the digit is
 * no coarser than the usual range's 0.01 V, or 0.1 V from 20 V on. "0.15" was read in steps of
 * 0.01 V, "0.150" in steps of 0.001 V, "12.4" in steps of 0.01 V and then rounded. Without a
 * resolution the digit is that of the range of a 2000-count meter.
 */
export function assumedMeter(quantity: Quantity): Meter {
  if (quantity.unit === 'mOhm') {
    return milliohmMeter;
  }
  const assumed = assumedMeters[unitDefinition(quantity.unit).dimension];
  if (assumed === undefined) {
    return exactMeter;
  }
  const { unit, percent, digits } = assumed;
  const scale = intervalFactor(quantity.unit, unit);
  const typed = quantity.resolution === undefined ? undefined : quantity.resolution * scale;
  return {
    percent,
    digits,
    digit: displayDigit(Math.abs(quantity.value * scale), typed, assumed),
    unit,
  };
}

/**
 * The standard uncertainty of a reading, in the reading's unit: u² = (a/√3)² + (r/√12)².
 *
 * a is the meter's limit, ±(percent of the reading + digits × digit), taken as a rectangle, and r
 * the step in which the value was typed: "12.4" has been rounded, or read on a coarse display, and
 * its own ±0.05 V comes on top of the meter's. Without a resolution the second term is left out.
 * Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
 *
 * Without `meter` the one of `assumedMeter` is meant. Throws `unit-unknown`, `unit-mismatch`.
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
