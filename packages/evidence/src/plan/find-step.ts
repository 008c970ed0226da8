import { deepen, NO_DOUBT } from './deepen.ts';
import type { DiagnosisProblem } from './diagnosis-problem.ts';
import type { Position } from './diagnosis-state.ts';
import { estimate } from './estimate.ts';
import type { Found } from './found.ts';
import { frameOf } from './frame.ts';
import type { Frame } from './frame.ts';
import { createSearch, levelAt } from './search.ts';
import { sweepSteps } from './sweep.ts';
import { widen } from './widen.ts';

/** Up to so many checks it is tried at once whether the whole can be searched. */
const MODEST_CHECKS = 12;
const STEPS_MODEST = 300_000;

/**
 * How many of the most promising checks are searched, with how many steps of the inner loops: fewer
 * where there are few checks, for there the search among all of them sees as much.
 */
const NARROWINGS = [
  { checks: 5, steps: 400_000, stepsModest: 100_000 },
  { checks: 8, steps: 600_000, stepsModest: 200_000 },
] as const;

/** Steps for the search among all checks; where it cannot even see two steps it is not begun. */
const STEPS = 1_200_000;

/**
 * An estimate below this share of acting at once is lower than any plan that can be searched among
 * many checks, or begins alike. Found by simulated cases of large invented problems, and in 218 of 219
 * choices of the flow for a start that fails.
 */
const CLEAR = 0.9;

/** What a step is looked for in, and how hard. */
export interface Scope {
  /** Of the position, with all open checks in it. */
  readonly frame: Frame;
  /** The share of the usual steps that the searches may take. */
  readonly effort: number;
}

/**
 * Finds the first step of the cheapest plan. Modest problems are searched whole. Where there are
 * many checks, whose plans are too long to be followed, an estimate where that is clear. Else a wide
 * look, then ever deeper ones among more and more checks, each within its own amount of work, none
 * dearer than the one before; and where there are many checks the estimate, if lower than any plan.
 */
export function findStep(problem: DiagnosisProblem, position: Position, scope: Scope): Found {
  const { frame, effort } = scope;
  const acting = levelAt(createSearch(frame), 0).act;
  let found: Found = { type: 'act', index: -1, value: acting, proof: 'exact' };
  if (frame.checkCount === 0 && !frame.goesOn) return found;
  if (frame.checkCount <= MODEST_CHECKS) {
    const limits = { steps: effort * STEPS_MODEST, doubts: NO_DOUBT };
    found = deepen(createSearch(frame), { ...found, proof: 'searched' }, limits);
    if (found.proof === 'exact') return found;
  }
  const estimated = frame.checkCount > MODEST_CHECKS ? estimate(createSearch(frame)) : undefined;
  if (estimated !== undefined && estimated.value < CLEAR * acting) return estimated;
  const isLarge = sweepSteps(frame) * frame.outcomeTotal > STEPS;
  const wide = widen(createSearch(frame));
  if (wide.found.value < found.value) found = wide.found;
  for (const { checks, steps, stepsModest } of isLarge ? NARROWINGS.slice(0, 1) : NARROWINGS) {
    if (checks >= frame.checkCount) break;
    const only = wide.checks.slice(0, checks);
    const own = frame.checkCount <= MODEST_CHECKS ? stepsModest : steps;
    const limits = { steps: effort * own };
    found = deepen(createSearch(frameOf(problem, position, only)), found, limits);
    found = { ...found, proof: 'searched' };
  }
  if (!isLarge) found = deepen(createSearch(frame), found, { steps: effort * STEPS });
  return found.proof !== 'exact' && estimated !== undefined && estimated.value < found.value
    ? estimated
    : found;
}
