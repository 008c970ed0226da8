import type { TablePoints } from '../interpolate.ts';
import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** The part of its cold-cranking current that a cared-for battery still has, by age in years. */
export const batteryHealth: Table<TablePoints> = {
  title: 'Cranking current left by age of the battery',
  source: commonPractice('four to seven years of service, past use at 60 % of the label'),
  rows: [
    [0, 1],
    [2, 0.95],
    [5, 0.8],
    [8, 0.65],
  ],
};
