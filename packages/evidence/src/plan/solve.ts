import { isKnown, placeOf, remember } from './memo.ts';
import { enterFailure, enterOutcome, levelAt } from './search.ts';
import type { Level, Search } from './search.ts';
import { sweep } from './sweep.ts';

/** An option, and the cost from which on its plan is of no use. */
export interface Attempt {
  readonly option: number;
  readonly limit: number;
}

/**
 * Expected cost of the best plan from the belief of a level, times its total. Found when below
 * `limit`; else a bound from below that is at least `limit`. NaN when the budget is spent.
 */
function solve(search: Search, depth: number, limit: number): number {
  if (search.work > search.budget) return Number.NaN;
  const level = levelAt(search, depth);
  sweep(search, level, level.act);
  let best = level.act;
  if (level.count > 0) best = Math.min(best, level.value[level.order[0] as number] as number);
  let lower = Number.POSITIVE_INFINITY;
  let chosen = -1;
  // What was best with more doubt goes first: the sooner a good one is found, the more is cut.
  const earlier = earlierBest(search);
  if (earlier >= 0) bringForward(level, earlier);
  for (let rank = 0; rank < level.count; rank += 1) {
    const option = level.order[rank] as number;
    const value = tryOption(search, depth, { option, limit: best < limit ? best : limit });
    if (Number.isNaN(value)) return value;
    if (value >= best) continue;
    if (value < limit) {
      best = value;
      chosen = option;
    } else if (value < lower) lower = value;
  }
  const exact = best <= lower;
  const value = exact ? best : lower;
  remember(search.memo, search.key, { value, exact, option: chosen });
  return value;
}

/** The option that the search before this one chose at this belief; -1 for none. */
function earlierBest({ before, key }: Search): number {
  const place = placeOf(before, key);
  return isKnown(before, place) ? (before.options[place] as number) : -1;
}

/** Puts an option of a level first in its order. */
function bringForward({ order, count }: Level, option: number): void {
  for (let rank = 1; rank < count; rank += 1) {
    if (order[rank] !== option) continue;
    order.copyWithin(1, 0, rank);
    order[0] = option;
    return;
  }
}

/**
 * Expected cost of the best plan that begins with an option, times the total of its level, which
 * has been swept; from `limit` on only a bound from below. NaN when the budget is spent.
 */
export function tryOption(search: Search, depth: number, attempt: Attempt): number {
  const level = levelAt(search, depth);
  const { option, limit } = attempt;
  let sum = level.bound[option] as number;
  if (sum >= limit) return sum;
  const { frame, key, memo } = search;
  if (option >= frame.checkCount) return tryVerdict(search, depth, attempt);
  const word = search.checkWord[option] as number;
  const unit = search.checkUnit[option] as number;
  const before = key[word] as number;
  const count = frame.outcomeCount[option] as number;
  let branch = frame.outcomeAt[option] as number;
  for (let outcome = 0; outcome < count; outcome += 1, branch += 1) {
    const bound = level.boundAfter[branch] as number;
    if (bound >= (level.actAfter[branch] as number)) continue;
    key[word] = before + (outcome + 1) * unit;
    const most = limit - sum + bound;
    const place = placeOf(memo, key);
    let value = isKnown(memo, place) ? (memo.values[place] as number) : Number.NaN;
    if (!(memo.exact[place] === 1 || value >= most)) {
      enterOutcome(search, depth, { check: option, outcome });
      value = solve(search, depth + 1, most);
      search.outcomes[option] = -1;
    }
    sum += value - bound;
    if (!(sum < limit)) break;
  }
  key[word] = before;
  return sum;
}

function tryVerdict(search: Search, depth: number, { option, limit }: Attempt): number {
  const { frame, key, memo } = search;
  const level = levelAt(search, depth);
  const verdict = option - frame.checkCount;
  const branch = frame.outcomeTotal + verdict;
  const cost = level.cost[option] as number;
  const act = level.actAfter[branch] as number;
  if ((level.boundAfter[branch] as number) >= act) return cost + act;
  const kept = key.slice();
  const end = frame.fixedAt[verdict + 1] as number;
  for (let at = frame.fixedAt[verdict] as number; at < end; at += 1) {
    const fault = frame.fixed[at] as number;
    if ((level.weights[fault] as number) <= 0) continue;
    const word = search.faultWord[fault] as number;
    key[word] = (key[word] as number) + (search.faultUnit[fault] as number);
  }
  const most = limit - cost;
  const place = placeOf(memo, key);
  let value = isKnown(memo, place) ? (memo.values[place] as number) : Number.NaN;
  if (!(memo.exact[place] === 1 || value >= most)) {
    enterFailure(search, depth, verdict);
    value = solve(search, depth + 1, most);
  }
  key.set(kept);
  return cost + value;
}
