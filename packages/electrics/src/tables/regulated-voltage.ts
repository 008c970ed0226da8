import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** What a regulator holds at one ambient temperature in Cel: from `low` to `high` V, for 12 V. */
export type RegulatedVoltageRow = {
  readonly temperature: number;
  readonly low: number;
  readonly high: number;
};

/** Regulated charging voltage by ambient temperature, ascending. */
export const regulatedVoltage: Table<readonly [RegulatedVoltageRow, ...RegulatedVoltageRow[]]> = {
  title: 'Regulated charging voltage by temperature',
  source: published('TM 9-6115-464-12, Table 4-5, halved from 24 V'),
  rows: [
    { temperature: -18, low: 14.6, high: 15.06 },
    { temperature: -7, low: 14.43, high: 14.87 },
    { temperature: 4, low: 14.32, high: 14.68 },
    { temperature: 16, low: 14.16, high: 14.49 },
    { temperature: 27, low: 14, high: 14.3 },
    { temperature: 38, low: 13.84, high: 14.16 },
    { temperature: 49, low: 13.66, high: 14.02 },
  ],
};
