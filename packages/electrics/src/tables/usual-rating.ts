import type { TablePoints } from '../interpolate.ts';
import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** Cold-cranking current in A (SAE) of the battery usually fitted, by displacement in litres. */
export const usualRatings: Table<Readonly<Record<'petrol' | 'diesel', TablePoints>>> = {
  title: 'Battery usually fitted by engine',
  source: commonPractice('about ±20 %; a large diesel has two batteries'),
  rows: {
    petrol: [
      [1, 420],
      [2, 560],
      [3.5, 700],
      [6, 800],
    ],
    diesel: [
      [1.5, 650],
      [2.2, 760],
      [6, 1400],
      [13, 1100],
    ],
  },
};
