import { commonPractice, published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * The current from `lowMa` to `highMa` that a vehicle at rest may draw once it has been left alone
 * for `afterMin`.
 */
export type KeyOffDrainRow = {
  readonly lowMa: number;
  readonly highMa: number;
  readonly afterMin: number;
  readonly source: Source;
};

/** Whose limit it is: that of the trade, or of one of two vehicle makers. */
export type KeyOffDrainRule = 'trade' | 'maker-a' | 'maker-b';

/** Limits of the current with the key off. No standard sets one. */
export const keyOffDrainLimits: Table<Readonly<Record<KeyOffDrainRule, KeyOffDrainRow>>> = {
  title: 'Current with the key off',
  source: commonPractice('no standard sets a limit; each row names its own source'),
  rows: {
    trade: {
      lowMa: 0,
      highMa: 50,
      afterMin: 60,
      source: commonPractice('50 mA once everything sleeps'),
    },
    'maker-a': {
      lowMa: 10,
      highMa: 30,
      afterMin: 5,
      source: published("a vehicle maker's service manual: 10 to 30 mA after 5 min"),
    },
    'maker-b': {
      lowMa: 25,
      highMa: 50,
      afterMin: 75,
      source: published(
        "another vehicle maker's service manual: 25 to 50 mA by equipment after at least 75 min",
      ),
    },
  },
};

/** That the current may exceed `aboveMa` until between `leastMin` and `mostMin` after switching off. */
export type AwakeDrain = {
  readonly aboveMa: number;
  readonly leastMin: number;
  readonly mostMin: number;
};

/** What is no fault while modules are still awake. */
export const awakeDrain: Table<AwakeDrain> = {
  title: 'Current just after switching off',
  source: published("a vehicle maker's service manual: over 100 mA for the first 2 to 5 min"),
  rows: { aboveMa: 100, leastMin: 2, mostMin: 5 },
};

/** What one lamp that was left on draws, mA. */
export const lampLeftOnMa: Table<number> = {
  title: 'Current of one lamp left on',
  source: published("a vehicle maker's service manual: about 1 A"),
  rows: 1000,
};
