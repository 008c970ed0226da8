import type { TablePoint } from '../interpolate.ts';

/**
 * Freezing point of battery electrolyte, specific gravity at 27 Cel against degrees Fahrenheit.
 *
 * Source: Army correspondence subcourse OD1002, lesson 2 (with TM 5-1185 for 1.280). A battery
 * maker's widely copied column is 19 to 23 degF colder from 1.225 down, which errs on the dangerous
 * side, and is not used.
 */
export const electrolyteFreezing: readonly [TablePoint, ...TablePoint[]] = [
  [1, 32],
  [1.1, 19],
  [1.15, 5],
  [1.2, -16],
  [1.25, -62],
  [1.28, -90],
];
