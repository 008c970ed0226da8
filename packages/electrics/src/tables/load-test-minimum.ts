import type { TablePoint } from '../interpolate.ts';

/**
 * Least voltage of a 12 V battery after 15 s at half of its cold-cranking current, by electrolyte
 * temperature in degrees Fahrenheit.
 *
 * Source: the load-test table of the Battery Council International, as two vehicle makers' service
 * manuals print it (the handbook itself was not seen). A rival rule, 9.7 V at 80 degF and 0.1 V
 * less for every 10 degF down to 40 degF, is not used.
 */
export const loadTestMinimum: readonly [TablePoint, ...TablePoint[]] = [
  [0, 8.5],
  [10, 8.7],
  [20, 8.9],
  [30, 9.1],
  [40, 9.3],
  [50, 9.4],
  [60, 9.5],
  [70, 9.6],
];
