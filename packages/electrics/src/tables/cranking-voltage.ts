import type { Figure, FigureTable } from '../figure.ts';
import { tablePoints, type TablePoints } from '../interpolate.ts';
import { published } from '../source.ts';
import type { Table } from '../table.ts';

/** The usual voltage while cranking, from `low` to `high` V, between two temperatures in Cel. */
export type CrankingVoltageRow = {
  readonly coldest: number;
  readonly warmest: number;
  readonly low: number;
  readonly high: number;
};

/** The usual battery voltage of a 12 V system while cranking, by range of temperature. */
export const usualCrankingVoltage: Table<readonly [CrankingVoltageRow, ...CrankingVoltageRow[]]> = {
  title: 'Usual cranking voltage',
  source: published(
    'TM 5-3895-382-24, Table 29: 8 to 10 V at 10 to 27 °C, 7 to 9 V at -7 to 10 °C, 6 to 8 V at -23 to -7 °C',
  ),
  rows: [
    { coldest: -23, warmest: -7, low: 6, high: 8 },
    { coldest: -7, warmest: 10, low: 7, high: 9 },
    { coldest: 10, warmest: 27, low: 8, high: 10 },
  ],
};

function pointsOf(end: 'low' | 'high'): TablePoints {
  const { rows } = usualCrankingVoltage;
  return tablePoints(rows, ({ coldest, warmest, [end]: volts }) => [
    (coldest + warmest) / 2,
    volts,
  ]);
}

/**
 * The lower end of the usual cranking voltage, in V by Cel. Each figure stands at the middle of the
 * range of temperature for which it is printed.
 */
export const lowestUsualCrankingVoltage: Table<TablePoints> = {
  title: 'Lower end of the usual cranking voltage',
  source: usualCrankingVoltage.source,
  rows: pointsOf('low'),
};

/** The upper end of the usual cranking voltage, in V by Cel, in the same way. */
export const highestUsualCrankingVoltage: Table<TablePoints> = {
  title: 'Upper end of the usual cranking voltage',
  source: usualCrankingVoltage.source,
  rows: pointsOf('high'),
};

const serviceManual = published("a vehicle maker's service manual");

/** What is seen with the start signal given: how the engine turns, or the current taken. */
type StartVoltageFigure = Figure & {
  readonly engine: 'still' | 'very slow' | 'any';
  readonly current: 'low' | 'any';
  readonly blames: 'control circuit' | 'feed circuit';
};

/** What a battery voltage that stays high with the start signal given points at. */
export const highStartVoltages: FigureTable<StartVoltageFigure> = {
  title: 'High battery voltage with the start signal given',
  rows: [
    {
      of: 'the engine does not turn',
      low: 12.5,
      unit: 'V',
      engine: 'still',
      current: 'any',
      blames: 'control circuit',
      source: serviceManual,
    },
    {
      of: 'the engine turns very slowly',
      low: 12.5,
      unit: 'V',
      engine: 'very slow',
      current: 'any',
      blames: 'feed circuit',
      source: serviceManual,
    },
    {
      of: 'the current is low',
      low: 9.6,
      unit: 'V',
      engine: 'any',
      current: 'low',
      blames: 'feed circuit',
      source: serviceManual,
    },
  ],
};

/** Least voltages while cranking that are printed without a range of temperature of their own. */
export const leastCrankingVoltages: FigureTable = {
  title: 'Least voltages while cranking',
  rows: [
    {
      of: 'at the battery after 15 s of cranking, 21 to 27 Cel',
      low: 9.6,
      unit: 'V',
      source: published("TM 10-3930-671-24 pp. F-299 to F-309; a vehicle maker's service manual"),
    },
    {
      of: 'at the battery, below which something is done',
      low: 9.5,
      high: 9.7,
      unit: 'V',
      source: published('TM 10-3930-671-24 pp. F-299 to F-309'),
    },
    {
      of: 'at a solenoid of the 1.4 kW class, for it to work',
      low: 8,
      unit: 'V',
      source: serviceManual,
    },
  ],
};
