import { ElectricsError } from '../electrics-error.ts';
import type { Interval, SourcedInterval } from '../quantity/interval.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { readingInterval } from '../quantity/reading-interval.ts';
import { computed, type Source } from '../source.ts';
import {
  fuseDrops,
  fuseFullLoadDropMv,
  fuseResistances,
  type FuseStyle,
} from '../tables/fuse-drop.ts';

/** A drop measured across one blade fuse, with its rating in A (above 0 to 40). */
export type MeasuredFuse = {
  readonly drop: Quantity;
  readonly ratingA: number;
  readonly style: FuseStyle;
};

/**
 * The current through a fuse; `resolved` tells whether the meter parts it from none at all. A drop
 * of more than a fuse has at its full rating is no drop of a sound fuse: it has opened, its sockets
 * are bad, or it is about to open.
 */
export type FuseCurrentResult =
  | { readonly type: 'current'; readonly current: SourcedInterval; readonly resolved: boolean }
  | { readonly type: 'no-sound-fuse'; readonly greatestDropMv: number; readonly source: Source };

// How far fuses of one kind differ where one of them was published, and where the resistance is
// taken from fuses of other ratings, which fall somewhat faster than in proportion. Common practice,
// no source.
const publishedSpread = 0.1;
const proportionalSpread = 0.3;

type KnownResistance = {
  readonly style: FuseStyle;
  readonly ratingA: number;
  readonly milliohms: number;
};

const known: readonly KnownResistance[] = [
  ...fuseDrops.rows.map(({ style, ratingA, dropMv, currentMa }) => ({
    style,
    ratingA,
    milliohms: (dropMv / currentMa) * 1000,
  })),
  ...fuseResistances.rows.flatMap(({ style, ratingA, lowMilliohm, highMilliohm }) =>
    [lowMilliohm, highMilliohm].map((milliohms) => ({ style, ratingA, milliohms })),
  ),
];

function resistanceFrom(milliohms: readonly number[], spread: number): Interval {
  const low = Math.min(...milliohms);
  const high = Math.max(...milliohms);
  return {
    low: low * (1 - spread),
    best: (low + high) / 2,
    high: high * (1 + spread),
    unit: 'mOhm',
  };
}

/**
 * Resistance in mOhm of a cold blade fuse by its style and its rating in A (above 0 to 40).
 *
 * As published for the standard 10 and 15 A and the mini 15 A fuse, ±10 % for the single fuse; else
 * in inverse proportion to the rating, ±30 %. Both spreads are common practice, no source. Throws
 * `value-out-of-range`.
 *
 * @example
 * fuseResistance('standard', 10); // best 7.7 mOhm
 */
export function fuseResistance(style: FuseStyle, ratingA: number): SourcedInterval {
  if (!(ratingA > 0 && ratingA <= 40)) {
    throw new ElectricsError('value-out-of-range', { ratingA: String(ratingA), low: 0, high: 40 });
  }
  const same = known.filter((fuse) => fuse.style === style && fuse.ratingA === ratingA);
  if (same.length > 0) {
    return {
      ...resistanceFrom(
        same.map(({ milliohms }) => milliohms),
        publishedSpread,
      ),
      source: computed(
        'drop and current of this fuse, or its resistance, in trade texts; its spread is common practice',
      ),
    };
  }
  return {
    ...resistanceFrom(
      known.map((fuse) => (fuse.milliohms * fuse.ratingA) / ratingA),
      proportionalSpread,
    ),
    source: computed(
      'drops of 10 and 15 A fuses in trade texts, in inverse proportion to the rating; its spread is common practice',
    ),
  };
}

/** How many times its cold resistance a fuse may have when it drops so much: it heats with power. */
function greatestHeating(dropMv: number): number {
  const { low, high } = fuseFullLoadDropMv.rows;
  return 1 + Math.min(1, (dropMv / low) ** 2) * (high / low - 1);
}

/**
 * The current in A through a blade fuse by the drop across it, 0 to 150 mV either way round.
 *
 * The interval takes in the meter's uncertainty, the spread of fuses and, at its low end, that a
 * loaded fuse is hot. The meter must show 0.1 mV: below some 0.3 mV its own uncertainty is larger
 * than all else, and on a display of 1 mV a drain of 50 mA shows nothing at all (`resolved` is then
 * false). A counterfeit fuse breaks the method. Sources: as `fuseResistance`; Ohm's law. Throws `value-out-of-range`, `unit-mismatch`, `value-not-finite`.
 *
 * @example
 * fuseCurrent({
 *   drop: { value: 1, unit: 'mV', resolution: 0.1 },
 *   ratingA: 10,
 *   style: 'standard',
 * }); // best 0.13 A
 */
export function fuseCurrent({ drop, ratingA, style }: MeasuredFuse): FuseCurrentResult {
  const reading = readingInterval({ quantity: { ...drop, value: Math.abs(drop.value) } }, 'mV');
  const { source, ...resistance } = fuseResistance(style, ratingA);
  const greatestDropMv = fuseFullLoadDropMv.rows.high;
  if (reading.low > greatestDropMv) {
    return { type: 'no-sound-fuse', greatestDropMv, source: fuseFullLoadDropMv.source };
  }
  return {
    type: 'current',
    current: {
      low: Math.max(0, reading.low) / (resistance.high * greatestHeating(reading.best)),
      best: reading.best / resistance.best,
      high: reading.high / resistance.low,
      unit: 'A',
      source,
    },
    resolved: reading.low > 0,
  };
}
