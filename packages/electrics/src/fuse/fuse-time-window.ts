import { ElectricsError } from '../electrics-error.ts';
import type { Source } from '../source.ts';
import { fuseEarliestOpening, fuseLatestOpening } from '../tables/fuse-opening-time.ts';

/** A time in s with its source. */
export type FuseTime = { readonly valueS: number; readonly source: Source };

/**
 * When a fuse opens: not before `earliest`; with `opens` it must have opened at `latest`, with
 * `need-not-open` it may carry the current for ever.
 */
export type FuseTimeWindow =
  | { readonly type: 'opens'; readonly earliest: FuseTime; readonly latest: FuseTime }
  | { readonly type: 'need-not-open'; readonly earliest: FuseTime };

/**
 * The time window in which a blade fuse of a rating (A, above 0) opens at a steady current (A, 0 or
 * above).
 *
 * No fuse opens at its rating: 11 A through a 10 A fuse may flow for days, and only from 135 % on
 * must it open, within 1800 s. Between the table's steps the earliest time is that of the next step
 * and the latest that of the step before, so that no curve is guessed; above 600 % the earliest is
 * 0. Sources: ISO 8820-3, the latest times as reported, the earliest and 160 % from memory. Throws
 * `value-out-of-range`.
 *
 * @example
 * fuseTimeWindow({ currentA: 20, ratingA: 10 }); // opens, from 0.15 s to 5 s
 */
export function fuseTimeWindow(fuse: {
  readonly currentA: number;
  readonly ratingA: number;
}): FuseTimeWindow {
  const { currentA, ratingA } = fuse;
  if (!(currentA >= 0 && ratingA > 0 && Number.isFinite(currentA + ratingA))) {
    throw new ElectricsError('value-out-of-range', {
      currentA: String(currentA),
      ratingA: String(ratingA),
      low: 0,
    });
  }
  // Products, not a quotient: 11 A of 10 A is 110 % exactly.
  const next = fuseEarliestOpening.rows.find(({ percent }) => currentA * 100 <= percent * ratingA);
  const reached = fuseLatestOpening.rows.findLast(
    ({ percent }) => currentA * 100 >= percent * ratingA,
  );
  const earliest = { valueS: next?.leastS ?? 0, source: fuseEarliestOpening.source };
  return reached === undefined
    ? { type: 'need-not-open', earliest }
    : { type: 'opens', earliest, latest: { valueS: reached.mostS, source: reached.source } };
}
