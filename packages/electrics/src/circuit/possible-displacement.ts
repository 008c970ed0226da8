import type { LimitContext } from '../limits/limit-context.ts';

/** What lights the mixture: a spark or compression. */
export type Fuel = 'petrol' | 'diesel';

/**
 * The displacements, in L, that an engine may have, from the least to the greatest: as known, by
 * its cylinders, or any. Common practice, no source.
 */
export function possibleDisplacements(
  { displacement, cylinders, nominal }: LimitContext,
  fuel: Fuel,
): readonly [number, number] {
  if (displacement !== undefined) {
    return [displacement, displacement];
  }
  if (nominal === 24) {
    return [4, 13];
  }
  const diesel = fuel === 'diesel';
  if (cylinders === undefined) {
    return diesel ? [1.5, 6] : [1, 3.5];
  }
  if (cylinders <= 4) {
    return diesel ? [1.5, 2.2] : [1, 2];
  }
  if (cylinders <= 6) {
    return diesel ? [2.2, 4] : [2.5, 3.5];
  }
  return diesel ? [6, 7.5] : [3.5, 6];
}
