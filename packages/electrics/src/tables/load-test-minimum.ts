import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Least voltage of a 12 V battery after 15 s at half of its cold-cranking current, by electrolyte
 * temperature in degrees Fahrenheit. A rival rule, 9.7 V at 80 degF and 0.1 V less for every
 * 10 degF down to 40 degF, is not used.
 */
export const loadTestMinimum: Table<TablePoints> = {
  title: 'Least voltage in the load test',
  source: published(
    "load-test table of the Battery Council International as two vehicle makers' service manuals print it, 9.6 V at 21 Cel to 8.5 V at -18 Cel (the handbook itself was not seen)",
  ),
  rows: [
    [0, 8.5],
    [10, 8.7],
    [20, 8.9],
    [30, 9.1],
    [40, 9.3],
    [50, 9.4],
    [60, 9.5],
    [70, 9.6],
  ],
};
