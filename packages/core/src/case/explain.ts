/**
 * How much each finding weighs for the verdict, and what the verdict hangs on.
 */
import { posterior, weightOfEvidence, type PreparedFinding } from '@keyturn/evidence';
import type { Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { preparedFindings } from './belief.ts';
import { evidenceTables } from './evidence-tables.ts';
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
  const { model } = evidenceTables(flow);
  const prepared = preparedFindings(flow, findings);
  const weighed = weightOfEvidence(model, prepared, fault);
  const told = weighed.flatMap(({ id, decibans }, index): readonly FindingWeightMessage[] => {
    if (Math.abs(decibans) < leastTold) return [];
    const leader = leaderWithout(model.hypotheses, posterior(model, without(prepared, index)));
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
}

function without(prepared: readonly PreparedFinding[], index: number): readonly PreparedFinding[] {
  return prepared.filter((_, position) => position !== index);
}

function leaderWithout(hypotheses: readonly string[], belief: Float64Array): string {
  let best = 0;
  for (let index = 1; index < belief.length; index += 1) {
    if ((belief[index] ?? 0) > (belief[best] ?? 0)) best = index;
  }
  return hypotheses[best] ?? '';
}
