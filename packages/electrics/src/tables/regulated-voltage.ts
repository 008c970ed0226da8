import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** What a regulator holds at one ambient temperature in Cel: from `lowV` to `highV`, for 12 V. */
export type RegulatedVoltageRow = {
  readonly ambientC: number;
  readonly lowV: number;
  readonly highV: number;
};

/** Regulated charging voltage by ambient temperature, ascending. */
export const regulatedVoltageByAmbient: Table<
  readonly [RegulatedVoltageRow, ...RegulatedVoltageRow[]]
> = {
  title: 'Regulated charging voltage by temperature',
  source: published('TM 9-6115-464-12, Table 4-5, halved from 24 V'),
  rows: [
    { ambientC: -18, lowV: 14.6, highV: 15.06 },
    { ambientC: -7, lowV: 14.43, highV: 14.87 },
    { ambientC: 4, lowV: 14.32, highV: 14.68 },
    { ambientC: 16, lowV: 14.16, highV: 14.49 },
    { ambientC: 27, lowV: 14, highV: 14.3 },
    { ambientC: 38, lowV: 13.84, highV: 14.16 },
    { ambientC: 49, lowV: 13.66, highV: 14.02 },
  ],
};
