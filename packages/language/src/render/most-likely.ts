import type { Weighted } from '@keyturn/core';

/** Shares below this are left out: they round to 0 %. */
const leastShare = 0.005;

/** At most `count` of the weighted, most likely first, without those that round to nothing. */
export function mostLikely(weighted: readonly Weighted[], count: number): Weighted[] {
  return weighted
    .filter(([, share]) => share >= leastShare)
    .sort(([, one], [, other]) => other - one)
    .slice(0, count);
}
