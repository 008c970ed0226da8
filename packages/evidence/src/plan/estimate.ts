import { actCost } from './act-cost.ts';
import { gainRate } from './choose.ts';
import { foundOption } from './found.ts';
import type { Found } from './found.ts';
import { costNow, isAllowed } from './frame.ts';
import type { Frame } from './frame.ts';
import { enterOutcome, levelAt, SAME } from './search.ts';
import type { Level, Search } from './search.ts';
import { branchSteps, sweep } from './sweep.ts';
import { weighGains } from './weigh-gains.ts';

/** First steps that are looked at two steps deep: those that are best by one. */
const FIRSTS = 6;

/**
 * What is left open costs so much more than the checks that tell most for their cost would ask for
 * it, for they overlap. Found by simulated cases of large invented problems.
 */
const OVERLAP = 1.15;

/**
 * Chooses by two steps and an estimate of what the rest will cost: the cost were the fault known,
 * and for each bit still open what the checks that tell most for their cost ask for a bit.
 *
 * For problems too large for plans to be followed to their end: there one or two checks alone are
 * worth nothing, and the costs of plans that short would give a case up at once. The value is an
 * estimate, not the cost of a plan.
 */
export function estimate(search: Search): Found {
  const { frame } = search;
  const root = levelAt(search, 0);
  sweep(search, root, Number.POSITIVE_INFINITY);
  weighGains(search, root);
  const weighing: Weighing = {
    rate: OVERLAP * costOfNat(root, entropyOf(frame, root)),
    surprise: frame.likelihoods.map(plogp),
    own: root.weights.map(plogp),
  };
  let found: Found = { type: 'act', index: -1, value: root.act, proof: 'searched' };
  for (const option of bestFirsts(search, weighing)) {
    let sum = root.cost[option] as number;
    const branch = frame.outcomeAt[option] as number;
    const count = frame.outcomeCount[option] as number;
    for (let outcome = 0; outcome < count; outcome += 1) {
      if ((root.mass[branch + outcome] as number) <= 0) continue;
      enterOutcome(search, 0, { check: option, outcome });
      sum += bestNext(search, 1, weighing);
      search.outcomes[option] = -1;
    }
    if (sum < found.value * (1 - SAME)) {
      found = foundOption(frame, option, { value: sum, proof: 'estimated' });
    }
  }
  return found;
}

/** The checks of the least estimates by one step, of those that the sweep has left. */
function bestFirsts(search: Search, weighing: Weighing): readonly number[] {
  const { order, count } = levelAt(search, 0);
  const limit = Number.POSITIVE_INFINITY;
  return [...order.subarray(0, count)]
    .filter((option) => option < search.frame.checkCount)
    .map((check) => ({ check, cost: estimatedCost(search, 0, { check, limit, weighing }) }))
    .sort((left, right) => left.cost - right.cost || left.check - right.check)
    .slice(0, FIRSTS)
    .map(({ check }) => check);
}

interface Weighing {
  /** What a nat of entropy costs to take away. */
  readonly rate: number;
  /** L ln L of each likelihood. */
  readonly surprise: Float64Array;
  /** Room: w ln w of each weight. */
  readonly own: Float64Array;
}

/** Cost for each nat of the checks that tell most for their cost, up to all there is to be told. */
function costOfNat(level: Level, entropy: number): number {
  const order = [...level.order.subarray(0, level.count)]
    .filter((option) => (level.gain[option] as number) > 0)
    .sort((left, right) => gainRate(level, right) - gainRate(level, left) || left - right);
  let cost = 0;
  let gain = 0;
  for (const option of order) {
    if (gain >= entropy) break;
    cost += level.cost[option] as number;
    gain += level.gain[option] as number;
  }
  // With nothing told there is nothing to hope for but acting.
  return gain > 0 ? cost / gain : Number.MAX_VALUE;
}

/** Least estimate over acting and every check from a level, times its total. */
function bestNext(search: Search, depth: number, weighing: Weighing): number {
  const { frame, outcomes } = search;
  const { weights, act } = levelAt(search, depth);
  weighing.own.set(weights.map(plogp));
  let best = act;
  for (let check = 0; check < frame.checkCount; check += 1) {
    if (outcomes[check] !== -1 || !isAllowed(frame, check, outcomes)) continue;
    const cost = estimatedCost(search, depth, { check, limit: best, weighing });
    if (cost < best) best = cost;
  }
  return best;
}

/** Estimate of a check from a level, whose `own` is set; from `limit` on only a bound. */
function estimatedCost(
  search: Search,
  depth: number,
  { check, limit, weighing }: { check: number; limit: number; weighing: Weighing },
): number {
  const { frame, child } = search;
  const { faultCount, likelihoods, least, isAlone } = frame;
  const { weights, total, paid, known } = levelAt(search, depth);
  const { rate, surprise, own } = weighing;
  let sum = costNow(frame, check, paid) * total;
  if (sum + known >= limit) return sum + known;
  const outcomeCount = frame.outcomeCount[check] as number;
  let at = frame.likelihoodAt[check] as number;
  search.work += 2 * branchSteps(frame) * outcomeCount;
  for (let outcome = 0; outcome < outcomeCount; outcome += 1) {
    let share = 0;
    let floor = 0;
    let order = 0;
    for (let fault = 0; fault < faultCount; fault += 1, at += 1) {
      const before = weights[fault] as number;
      const likelihood = likelihoods[at] as number;
      const weight = before * likelihood;
      child[fault] = weight;
      share += weight;
      floor += weight * (least[fault] as number);
      if (isAlone[fault] !== 1) continue;
      // w L ln(w L), without a logarithm for each.
      order += likelihood * (own[fault] as number) + before * (surprise[at] as number);
    }
    if (share <= 0) continue;
    const open = plogp(share) - order - kindOrder(frame, child);
    sum += Math.min(actCost(frame, child, share), floor + rate * Math.max(0, open));
  }
  return sum;
}

/** Entropy of what to do, nats times the total: a fault counts for its cheapest right verdict. */
function entropyOf(frame: Frame, level: Level): number {
  let order = kindOrder(frame, level.weights);
  level.weights.forEach((weight, fault) => {
    if (frame.isAlone[fault] === 1) order += plogp(weight);
  });
  return plogp(level.total) - order;
}

function kindOrder(frame: Frame, weights: Float64Array): number {
  let order = 0;
  for (const kind of frame.kinds) {
    let mass = 0;
    for (const fault of kind) mass += weights[fault] as number;
    order += plogp(mass);
  }
  return order;
}

function plogp(share: number): number {
  return share > 0 ? share * Math.log(share) : 0;
}
