import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** The part of its cranking power at 27 Cel that a full battery still has, by Cel. */
export const availableCrankingPower: Table<TablePoints> = {
  title: 'Cranking power left in the cold',
  source: published(
    'TM 5-1185, storage battery, Tables II to IV (65 % at 30 °F, 40 % at 0 °F); -29 °C from a trade chart of battery power against engine need',
  ),
  rows: [
    [-29, 0.25],
    [-18, 0.4],
    [0, 0.65],
    [27, 1],
  ],
};

/**
 * The part of its capacity that a full battery still gives at a slow rate, by Cel. A rival of the
 * table above that speaks of another quantity: at freezing 75 % of the capacity is left where 65 %
 * of the cranking power is.
 */
export const availableCapacity: Table<TablePoints> = {
  title: 'Capacity left in the cold',
  source: published('TM 10-6140-200-14, paras 1-8 to 1-10'),
  rows: [
    [-18, 0.4],
    [0, 0.75],
    [25, 1],
  ],
};

/**
 * Cranking power left by Cel, as the military text alone prints it: 65 % at 30 degF, which the
 * trade chart has at 32 degF.
 */
export const militaryCrankingPower: Table<TablePoints> = {
  title: 'Cranking power left in the cold, military',
  source: published('TM 5-1185, storage battery, Tables II to IV'),
  rows: [
    [-18, 0.4],
    [-1, 0.65],
    [27, 1],
  ],
};
