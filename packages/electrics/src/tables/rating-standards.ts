import type { RatingStandard } from '../limits/limit-context.ts';
import { fromMemory, published, reported, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** Every figure on a label that says what a battery holds or gives. */
export type RatingName = RatingStandard | 'hca' | 'reserve-capacity' | 'capacity-20h';

/**
 * What a battery is loaded with: a part of the rated current (of the rated Ah an hour for
 * capacity), or currents that the standard sets.
 */
export type RatingLoad =
  | { readonly type: 'part'; readonly part: number }
  | { readonly type: 'fixed'; readonly currentsA: readonly number[] };

/**
 * One stretch of a test: loaded for `seconds`, the battery must still have `limitV` volts. Without
 * `seconds` the time is the rating; without `limitV` or either, they go by type of battery.
 * `fromStart` tells that the seconds count from the beginning of the test.
 */
export type RatingStage = {
  readonly load: RatingLoad;
  readonly seconds?: number;
  readonly limitV?: number;
  readonly restSecondsBefore?: number;
  readonly fromStart?: boolean;
  readonly source?: Source;
};

/**
 * How a rating of a 12 V battery is tested, from `lowC` to `highC` Cel. `classes` are the least
 * seconds down to 6.0 V at 0.6 of the current, the first stretch counted in. A stage that has no
 * source of its own has that of the row.
 */
export type RatingTest = {
  readonly name: RatingName;
  readonly edition?: string;
  readonly lowC: number;
  readonly highC: number;
  readonly stages: readonly RatingStage[];
  readonly classes?: Readonly<Record<'C1' | 'C2', number>>;
  readonly source: Source;
};

const whole: RatingLoad = { type: 'part', part: 1 };
const jisLoads: RatingLoad = { type: 'fixed', currentsA: [150, 300, 500] };

/** The tests behind the ratings of 12 V starter batteries, side by side. */
export const ratingStandards: Table<readonly RatingTest[]> = {
  title: 'Tests behind battery ratings',
  source: reported(
    'SAE J537, EN 50342-1, DIN 43539-2, IEC 60095-1 and BCI, as battery makers and training texts give them; no original was seen',
  ),
  rows: [
    {
      name: 'sae',
      lowC: -18,
      highC: -18,
      stages: [{ load: whole, seconds: 30, limitV: 7.2 }],
      source: published("SAE J537 cold cranking, as a vehicle maker's service manual prints it"),
    },
    {
      name: 'mca',
      lowC: 0,
      highC: 0,
      stages: [{ load: whole, seconds: 30, limitV: 7.2 }],
      source: reported('BCI cranking amperes, the same as marine cranking amperes'),
    },
    {
      name: 'hca',
      lowC: 26.7,
      highC: 26.7,
      stages: [{ load: whole, seconds: 30, limitV: 7.2 }],
      source: fromMemory('hot cranking amperes at 80 °F'),
    },
    {
      name: 'en',
      lowC: -18,
      highC: -18,
      stages: [
        { load: whole, seconds: 10, limitV: 7.5 },
        {
          load: { type: 'part', part: 0.6 },
          seconds: 73,
          limitV: 6,
          restSecondsBefore: 10,
          source: fromMemory('EN 50342-1, second phase'),
        },
      ],
      classes: { C1: 90, C2: 150 },
      source: reported('EN 50342-1, as a battery maker gives it'),
    },
    {
      name: 'din',
      edition: 'withdrawn',
      lowC: -18,
      highC: -18,
      stages: [
        { load: whole, seconds: 30, limitV: 9 },
        { load: whole, seconds: 150, limitV: 6, fromStart: true },
      ],
      source: reported('DIN 43539-2'),
    },
    {
      name: 'iec',
      edition: 'older',
      lowC: -18,
      highC: -18,
      stages: [{ load: whole, seconds: 60, limitV: 8.4 }],
      source: reported('IEC 60095-1, older edition, as a battery maker gives it'),
    },
    {
      name: 'iec',
      edition: '2018',
      lowC: -18,
      highC: -18,
      stages: [{ load: whole, seconds: 30, limitV: 7.2 }],
      source: reported('IEC 60095-1:2018, by one page that claims it: doubtful'),
    },
    {
      name: 'jis',
      lowC: -15,
      highC: -15,
      stages: [
        { load: jisLoads, seconds: 30 },
        { load: jisLoads, limitV: 6, fromStart: true },
      ],
      source: fromMemory('JIS D 5301: current, volts and time by size of battery'),
    },
    {
      name: 'reserve-capacity',
      lowC: 27,
      highC: 27,
      stages: [{ load: { type: 'fixed', currentsA: [25] }, limitV: 10.5 }],
      source: published(
        "SAE J537 and BCI reserve capacity in minutes, as a vehicle maker's service manual prints it",
      ),
    },
    {
      name: 'capacity-20h',
      lowC: 25,
      highC: 27,
      stages: [{ load: { type: 'part', part: 1 / 20 }, seconds: 72_000, limitV: 10.5 }],
      source: reported('capacity in Ah over 20 h, as a training text gives it'),
    },
  ],
};
