import { commonPractice, published, reported, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** Where an AC voltage is measured: at the battery's posts, or from the generator's B+ to its case. */
export type RipplePlace = 'battery-posts' | 'generator-b-plus';

/** One text's limit of ripple at one place, from `lowV` to `highV` where it leaves a range. */
export type RippleLimitRow = {
  readonly place: RipplePlace;
  readonly lowV: number;
  readonly highV: number;
  readonly source: Source;
};

/**
 * Limits of ripple in V AC. That they differ by ten is a matter of place: the battery smooths what
 * the generator gives.
 */
export const rippleLimits: Table<readonly RippleLimitRow[]> = {
  title: 'Limits of ripple by place',
  source: reported('collected from trade texts; each row names its own source'),
  rows: [
    {
      place: 'battery-posts',
      lowV: 0.05,
      highV: 0.1,
      source: published('trade article on ripple: 50 mV at the battery, 100 mV on some vehicles'),
    },
    {
      place: 'battery-posts',
      lowV: 0.09,
      highV: 0.09,
      source: reported('90 mV at the battery, as a trade text reports it'),
    },
    {
      place: 'generator-b-plus',
      lowV: 0.5,
      highV: 0.5,
      source: published('trade article of September 2007: 0.5 V AC from B+ to the case'),
    },
  ],
};

/** In V AC: a reading up to `recheckV` is fine, one above `faultV` speaks for a failed diode. */
export type RippleRule = {
  readonly recheckV: number;
  readonly faultV: number;
  readonly source: Source;
};

/** The rule for each place. At the generator both figures are one, so that nothing lies between. */
export const rippleRules: Table<Readonly<Record<RipplePlace, RippleRule>>> = {
  title: 'What ripple says by place',
  source: commonPractice('the highest limit of each place; each row names its own source'),
  rows: {
    'battery-posts': {
      recheckV: 0.1,
      faultV: 0.5,
      source: commonPractice(
        'trade article on ripple: 50 mV, on some vehicles 100 mV, at the battery; that 0.5 V there means a diode is common practice',
      ),
    },
    'generator-b-plus': {
      recheckV: 0.5,
      faultV: 0.5,
      source: published('trade article of September 2007: 0.5 V AC from B+ to the case'),
    },
  },
};

/** The engine speed in /min, from `low` to `high`, at which ripple is measured with the lamps on. */
export const rippleTestSpeed: Table<{ readonly low: number; readonly high: number }> = {
  title: 'Engine speed for measuring ripple',
  source: commonPractice('lamps on, so that the generator has work to do'),
  rows: { low: 1500, high: 3000 },
};
