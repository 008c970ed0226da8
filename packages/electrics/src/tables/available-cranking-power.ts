import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** The part of its cranking power at 27 Cel that a full battery still has, by Cel. */
export const availableCrankingPower: Table<TablePoints> = {
  title: 'Cranking power left in the cold',
  source: published(
    'TM 5-1185, storage battery, Tables II to IV (65 % at 30 degF, 40 % at 0 degF); -29 Cel from a trade chart of battery power against engine need',
  ),
  rows: [
    [-29, 0.25],
    [-18, 0.4],
    [0, 0.65],
    [27, 1],
  ],
};
