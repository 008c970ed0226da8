import type { TablePoints } from '../interpolate.ts';
import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** Of starters for one kind of engine, by its displacement in litres. */
export type StarterMotorColumns = {
  /** Volts for every rad/s of the crankshaft. */
  readonly emfPerSpeed: TablePoints;
  /** Windings, brushes apart, in Ohm. */
  readonly resistanceOhm: TablePoints;
};

/**
 * Starters by the engines that they are built for. A service manual's locked-rotor figures of the
 * 1.4 kW class, 4.0 V at 780 A and at 980 A, give the 5.1 and 4.1 mOhm here; its loaded point, 7.7 V
 * at 300 A, gives 9.1 to 10.4 N.m at the pinion, and some 12 turns of it one of the crankshaft.
 */
export const starterMotors: Table<
  Readonly<Record<'petrol12V' | 'diesel12V' | 'diesel24V', StarterMotorColumns>>
> = {
  title: 'Starter motors by engine',
  source: commonPractice(
    "scaled from a service manual's locked-rotor figures of the 1.4 kW class to usual cranking currents and speeds",
  ),
  rows: {
    petrol12V: {
      emfPerSpeed: [
        [1, 0.33],
        [2, 0.37],
        [3.5, 0.42],
        [6, 0.5],
      ],
      resistanceOhm: [
        [1, 0.0056],
        [2, 0.0051],
        [3.5, 0.0046],
        [6, 0.0041],
      ],
    },
    diesel12V: {
      emfPerSpeed: [
        [1.5, 0.38],
        [2.2, 0.4],
        [6, 0.52],
        [7.5, 0.55],
      ],
      resistanceOhm: [
        [1.5, 0.0043],
        [2.2, 0.0041],
        [6, 0.0032],
        [7.5, 0.003],
      ],
    },
    diesel24V: {
      emfPerSpeed: [
        [4, 0.8],
        [7, 1.05],
        [13, 1.45],
      ],
      resistanceOhm: [
        [4, 0.012],
        [7, 0.009],
        [13, 0.007],
      ],
    },
  },
};
