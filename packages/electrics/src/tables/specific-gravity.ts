import type { FigureTable } from '../figure.ts';
import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Specific gravity of the electrolyte at 27 Cel against state of charge in per cent, for a battery
 * filled to 1.280. "Almost empty" has no per cent and is in `almostEmptyGravity`.
 */
export const armySpecificGravity: Table<TablePoints> = {
  title: 'Specific gravity by charge, filled to 1.280',
  source: published('TM 5-1185, storage battery, Tables II to IV'),
  rows: [
    [1.13, 0],
    [1.19, 25],
    [1.22, 50],
    [1.25, 75],
    [1.28, 100],
  ],
};

/** The same for a battery filled to 1.265. */
export const carSpecificGravity: Table<TablePoints> = {
  title: 'Specific gravity by charge, filled to 1.265',
  source: published('battery maker, questions and answers, table of specific gravity'),
  rows: [
    [1.12, 0],
    [1.155, 25],
    [1.19, 50],
    [1.225, 75],
    [1.265, 100],
  ],
};

/** The same for a traction battery filled to 1.280, a rival column that is not used. */
export const tractionSpecificGravity: Table<TablePoints> = {
  title: 'Specific gravity by charge, traction battery',
  source: published('TM 10-6140-200-14, paras 1-8 to 1-10, Table 1-1'),
  rows: [
    [1.16, 25],
    [1.22, 50],
    [1.25, 75],
    [1.28, 100],
  ],
};

/** The range of specific gravity that one state of charge in per cent has. */
export type GravityRange = {
  readonly percent: number;
  readonly low: number;
  readonly high: number;
};

/** Ranges by charge, a rival column that is not used: its ends are the fillings of the others. */
export const manualSpecificGravity: Table<readonly GravityRange[]> = {
  title: 'Ranges of specific gravity by charge',
  source: published("a vehicle maker's service manual"),
  rows: [
    { percent: 0, low: 1.11, high: 1.13 },
    { percent: 25, low: 1.17, high: 1.19 },
    { percent: 50, low: 1.2, high: 1.22 },
    { percent: 75, low: 1.23, high: 1.25 },
    { percent: 100, low: 1.26, high: 1.28 },
  ],
};

/** What the texts call almost empty, without a per cent. */
export const almostEmptyGravity: FigureTable = {
  title: 'Specific gravity of an almost empty battery',
  rows: [
    {
      of: 'filled to 1.280',
      low: 1.16,
      high: 1.16,
      unit: '1',
      source: armySpecificGravity.source,
    },
    {
      of: 'filled to 1.260 to 1.280',
      low: 1.14,
      high: 1.16,
      unit: '1',
      source: manualSpecificGravity.source,
    },
  ],
};
