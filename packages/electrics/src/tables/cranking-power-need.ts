import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** How much more power than at 27 Cel cranking an engine takes, by Cel. */
export const crankingPowerNeed: Table<TablePoints> = {
  title: 'Cranking power needed in the cold',
  source: published(
    'trade chart of battery power against engine need: 155 % at 0 °C, 210 % at -18 °C, 350 % at -29 °C (no handbook with the figures was found)',
  ),
  rows: [
    [-29, 3.5],
    [-18, 2.1],
    [0, 1.55],
    [27, 1],
  ],
};
