import { interpolate, type TablePoints } from './interpolate.ts';
import type { Interval } from './interval.ts';
import type { BatteryTechnology } from './limit-context.ts';
import { openCircuitVoltage } from './tables/open-circuit-voltage.ts';
import { carSpecificGravity, armySpecificGravity } from './tables/specific-gravity.ts';

// A slope of 7.6 mV a point and a hand-held meter make ten points of charge.
const leastSpread = 10;

function percentInterval(columns: readonly [number, ...number[]]): Interval {
  const [best] = columns;
  return {
    low: Math.max(0, Math.min(best - leastSpread, ...columns)),
    best,
    high: Math.min(100, Math.max(best + leastSpread, ...columns)),
    unit: '%',
  };
}

function at<Column>(
  columns: readonly [Column, ...Column[]],
  read: (column: Column) => number,
): [number, ...number[]] {
  const [first, ...rest] = columns;
  return [read(first), ...rest.map(read)];
}

/**
 * State of charge of a rested 12 V battery from its open-circuit voltage, in per cent.
 *
 * It reaches over all published columns and is never narrower than ±10 points; it says nothing
 * about what the battery can crank. No temperature is corrected for: a cold battery reads some
 * 0.05 V less. A 24 V pair is given as half of its voltage. Sources: see the table
 * `openCircuitVoltage`.
 *
 * @example
 * stateOfCharge(12.45, 'flooded'); // { low: 65, best: 75, high: 85, unit: '%' }
 */
export function stateOfCharge(openCircuitV: number, technology: BatteryTechnology): Interval {
  return percentInterval(
    at(openCircuitVoltage[technology], ({ points }) => interpolate(points, openCircuitV)),
  );
}

/**
 * State of charge in per cent from the specific gravity at 27 Cel: over a battery filled to 1.265,
 * the best figure, and one filled to 1.280. Sources: TM 5-1185; a battery maker's table.
 */
export function stateOfChargeByGravity(specificGravity: number): Interval {
  const columns: readonly [TablePoints, TablePoints] = [
    carSpecificGravity.rows,
    armySpecificGravity.rows,
  ];
  return percentInterval(at(columns, (points) => interpolate(points, specificGravity)));
}
