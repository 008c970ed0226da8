import type { TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Freezing point of battery electrolyte, specific gravity at 27 Cel against degrees Fahrenheit. A
 * battery maker's widely copied column is 19 to 23 degF colder from 1.225 down, which errs on the
 * dangerous side, and is not used.
 */
export const electrolyteFreezing: Table<TablePoints> = {
  title: 'Freezing point of electrolyte',
  source: published(
    'Army correspondence subcourse OD1002, lesson 2 (with TM 5-1185 for a gravity of 1.280)',
  ),
  rows: [
    [1, 32],
    [1.1, 19],
    [1.15, 5],
    [1.2, -16],
    [1.25, -62],
    [1.28, -90],
  ],
};
