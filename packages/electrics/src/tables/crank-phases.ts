import type { FigureTable } from '../figure.ts';
import { commonPractice, fromMemory, type Source } from '../source.ts';

/** From `low` to `high`; without `high` it is open upwards. */
export type Reach = { readonly low: number; readonly high?: number };

/**
 * One phase of a start as a trace of voltage and current shows it: from and to which ms, the V at
 * the battery of a 12 V system and the A. `dropV` is a step down from rest, `rippleV` from peak to
 * peak, `ripplePercent` of the mean current.
 */
export type CrankPhase = {
  readonly phase: 'pull-in' | 'inrush' | 'acceleration' | 'cranking' | 'release';
  readonly ms?: Reach;
  readonly dropV?: Reach;
  readonly voltageV?: Reach;
  readonly rippleV?: Reach;
  readonly currentA?: Reach;
  readonly ripplePercent?: Reach;
  readonly source: Source;
};

const traces = commonPractice('traces of sound starts, warm');

/** The phases of a start in their order; what a trace does not bound is absent. */
export const crankPhases: readonly CrankPhase[] = [
  {
    phase: 'pull-in',
    ms: { low: 0, high: 30 },
    dropV: { low: 0.2, high: 0.6 },
    currentA: { low: 40, high: 100 },
    source: commonPractice(
      'traces of sound starts; the current rounded from TM 5-3895-382-24, about 40 A, and TM 5-2420-230-24-2 p. 13-33, 69 to 97 A at 10 V',
    ),
  },
  {
    phase: 'inrush',
    ms: { low: 30, high: 100 },
    voltageV: { low: 7, high: 10 },
    source: traces,
  },
  { phase: 'acceleration', ms: { low: 100, high: 400 }, source: traces },
  {
    phase: 'cranking',
    ms: { low: 400 },
    voltageV: { low: 9.6, high: 11.5 },
    rippleV: { low: 0.2, high: 1 },
    ripplePercent: { low: 20, high: 60 },
    source: traces,
  },
  {
    phase: 'release',
    voltageV: { low: 13.5 },
    currentA: { low: 0, high: 0 },
    source: traces,
  },
];

/** The battery voltages at which control units fall asleep in a start. */
export const controllerResets: FigureTable = {
  title: 'Voltages at which control units reset',
  rows: [
    {
      of: 'many control units',
      low: 5.5,
      high: 6.5,
      unit: 'V',
      source: fromMemory('descriptions of control units'),
    },
    {
      of: 'first dip of the start profiles, by their level',
      low: 3,
      high: 8,
      unit: 'V',
      source: fromMemory('ISO 16750-2'),
    },
  ],
};
