import type { EvidenceModel } from './evidence-model.ts';
import type { Finding } from './finding.ts';
import { impossibleFinding } from './impossible-finding.ts';
import { addFinding, logPriors } from './log-weights.ts';
import { membership } from './proposition.ts';
import type { Proposition } from './proposition.ts';

/** Decibans in one unit of natural logarithm. */
const DECIBANS_PER_NAT = 10 / Math.LN10;

/** How far one finding moved the odds of a proposition. */
export interface FindingWeight {
  /** The finding. */
  readonly id: string;
  /**
   * 10 lg of the factor on the odds: above 0 speaks for, below 0 against, 10 is ten to one.
   * Infinite where physics leaves nothing else, or rules the proposition out; 0 from then on.
   */
  readonly decibans: number;
}

/**
 * What each finding, in the order asked and given the earlier ones, did for a proposition, in
 * decibans. They sum to 10 lg(posterior odds / prior odds); single ones depend on the order.
 *
 * Source: I. J. Good 1950, Probability and the Weighing of Evidence (from memory).
 *
 * @throws EvidenceError `unknown-hypothesis`; otherwise as `posterior` does
 */
export function weightOfEvidence(
  model: EvidenceModel,
  findings: readonly Finding[],
  proposition: Proposition,
): readonly FindingWeight[] {
  const member = membership(model, proposition);
  const weights = logPriors(model);
  let odds = logOdds(weights, member);
  return findings.map((finding) => {
    addFinding(weights, model, finding);
    const next = logOdds(weights, member);
    if (Number.isNaN(next)) throw impossibleFinding(model, findings);
    // Odds of nought or infinity cannot move any more, and their difference would be NaN.
    const moved = Number.isFinite(odds) ? next - odds : 0;
    odds = next;
    return { id: finding.id, decibans: moved * DECIBANS_PER_NAT };
  });
}

/** Natural logarithm of the odds; NaN when no weight is left on either side. */
function logOdds(weights: Float64Array, member: readonly boolean[]): number {
  return logSum(weights, member, true) - logSum(weights, member, false);
}

/** Logarithm of the summed weights of one side, its greatest taken off first; minus infinity for none. */
function logSum(weights: Float64Array, member: readonly boolean[], side: boolean): number {
  let greatest = Number.NEGATIVE_INFINITY;
  weights.forEach((weight, index) => {
    if (member[index] === side && weight > greatest) greatest = weight;
  });
  if (greatest === Number.NEGATIVE_INFINITY) return greatest;
  let sum = 0;
  weights.forEach((weight, index) => {
    if (member[index] === side) sum += Math.exp(weight - greatest);
  });
  return greatest + Math.log(sum);
}
