import { actCost } from './act-cost.ts';
import { costNow, isAllowed } from './frame.ts';
import { levelAt } from './search.ts';
import type { Search } from './search.ts';
import { branchSteps } from './sweep.ts';

/**
 * Expected cost of the best check and then acting, or of acting at once, from the belief of a
 * level, times its total: `sweep` without what only a deeper search needs.
 */
export function oneStepCost(search: Search, depth: number): number {
  const { frame, outcomes, child } = search;
  const { faultCount, least, likelihoods } = frame;
  const level = levelAt(search, depth);
  const { weights, total, paid, known } = level;
  const { order, count } = levelAt(search, 0);
  const steps = branchSteps(frame);
  let best = level.act;
  // What was best at the start comes first: the sooner a good one is found, the more is cut.
  for (let rank = 0; rank < count; rank += 1) {
    const check = order[rank] as number;
    if (check >= frame.checkCount || outcomes[check] !== -1) continue;
    if (!isAllowed(frame, check, outcomes)) continue;
    let sum = costNow(frame, check, paid) * total;
    let left = known;
    const outcomeCount = frame.outcomeCount[check] as number;
    let at = frame.likelihoodAt[check] as number;
    for (let outcome = 0; outcome < outcomeCount && sum + left < best; outcome += 1) {
      let share = 0;
      let floor = 0;
      for (let fault = 0; fault < faultCount; fault += 1, at += 1) {
        const weight = (weights[fault] as number) * (likelihoods[at] as number);
        child[fault] = weight;
        share += weight;
        floor += weight * (least[fault] as number);
      }
      left -= floor;
      search.work += steps;
      if (share > 0) sum += actCost(frame, child, share);
      if (outcome === outcomeCount - 1 && sum < best) best = sum;
    }
  }
  return best;
}
