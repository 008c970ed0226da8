import type { TablePoints } from '../interpolate.ts';
import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** How many times the resistance of a full battery one has, by per cent of charge. */
export const chargeResistance: Table<TablePoints> = {
  title: 'Resistance of a battery by its charge',
  source: commonPractice(
    'an empty battery cannot crank, one at half of its charge still does when warm',
  ),
  rows: [
    [0, 8],
    [10, 4.5],
    [25, 2.4],
    [50, 1.5],
    [75, 1.15],
    [100, 1],
  ],
};
