import { commonPractice, computed } from '../source.ts';
import type { Table } from '../table.ts';

/** The resistance of a sound part, in mOhm, from the least to the greatest. */
export type SoundResistance = {
  readonly low: number;
  readonly best: number;
  readonly high: number;
};

/** Cables and their lugs, without the clamps, by where the battery sits. */
export const soundCables: Table<
  Readonly<Record<'positive' | 'positiveFromSeat' | 'positiveFromBoot' | 'ground', SoundResistance>>
> = {
  title: 'Resistance of sound battery cables',
  source: computed(
    '25 to 50 mm2 of IEC 60228 class 5 copper over usual lengths: 0.8 to 1.8 m, 3 to 5 m from the boot; 0.5 m and the body to ground; lugs are common practice, no source',
  ),
  rows: {
    positive: { low: 0.5, best: 0.9, high: 1.5 },
    positiveFromSeat: { low: 0.8, best: 1.4, high: 2.1 },
    positiveFromBoot: { low: 1.2, best: 1.9, high: 2.7 },
    ground: { low: 0.3, best: 0.5, high: 1 },
  },
};

/** One joint of post and clamp, and the solenoid's closed contacts. */
export const soundJoints: Table<Readonly<Record<'clamp' | 'contacts', SoundResistance>>> = {
  title: 'Resistance of sound joints',
  source: commonPractice('a clean joint shows a few hundredths of a volt while cranking'),
  rows: {
    clamp: { low: 0.02, best: 0.1, high: 0.25 },
    contacts: { low: 0.2, best: 0.4, high: 0.8 },
  },
};
