import type { TablePoints } from '../interpolate.ts';
import type { BatteryTechnology } from '../limits/limit-context.ts';
import { commonPractice, published } from '../source.ts';
import type { Table } from '../table.ts';

/** Fall of specific gravity a day of a charged wet battery that stands unused, by Cel. */
export const selfDischarge: Table<TablePoints> = {
  title: 'Self-discharge by temperature',
  source: published('TM 9-6140-200-14: wet charged, in the first ten days'),
  rows: [
    [10, 0.0003],
    [27, 0.001],
    [38, 0.0025],
  ],
};

/** The part of that rate at which batteries of one technology discharge, from `low` to `high`. */
export type SelfDischargePart = { readonly low: number; readonly high: number };

/** How much slower than the old wet battery of the published rate others discharge. */
export const selfDischargePart: Table<Readonly<Record<BatteryTechnology, SelfDischargePart>>> = {
  title: 'Self-discharge by technology',
  source: commonPractice(
    'at 20 °C a wet battery loses 3 to 15 % a month by its plates, an enhanced one 3 to 8 %, a sealed one 1 to 5 %; the published rate makes some 14 %',
  ),
  rows: {
    flooded: { low: 0.2, high: 1 },
    efb: { low: 0.2, high: 0.5 },
    agm: { low: 0.1, high: 0.3 },
    gel: { low: 0.1, high: 0.3 },
  },
};
