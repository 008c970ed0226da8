import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** What is started, as far as it decides how cold it must start. */
export type StartingLimitVehicle = 'car' | 'truck';

/** The coldest at which vehicles of one kind start, in Cel from `lowC` to `highC`. */
export type StartingLimitRow = { readonly lowC: number; readonly highC: number };

/** The coldest at which a vehicle is built to start. Trucks include buses. */
export const startingLimitTemperature: Table<
  Readonly<Record<StartingLimitVehicle, StartingLimitRow>>
> = {
  title: 'Starting limit temperature',
  source: published('university course on automotive electricity, starting system'),
  rows: {
    car: { lowC: -25, highC: -18 },
    truck: { lowC: -20, highC: -15 },
  },
};
