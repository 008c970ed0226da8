import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** The rest voltage of one sound 12 V battery in V, from the least to the greatest. */
export type SoundVoltage = { readonly low: number; readonly best: number; readonly high: number };

/** By kind of battery: wet (flooded, efb) and sealed (agm, gel). */
export type SoundVoltageByKind = Readonly<Record<'wet' | 'sealed', SoundVoltage>>;

/** Sound batteries as they are met, charged to three quarters or more, and just recharged. */
export const soundRestVoltages: Table<
  Readonly<Record<'rested' | 'recharged', SoundVoltageByKind>>
> = {
  title: 'Rest voltage of a sound battery',
  source: commonPractice(
    'from three quarters of charge, or the least that counts as recharged, to a full battery',
  ),
  rows: {
    rested: {
      wet: { low: 12.4, best: 12.6, high: 12.8 },
      sealed: { low: 12.6, best: 12.8, high: 13 },
    },
    recharged: {
      wet: { low: 12.5, best: 12.65, high: 12.8 },
      sealed: { low: 12.7, best: 12.85, high: 13 },
    },
  },
};
