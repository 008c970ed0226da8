/**
 * Whom a case would have sent, were one answer more the last that is asked for.
 */
import type { Chart } from '../chart/compile.ts';
import type { Case } from './case.ts';
import { withAnswer } from './record.ts';
import { verdictOf, withPresentRemedy } from './verdict.ts';

/**
 * The help that the verdict would send if a check were answered so, with the hard stops that the
 * answer puts in force; `nothing` where nobody need go. Pure.
 */
export function sentIf(
  { flow }: Pick<Chart, 'flow'>,
  { state }: Case,
  { check, answer }: { readonly check: string; readonly answer: string },
): string {
  const supposed = withAnswer(flow, state, { check, answer: [answer] });
  const { verdict } = supposed;
  return (verdict === null ? verdictOf(flow, supposed) : withPresentRemedy(flow, supposed, verdict))
    .send;
}
