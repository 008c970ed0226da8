import { fuseColours, type FuseColourRow } from '../tables/fuse-colour.ts';

/**
 * The colour of a blade fuse by its rating in A, or undefined where the table has no such rating.
 *
 * A colour only hints at a rating: read the number on the fuse. Sources: a trade page, from memory
 * where `source` of the row says so.
 *
 * @example
 * fuseColour(10)?.colour; // 'red'
 */
export function fuseColour(ratingA: number): FuseColourRow | undefined {
  return fuseColours.rows.find((row) => row.ratingA === ratingA);
}
