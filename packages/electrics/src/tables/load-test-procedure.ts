import type { FigureTable } from '../figure.ts';
import { published, type Source } from '../source.ts';

const manual = published("a vehicle maker's service manual");
const gateManuals = published('TM 5-3805-281-24-2; TM 5-3740-214-14');
const generatorSet = published('TM 9-6115-730-24 WP 0050');

/** How the load in A follows from a label: so many times its figure. */
export type LoadTestLoad = { readonly factor: number; readonly source: Source };

/** The load by the labelled cold-cranking current, else by the capacity in A.h over 20 h. */
export const loadTestLoads: Readonly<Record<'crankingCurrent' | 'capacity', LoadTestLoad>> = {
  crankingCurrent: {
    factor: 0.5,
    source: published(`${manual.text}: half of the cold-cranking current`),
  },
  capacity: {
    factor: 3,
    source: published(`${manual.text}: three times the capacity in A.h`),
  },
};

const { crankingCurrent, capacity } = loadTestLoads;

/**
 * The figures of the load test of a 12 V battery, in the order of its steps. TM 5-3805-262-20 loads
 * a battery below 12.4 V as well; the makers charge it first, and so is it done here.
 */
export const loadTestProcedure: FigureTable = {
  title: 'Steps of the load test',
  rows: [
    {
      of: 'rest voltage to begin with',
      low: 12.4,
      unit: 'V',
      source: published(
        "TM 5-3805-262-20 para 5-9: 12.4 V is 75 % of charge; a vehicle maker's service manual",
      ),
    },
    { of: 'specific gravity to begin with', low: 1.225, unit: '1', source: gateManuals },
    {
      of: 'load, of the labelled cold-cranking current',
      low: 100 * crankingCurrent.factor,
      high: 100 * crankingCurrent.factor,
      unit: '%',
      source: crankingCurrent.source,
    },
    {
      of: 'load in A for each A.h where no cold-cranking current is labelled',
      low: capacity.factor,
      high: capacity.factor,
      unit: '1',
      source: capacity.source,
    },
    { of: 'time under load, read at its end', low: 15, high: 15, unit: 's', source: manual },
    { of: 'recovery after the load', low: 11.2, unit: 'V', source: manual },
    {
      of: 'charge 5 min after the load',
      low: 50,
      unit: '%',
      source: published("a second vehicle maker's service manual"),
    },
    { of: 'rest voltage 2 h after charging, to test again', low: 12.5, unit: 'V', source: manual },
  ],
};

/** The load test of the AGM battery of a military generator set, at 21 Cel. */
export const generatorSetLoadTest: FigureTable = {
  title: 'Load test of the AGM battery of a generator set',
  rows: [
    { of: 'load', low: 550, high: 550, unit: 'A', source: generatorSet },
    { of: 'time under load', low: 15, high: 15, unit: 's', source: generatorSet },
    { of: 'voltage at its end', low: 9.6, unit: 'V', source: generatorSet },
  ],
};

/** A way of taking the surface charge off: the load, for how many s, and the rest after it. */
export type SurfaceChargeRemoval = {
  readonly place: 'bench' | 'vehicle';
  readonly load: '300 A' | 'half of the cold-cranking current' | 'lamps' | 'main beam' | 'none';
  readonly loadS: number;
  readonly restS: number;
  readonly source: Source;
};

const tradeGuide = published("parts supplier's battery warranty guidance");

/** The ways of taking the surface charge off that are printed; any of them will do. */
export const surfaceChargeRemovals: readonly SurfaceChargeRemoval[] = [
  { place: 'bench', load: '300 A', loadS: 15, restS: 0, source: manual },
  {
    place: 'bench',
    load: 'half of the cold-cranking current',
    loadS: 15,
    restS: 15,
    source: manual,
  },
  {
    place: 'vehicle',
    load: 'lamps',
    loadS: 15,
    restS: 180,
    source: published('TM 5-3805-262-20 para 5-9, battery voltage test'),
  },
  { place: 'vehicle', load: 'lamps', loadS: 15, restS: 300, source: manual },
  { place: 'vehicle', load: 'main beam', loadS: 60, restS: 0, source: tradeGuide },
  { place: 'vehicle', load: 'none', loadS: 0, restS: 21_600, source: tradeGuide },
];
