/**
 * What may be done in the end, and what it costs with the mistake that it may be.
 */
import type { Costs } from '../flow/flow.ts';
import type { Assessment } from './assessment.ts';
import { remedyFor, sendFor, type Judged } from './remedy.ts';

/** A remedy, or for a dispatcher someone to send. */
export interface Action {
  readonly id: string;
  /** Minutes, money counted as minutes. */
  readonly cost: number;
  /** More where something else was at fault, for this role. */
  readonly wrongPenalty: number;
  /** The faults that ask for it. */
  readonly fixes: readonly string[];
}

function isSending({ findings }: Assessment): boolean {
  return findings.known.context('role') === 'dispatcher';
}

/** What a fault asks for, judged so surely, of whoever has the case. */
export function actionOf(judged: Judged, assessment: Assessment): string {
  return isSending(assessment) ? sendFor(judged, assessment) : remedyFor(judged, assessment);
}

/** All that some of the faults ask for, were each of them likely. */
export function actionsFor(
  { flow, costs }: { readonly flow: Judged['flow']; readonly costs: Costs },
  assessment: Assessment,
  faults: readonly string[],
): readonly Action[] {
  const role = assessment.findings.known.context('role');
  const acting = isSending(assessment) ? costs.sends : costs.remedies;
  const dearer = (typeof role === 'string' ? costs.wrongTimes[role] : undefined) ?? 1;
  const fixes = new Map<string, string[]>();
  for (const id of faults) {
    const fault = flow.faults[id];
    if (fault === undefined) continue;
    const action = actionOf({ flow, fault, strength: 'likely' }, assessment);
    fixes.set(action, [...(fixes.get(action) ?? []), id]);
  }
  for (const [id, { always }] of Object.entries(acting)) {
    if (always) fixes.set(id, [...faults]);
  }
  return [...fixes].flatMap(([id, fixed]) => {
    const one = acting[id];
    return one === undefined
      ? []
      : [{ id, cost: one.cost, wrongPenalty: one.wrong * dearer, fixes: fixed }];
  });
}

/** Minutes that an action is expected to cost, with the mistake as likely as it is one. */
export function expectedCost(
  { cost, wrongPenalty, fixes }: Action,
  { ranking }: Assessment,
): number {
  const right = ranking
    .filter(([fault]) => fixes.includes(fault))
    .reduce((sum, [, share]) => sum + share, 0);
  return cost + wrongPenalty * (1 - right);
}
