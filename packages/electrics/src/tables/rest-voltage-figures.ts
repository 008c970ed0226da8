import type { FigureTable } from '../figure.ts';
import { commonPractice, published } from '../source.ts';

const militaryAgm = published('TB 43-PS-665 (April 2008), pp. 14 and 15');
const maintenanceBulletin = published('TB 9-6140-252-13 WP 0011 (2011)');

/** What is printed of single rest voltages of a 12 V battery, beside the columns by charge. */
export const restVoltageFigures: FigureTable = {
  title: 'Rest voltages that mark a state of the battery',
  rows: [
    {
      of: 'AGM, full, rested 3 h or better 8 h at 21 Cel',
      low: 12.8,
      high: 13,
      unit: 'V',
      source: published('TM 9-6115-730-24 WP 0050'),
    },
    {
      of: 'AGM, 95 to 100 % of charge, rested 8 h',
      low: 12.9,
      high: 12.9,
      unit: 'V',
      source: militaryAgm,
    },
    { of: 'AGM, empty', low: 11.4, high: 11.4, unit: 'V', source: militaryAgm },
    {
      of: 'sealed battery in use, fit again 8 h after recharging',
      low: 12.65,
      unit: 'V',
      source: maintenanceBulletin,
    },
    {
      of: 'sealed battery in use, fit again: measured of the labelled cold-cranking current',
      low: 90,
      unit: '%',
      source: maintenanceBulletin,
    },
    { of: 'battery before it is fitted', low: 12.65, unit: 'V', source: maintenanceBulletin },
    {
      of: 'battery before it is fitted: current to the charger for the last hour',
      high: 1,
      unit: 'A',
      source: maintenanceBulletin,
    },
    {
      of: 'battery before it joins others in a string',
      low: 12.85,
      unit: 'V',
      source: maintenanceBulletin,
    },
    {
      of: 'battery without damage from deep discharge',
      low: 10.5,
      unit: 'V',
      source: published('TM 9-6140-200-14 (1998)'),
    },
    {
      of: 'enhanced flooded battery, full',
      low: 12.7,
      high: 12.8,
      unit: 'V',
      source: commonPractice('as a flooded battery of a gravity of 1.280 to 1.300'),
    },
  ],
};
