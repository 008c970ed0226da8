import type { FigureTable } from '../figure.ts';
import { commonPractice, published } from '../source.ts';

const armyStarters = published('TM 10-3930-671-24 pp. F-299 to F-309; TM 9-4940-568-34 p. 5-157');
const tries = commonPractice('a car starter is not built for more');

/** How long a starter may be held, and how long it cools in between. */
export const crankingTimes: FigureTable = {
  title: 'Cranking times',
  rows: [
    { of: 'longest at a stretch', high: 30, unit: 's', source: armyStarters },
    { of: 'cooling after it', low: 2, unit: 'min', source: armyStarters },
    {
      of: 'longest at a stretch, cars',
      low: 10,
      high: 15,
      unit: 's',
      source: published("vehicle makers' service manuals"),
    },
    { of: 'one try', high: 10, unit: 's', source: tries },
    { of: 'between tries', low: 60, unit: 's', source: tries },
    { of: 'after three tries', low: 2, unit: 'min', source: tries },
  ],
};
