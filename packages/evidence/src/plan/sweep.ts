import { actCost } from './act-cost.ts';
import { costNow, isAllowed } from './frame.ts';
import type { Frame } from './frame.ts';
import { SAME } from './search.ts';
import type { Level, Search } from './search.ts';

/** Steps beside the multiplications that a branch costs, about. */
const BRANCH_STEPS = 16;

/** Verdicts that a doubting search tries as experiments at one belief. */
const EXPERIMENTS = 3;

/** What share of its doubt a search has at the first level. */
const FIRST_DOUBT = 0.6;

/**
 * What share of its doubt a search has of a check that pays a setup or opens another check: what
 * it makes cheaper or possible is not seen in one step.
 */
const WAY_IN_DOUBT = 0.5;

/** Steps for each verdict that finding their order costs, about. */
const ORDER_STEPS = 4;

/** About how many steps one branch costs: its weights, and acting on them. */
export function branchSteps(frame: Frame): number {
  const { faultCount, verdictCount, goesOn } = frame;
  return faultCount + (goesOn ? ORDER_STEPS : 1) * verdictCount + BRANCH_STEPS;
}

/** About how many steps one look along every option costs. */
export function sweepSteps(frame: Frame): number {
  const branches = frame.outcomeTotal + (frame.goesOn ? frame.verdictCount : 0);
  return branches * branchSteps(frame);
}

/**
 * Takes one look along every option of a level: fills `order`, best first, and the rows beside.
 * Options that cannot cost less than `most`, or than another and then acting, are left out.
 */
export function sweep(search: Search, level: Level, most: number): void {
  const { frame, outcomes, child } = search;
  const { faultCount, checkCount, least, likelihoods } = frame;
  const { weights, total, paid, known, order, value, bound } = level;
  const { mass, actAfter, knownAfter, boundAfter } = level;
  const doubt = doubtAt(search, level);
  const steps = branchSteps(frame);
  const [cheapest, leastCost, secondCost] = cheapestTwo(search);
  let count = 0;
  let limit = most;
  // At the first level what is as good as the best stays in, for the safer of the two is taken.
  const slack = level === search.levels[0] ? 1 + 2 * SAME : 1;
  for (let check = 0; check < checkCount; check += 1) {
    if (outcomes[check] !== -1 || !isAllowed(frame, check, outcomes)) continue;
    const cost = costNow(frame, check, paid) * total;
    if (cost + known >= limit) continue;
    // Going on after it costs at least the cheapest of the other checks, or a verdict's failure.
    const isWayIn = ((frame.setups[check] as number) & ~paid) !== 0 || frame.opens[check] === 1;
    const branchDoubt = isWayIn ? doubt * WAY_IN_DOUBT : doubt;
    const next = frame.goesOn ? 0 : check === cheapest ? secondCost : leastCost;
    const outcomeCount = frame.outcomeCount[check] as number;
    let branch = frame.outcomeAt[check] as number;
    let at = frame.likelihoodAt[check] as number;
    let sumAct = cost;
    let sumBound = cost;
    let seen = 0;
    for (let outcome = 0; outcome < outcomeCount; outcome += 1, branch += 1) {
      let share = 0;
      let floor = 0;
      for (let fault = 0; fault < faultCount; fault += 1, at += 1) {
        const weight = (weights[fault] as number) * (likelihoods[at] as number);
        child[fault] = weight;
        share += weight;
        floor += weight * (least[fault] as number);
      }
      mass[branch] = share;
      if (share <= 0) {
        actAfter[branch] = 0;
        boundAfter[branch] = 0;
        continue;
      }
      seen += 1;
      const act = actCost(frame, child, share);
      actAfter[branch] = act;
      knownAfter[branch] = floor;
      const hoped = floor + Math.max(next * share, branchDoubt * (act - floor));
      const after = hoped < act ? hoped : act;
      boundAfter[branch] = after;
      sumAct += act;
      sumBound += after;
    }
    search.work += outcomeCount * steps;
    // An outcome that is certain teaches nothing; the check may still open another.
    if (seen <= 1 && frame.opens[check] === 0) continue;
    level.cost[check] = cost;
    value[check] = sumAct;
    bound[check] = sumBound;
    if (sumAct * slack < limit) limit = sumAct * slack;
    count = insert(order, value, { count, option: check });
  }
  level.count = frame.goesOn ? sweepVerdicts(search, level, count) : count;
}

