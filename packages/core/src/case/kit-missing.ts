/**
 * Kit that is not at hand, and that would let a case go on.
 */
import type { Chart } from '../chart/compile.ts';
import { assess } from './assessment.ts';
import type { Case } from './case.ts';
import { bearsOn, lackingKit } from './possible.ts';

/**
 * The kit without which a check that bears on the case and was not made can't be, each item once, in
 * the order of the checks; none where a check lacks more than one. Pure.
 */
export function kitMissing({ flow }: Pick<Chart, 'flow'>, { state }: Case): readonly string[] {
  const { known } = assess(flow, state).findings;
  const missing = Object.values(flow.checks).flatMap((check) => {
    const [item, more] = lackingKit(flow, check, state);
    const isOpen = state.answers[check.id] === undefined && bearsOn(check, known);
    return item !== undefined && more === undefined && isOpen ? [item] : [];
  });
  return [...new Set(missing)];
}
