import { published } from '../source.ts';
import type { Table } from '../table.ts';
import type { BoltSize } from './stress-area.ts';

/** Torque in N.m for bolts of class 8.8 whose thread is cut in cast aluminium. */
export const aluminiumThreadTorque: Table<Readonly<Partial<Record<BoltSize, number>>>> = {
  title: 'Torque of bolts into cast aluminium',
  source: published("a harvester maker's manual, metric bolts of class 8.8 into cast aluminium"),
  rows: { M6: 9, M8: 20, M10: 40, M12: 70 },
};
