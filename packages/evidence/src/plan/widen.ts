import { choose } from './choose.ts';
import { foundOption, optionOf } from './found.ts';
import type { Found } from './found.ts';
import { oneStepCost } from './one-step-cost.ts';
import { enterFailure, enterOutcome, levelAt, SAME } from './search.ts';
import type { Search } from './search.ts';
import { sweep, sweepSteps } from './sweep.ts';
import { weighGains } from './weigh-gains.ts';

/** Steps of the innermost loops that it may take, about. */
const BUDGET = 1_000_000;

/** First steps looked at two steps deep: at most, and at least whatever they cost. */
const WIDE = 16;
const NARROW = 4;
/** Of those the ones looked at three deep, and the second steps that are looked at for each. */
const DEEP = 4;
const SECOND = 4;

/** What a wide look found. */
export interface Wide {
  readonly found: Found;
  /** Positions in the problem of the checks that look best, best first. */
  readonly checks: readonly number[];
}

/**
 * Looks two steps along the first steps that look best, by one step or by information per cost,
 * and three along the best of those. Every value is the cost of a real plan.
 */
export function widen(search: Search): Wide {
  const { frame } = search;
  const root = levelAt(search, 0);
  sweep(search, root, root.act);
  weighGains(search, root);
  const twoSteps = (sweepSteps(frame) * frame.outcomeTotal) / Math.max(1, frame.checkCount);
  const affordable = Math.floor(BUDGET / 2 / Math.max(1, twoSteps));
  const firsts = choose(root, Math.min(WIDE, Math.max(NARROW, affordable)));
  let found: Found = { type: 'act', index: -1, value: root.act, proof: 'searched' };
  const better = (option: number, value: number): void => {
    if (value < found.value * (1 - SAME))
      found = foundOption(frame, option, { value, proof: 'searched' });
  };
  const ranked = firsts
    .map((option) => ({ option, value: nextValue(search, 0, { option, look: oneStepCost }) }))
    .sort((left, right) => left.value - right.value || left.option - right.option);
  for (const { option, value } of ranked) better(option, value);
  for (const { option } of ranked.slice(0, DEEP)) {
    if (search.work > BUDGET / 2) break;
    better(option, nextValue(search, 0, { option, look: lookTwice }));
  }
  const first = optionOf(frame, found);
  const checks = ranked.map(({ option }) => option).filter((option) => option !== first);
  if (first >= 0) checks.unshift(first);
  return {
    found,
    checks: checks.flatMap((option) =>
      option < frame.checkCount ? [frame.checks[option] as number] : [],
    ),
  };
}

type Look = (search: Search, depth: number) => number;

/** Cost of an option whose branches are worth what `look` finds, times the total. */
function nextValue(
  search: Search,
  depth: number,
  { option, look }: { readonly option: number; readonly look: Look },
): number {
  const { frame } = search;
  const level = levelAt(search, depth);
  let sum = level.cost[option] as number;
  if (option >= frame.checkCount) {
    enterFailure(search, depth, option - frame.checkCount);
    return sum + look(search, depth + 1);
  }
  const branch = frame.outcomeAt[option] as number;
  const count = frame.outcomeCount[option] as number;
  for (let outcome = 0; outcome < count; outcome += 1) {
    if ((level.mass[branch + outcome] as number) <= 0) continue;
    enterOutcome(search, depth, { check: option, outcome });
    sum += look(search, depth + 1);
    search.outcomes[option] = -1;
  }
  return sum;
}

function lookTwice(search: Search, depth: number): number {
  const level = levelAt(search, depth);
  sweep(search, level, level.act);
  weighGains(search, level);
  let best = level.act;
  if (level.count > 0) best = Math.min(best, level.value[level.order[0] as number] as number);
  for (const option of choose(level, SECOND)) {
    if ((level.bound[option] as number) >= best) continue;
    best = Math.min(best, nextValue(search, depth, { option, look: oneStepCost }));
  }
  return best;
}
