import { ElectricsError } from '../electrics-error.ts';
import { interpolate } from '../interpolate.ts';
import type { Interval } from '../quantity/interval.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { convert } from '../quantity/quantity.ts';
import { electrolyteFreezing } from '../tables/electrolyte-freezing.ts';
import { gravityCorrection } from '../tables/gravity-correction.ts';

const cells = 6;

function requireGravity(specificGravity: number): void {
  if (!(specificGravity >= 1 && specificGravity <= 1.4)) {
    throw new ElectricsError('value-out-of-range', {
      specificGravity: String(specificGravity),
      low: 1,
      high: 1.4,
    });
  }
}

/**
 * Open-circuit voltage of a 12 V battery from the specific gravity of its electrolyte (1 to 1.4):
 * six cells of gravity + 0.845.
 *
 * Source: DOE-HDBK-1084-95 equation 6 (0.845); most trade texts print 0.84, the low end here.
 * Throws `value-out-of-range`.
 */
export function specificGravityVoltage(specificGravity: number): Interval {
  requireGravity(specificGravity);
  const best = cells * (specificGravity + 0.845);
  return { low: cells * (specificGravity + 0.84), best, high: best, unit: 'V' };
}

/**
 * A hydrometer's reading brought to 27 Cel (80 degF): 0.004 more for every 10 degF that the
 * electrolyte is warmer, 0.004 less for every 10 degF that it is colder.
 *
 * Source: TM 5-4210-230-14&P-1, hydrometer temperature correction. Throws `value-out-of-range`.
 */
export function correctedSpecificGravity(specificGravity: number, temperature: number): number {
  requireGravity(specificGravity);
  const { baseF, stepF, step } = gravityCorrection;
  return specificGravity + (step / stepF) * (temperature * 1.8 + 32 - baseF);
}

/**
 * Freezing point of the electrolyte in Cel by its specific gravity at 27 Cel (1 to 1.4; beyond
 * 1.280, where the table ends, its last figure).
 *
 * Source: Army correspondence subcourse OD1002, lesson 2. Throws `value-out-of-range`.
 */
export function freezingPoint(specificGravity: number): Quantity {
  requireGravity(specificGravity);
  return convert(
    { value: interpolate(electrolyteFreezing.rows, specificGravity), unit: '[degF]' },
    'Cel',
  );
}
