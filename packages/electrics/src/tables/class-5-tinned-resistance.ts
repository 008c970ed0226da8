import type { TablePoints } from '../interpolate.ts';
import { reported } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Greatest resistance of flexible tinned copper conductors (class 5) at 20 Cel, in Ohm/km by
 * nominal area in mm2.
 */
export const class5TinnedResistance: Table<TablePoints> = {
  title: 'Greatest resistance of flexible tinned copper conductors',
  source: reported('IEC 60228, class 5, tinned copper, as four reprints of it agree'),
  rows: [
    [10, 1.95],
    [16, 1.24],
    [25, 0.795],
    [35, 0.565],
    [50, 0.393],
    [70, 0.277],
    [95, 0.21],
  ],
};
