import { commonPractice, published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** From `low` to `high`; an end that the text leaves out is absent. */
export type FreeRunSpan = { readonly low?: number; readonly high?: number };

/** A starter that runs free on the bench: its voltage, the current and the speed then allowed. */
export type FreeRunRow = {
  readonly starter: string;
  readonly voltageV: FreeRunSpan;
  readonly currentA: FreeRunSpan;
  readonly speedPerMin?: FreeRunSpan;
  readonly source: Source;
};

const serviceManual = published("a vehicle maker's service manual, starter free running");
const practice = commonPractice('starters of that build, free running');

/** Free-running currents and speeds of starters; a maker's own figure goes before any of them. */
export const starterFreeRun: Table<readonly FreeRunRow[]> = {
  title: 'Free-running currents and speeds of starters',
  source: commonPractice('collected from several texts; each row names its own source'),
  rows: [
    {
      starter: '12 V, machine',
      voltageV: { low: 11.5, high: 11.5 },
      currentA: { high: 130 },
      speedPerMin: { low: 7000 },
      source: published('TM 5-3895-382-24, starting motor specifications'),
    },
    {
      starter: '12 V, car, 1.4 kW',
      voltageV: { low: 11.5, high: 11.5 },
      currentA: { high: 90 },
      source: serviceManual,
    },
    {
      starter: '12 V, car, V6',
      voltageV: { low: 11, high: 11 },
      currentA: { high: 90 },
      source: serviceManual,
    },
    {
      // The least speed is printed as 360 /min, which cannot be meant, and is left out.
      starter: '24 V, engine',
      voltageV: { low: 20, high: 20 },
      currentA: { low: 75, high: 90 },
      speedPerMin: { high: 5400 },
      source: published('TM 9-4940-568-34 p. 5-157'),
    },
    {
      starter: '24 V, crane',
      voltageV: { low: 20, high: 20 },
      currentA: { low: 70, high: 110 },
      speedPerMin: { low: 5500, high: 9000 },
      source: published('TM 5-3810-303-24, Table 10D-1'),
    },
    {
      starter: '24 V, truck',
      voltageV: { low: 23, high: 23 },
      currentA: { high: 90 },
      speedPerMin: { low: 7000 },
      source: published('TM 9-2920-242-35 para 38'),
    },
    {
      starter: '24 V, machine',
      voltageV: { low: 23, high: 23 },
      currentA: { high: 85 },
      speedPerMin: { low: 7000 },
      source: published('TM 5-3895-382-24, starting motor specifications'),
    },
    {
      // The speed is that of the pinion, behind the reduction.
      starter: '12 V, car, permanent magnets and reduction gear',
      voltageV: { low: 11, high: 12 },
      currentA: { low: 50, high: 95 },
      speedPerMin: { low: 2500, high: 3500 },
      source: practice,
    },
    {
      starter: '12 V, car, wound field and direct drive',
      voltageV: { low: 10, high: 11 },
      currentA: { low: 50, high: 90 },
      speedPerMin: { low: 6000, high: 12_000 },
      source: practice,
    },
  ],
};

/** How a free-running current or speed compares with what is specified. */
export type FreeRunBand = 'none' | 'low' | 'normal' | 'high';

/** What a starter that runs free, or does not, has. */
export type FreeRunVerdict =
  | 'good'
  | 'friction-or-short'
  | 'ground-or-seized'
  | 'open-circuit'
  | 'high-internal-resistance'
  | 'shorted-field';

/** One pair of bands and its verdict; `meaning` says what it comprises. */
export type FreeRunVerdictRow = {
  readonly current: FreeRunBand;
  readonly speed: FreeRunBand;
  readonly verdict: FreeRunVerdict;
  readonly meaning: string;
};

/** What current and speed of a free-running starter mean. Pairs not listed are in no text. */
export const freeRunVerdicts: Table<readonly FreeRunVerdictRow[]> = {
  title: 'What a free-running starter says',
  source: published(
    'TM 10-3930-671-24 pp. F-299 to F-309 and TM 5-3810-303-24, Table 10D-1; other army texts agree',
  ),
  rows: [
    { current: 'normal', speed: 'normal', verdict: 'good', meaning: 'the starter is good' },
    {
      current: 'high',
      speed: 'low',
      verdict: 'friction-or-short',
      meaning:
        'friction from a bearing, a bent shaft or a dragging pole shoe, or an armature or field that is shorted or grounded',
    },
    {
      current: 'high',
      speed: 'none',
      verdict: 'ground-or-seized',
      meaning: 'a direct ground in the terminal or the field, or seized bearings',
    },
    {
      current: 'none',
      speed: 'none',
      verdict: 'open-circuit',
      meaning: 'an open field or armature, or brushes that do not touch',
    },
    {
      current: 'low',
      speed: 'low',
      verdict: 'high-internal-resistance',
      meaning: 'resistance inside, in joints, leads, brushes or a dirty commutator',
    },
    { current: 'high', speed: 'high', verdict: 'shorted-field', meaning: 'a shorted field' },
  ],
};
