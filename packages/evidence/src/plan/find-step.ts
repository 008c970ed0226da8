import { deepen, NO_DOUBT } from './deepen.ts';
import type { DiagnosisProblem } from './diagnosis-problem.ts';
import type { Position } from './diagnosis-state.ts';
import { estimate } from './estimate.ts';
import type { Found } from './found.ts';
import { frameOf } from './frame.ts';
import { createSearch, levelAt } from './search.ts';
import { sweepSteps } from './sweep.ts';
import { widen } from './widen.ts';

/** Up to so many checks it is tried at once whether the whole can be searched. */
const MODEST_CHECKS = 12;
const STEPS_MODEST = 1_000_000;

/** How many of the most promising checks are searched, with how many steps of the inner loops. */
const NARROWINGS = [
  { checks: 5, steps: 400_000 },
  { checks: 8, steps: 600_000 },
] as const;

/** Steps for the search among all checks; where it cannot even see two steps it is not begun. */
const STEPS = 1_200_000;

/**
 * Finds the first step of the cheapest plan. Modest problems are searched whole. Else a wide look,
 * then ever deeper ones among more and more checks, each within its own amount of work, none
 * dearer than the one before; and in a large problem, whose plans are too long to be followed, an
 * estimate where that is lower than any plan found.
 */
export function findStep(problem: DiagnosisProblem, position: Position): Found {
  const frame = frameOf(problem, position);
  const acting = levelAt(createSearch(frame), 0).act;
  let found: Found = { type: 'act', index: -1, value: acting, proof: 'exact' };
  if (frame.checkCount === 0 && !frame.goesOn) return found;
  if (frame.checkCount <= MODEST_CHECKS) {
    const limits = { steps: STEPS_MODEST, doubts: NO_DOUBT };
    found = deepen(createSearch(frame), { ...found, proof: 'searched' }, limits);
    if (found.proof === 'exact') return found;
  }
  const wide = widen(createSearch(frame));
  if (wide.found.value < found.value) found = wide.found;
  const isLarge = sweepSteps(frame) * frame.outcomeTotal > STEPS;
  for (const { checks, steps } of isLarge ? NARROWINGS.slice(0, 1) : NARROWINGS) {
    if (checks >= frame.checkCount) break;
    const only = wide.checks.slice(0, checks);
    found = deepen(createSearch(frameOf(problem, position, only)), found, { steps });
    found = { ...found, proof: 'searched' };
  }
  if (!isLarge) found = deepen(createSearch(frame), found, { steps: STEPS });
  if (found.proof === 'exact' || frame.checkCount <= MODEST_CHECKS) return found;
  const estimated = estimate(createSearch(frame));
  return estimated.value < found.value ? estimated : found;
}
