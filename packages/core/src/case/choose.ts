/**
 * What comes next: the first check, in the written order, that may be asked and bears on the case;
 * the verdict once enough is known; the end once the repair has been proved.
 *
 * Choosing among the possible checks by their worth is a matter of this file alone.
 */
import { checksOf } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { leadersWithin } from './belief.ts';
import { firstOpen, isAskable, isPossible } from './open-checks.ts';
import { planOf, type PlannedCheck } from './plan.ts';
import { outcomeOf, provesRepair } from './repair-proof.ts';
import type { CaseState, Next } from './state.ts';
import { sendFor } from './verdict.ts';

/** A leading fault this likely that can no longer be proved ends the questions. */
const likelyEnough = 0.95;

/** What is sent where the caller needs no help. */
const nobody = 'nothing';

/** A dispatcher does not reckon with answers less likely than this. */
const leastLikely = 0.03;

/** Chooses what comes next. Deterministic, no side effects. */
export function chooseNext(flow: Flow, state: CaseState): Next {
  if (state.outcome !== null) return { to: 'closed', outcome: state.outcome };
  const { diagnosing, afterwards } = planOf(flow);
  if (state.verdict !== null) {
    const proving = afterwards.filter(({ check }) => provesRepair(flow, state, check));
    const next = firstOpen(flow, state, proving);
    return next ? toCheck(next) : { to: 'closed', outcome: outcomeOf(flow, state) };
  }
  const wanted = diagnosing.find(({ check }) => check.id === state.wanted);
  if (wanted && isPossible(flow, state, wanted.check)) return toCheck(wanted);
  const next = isEnough(flow, state) ? undefined : firstOpen(flow, state, diagnosing);
  return next ? toCheck(next) : { to: 'verdict' };
}

function toCheck({ stage, check }: PlannedCheck): Next {
  return { to: 'check', stage, check: check.id };
}

/** True when more answers would not change what is done. */
function isEnough(flow: Flow, state: CaseState): boolean {
  const { proved, leaders } = assess(flow, state);
  const leader = leaders[0];
  if (proved.length > 0 || leader === undefined) return true;
  if (state.context['role'] === 'dispatcher') return isSendSettled(flow, state, leader[0]);
  return leader[1] >= likelyEnough && !isProvable(flow, state, leader[0]);
}

/** True where some proof of a fault still lacks a check that can be asked. */
function isProvable(flow: Flow, state: CaseState, fault: string): boolean {
  const wanted = (flow.faults[fault]?.proofs ?? []).flatMap(checksOf);
  return wanted.some((id) => {
    const check = flow.checks[id];
    return check !== undefined && isAskable(flow, state, check);
  });
}

/** True where no answer that is still possible would change what a dispatcher sends. */
function isSendSettled(flow: Flow, state: CaseState, leader: string): boolean {
  const assessment = assess(flow, state);
  const sent = (id: string): string | undefined => {
    const fault = flow.faults[id];
    return fault && sendFor({ flow, fault, strength: 'likely' }, assessment);
  };
  const send = sent(leader);
  // Nobody is sent only on proof, where it can be had over the telephone.
  if (send === nobody && isProvable(flow, state, leader)) return false;
  const checks = planOf(flow)
    .diagnosing.filter(({ check }) => isAskable(flow, state, check))
    .map(({ check }) => check.id);
  if (turnsOn(flow, leader, new Set(checks))) return false;
  const leaders = leadersWithin(flow, assessment.findings, { checks, least: leastLikely });
  return [...leaders].every((fault) => sent(fault) === send);
}

/** True where a remedy of a fault needs someone else, and that hangs on an open check. */
function turnsOn(flow: Flow, fault: string, open: ReadonlySet<string>): boolean {
  return (flow.faults[fault]?.remedies ?? []).some(
    ({ send, when }) =>
      send !== undefined && when !== undefined && checksOf(when).some((check) => open.has(check)),
  );
}
