import type { FigureTable } from '../figure.ts';
import { published } from '../source.ts';

/**
 * The difference of specific gravity between the cells of a full battery that a text finds fault
 * with. They differ twofold: from 0.025 on a battery is recharged and read again, above 0.050 it
 * is replaced.
 */
export const cellGravitySpread: FigureTable = {
  title: 'Difference of specific gravity between cells',
  rows: [
    {
      of: 'warning',
      high: 0.02,
      unit: '1',
      source: published('TM 55-2210-224-12'),
    },
    {
      of: 'the battery is replaced, by the battery manual',
      high: 0.025,
      unit: '1',
      source: published('TM 9-6140-200-14 (1998)'),
    },
    {
      of: 'the battery is replaced, by machine manuals',
      high: 0.05,
      unit: '1',
      source: published('TM 5-3805-281-24-2; TM 5-3740-214-14'),
    },
  ],
};
