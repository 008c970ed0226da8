import { commonPractice, published } from '../source.ts';
import type { Table } from '../table.ts';
import type { PropertyClass } from './property-class.ts';
import type { BoltSize } from './stress-area.ts';

/** What a maker prints for one bolt, N.m. */
export type PublishedTorqueRow = {
  readonly size: BoltSize;
  readonly propertyClass: PropertyClass;
  readonly dryNm: number;
  readonly lubricatedNm: number;
};

/**
 * One maker's general torques, to compare with what is computed. An edition of it swaps the two
 * headings; dry is the larger figure.
 */
export const makerTorque: Table<readonly PublishedTorqueRow[]> = {
  title: "One maker's torques for metric bolts",
  source: published("a turf-machine maker's manual, metric bolts dry and lubricated"),
  rows: [
    { size: 'M6', propertyClass: '8.8', dryNm: 11, lubricatedNm: 9 },
    { size: 'M6', propertyClass: '10.9', dryNm: 17, lubricatedNm: 13 },
    { size: 'M8', propertyClass: '8.8', dryNm: 28, lubricatedNm: 22 },
    { size: 'M8', propertyClass: '10.9', dryNm: 40, lubricatedNm: 32 },
    { size: 'M10', propertyClass: '8.8', dryNm: 55, lubricatedNm: 43 },
    { size: 'M10', propertyClass: '10.9', dryNm: 80, lubricatedNm: 63 },
    { size: 'M12', propertyClass: '8.8', dryNm: 95, lubricatedNm: 75 },
    { size: 'M12', propertyClass: '10.9', dryNm: 140, lubricatedNm: 110 },
  ],
};

/** Torque in N.m of bolts for which a maker's manual names no other: well below a class 8.8 bolt's. */
export const generalTorque: Table<Readonly<Partial<Record<BoltSize, number>>>> = {
  title: 'Torque of bolts that have no figure of their own',
  source: published("an outboard-engine maker's manual, general torque chart"),
  rows: { M6: 8, M8: 18, M10: 36, M12: 43 },
};

/** Usual torque in N.m of the bolts, class 8.8, that hold a starter to its engine. */
export const starterMountingTorque: Table<
  Readonly<Partial<Record<BoltSize, readonly [low: number, high: number]>>>
> = {
  title: 'Torque of starter mounting bolts',
  source: commonPractice(
    'starter mounting bolts of class 8.8; the vehicle’s own figure goes first',
  ),
  rows: { M10: [35, 50], M12: [60, 85] },
};
