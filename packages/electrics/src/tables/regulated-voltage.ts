import type { TablePoint } from '../interpolate.ts';

/**
 * Upper end of the regulated charging voltage, in V for 12 V by ambient Cel.
 *
 * Source: TM 9-6115-464-12, Table 4-5 (24 V, halved): 15.06 V at -18 Cel falling to 14.02 V at 49 Cel.
 */
export const highestRegulatedVoltage: readonly [TablePoint, ...TablePoint[]] = [
  [-18, 15.06],
  [-7, 14.87],
  [4, 14.68],
  [16, 14.49],
  [27, 14.3],
  [38, 14.16],
  [49, 14.02],
];
