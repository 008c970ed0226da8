import { fromMemory } from '../source.ts';
import type { Table } from '../table.ts';

/** A metric thread of coarse pitch. */
export type BoltSize = 'M5' | 'M6' | 'M8' | 'M10' | 'M12' | 'M14' | 'M16';

/** A thread's nominal diameter in mm and the area in mm2 that carries its tension. */
export type StressAreaRow = { readonly diameterMm: number; readonly areaMm2: number };

/** Tensile stress area of metric coarse threads. */
export const stressArea: Table<Readonly<Record<BoltSize, StressAreaRow>>> = {
  title: 'Stress area of metric coarse threads',
  source: fromMemory('ISO 898-1, nominal stress area of coarse threads'),
  rows: {
    M5: { diameterMm: 5, areaMm2: 14.2 },
    M6: { diameterMm: 6, areaMm2: 20.1 },
    M8: { diameterMm: 8, areaMm2: 36.6 },
    M10: { diameterMm: 10, areaMm2: 58 },
    M12: { diameterMm: 12, areaMm2: 84.3 },
    M14: { diameterMm: 14, areaMm2: 115 },
    M16: { diameterMm: 16, areaMm2: 157 },
  },
};
