import { fromMemory, reported, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * The time before which a fuse has not opened at a current of `percent` of its rating: `leastS`,
 * and `rivalS` where other texts name a longer one.
 */
export type FuseEarliestRow = {
  readonly percent: number;
  readonly leastS: number;
  readonly rivalS?: number;
};

/** Earliest opening of a blade fuse, by ascending current. 100 to 110 % it carries for 100 h. */
export const fuseEarliestOpening: Table<readonly FuseEarliestRow[]> = {
  title: 'Time before which a blade fuse has not opened',
  source: fromMemory('ISO 8820-3 type C and SAE J1284'),
  rows: [
    { percent: 110, leastS: 360_000 },
    { percent: 135, leastS: 0.75 },
    { percent: 160, leastS: 0.25 },
    { percent: 200, leastS: 0.15 },
    { percent: 350, leastS: 0.04, rivalS: 0.08 },
    { percent: 600, leastS: 0.02, rivalS: 0.03 },
  ],
};

/**
 * The time at which a fuse must have opened at a current of `percent` of its rating: `mostS`, and
 * `rivalS` where other texts name a shorter one.
 */
export type FuseLatestRow = {
  readonly percent: number;
  readonly mostS: number;
  readonly rivalS?: number;
  readonly source: Source;
};

const relayDataSheet = reported('ISO 8820-3, as a relay data sheet cites it');

/**
 * Latest opening of a blade fuse, by ascending current. At 135 % the data sheets of fuses say 600 s
 * (from memory), and the longer time is used: before it nothing is proved.
 */
export const fuseLatestOpening: Table<readonly FuseLatestRow[]> = {
  title: 'Time at which a blade fuse must have opened',
  source: relayDataSheet,
  rows: [
    { percent: 135, mostS: 1800, rivalS: 600, source: relayDataSheet },
    { percent: 160, mostS: 50, source: fromMemory('ISO 8820-3 type C') },
    { percent: 200, mostS: 5, source: relayDataSheet },
    { percent: 350, mostS: 0.5, source: relayDataSheet },
    { percent: 600, mostS: 0.1, source: relayDataSheet },
  ],
};
