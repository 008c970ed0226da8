/**
 * What comes next: the first check, in the written order, that may be asked and bears on the case;
 * the verdict once enough is known; the end once the repair has been proved.
 *
 * Choosing among the possible checks by their worth is a matter of this file alone.
 */
import { checksOf } from '../flow/condition.ts';
import type { Check, Flow, Stage } from '../flow/flow.ts';
import { assess, type Assessment } from './assessment.ts';
import { leadersWithin } from './belief.ts';
import type { DoneMessage } from './message.ts';
import { bearsOn, hasKit, wayToAsk } from './possible.ts';
import { latestAnswer, type Answer, type CaseState, type Next } from './state.ts';

/** A leading fault this likely that can no longer be proved ends the questions. */
const likelyEnough = 0.95;

/** What is sent where the caller needs no help. */
const nobody = 'nothing';

/** A dispatcher does not reckon with answers less likely than this. */
const leastLikely = 0.03;

interface Scope {
  readonly assessment: Assessment;
  readonly stages: readonly Stage[];
}

/** Chooses what comes next. Deterministic, no side effects. */
export function chooseNext(flow: Flow, state: CaseState): Next {
  if (state.outcome !== null) return { to: 'closed', outcome: state.outcome };
  const assessment = assess(flow, state);
  const index = flow.stages.findIndex(({ id }) => id === flow.verdictAfter);
  if (state.verdict !== null) {
    const next = firstOpen(flow, state, { assessment, stages: flow.stages.slice(index + 1) });
    return next ?? { to: 'closed', outcome: outcomeOf(flow, state, assessment) };
  }
  const stages = flow.stages.slice(0, index + 1);
  if (state.wanted !== null) {
    const stage = stages.find(({ checks }) => checks.includes(state.wanted ?? ''));
    const check = flow.checks[state.wanted];
    if (
      stage !== undefined &&
      check !== undefined &&
      isPossible(flow, check, { state, assessment })
    ) {
      return { to: 'check', stage: stage.id, check: check.id };
    }
  }
  if (isEnough(flow, state, { assessment, stages })) return { to: 'verdict' };
  return firstOpen(flow, state, { assessment, stages }) ?? { to: 'verdict' };
}

/** Every check of the given stages that could be asked now, in the written order. */
function possibleChecks(flow: Flow, state: CaseState, scope: Scope): readonly Check[] {
  return scope.stages.flatMap(({ checks }) =>
    checks.flatMap((id) => {
      const check = flow.checks[id];
      return check !== undefined &&
        isOpen(check, state, scope.assessment) &&
        isPossible(flow, check, { state, assessment: scope.assessment })
        ? [check]
        : [];
    }),
  );
}

function firstOpen(flow: Flow, state: CaseState, scope: Scope): Next | undefined {
  for (const stage of scope.stages) {
    for (const id of stage.checks) {
      const check = flow.checks[id];
      if (check === undefined || !isOpen(check, state, scope.assessment)) continue;
      if (!belongsToProof(flow, state, check)) continue;
      if (!isPossible(flow, check, { state, assessment: scope.assessment })) continue;
      return { to: 'check', stage: stage.id, check: id };
    }
  }
  return undefined;
}

/** After the verdict only work and what proves this fault's repair is asked. */
function belongsToProof(flow: Flow, state: CaseState, check: Check): boolean {
  if (state.verdict === null || check.form.kind === 'work') return true;
  return Object.hasOwn(proofOfRepair(flow, state), check.id);
}

/** The checks that prove the repair, with the answers that count as good. */
function proofOfRepair(flow: Flow, state: CaseState): Readonly<Record<string, readonly string[]>> {
  const started = state.raised
    .map((id) => flow.interrupts[id])
    .find((interrupt) => interrupt?.then === 'prove');
  return started?.prove ?? flow.faults[state.verdict?.fault ?? '']?.prove ?? {};
}

/** Not answered yet, or to be asked once more after something was put right. */
function isOpen(check: Check, state: CaseState, assessment: Assessment): boolean {
  const answers = state.answers[check.id];
  const first = answers?.[0];
  if (answers === undefined || first === undefined) return true;
  if (answers.length > 1 || first.status !== 'answered') return false;
  if (!('unit' in first.value)) return first.value.some((answer) => check.again.includes(answer));
  return isCoarse(check, assessment);
}

