/**
 * How much each finding weighs for the verdict, and what the verdict hangs on.
 */
import type { Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { beliefOf, posteriorOf, stateFindings, type StateFinding } from './belief.ts';
import { likeliest } from './findings.ts';
import type { FindingWeightMessage, WeightsMessage } from './message.ts';
import type { CaseState } from './state.ts';

/** Decibans below which a finding says nothing worth telling. */
const leastTold = 0.5;

/**
 * The weight of evidence of each finding for a fault, the heaviest first, and for each which fault
 * would lead without it.
 */
export function weightsMessage(flow: Flow, state: CaseState, fault: string): WeightsMessage {
  const { findings } = assess(flow, state);
  const faults = Object.keys(flow.faults);
  const found = stateFindings(flow, findings);
  const chanceAfter = found.map((_, index) => shareOf(found.slice(0, index + 1)));
  const told = found.flatMap(({ id }, index): readonly FindingWeightMessage[] => {
    const decibans = decibansBetween(
      index === 0 ? shareOf([]) : (chanceAfter[index - 1] ?? 0),
      chanceAfter[index] ?? 0,
    );
    if (!(Math.abs(decibans) >= leastTold)) return [];
    const others = found.filter((_, position) => position !== index);
    const leader = leaderOf(faults, beliefOf(flow, posteriorOf(flow, findings, others)));
    const answer = likeliest(findings.known.finding(id)?.weights ?? {})?.[0];
    return [
      {
        decibans,
        ...(answer === undefined ? {} : { check: id, answer }),
        ...(leader === fault ? {} : { otherwise: leader }),
      },
    ];
  });
  return {
    kind: 'weights',
    fault,
    findings: told.toSorted((one, other) => Math.abs(other.decibans) - Math.abs(one.decibans)),
  };

  function shareOf(some: readonly StateFinding[]): number {
    return beliefOf(flow, posteriorOf(flow, findings, some))[faults.indexOf(fault)] ?? 0;
  }
}

/**
 * How far the odds moved between two probabilities, decibans. Source: I. J. Good 1950, Probability
 * and the Weighing of Evidence (from memory).
 */
function decibansBetween(before: number, after: number): number {
  return 10 * (Math.log10(after / (1 - after)) - Math.log10(before / (1 - before)));
}

function leaderOf(faults: readonly string[], belief: Float64Array): string {
  let best = 0;
  for (let index = 1; index < belief.length; index += 1) {
    if ((belief[index] ?? 0) > (belief[best] ?? 0)) best = index;
  }
  return faults[best] ?? '';
}
