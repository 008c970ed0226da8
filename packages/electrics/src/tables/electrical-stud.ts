import { commonPractice, published } from '../source.ts';
import type { Table } from '../table.ts';

/** A stud of a terminal. */
export type StudSize = 'M6' | 'M8' | 'M10';

/** A range of torque, N.m. */
export type TorqueRange = readonly [lowNm: number, highNm: number];

/** Nuts on studs of copper or brass. */
export const softStudTorque: Table<Readonly<Record<StudSize, TorqueRange>>> = {
  title: 'Torque of nuts on copper or brass studs',
  source: commonPractice('nuts on copper or brass studs'),
  rows: { M6: [3, 5], M8: [8, 12], M10: [15, 20] },
};

/** Studs and bolts in the lead or brass inserts of a battery. */
export const batteryInsertTorque: Table<Readonly<Record<StudSize, TorqueRange>>> = {
  title: 'Torque of battery inserts',
  source: published("a battery maker's installation manual for agm batteries, Table 2"),
  rows: { M6: [4.5, 7.9], M8: [6.6, 10.7], M10: [10.4, 16] },
};

/** The nut of a 12 V machine starter's battery terminal, on a large steel stud: 18 to 24 lbf.ft. */
export const starterBatteryTerminalTorque: Table<TorqueRange> = {
  title: 'Torque of the starter battery terminal, steel stud',
  source: published('TM 5-3895-382-24, starting motor: 24 to 32 N.m'),
  rows: [24, 32],
};

/** The nut of a starter's switch terminal: 9 to 12 lbf.in. */
export const starterSwitchTerminalTorque: Table<TorqueRange> = {
  title: 'Torque of the starter switch terminal',
  source: published('TM 5-3895-382-24, starting motor: 1.0 to 1.3 N.m'),
  rows: [1, 1.3],
};

/** The bolt, M6 or M8, of a clamp on a tapered battery post. */
export const batteryClampTorque: Table<TorqueRange> = {
  title: 'Torque of battery clamps',
  source: commonPractice('M6 or M8 bolts of clamps on tapered battery posts'),
  rows: [5, 8],
};