/**
 * A reading too near a bound is worth a second look only where the figure is coarse, a tenth of a
 * volt say: the same meter repeats its own error.
 */
function isCoarse(check: Check, assessment: Assessment): boolean {
  const placed = assessment.findings.placed.get(check.id);
  if (placed?.bounds === undefined || placed.quantity.unit !== 'V') return false;
  const { value, resolution = 0 } = placed.quantity;
  return (
    resolution >= 0.1 &&
    placed.bounds.some(({ low, high }) => value > low - resolution && value < high + resolution)
  );
}

function isPossible(
  flow: Flow,
  check: Check,
  { state, assessment }: { readonly state: CaseState; readonly assessment: Assessment },
): boolean {
  return (
    wayToAsk(check, assessment.stops) !== 'never' &&
    hasKit(flow, check, state) &&
    bearsOn(check, assessment.findings.known)
  );
}

/** True when more answers would not change what is done. */
function isEnough(flow: Flow, state: CaseState, scope: Scope): boolean {
  const { assessment } = scope;
  if (assessment.proved.length > 0) return true;
  const [leader] = assessment.ranking;
  if (leader === undefined) return true;
  if (state.context['role'] === 'dispatcher') return isSendSettled(flow, state, scope);
  return leader[1] >= likelyEnough && !isProvable(flow, state, { assessment, fault: leader[0] });
}

/** True where some proof of the fault still lacks only checks that can be asked. */
function isProvable(
  flow: Flow,
  state: CaseState,
  scope: { readonly assessment: Assessment; readonly fault: string },
): boolean {
  const { assessment } = scope;
  const wanted = (flow.faults[scope.fault]?.proofs ?? []).flatMap(checksOf);
  return wanted.some((id) => {
    const check = flow.checks[id];
    return (
      check !== undefined &&
      isOpen(check, state, assessment) &&
      isPossible(flow, check, { state, assessment })
    );
  });
}

/** True where no answer that is still possible would change what a dispatcher sends. */
function isSendSettled(flow: Flow, state: CaseState, scope: Scope): boolean {
  const { findings, ranking } = scope.assessment;
  const leader = ranking[0]?.[0] ?? '';
  const send = flow.faults[leader]?.send;
  // Nobody is sent only on proof, where it can be had over the telephone.
  if (send === nobody && isProvable(flow, state, { ...scope, fault: leader })) return false;
  const checks = possibleChecks(flow, state, scope).map(({ id }) => id);
  const open = new Set(checks);
  const remedies = flow.faults[leader]?.remedies ?? [];
  // A remedy of the leading fault that needs someone else may still turn on an answer.
  if (
    remedies.some(
      (remedy) =>
        remedy.send !== undefined &&
        remedy.when !== undefined &&
        checksOf(remedy.when).some((check) => open.has(check)),
    )
  ) {
    return false;
  }
  const leaders = leadersWithin(flow, findings, { checks, least: leastLikely });
  return [...leaders].every((fault) => flow.faults[fault]?.send === send);
}

/** How the case ended, from the readings taken after the repair. */
function outcomeOf(flow: Flow, state: CaseState, assessment: Assessment): DoneMessage['outcome'] {
  const proof = Object.entries(proofOfRepair(flow, state));
  const work = Object.values(flow.checks).filter(({ form }) => form.kind === 'work');
  if (work.some(({ id }) => isLeftUndone(latestAnswer(state, id)))) return 'handed-over';
  const results = proof.map(([check, good]) => {
    const finding = assessment.findings.known.finding(check);
    if (finding === undefined) return undefined;
    return good.reduce((sum, answer) => sum + (finding.weights[answer] ?? 0), 0) > 0.5;
  });
  if (results.includes(false)) return 'still-failing';
  return results.includes(true) && !results.includes(undefined) ? 'proved-repaired' : 'unproved';
}

function isLeftUndone(answer: Answer | undefined): boolean {
  return answer !== undefined && answer.status !== 'answered';
}
