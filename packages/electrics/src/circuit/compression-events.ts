import { ElectricsError } from '../electrics-error.ts';
import type { Quantity } from '../quantity/quantity.ts';

// A four-stroke engine fires each cylinder once in two turns.
const turnsPerCycle = 2;
const secondsPerMinute = 60;

function requireCylinders(cylinders: number): void {
  if (!(Number.isInteger(cylinders) && cylinders >= 1 && cylinders <= 16)) {
    throw new ElectricsError('value-out-of-range', {
      cylinders: String(cylinders),
      low: 1,
      high: 16,
    });
  }
}

function requireNotNegative(name: string, value: number): void {
  if (!(value >= 0 && Number.isFinite(value))) {
    throw new ElectricsError('value-out-of-range', { [name]: String(value), low: 0 });
  }
}

/**
 * How many compressions a second the starter works against, from the number of cylinders (whole, 1
 * to 16) and the speed in turns a minute: N × speed / 120.
 *
 * For four-stroke engines that fire evenly; V-twins and some V6 do not. Source: computed from the
 * four strokes. Throws `value-out-of-range`.
 *
 * @example
 * compressionRate(4, 200); // 6.67 Hz
 */
export function compressionRate(cylinders: number, speedPerMinute: number): Quantity {
  requireCylinders(cylinders);
  requireNotNegative('speedPerMinute', speedPerMinute);
  return { value: (cylinders * speedPerMinute) / (turnsPerCycle * secondsPerMinute), unit: 'Hz' };
}

/**
 * The cranking speed in turns a minute, from the number of cylinders (whole, 1 to 16) and the
 * compressions a second that a trace of the current shows: 120 × rate / N.
 *
 * For four-stroke engines that fire evenly. Source: computed from the four strokes. Throws
 * `value-out-of-range`.
 *
 * @example
 * speedByCompressions(4, 6); // 180 /min
 */
export function speedByCompressions(cylinders: number, rateHz: number): Quantity {
  requireCylinders(cylinders);
  requireNotNegative('rateHz', rateHz);
  return { value: (turnsPerCycle * secondsPerMinute * rateHz) / cylinders, unit: '/min' };
}

/**
 * How one weak cylinder shows while cranking: every so many compressions, and so many times a
 * second, the current has one low peak and the voltage one dip fewer.
 */
export type WeakCylinderSign = { readonly everyEvents: number; readonly rate: Quantity };

/**
 * The sign of one cylinder with weak compression: one low current peak in every N compressions,
 * that is once in two turns of the engine.
 *
 * For four-stroke engines that fire evenly; `cylinders` 2 to 16, since one cylinder has no other to
 * compare it with. Source: computed from the four strokes. Throws `value-out-of-range`.
 *
 * @example
 * weakCylinderSign(4, 180); // every 4 events, 1.5 Hz
 */
export function weakCylinderSign(cylinders: number, speedPerMinute: number): WeakCylinderSign {
  const { value, unit } = compressionRate(cylinders, speedPerMinute);
  if (cylinders === 1) {
    throw new ElectricsError('value-out-of-range', { cylinders: 1, low: 2, high: 16 });
  }
  return { everyEvents: cylinders, rate: { value: value / cylinders, unit } };
}
