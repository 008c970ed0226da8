import type { Level, Search } from './search.ts';

/**
 * Fills `gain` for the checks of a level that has been swept: the information that each gives
 * about what to do, in nats times the total. A fault counts for its cheapest right verdict.
 */
export function weighGains(search: Search, level: Level): void {
  const { frame } = search;
  const { faultCount, kinds, isAlone, outcomeEntropy } = frame;
  const { weights, mass, order } = level;
  let now = plogp(level.total);
  for (const kind of kinds) now -= plogp(massOf(kind, weights));
  for (let rank = 0; rank < level.count; rank += 1) {
    const check = order[rank] as number;
    if (check >= frame.checkCount) {
      level.gain[check] = 0;
      continue;
    }
    // What each fault leaves open of the outcome, against what is open of it in all. The terms
    // of the faults alone of their kind cancel, but for the entropy of their outcomes.
    let gain = now;
    const row = check * faultCount;
    for (let fault = 0; fault < faultCount; fault += 1) {
      if (isAlone[fault] !== 1) continue;
      gain -= (weights[fault] as number) * (outcomeEntropy[row + fault] as number);
    }
    const outcomeAt = frame.outcomeAt[check] as number;
    const outcomeCount = frame.outcomeCount[check] as number;
    for (let outcome = 0; outcome < outcomeCount; outcome += 1) {
      gain -= plogp(mass[outcomeAt + outcome] as number);
      const at = (frame.likelihoodAt[check] as number) + outcome * faultCount;
      for (const kind of kinds) {
        let share = 0;
        for (const fault of kind) {
          share += (weights[fault] as number) * (frame.likelihoods[at + fault] as number);
        }
        gain += plogp(share);
      }
    }
    search.work += faultCount;
    level.gain[check] = gain > 0 ? gain : 0;
  }
}

function plogp(share: number): number {
  return share > 0 ? share * Math.log(share) : 0;
}

function massOf(kind: Int32Array, weights: Float64Array): number {
  let mass = 0;
  for (const fault of kind) mass += weights[fault] as number;
  return mass;
}
