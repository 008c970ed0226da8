import { fromMemory } from '../source.ts';
import type { Table } from '../table.ts';

/** A bolt's strength as its head says it. */
export type PropertyClass = '8.8' | '10.9' | '12.9';

/** Stress in MPa that a bolt must bear without lasting stretch, by property class, up to M16. */
export const proofStress: Table<Readonly<Record<PropertyClass, number>>> = {
  title: 'Proof stress of steel bolts',
  source: fromMemory('ISO 898-1, stress under proof load up to M16'),
  rows: { '8.8': 580, '10.9': 830, '12.9': 970 },
};
