import { commonPractice, published } from '../source.ts';
import type { Table } from '../table.ts';

/** How long, in min from `leastMin` to `mostMin`, one start takes to be charged back at a speed. */
export type StartRecovery = {
  readonly lowSpeedPerMin: number;
  readonly highSpeedPerMin: number;
  readonly leastMin: number;
  readonly mostMin: number;
};

/** What running gives back: one start, not a discharged battery, which a drive does not recharge. */
export const startRecovery: Table<StartRecovery> = {
  title: 'Running time that replaces one start',
  source: published('TM 9-6140-200-14 paras 4-5 to 4-8: at about 1000 to 1200 rpm'),
  rows: { lowSpeedPerMin: 1000, highSpeedPerMin: 1200, leastMin: 20, mostMin: 30 },
};

/** A charging voltage from `lowV` to `highV` that is measured again after `afterMin` at a speed. */
export type BoostRecheck = {
  readonly lowV: number;
  readonly highV: number;
  readonly speedPerMin: number;
  readonly afterMin: number;
};

/** The low charging voltage of a 12 V system that is no failure just after a boost. */
export const boostRecheck: Table<BoostRecheck> = {
  title: 'Charging voltage to measure again after a boost',
  source: commonPractice('a flat battery takes all that the generator gives'),
  rows: { lowV: 13, highV: 13.5, speedPerMin: 1500, afterMin: 20 },
};
