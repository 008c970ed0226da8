import type { MeterAccuracy } from '../quantity/meter-accuracy.ts';
import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** How good a meter is, as far as its owner can tell without its data sheet. */
export type MeterClass = 'simple' | 'usual' | 'fine';

/** The accuracy of one class as voltmeter, as DC clamp and as ohmmeter. */
export type MeterClassRow = {
  readonly voltage: MeterAccuracy;
  readonly current: MeterAccuracy;
  readonly resistance: MeterAccuracy;
};

/** Accuracies of hand-held meters by class. `usual` is assumed where nobody said which it was. */
export const meterClasses: Table<Readonly<Record<MeterClass, MeterClassRow>>> = {
  title: 'Accuracy of hand-held meters by class',
  source: commonPractice(
    "the form ±(% of the reading + digits) is that of manufacturers' accuracy statements; no standard sets the figures",
  ),
  rows: {
    simple: {
      voltage: { percent: 1, digits: 3 },
      current: { percent: 3, digits: 5 },
      resistance: { percent: 1.5, digits: 5 },
    },
    usual: {
      voltage: { percent: 0.5, digits: 2 },
      current: { percent: 2, digits: 3 },
      resistance: { percent: 1, digits: 3 },
    },
    fine: {
      voltage: { percent: 0.1, digits: 2, counts: 6000 },
      current: { percent: 1, digits: 3, counts: 6000 },
      resistance: { percent: 0.5, digits: 2, counts: 6000 },
    },
  },
};
