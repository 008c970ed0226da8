import type { BatteryTechnology } from '../limits/limit-context.ts';
import type { TablePoints } from '../interpolate.ts';
import { published, type Source } from '../source.ts';

/** One publisher's column: points of open-circuit volts against per cent of charge, ascending. */
export type VoltageColumn = {
  readonly source: Source;
  readonly points: TablePoints;
};

const flooded: readonly [VoltageColumn, ...VoltageColumn[]] = [
  {
    source: published(
      'battery maker, questions and answers, table of open-circuit voltage (flooded)',
    ),
    points: [
      [11.89, 0],
      [12.06, 25],
      [12.24, 50],
      [12.45, 75],
      [12.65, 100],
    ],
  },
  {
    source: published('TM 5-3805-262-20 para 5-9, battery voltage test'),
    points: [
      [11.7, 0],
      [12, 25],
      [12.2, 50],
      [12.4, 75],
      [12.6, 100],
    ],
  },
  {
    source: published('workshop trade table of rest voltage by battery type, flooded column'),
    points: [
      [11.9, 0],
      [12, 20],
      [12.3, 50],
      [12.4, 60],
      [12.5, 70],
      [12.65, 90],
      [12.7, 100],
    ],
  },
];

const agm: readonly [VoltageColumn, ...VoltageColumn[]] = [
  {
    source: published(
      'workshop trade table of rest voltage by battery type, AGM column; its end at 0 % from common practice (11.4 V in TB 43-PS-665 to 12.0 V)',
    ),
    points: [
      [11.8, 0],
      [12, 20],
      [12.4, 50],
      [12.5, 60],
      [12.55, 70],
      [12.8, 90],
      [12.85, 100],
    ],
  },
  {
    source: published(
      'TB 43-PS-665 (April 2008), military AGM battery: 11.4 V empty, 12.9 V 95 to 100 %',
    ),
    points: [
      [11.4, 0],
      [12.9, 97.5],
    ],
  },
];

const gel: readonly [VoltageColumn, ...VoltageColumn[]] = [
  {
    source: published(
      'workshop trade table of rest voltage by battery type, gel column; its end at 0 % from common practice',
    ),
    points: [
      [11.8, 0],
      [12.1, 20],
      [12.45, 50],
      [12.5, 60],
      [12.6, 70],
      [12.85, 90],
      [12.9, 100],
    ],
  },
];

/**
 * Open-circuit voltage of a rested 12 V battery at 25 to 27 Cel against its state of charge, the
 * column to use first and its rivals after it.
 *
 * The publishers differ by up to 15 points at one voltage. No curve of its own was found for an
 * enhanced flooded battery, so it has the flooded one.
 */
export const openCircuitVoltage: Readonly<
  Record<BatteryTechnology, readonly [VoltageColumn, ...VoltageColumn[]]>
> = { flooded, efb: flooded, agm, gel };
