import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * The lower end of the usual battery voltage of a 12 V system while cranking, in V by Cel. Each
 * figure stands at the middle of the range of temperature for which it is printed.
 */
export const lowestUsualCrankingVoltage: Table<TablePoints> = {
  title: 'Lower end of the usual cranking voltage',
  source: published(
    'TM 5-3895-382-24, Table 29: 8 to 10 V at 10 to 27 Cel, 7 to 9 V at -7 to 10 Cel, 6 to 8 V at -23 to -7 Cel',
  ),
  rows: [
    [-15, 6],
    [1.5, 7],
    [18.5, 8],
  ],
};
