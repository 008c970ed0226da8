import { commonPractice, published, reported, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** How a blade fuse is built, by its size. */
export type FuseStyle = 'mini' | 'standard';

/** The drop in mV that a current in mA leaves across one fuse when cold. */
export type FuseDropRow = {
  readonly style: FuseStyle;
  readonly ratingA: number;
  readonly dropMv: number;
  readonly currentMa: number;
  readonly source: Source;
};

const serviceReport = published('trade association, service report of June 2017, mini fuse');

/** Drops of blade fuses by current. A counterfeit fuse breaks all of them, says the report. */
export const fuseDrops: Table<readonly FuseDropRow[]> = {
  title: 'Drop across a blade fuse by current',
  source: published('collected from two trade texts; each row names its own source'),
  rows: [
    {
      style: 'standard',
      ratingA: 10,
      dropMv: 1,
      currentMa: 130,
      source: published('training lesson on the voltage drop of fuses'),
    },
    { style: 'mini', ratingA: 15, dropMv: 0.1, currentMa: 22, source: serviceReport },
    { style: 'mini', ratingA: 15, dropMv: 1, currentMa: 218, source: serviceReport },
  ],
};

/** The resistance of one fuse when cold, in mOhm from `lowMilliohm` to `highMilliohm`. */
export type FuseResistanceRow = {
  readonly style: FuseStyle;
  readonly ratingA: number;
  readonly lowMilliohm: number;
  readonly highMilliohm: number;
};

/** Cold resistances of blade fuses that are given as such. */
export const fuseResistances: Table<readonly FuseResistanceRow[]> = {
  title: 'Cold resistance of blade fuses',
  source: reported('fuse data as a trade text reports them'),
  rows: [{ style: 'standard', ratingA: 15, lowMilliohm: 4.5, highMilliohm: 4.8 }],
};

/** What a fuse that carries its full rating, and is hot, drops: in mV from `low` to `high`. */
export const fuseFullLoadDropMv: Table<{ readonly low: number; readonly high: number }> = {
  title: 'Drop across a blade fuse at its rating',
  source: commonPractice('blade fuses of 3 to 30 A at their rating'),
  rows: { low: 70, high: 150 },
};
