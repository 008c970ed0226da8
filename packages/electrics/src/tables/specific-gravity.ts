import type { TablePoint } from '../interpolate.ts';

/**
 * Specific gravity of the electrolyte at 27 Cel against state of charge in per cent, for a battery
 * filled to 1.280.
 *
 * Source: TM 5-1185, storage battery, Tables II to IV ("almost empty", 1.160, has no per cent).
 */
export const armySpecificGravity: readonly [TablePoint, ...TablePoint[]] = [
  [1.13, 0],
  [1.19, 25],
  [1.22, 50],
  [1.25, 75],
  [1.28, 100],
];

/**
 * The same for a battery filled to 1.265.
 *
 * Source: battery maker, questions and answers, table of specific gravity.
 */
export const carSpecificGravity: readonly [TablePoint, ...TablePoint[]] = [
  [1.12, 0],
  [1.155, 25],
  [1.19, 50],
  [1.225, 75],
  [1.265, 100],
];
