import { deepen, NO_DOUBT } from './deepen.ts';
import type { DiagnosisProblem } from './diagnosis-problem.ts';
import type { Position } from './diagnosis-state.ts';
import type { Found } from './found.ts';
import { frameOf } from './frame.ts';
import { createSearch, levelAt } from './search.ts';
import { sweepSteps } from './sweep.ts';
import { widen } from './widen.ts';

/** Up to so many checks it is tried at once whether the whole can be searched. */
const MODEST_CHECKS = 12;
const STEPS_MODEST = 1_500_000;

/** How many of the most promising checks are searched, with how many steps of the inner loops. */
const NARROWINGS = [
  { checks: 5, steps: 500_000 },
  { checks: 8, steps: 800_000 },
] as const;

/** Steps for the search among all checks. */
const STEPS = 1_700_000;

/**
 * Finds the first step of the cheapest plan: a wide look, then ever deeper ones among more and more
 * checks, each within its own amount of work. What is found is never dearer than what was found
 * before, and the cost of a real plan.
 */
export function findStep(problem: DiagnosisProblem, position: Position): Found {
  const frame = frameOf(problem, position);
  const acting = levelAt(createSearch(frame), 0).act;
  let found: Found = { type: 'act', index: -1, value: acting, isExact: true };
  if (frame.checkCount === 0 && !frame.goesOn) return found;
  if (frame.checkCount <= MODEST_CHECKS) {
    const limits = { steps: STEPS_MODEST, doubts: NO_DOUBT };
    found = deepen(createSearch(frame), { ...found, isExact: false }, limits);
    if (found.isExact) return found;
  }
  const wide = widen(createSearch(frame));
  if (wide.found.value < found.value) found = wide.found;
  for (const { checks, steps } of NARROWINGS) {
    if (checks >= wide.checks.length) break;
    const only = wide.checks.slice(0, checks);
    found = deepen(createSearch(frameOf(problem, position, only)), found, { steps });
    found = { ...found, isExact: false };
  }
  const twoSteps = sweepSteps(frame) * frame.outcomeTotal;
  return twoSteps > STEPS ? found : deepen(createSearch(frame), found, { steps: STEPS });
}
