import { actCost } from './act-cost.ts';
import type { Frame } from './frame.ts';
import { createMemo } from './memo.ts';
import type { Memo } from './memo.ts';

/** Values nearer to each other than this share of themselves count as equal. */
export const SAME = 1e-9;

/**
 * What one belief of a search needs while it is worked on. All costs are times `total`, so that
 * those of the outcomes of a check add up.
 *
 * Options are the checks, and where cases go on from `checkCount` on the verdicts as experiments.
 * Branches are the outcomes of the checks, each at `outcomeAt`, and then each verdict's failure.
 */
export interface Level {
  readonly weights: Float64Array;
  paid: number;
  total: number;
  /** Expected cost of acting at once. */
  act: number;
  /** Least cost were the fault known. */
  known: number;
  /** Options worth a look, by `value`, and how many. */
  readonly order: Int32Array;
  count: number;
  /** For each option what it costs now. */
  readonly cost: Float64Array;
  /** For each option the cost of it and then acting. */
  readonly value: Float64Array;
  /** For each option the least that a plan may cost that begins with it. */
  readonly bound: Float64Array;
  /** For each check the information about what to do, nats; only after `weighGains`. */
  readonly gain: Float64Array;
  readonly mass: Float64Array;
  readonly actAfter: Float64Array;
  readonly knownAfter: Float64Array;
  readonly boundAfter: Float64Array;
}

/** A depth-first search over the beliefs of a frame. */
export interface Search {
  readonly frame: Frame;
  readonly levels: Level[];
  /** For each check of the frame its outcome on the path, or -1. */
  readonly outcomes: Int32Array;
  /** The findings of the path as whole numbers: a digit for each check and each excluded fault. */
  readonly key: Float64Array;
  readonly checkWord: Int32Array;
  readonly checkUnit: Float64Array;
  readonly faultWord: Int32Array;
  readonly faultUnit: Float64Array;
  memo: Memo;
  /** What the search before this one, with more doubt, came to; empty for the first. */
  before: Memo;
  /** Room for the weights of one branch. */
  readonly child: Float64Array;
  /** Room for how much each verdict fixes for its cost. */
  readonly verdictRate: Float64Array;
  /**
   * How little is hoped of looking further below the first level, 0 to 1. At 0 the search is
   * exact. Above, a branch is taken to cost at least this share of the way from its bound to
   * acting at once: every value is then the cost of a real plan, but not always of the best.
   */
  doubt: number;
  /** Steps of the innermost loops so far, and the most allowed. */
  work: number;
  budget: number;
}

/** Makes a search of a frame, its first level measured. */
export function createSearch(frame: Frame): Search {
  const { checkCount, faultCount, outcomeCount } = frame;
  let word = 0;
  let unit = 1;
  const digit = (base: number): readonly [word: number, unit: number] => {
    if (unit > Number.MAX_SAFE_INTEGER / base) {
      word += 1;
      unit = 1;
    }
    const place = [word, unit] as const;
    unit *= base;
    return place;
  };
  const checkDigits = Array.from(outcomeCount, (count) => digit(count + 1));
  const faultDigits = frame.goesOn ? Array.from({ length: faultCount }, () => digit(2)) : [];
  const memo = createMemo(word + 1);
  const search: Search = {
    frame,
    levels: [],
    outcomes: new Int32Array(checkCount).fill(-1),
    key: new Float64Array(word + 1),
    checkWord: Int32Array.from(checkDigits, ([at]) => at),
    checkUnit: Float64Array.from(checkDigits, ([, size]) => size),
    faultWord: Int32Array.from(faultDigits, ([at]) => at),
    faultUnit: Float64Array.from(faultDigits, ([, size]) => size),
    memo,
    before: memo,
    child: new Float64Array(faultCount),
    verdictRate: new Float64Array(frame.verdictCount),
    doubt: 0,
    work: 0,
    budget: Number.POSITIVE_INFINITY,
  };
  const root = levelAt(search, 0);
  root.weights.set(frame.weights);
  for (let fault = 0; fault < faultCount; fault += 1) {
    const weight = frame.weights[fault] as number;
    root.total += weight;
    root.known += weight * (frame.least[fault] as number);
  }
  root.act = actCost(frame, root.weights, root.total);
  return search;
}

/** The level of a depth, made when first asked for. */
export function levelAt(search: Search, depth: number): Level {
  const made = search.levels[depth];
  if (made !== undefined) return made;
  const { faultCount, checkCount, verdictCount, outcomeTotal, goesOn } = search.frame;
  const options = checkCount + (goesOn ? verdictCount : 0);
  const branches = outcomeTotal + (goesOn ? verdictCount : 0);
  const level: Level = {
    weights: new Float64Array(faultCount),
    paid: 0,
    total: 0,
    act: 0,
    known: 0,
    order: new Int32Array(options),
    count: 0,
    cost: new Float64Array(options),
    value: new Float64Array(options),
    bound: new Float64Array(options),
    gain: new Float64Array(options),
    mass: new Float64Array(branches),
    actAfter: new Float64Array(branches),
    knownAfter: new Float64Array(branches),
    boundAfter: new Float64Array(branches),
  };
  search.levels[depth] = level;
  return level;
}

/** Makes the level below a check and one of its outcomes, and notes the outcome on the path. */
export function enterOutcome(
  search: Search,
  depth: number,
  { check, outcome }: { readonly check: number; readonly outcome: number },
): Level {
  const { frame } = search;
  const level = levelAt(search, depth);
  const next = levelAt(search, depth + 1);
  const branch = (frame.outcomeAt[check] as number) + outcome;
  let at = (frame.likelihoodAt[check] as number) + outcome * frame.faultCount;
  for (let fault = 0; fault < frame.faultCount; fault += 1, at += 1) {
    next.weights[fault] = (level.weights[fault] as number) * (frame.likelihoods[at] as number);
  }
  next.paid = level.paid | (frame.setups[check] as number);
  measureBranch(level, next, branch);
  search.outcomes[check] = outcome;
  return next;
}

/** Makes the level below the failure of a verdict. */
export function enterFailure(search: Search, depth: number, verdict: number): Level {
  const { frame } = search;
  const level = levelAt(search, depth);
  const next = levelAt(search, depth + 1);
  next.weights.set(level.weights);
  const end = frame.fixedAt[verdict + 1] as number;
  for (let at = frame.fixedAt[verdict] as number; at < end; at += 1) {
    next.weights[frame.fixed[at] as number] = 0;
  }
  next.paid = level.paid;
  measureBranch(level, next, frame.outcomeTotal + verdict);
  return next;
}

function measureBranch(level: Level, next: Level, branch: number): void {
  next.total = level.mass[branch] as number;
  next.act = level.actAfter[branch] as number;
  next.known = level.knownAfter[branch] as number;
}
