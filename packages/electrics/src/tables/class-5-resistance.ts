import type { TablePoints } from '../interpolate.ts';
import { reported } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Greatest resistance of flexible plain copper conductors (class 5) at 20 Cel, in Ohm/km by
 * nominal area in mm2. That 50 mm2 is lower than in class 2 (0.386 against 0.387) is no misprint.
 */
export const class5Resistance: Table<TablePoints> = {
  title: 'Greatest resistance of flexible copper conductors',
  source: reported('IEC 60228, class 5, plain copper, as four reprints of it agree'),
  rows: [
    [10, 1.91],
    [16, 1.21],
    [25, 0.78],
    [35, 0.554],
    [50, 0.386],
    [70, 0.272],
    [95, 0.206],
  ],
};
