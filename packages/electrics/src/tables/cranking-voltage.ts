import type { TablePoint } from '../interpolate.ts';

/**
 * The lower end of the usual battery voltage of a 12 V system while cranking, in V by Cel.
 *
 * Source: TM 5-3895-382-24, Table 29: 8 to 10 V at 10 to 27 Cel, 7 to 9 V at -7 to 10 Cel, 6 to 8 V
 * at -23 to -7 Cel. Each figure stands here at the middle of its range of temperature.
 */
export const lowestUsualCrankingVoltage: readonly [TablePoint, ...TablePoint[]] = [
  [-15, 6],
  [1.5, 7],
  [18.5, 8],
];
