import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** The usual cranking current of a warm engine of one displacement: from `low` to `high`, A. */
export type CrankingCurrentRow = {
  readonly displacement: number;
  readonly low: number;
  readonly high: number;
};

/** Rows by displacement in litres, ascending. */
export type CrankingCurrentRows = readonly [CrankingCurrentRow, ...CrankingCurrentRow[]];

/** Petrol, 12 V, warm. The rows below 1.0 L and above 3.5 L carry the same slope on. */
export const petrolCrankingCurrent: Table<CrankingCurrentRows> = {
  title: 'Cranking current of warm petrol engines',
  source: commonPractice(
    "1.0 to 2.0 L 120 to 200 A, 2.5 to 3.5 L 160 to 260 A, for today's geared starters (an older training text, for direct drive: below 100, 125 and 150 A for 4, 6 and 8 cylinders, at most 185, 200 and 250 A)",
  ),
  rows: [
    { displacement: 0.6, low: 80, high: 200 },
    { displacement: 1, low: 120, high: 200 },
    { displacement: 2, low: 120, high: 200 },
    { displacement: 2.5, low: 160, high: 260 },
    { displacement: 3.5, low: 160, high: 260 },
    { displacement: 6, low: 200, high: 360 },
  ],
};

/** Diesel, 12 V, warm. 13 L stands for heavy trucks, whose 24 V starters take half of it. */
export const dieselCrankingCurrent: Table<CrankingCurrentRows> = {
  title: 'Cranking current of warm diesel engines',
  source: commonPractice(
    '1.5 to 2.2 L 200 to 350 A, light-truck V8 of 6 to 7.5 L 350 to 600 A (TM 10-3930-671-24: 180 to 220 A for a lift truck; TM 9-2320-211-20: at most 300 A for the 24 V starter of a 5-ton truck)',
  ),
  rows: [
    { displacement: 1, low: 150, high: 350 },
    { displacement: 1.5, low: 200, high: 350 },
    { displacement: 2.2, low: 200, high: 350 },
    { displacement: 6, low: 350, high: 600 },
    { displacement: 7.5, low: 350, high: 600 },
    { displacement: 13, low: 600, high: 1000 },
  ],
};
