import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** How a thread and the face under its head slide. */
export type ThreadCondition = 'dry' | 'oiled' | 'anti-seize';

/** A nut factor's ends. */
export type NutFactorRow = { readonly low: number; readonly high: number };

/** Nut factor K of T = K·F·d, by the condition of the thread. */
export const nutFactor: Table<Readonly<Record<ThreadCondition, NutFactorRow>>> = {
  title: 'Nut factor of steel bolts',
  source: published('an engineering article on tightening torque, T = K·F·d'),
  rows: {
    dry: { low: 0.2, high: 0.25 },
    oiled: { low: 0.15, high: 0.2 },
    'anti-seize': { low: 0.12, high: 0.16 },
  },
};
