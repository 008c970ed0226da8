import type { Frame } from './frame.ts';

/** Of the whole mass, what is left of it where nothing is: the noise of taking away. */
const NOISE = 1e-12;

/**
 * Expected cost of acting at once, times the sum of the weights: the best verdict, or where a
 * wrong verdict goes on, the order of verdicts by mass fixed per cost, until one covers the rest
 * for less.
 *
 * For one fault and sure repairs that cure one each, that order is the cheapest there is: Kadane
 * and Simon 1977, Annals of Statistics 5; Heckerman, Breese and Rommelse 1995, Decision-theoretic
 * troubleshooting, Communications of the ACM 38 (both from memory).
 *
 * @param weights - one for each fault of the frame, any scale
 * @param total - their sum
 */
export function actCost(frame: Frame, weights: Float64Array, total: number): number {
  if (!frame.goesOn) return bestCost(frame, weights, total);
  return frame.isDisjoint
    ? sortedCost(frame, weights, total)
    : orderAct(frame, weights, total).cost;
}

/** The verdict that acting at once begins with; the first written of equals. */
export function actVerdict(frame: Frame, weights: Float64Array, total: number): number {
  if (frame.goesOn) return orderAct(frame, weights, total).verdict;
  const best = bestCost(frame, weights, total);
  for (let verdict = 0; verdict < frame.verdictCount; verdict += 1) {
    if (verdictCost(frame, weights, { verdict, total }) <= best * (1 + 1e-9)) return verdict;
  }
  return 0;
}

function bestCost(frame: Frame, weights: Float64Array, total: number): number {
  const { singleFault, singleWrong, singlePenalty, several, coverCost } = frame;
  let best = coverCost * total;
  for (let single = 0; single < singleFault.length; single += 1) {
    const own = weights[singleFault[single] as number] as number;
    const cost = (singleWrong[single] as number) * total - (singlePenalty[single] as number) * own;
    if (cost < best) best = cost;
  }
  for (const verdict of several) {
    const cost = verdictCost(frame, weights, { verdict, total });
    if (cost < best) best = cost;
  }
  return best;
}

/** Expected cost of one verdict that ends the case, times the total. */
function verdictCost(
  frame: Frame,
  weights: Float64Array,
  { verdict, total }: { readonly verdict: number; readonly total: number },
): number {
  let cost = (frame.verdictCost[verdict] as number) * total;
  const begin = frame.fixedAt[verdict] as number;
  const end = frame.fixedAt[verdict + 1] as number;
  if (end - begin < frame.faultCount) {
    let wrong = total;
    for (let at = begin; at < end; at += 1) wrong -= weights[frame.fixed[at] as number] as number;
    if (wrong > 0) cost += (frame.wrongPenalty[verdict] as number) * wrong;
  }
  return cost;
}

/** As `orderAct`, where no verdict takes from another: one sort, nearly done at the belief before. */
function sortedCost(frame: Frame, weights: Float64Array, total: number): number {
  const { verdictCost: costs, wrongPenalty, fixedAt, fixed, coverCost, room } = frame;
  const { mass, order, rate } = room;
  const count = order.length;
  for (let rank = 0; rank < count; rank += 1) {
    const verdict = order[rank] as number;
    let own = 0;
    const end = fixedAt[verdict + 1] as number;
    for (let at = fixedAt[verdict] as number; at < end; at += 1) {
      own += weights[fixed[at] as number] as number;
    }
    mass[verdict] = own;
    const cost = (costs[verdict] as number) + (wrongPenalty[verdict] as number);
    const ownRate = cost > 0 ? own / cost : Number.MAX_VALUE;
    rate[verdict] = ownRate;
    let place = rank;
    while (place > 0 && (rate[order[place - 1] as number] as number) < ownRate) {
      order[place] = order[place - 1] as number;
      place -= 1;
    }
    order[place] = verdict;
  }
  const noise = NOISE * total;
  let best = Number.POSITIVE_INFINITY;
  let spent = 0;
  let remaining = total;
  for (let rank = 0; rank < count && remaining > noise; rank += 1) {
    if (spent + coverCost * remaining < best) best = spent + coverCost * remaining;
    if (spent >= best) return best;
    const verdict = order[rank] as number;
    const own = mass[verdict] as number;
    if (own <= 0) continue;
    spent += (costs[verdict] as number) * remaining;
    remaining -= own;
    if (remaining > noise) spent += (wrongPenalty[verdict] as number) * remaining;
  }
  if (remaining > noise) spent += coverCost * remaining;
  return spent < best ? spent : best;
}

/** The order of verdicts for any sets of faults that they fix, and the verdict it begins with. */
function orderAct(
  frame: Frame,
  weights: Float64Array,
  total: number,
): { readonly cost: number; readonly verdict: number } {
  const { faultCount, verdictCount, verdictCost: costs, wrongPenalty, room } = frame;
  const { left, mass } = room;
  left.set(weights);
  const noise = NOISE * total;
  let cover = 0;
  for (let verdict = 0; verdict < verdictCount; verdict += 1) {
    mass[verdict] = 0;
    if (isCover(frame, verdict) && costs[verdict] === frame.coverCost) cover ||= verdict + 1;
  }
  for (let fault = 0; fault < faultCount; fault += 1) {
    addMass(frame, fault, weights[fault] as number);
  }
  let remaining = total;
  let spent = 0;
  let first = -1;
  let best = Number.POSITIVE_INFINITY;
  let verdict = 0;
  while (remaining > noise) {
    if (spent + frame.coverCost * remaining < best) {
      best = spent + frame.coverCost * remaining;
      verdict = first < 0 ? cover - 1 : first;
    }
    if (spent >= best) break;
    let chosen = -1;
    let chosenRate = 0;
    for (let other = 0; other < verdictCount; other += 1) {
      const own = mass[other] as number;
      if (own <= 0) continue;
      const cost = (costs[other] as number) + (wrongPenalty[other] as number);
      const rate = cost > 0 ? own / cost : Number.MAX_VALUE;
      if (rate > chosenRate * (1 + 1e-9)) {
        chosen = other;
        chosenRate = rate;
      }
    }
    if (chosen < 0) return { cost: best, verdict };
    if (first < 0) first = chosen;
    spent += (costs[chosen] as number) * remaining;
    const end = frame.fixedAt[chosen + 1] as number;
    for (let at = frame.fixedAt[chosen] as number; at < end; at += 1) {
      const fault = frame.fixed[at] as number;
      const weight = left[fault] as number;
      left[fault] = 0;
      remaining -= weight;
      addMass(frame, fault, -weight);
    }
    // What is left of the mass of a verdict whose faults are all gone is noise.
    mass[chosen] = 0;
    if (remaining > noise) spent += (wrongPenalty[chosen] as number) * remaining;
  }
  if (spent < best && first >= 0) return { cost: spent, verdict: first };
  return { cost: best, verdict };
}

function isCover(frame: Frame, verdict: number): boolean {
  const { fixedAt, faultCount } = frame;
  return (fixedAt[verdict + 1] as number) - (fixedAt[verdict] as number) === faultCount;
}

function addMass(frame: Frame, fault: number, weight: number): void {
  const { fixersAt, fixers, room } = frame;
  const end = fixersAt[fault + 1] as number;
  for (let at = fixersAt[fault] as number; at < end; at += 1) {
    const verdict = fixers[at] as number;
    room.mass[verdict] = (room.mass[verdict] as number) + weight;
  }
}
