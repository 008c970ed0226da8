import type { Interval } from './interval.ts';
import { assumedMeter, type Meter } from './meter.ts';
import { convert, intervalFactor, type Quantity } from './quantity.ts';
import type { UnitCode } from './unit.ts';

/** A quantity as it was read, with the meter on its range; without one `assumedMeter` is meant. */
export type MeterReading = {
  readonly quantity: Quantity;
  readonly meter?: Meter | undefined;
};

/**
 * A reading in `unit` as far as its limits of error allow: ±(percent of the reading + digits ×
 * digit) of the meter and half of the step in which the value was typed.
 *
 * The true value is inside wherever the meter keeps to its specification. Throws `unit-unknown`,
 * `unit-mismatch`, `value-not-finite`, and `value-out-of-range` for an accuracy that is none.
 */
export function readingInterval(
  { quantity, meter = assumedMeter(quantity) }: MeterReading,
  unit: UnitCode,
): Interval {
  const best = convert(quantity, unit).value;
  const scale = intervalFactor(quantity.unit, unit);
  const digit = meter.digit * intervalFactor(meter.unit ?? quantity.unit, unit);
  const limit =
    (Math.abs(best) * meter.percent) / 100 +
    meter.digits * digit +
    ((quantity.resolution ?? 0) / 2) * scale;
  return { low: best - limit, best, high: best + limit, unit };
}
