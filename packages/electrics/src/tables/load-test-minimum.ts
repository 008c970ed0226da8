import type { FigureTable } from '../figure.ts';
import type { TablePoints } from '../interpolate.ts';
import { published, reported } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Least voltage of a 12 V battery after 15 s at half of its cold-cranking current, by electrolyte
 * temperature in degrees Fahrenheit.
 */
export const loadTestMinimum: Table<TablePoints> = {
  title: 'Least voltage in the load test',
  source: published(
    "load-test table of the Battery Council International as two vehicle makers' service manuals print it, 9.6 V at 21 °C to 8.5 V at -18 °C (the handbook itself was not seen)",
  ),
  rows: [
    [0, 8.5],
    [10, 8.7],
    [20, 8.9],
    [30, 9.1],
    [40, 9.3],
    [50, 9.4],
    [60, 9.5],
    [70, 9.6],
  ],
};

/** The same as a second maker prints it, a rival column that is not used. */
export const secondMakerLoadTestMinimum: Table<TablePoints> = {
  title: 'Least voltage in the load test, second maker',
  source: published("a second vehicle maker's service manual"),
  rows: [
    [0, 8.5],
    [15, 8.8],
    [32, 9.1],
    [50, 9.4],
    [70, 9.6],
  ],
};

/** A rival rule that is not used: 0.1 V more for every 10 degF, from 40 to 100 degF. */
export const steadyLoadTestMinimum: Table<TablePoints> = {
  title: 'Least voltage in the load test, steady rule',
  source: reported('battery questions and answers: 9.7 V at 80 °F and 0.1 V for every 10 °F'),
  rows: [
    [40, 9.3],
    [80, 9.7],
    [100, 9.9],
  ],
};

/** Single rival figures of the load test that are not used. */
export const loadTestFigures: FigureTable = {
  title: 'Rival figures of the load test',
  rows: [
    {
      of: 'below -18 Cel, second maker',
      low: 8,
      unit: 'V',
      source: published("a second vehicle maker's service manual"),
    },
    {
      of: 'at -18 Cel, second maker, one edition',
      low: 8,
      unit: 'V',
      source: published("a second vehicle maker's service manual, the edition of one year"),
    },
    {
      of: 'at 18 Cel, first maker, early edition (9.6 V only above 20 Cel)',
      low: 9.5,
      unit: 'V',
      source: published("a vehicle maker's service manual, an early edition"),
    },
    {
      of: 'at any temperature',
      low: 9.7,
      unit: 'V',
      source: published("a further vehicle maker's service manual"),
    },
  ],
};
