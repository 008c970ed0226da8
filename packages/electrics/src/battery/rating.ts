import { ElectricsError } from '../electrics-error.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import type { RatingStandard } from '../limits/limit-context.ts';
import { computed } from '../source.ts';
import { loadTestLoads } from '../tables/load-test-procedure.ts';
import { ratingConversions } from '../tables/rating-conversions.ts';
import type { RatingName } from '../tables/rating-standards.ts';

/**
 * Why one rating cannot be turned into another.
 *
 * - `not-a-current`: reserve capacity is minutes and capacity Ah; neither says what cranks.
 * - `tested-by-size`: JIS loads each size of battery with a current of its own, at -15 Cel.
 * - `no-factor-known`: nobody gives a factor for hot cranking amperes.
 * - `factors-contradict`: the published factors for the pair contradict each other.
 */
export type RatingRefusal =
  'not-a-current' | 'tested-by-size' | 'no-factor-known' | 'factors-contradict';

/** A rating after another standard, in A, or why there is none. */
export type RatingConversion =
  | { readonly type: 'converted'; readonly current: SourcedInterval }
  | { readonly type: 'refused'; readonly reason: RatingRefusal };

type Factor = Pick<SourcedInterval, 'low' | 'best' | 'high' | 'source'>;

function factorBetween(from: RatingName, to: RatingName): Factor | undefined {
  for (const row of ratingConversions.rows) {
    if (row.from === from && row.to === to) {
      return row;
    }
    if (row.from === to && row.to === from) {
      const { low, high, bestBack, source } = row;
      return { low: 1 / high, best: bestBack, high: 1 / low, source };
    }
  }
  return undefined;
}

function refusalFor(name: RatingName): RatingRefusal | undefined {
  switch (name) {
    case 'reserve-capacity':
    case 'capacity-20h':
      return 'not-a-current';
    case 'jis':
      return 'tested-by-size';
    case 'hca':
      return 'no-factor-known';
    default:
      return undefined;
  }
}

function requireAtLeast(name: string, value: number, low: number): void {
  if (!(value >= low && Number.isFinite(value))) {
    throw new ElectricsError('value-out-of-range', { [name]: String(value), low });
  }
}

/**
 * What a cold-cranking rating in A (1 and above) would be after another standard, with its spread.
 *
 * No standard converts; compare like with like wherever the label's own standard will do. There
 * and back, the interval holds the figure that one began with. Sources: `ratingConversions`. Throws
 * `value-out-of-range`.
 *
 * @example
 * convertRating(600, 'sae', 'mca'); // 702 to 858 A, best 780 A
 */
export function convertRating(ratingA: number, from: RatingName, to: RatingName): RatingConversion {
  requireAtLeast('ratingA', ratingA, 1);
  const reason = refusalFor(from) ?? refusalFor(to);
  if (reason !== undefined) {
    return { type: 'refused', reason };
  }
  if (from === to) {
    const source = computed('the same test on both sides');
    const current = { low: ratingA, best: ratingA, high: ratingA, unit: 'A', source } as const;
    return { type: 'converted', current };
  }
  const factor = factorBetween(from, to);
  if (factor === undefined) {
    return { type: 'refused', reason: 'factors-contradict' };
  }
  return {
    type: 'converted',
    current: {
      low: ratingA * factor.low,
      best: ratingA * factor.best,
      high: ratingA * factor.high,
      unit: 'A',
      source: factor.source,
    },
  };
}

/** What a label says: a cold-cranking current with its standard, else the capacity over 20 h. */
export type LabelRating =
  | { readonly crankingA: number; readonly standard: RatingStandard }
  | { readonly capacityAh: number };

/** The current to load-test a battery with, in A, or why its label gives none. */
export type LoadTestCurrent =
  | { readonly type: 'load'; readonly current: SourcedInterval }
  | { readonly type: 'refused'; readonly reason: RatingRefusal };

/** Labels print the load rounded down to 10 A: 625 A is loaded with 310 A. */
function roundedDown(currentA: number): number {
  // 700 A times 1.4, halved, falls short of 490 A by the last bit.
  return Math.floor(currentA / 10 + 1e-9) * 10;
}

function roundedLoad(current: SourcedInterval, factor: number): LoadTestCurrent {
  const { low, best, high } = current;
  return {
    type: 'load',
    current: {
      ...current,
      low: roundedDown(low * factor),
      best: roundedDown(best * factor),
      high: roundedDown(high * factor),
    },
  };
}

/**
 * The current of the load test in A, rounded down to 10 A: half of the cold-cranking current after
 * SAE or EN (50 A and above), which other labels are first turned into with their spread, or
 * three times the capacity over 20 h (10 Ah and above) where no cranking rating is known.
 *
 * Source: a vehicle maker's service manual, with its rounding. Throws `value-out-of-range`.
 *
 * @example
 * loadTestCurrent({ crankingA: 625, standard: 'sae' }); // 310 A
 */
export function loadTestCurrent(rating: LabelRating): LoadTestCurrent {
  if ('capacityAh' in rating) {
    const { capacityAh: value } = rating;
    requireAtLeast('capacityAh', value, 10);
    const { factor, source } = loadTestLoads.capacity;
    return roundedLoad({ low: value, best: value, high: value, unit: 'A', source }, factor);
  }
  const { crankingA, standard } = rating;
  requireAtLeast('crankingA', crankingA, 50);
  const converted = convertRating(crankingA, standard, standard === 'en' ? 'en' : 'sae');
  if (converted.type === 'refused') {
    return converted;
  }
  const { factor, source: manual } = loadTestLoads.crankingCurrent;
  const source =
    standard === 'sae' || standard === 'en'
      ? manual
      : computed(`${manual.text}; ${converted.current.source.text}`);
  return roundedLoad({ ...converted.current, source }, factor);
}
