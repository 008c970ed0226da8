import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Specific gravity of the electrolyte at 27 Cel against state of charge in per cent, for a battery
 * filled to 1.280. "Almost empty", 1.160, has no per cent and is left out.
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
