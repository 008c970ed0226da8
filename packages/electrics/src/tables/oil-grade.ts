import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/** SAE viscosity grades of engine oil that the model knows. */
export type OilGrade = '0W-20' | '5W-30' | '10W-40' | '15W-40' | '20W-50';

/** Kinematic viscosity in mm2/s of one grade at 40 and at 100 Cel. */
export type OilViscosity = { readonly at40C: number; readonly at100C: number };

/** Kinematic viscosity of usual engine oils. SAE J300 only bounds the grades. */
export const oilGrades: Table<Readonly<Record<OilGrade, OilViscosity>>> = {
  title: 'Viscosity of engine oils',
  source: commonPractice('usual figures of oils on sale, within the bounds of SAE J300'),
  rows: {
    '0W-20': { at40C: 45, at100C: 8.5 },
    '5W-30': { at40C: 65, at100C: 11 },
    '10W-40': { at40C: 95, at100C: 14 },
    '15W-40': { at40C: 110, at100C: 14.5 },
    '20W-50': { at40C: 160, at100C: 18 },
  },
};
