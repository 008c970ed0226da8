import type { Level } from './search.ts';

/** So many options, alternately the best by one step and the most information per cost. */
export function choose(level: Level, most: number): readonly number[] {
  const byValue = [...level.order.subarray(0, level.count)];
  if (byValue.length <= most) return byValue;
  const byGain = [...byValue].sort((left, right) => gainRate(level, right) - gainRate(level, left));
  const chosen = new Set<number>();
  for (let rank = 0; chosen.size < most; rank += 1) {
    chosen.add(byValue[rank] as number);
    if (chosen.size < most) chosen.add(byGain[rank] as number);
  }
  return [...chosen];
}

/** Information of an option about what to do, for its cost. */
export function gainRate(level: Level, option: number): number {
  const cost = level.cost[option] as number;
  const gain = level.gain[option] as number;
  return cost > 0 ? gain / cost : gain * Number.MAX_SAFE_INTEGER;
}
