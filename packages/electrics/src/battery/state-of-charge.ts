import { interpolate } from '../interpolate.ts';
import type { Interval } from '../quantity/interval.ts';
import type { BatteryTechnology } from '../limits/limit-context.ts';
import { openCircuitVoltage } from '../tables/open-circuit-voltage.ts';
import { carSpecificGravity, armySpecificGravity } from '../tables/specific-gravity.ts';

// A slope of 7.6 mV a point and a hand-held meter make ten points of charge.
const leastSpread = 10;

// Texts differ even in the sign of a correction; this much covers them but for the wrong one.
const temperatureSpreadV = 0.06;

/** The interval about the first column's figure that reaches over all that the columns give. */
function percentInterval(best: number, columns: readonly number[]): Interval {
  return {
    low: Math.max(0, Math.min(best - leastSpread, ...columns)),
    best,
    high: Math.min(100, Math.max(best + leastSpread, ...columns)),
    unit: '%',
  };
}

/**
 * State of charge of a rested 12 V battery from its open-circuit voltage, in per cent.
 *
 * It reaches over all published columns and is never narrower than ±10 points; it says nothing
 * about what the battery can crank. No temperature is corrected for, since the texts differ in its
 * sign; outside 0 to 40 Cel the interval reaches over 0.06 V to either side. A 24 V pair is given
 * as half of its voltage. Sources: see the tables `openCircuitVoltage` and `restVoltageRises`.
 *
 * @example
 * stateOfCharge(12.45, 'flooded'); // { low: 65, best: 75, high: 85, unit: '%' }
 */
export function stateOfCharge(
  openCircuitV: number,
  technology: BatteryTechnology,
  temperatureC = 25,
): Interval {
  const columns = openCircuitVoltage[technology];
  const spreadV = temperatureC < 0 || temperatureC > 40 ? temperatureSpreadV : 0;
  return percentInterval(
    interpolate(columns[0].points, openCircuitV),
    columns.flatMap(({ points }) => [
      interpolate(points, openCircuitV - spreadV),
      interpolate(points, openCircuitV + spreadV),
    ]),
  );
}

/**
 * State of charge in per cent from the specific gravity at 27 Cel: over a battery filled to 1.265,
 * the best figure, and one filled to 1.280. Sources: TM 5-1185; a battery maker's table.
 */
export function stateOfChargeByGravity(specificGravity: number): Interval {
  const best = interpolate(carSpecificGravity.rows, specificGravity);
  return percentInterval(best, [interpolate(armySpecificGravity.rows, specificGravity)]);
}
