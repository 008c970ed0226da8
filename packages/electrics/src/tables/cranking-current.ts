import type { FigureTable } from '../figure.ts';
import type { TablePoints } from '../interpolate.ts';
import { commonPractice, published } from '../source.ts';
import type { Table } from '../table.ts';

/** The usual cranking current of a warm engine of one displacement: from `low` to `high`, A. */
export type CrankingCurrentRow = {
  readonly displacement: number;
  readonly low: number;
  readonly high: number;
};

/** Rows by displacement in litres, ascending. */
export type CrankingCurrentRows = readonly [CrankingCurrentRow, ...CrankingCurrentRow[]];

/** Petrol, 12 V, warm. The rows below 1.0 L and above 3.5 L carry the same slope on. */
export const petrolCrankingCurrent: Table<CrankingCurrentRows> = {
  title: 'Cranking current of warm petrol engines',
  source: commonPractice(
    "1.0 to 2.0 L 120 to 200 A, 2.5 to 3.5 L 160 to 260 A, for today's geared starters (an older training text, for direct drive: below 100, 125 and 150 A for 4, 6 and 8 cylinders, at most 185, 200 and 250 A)",
  ),
  rows: [
    { displacement: 0.6, low: 80, high: 200 },
    { displacement: 1, low: 120, high: 200 },
    { displacement: 2, low: 120, high: 200 },
    { displacement: 2.5, low: 160, high: 260 },
    { displacement: 3.5, low: 160, high: 260 },
    { displacement: 6, low: 200, high: 360 },
  ],
};

/** Diesel, 12 V, warm. 13 L stands for heavy trucks, whose 24 V starters take half of it. */
export const dieselCrankingCurrent: Table<CrankingCurrentRows> = {
  title: 'Cranking current of warm diesel engines',
  source: commonPractice(
    '1.5 to 2.2 L 200 to 350 A, light-truck V8 of 6 to 7.5 L 350 to 600 A (TM 10-3930-671-24: 180 to 220 A for a lift truck; TM 9-2320-211-20: at most 300 A for the 24 V starter of a 5-ton truck)',
  ),
  rows: [
    { displacement: 1, low: 150, high: 350 },
    { displacement: 1.5, low: 200, high: 350 },
    { displacement: 2.2, low: 200, high: 350 },
    { displacement: 6, low: 350, high: 600 },
    { displacement: 7.5, low: 350, high: 600 },
    { displacement: 13, low: 600, high: 1000 },
  ],
};

/**
 * How many times its warm cranking current an engine takes in the cold, by Cel. The load of cold
 * oil differs from engine to engine, so no text prints it.
 */
export const coldCrankingFactor: Table<TablePoints> = {
  title: 'Cranking current in the cold against a warm start',
  source: commonPractice('1.4 times at 0 °C, 1.8 times at -18 °C'),
  rows: [
    [-18, 1.8],
    [0, 1.4],
    [20, 1],
  ],
};

/** The peak of the first 20 to 60 ms against the steady cranking current, `low` to `high` times. */
export const inrushMultiple: Table<Readonly<Record<'low' | 'high', number>>> = {
  title: 'Inrush peak against the cranking current',
  source: commonPractice(
    '2.5 to 5 times for 20 to 60 ms, 400 to 900 A for a car; battery and cable bound it',
  ),
  rows: { low: 2.5, high: 5 },
};

const trainingText = published('automotive training text, starter draw table (direct drive)');
const liftTruck = published('TM 10-3930-671-24 pp. F-299 to F-309');
const fiveTonTruck = published('TM 9-2320-211-20, starter circuit tests');

/**
 * Printed cranking currents, older than the geared starters of today and so not used for petrol:
 * they would call a sound engine's current high.
 */
export const printedCrankingCurrents: FigureTable = {
  title: 'Printed cranking currents',
  rows: [
    { of: 'petrol, 4 cylinders, normal, warm', high: 100, unit: 'A', source: trainingText },
    {
      of: 'petrol, 4 cylinders, greatest',
      low: 150,
      high: 185,
      unit: 'A',
      source: trainingText,
    },
    { of: 'petrol, 6 cylinders, normal, warm', high: 125, unit: 'A', source: trainingText },
    {
      of: 'petrol, 6 cylinders, greatest',
      low: 160,
      high: 200,
      unit: 'A',
      source: trainingText,
    },
    { of: 'petrol, 8 cylinders, normal, warm', high: 150, unit: 'A', source: trainingText },
    {
      of: 'petrol, 8 cylinders, greatest',
      low: 185,
      high: 250,
      unit: 'A',
      source: trainingText,
    },
    { of: 'diesel lift truck, 12 V', low: 180, high: 220, unit: 'A', source: liftTruck },
    { of: '5-ton truck, 24 V, greatest', high: 300, unit: 'A', source: fiveTonTruck },
    { of: '5-ton truck, 24 V, voltage meanwhile', low: 18, unit: 'V', source: fiveTonTruck },
  ],
};