/**
 * The verdicts as experiments: what comes after each has failed. Where a search doubts, only those
 * that fix most for their cost.
 */
function sweepVerdicts(search: Search, level: Level, before: number): number {
  const { frame, child } = search;
  const { faultCount, checkCount, verdictCount, fixedAt, fixed, least } = frame;
  const { weights, total, order, value } = level;
  const doubt = doubtAt(search, level);
  const rates = search.verdictRate;
  for (let verdict = 0; verdict < verdictCount; verdict += 1) {
    let gone = 0;
    const end = fixedAt[verdict + 1] as number;
    for (let at = fixedAt[verdict] as number; at < end; at += 1) {
      gone += weights[fixed[at] as number] as number;
    }
    const cost = (frame.verdictCost[verdict] as number) + (frame.wrongPenalty[verdict] as number);
    // One that fixes nothing that is left is folly; one that fixes all of it is an act.
    const isExperiment = gone > SAME * total && gone < total * (1 - SAME);
    rates[verdict] = isExperiment ? gone / Math.max(cost, Number.MIN_VALUE) : 0;
  }
  const enough = doubt > 0 ? nthGreatest(rates, EXPERIMENTS) : 0;
  let count = before;
  for (let verdict = 0; verdict < verdictCount; verdict += 1) {
    const rate = rates[verdict] as number;
    if (rate === 0 || rate < enough) continue;
    child.set(weights);
    const end = fixedAt[verdict + 1] as number;
    for (let at = fixedAt[verdict] as number; at < end; at += 1) child[fixed[at] as number] = 0;
    let share = 0;
    let floor = 0;
    for (let fault = 0; fault < faultCount; fault += 1) {
      share += child[fault] as number;
      floor += (child[fault] as number) * (least[fault] as number);
    }
    search.work += branchSteps(frame);
    const option = checkCount + verdict;
    const branch = frame.outcomeTotal + verdict;
    const cost =
      (frame.verdictCost[verdict] as number) * total +
      (frame.wrongPenalty[verdict] as number) * share;
    const act = actCost(frame, child, share);
    const after = floor < act ? floor + doubt * (act - floor) : act;
    level.mass[branch] = share;
    level.actAfter[branch] = act;
    level.knownAfter[branch] = floor;
    level.boundAfter[branch] = after;
    level.cost[option] = cost;
    value[option] = cost + act;
    level.bound[option] = cost + after;
    count = insert(order, value, { count, option });
  }
  return count;
}

/** The greatest but so many of a row of numbers that are 0 or more. */
function nthGreatest(row: Float64Array, rank: number): number {
  let greatest = Number.POSITIVE_INFINITY;
  for (let found = 0; found < rank; found += 1) {
    let next = 0;
    for (const value of row) if (value < greatest && value > next) next = value;
    greatest = next;
  }
  return greatest;
}

/** At the first level less is doubted, for a first step passed over is not seen again. */
function doubtAt(search: Search, level: Level): number {
  return level === search.levels[0] ? search.doubt * FIRST_DOUBT : search.doubt;
}

/** Which open check is cheapest, its cost, and the cost of the next; setups are left out. */
function cheapestTwo(search: Search): readonly [cheapest: number, least: number, second: number] {
  const { frame, outcomes } = search;
  let cheapest = -1;
  let least = Number.POSITIVE_INFINITY;
  let second = Number.POSITIVE_INFINITY;
  for (let check = 0; check < frame.checkCount; check += 1) {
    if (outcomes[check] !== -1) continue;
    const cost = frame.cost[check] as number;
    if (cost < least) {
      second = least;
      least = cost;
      cheapest = check;
    } else if (cost < second) second = cost;
  }
  return [cheapest, least, second];
}

/** Puts an option behind those that are better or as good; gives the new count. */
function insert(
  order: Int32Array,
  value: Float64Array,
  { count, option }: { readonly count: number; readonly option: number },
): number {
  let place = count;
  const own = value[option] as number;
  while (place > 0 && (value[order[place - 1] as number] as number) > own) {
    order[place] = order[place - 1] as number;
    place -= 1;
  }
  order[place] = option;
  return count + 1;
}
