import type { TablePoints } from '../interpolate.ts';
import { reported } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Greatest resistance of solid (class 1) and stranded (class 2) plain copper conductors at 20 Cel,
 * in Ohm/km by nominal area in mm2.
 */
export const class2Resistance: Table<TablePoints> = {
  title: 'Greatest resistance of solid and stranded copper conductors',
  source: reported('IEC 60228, classes 1 and 2, plain copper, as four reprints of it agree'),
  rows: [
    [10, 1.83],
    [16, 1.15],
    [25, 0.727],
    [35, 0.524],
    [50, 0.387],
    [70, 0.268],
    [95, 0.193],
  ],
};
