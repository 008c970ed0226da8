import { fromMemory, published, reported, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** Every filament lamp, and of a lamp with two filaments every filament, that the table holds. */
export type LampKind =
  | 'h1'
  | 'h3'
  | 'h4-main'
  | 'h4-dipped'
  | 'h7'
  | 'h17-main'
  | 'h17-dipped'
  | 'p21w'
  | 'py21w'
  | 'p21-5w-bright'
  | 'p21-5w-dim'
  | 'py21-5w-bright'
  | 'py21-5w-dim'
  | 'r5w'
  | 'w5w'
  | 'r10w';

/** One filament of 12 V: its rated watts, and the greatest it may take at the test voltage. */
export type LampRating = {
  readonly ratedW: number;
  readonly greatestW: number;
  readonly testV: number;
  readonly ratedSource: Source;
  readonly greatestSource: Source;
};

const regulation = 'UN Regulation 37';
const ratedReported = reported(`${regulation}, rated watts, as secondary texts print them`);
const ratedFromMemory = fromMemory(`${regulation}, rated watts`);
const greatestFromMemory = fromMemory(`${regulation}, greatest watts at the test voltage`);
const h17Sheet = published('UN Regulation 37 Revision 7 Amendment 2, sheet of H17');
const py215Sheet = published('ECE/TRANS/WP.29/GRE/2012/34, sheet of PY21/5W');

function headLamp(ratedW: number, greatestW: number): LampRating {
  const sources = { ratedSource: ratedReported, greatestSource: greatestFromMemory };
  return { ratedW, greatestW, testV: 13.2, ...sources };
}

function h17(): LampRating {
  const sources = { ratedSource: h17Sheet, greatestSource: h17Sheet };
  return { ratedW: 35, greatestW: 37, testV: 13.2, ...sources };
}

function signalLamp(ratedW: number, greatestW: number): LampRating {
  const sources = { ratedSource: ratedFromMemory, greatestSource: greatestFromMemory };
  return { ratedW, greatestW, testV: 13.5, ...sources };
}

function py215(ratedW: number, greatestW: number): LampRating {
  const sources = { ratedSource: py215Sheet, greatestSource: py215Sheet };
  return { ratedW, greatestW, testV: 13.5, ...sources };
}

/** Filament lamps of road vehicles for 12 V. The rows say which of their figures was read where. */
export const lampRatings: Table<Readonly<Record<LampKind, LampRating>>> = {
  title: 'Rated and greatest watts of 12 V filament lamps',
  source: fromMemory(`${regulation}; H17 and PY21/5W were read in their sheets`),
  rows: {
    h1: headLamp(55, 68),
    h3: headLamp(55, 68),
    'h4-main': headLamp(60, 75),
    'h4-dipped': headLamp(55, 68),
    h7: headLamp(55, 58),
    'h17-main': h17(),
    'h17-dipped': h17(),
    p21w: signalLamp(21, 26.5),
    py21w: signalLamp(21, 26.5),
    'p21-5w-bright': signalLamp(21, 26.5),
    'p21-5w-dim': signalLamp(5, 6.6),
    'py21-5w-bright': py215(21, 26.5),
    'py21-5w-dim': py215(5, 6.6),
    r5w: signalLamp(5, 5.5),
    w5w: signalLamp(5, 5.5),
    r10w: signalLamp(10, 11),
  },
};
