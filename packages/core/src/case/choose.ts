/**
 * What comes next: the first check, in the written order, that may be asked and bears on the case;
 * the verdict once enough is known; the end once the repair has been proved.
 *
 * Choosing among the possible checks by their worth is a matter of this file alone.
 */
import { checksOf, checksToMake, holds, type Condition, type Known } from '../flow/condition.ts';
import type { Check, Fault, Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { answerRows, leadersWithin } from './belief.ts';
import { isOfCircuit } from './circuit-evidence.ts';
import { isDoubted } from './doubt.ts';
import type { Findings } from './findings.ts';
import { firstOpen, isAskable, isPossible, openChecks } from './open-checks.ts';
import { nextAgain, nextByTable } from './judge.ts';
import { planOf, type PlannedCheck } from './plan.ts';
import { bearsOn, covers, hasKit } from './possible.ts';
import { outcomeOf, provesRepair } from './repair-proof.ts';
import type { CaseState, Next } from './state.ts';
import { nobody, remedyFor, sendFor } from './remedy.ts';
import { leadingFault } from './verdict.ts';
import { minutesOf, mostTelling, planFrom, weigh, type WeighedCase } from './worth.ts';

/** A leading fault this likely that can no longer be proved ends the questions. */
const likelyEnough = 0.95;

/** A dispatcher does not reckon with answers less likely than this. */
const leastLikely = 0.03;

/** Chooses what comes next. Deterministic, no side effects. */
export function chooseNext(flow: Flow, state: CaseState): Next {
  if (state.outcome !== null) return { to: 'closed', outcome: state.outcome };
  if (flow.decisions.length > 0) return nextOfTable(flow, state);
  const { diagnosing, afterwards } = planOf(flow);
  const reopened = diagnosing.find(({ check }) => isReopened(flow, state, check));
  if (reopened !== undefined) return toCheck(reopened);
  if (state.verdict !== null) {
    const proving = afterwards.filter(({ check }) => provesRepair(flow, state, check));
    const next = firstOpen(flow, state, proving);
    return next ? toCheck(next) : { to: 'closed', outcome: outcomeOf(flow, state) };
  }
  const wanted = diagnosing.find(({ check }) => check.id === state.wanted);
  if (wanted && isPossible(flow, state, wanted.check)) return toCheck(wanted);
  const next =
    flow.byWorth.length > 0
      ? nextByWorth(flow, state, diagnosing)
      : isEnough(flow, state)
        ? undefined
        : firstOpen(flow, state, diagnosing);
  return next ? toCheck(next) : { to: 'verdict' };
}

/**
 * True for what a danger has opened again: whether all are safe comes before everything else, also
 * before what is told meanwhile.
 */
function isReopened(flow: Flow, state: CaseState, check: Check): boolean {
  return (
    state.answers[check.id] === undefined &&
    state.raised.some((id) => flow.interrupts[id]?.reopens.includes(check.id) === true) &&
    isPossible(flow, state, check)
  );
}

/** Where a table decides: what it hangs on, then the decision, then what that asks for once more. */
function nextOfTable(flow: Flow, state: CaseState): Next {
  if (state.decision === null) {
    const next = nextByTable(flow, state);
    return next ? toCheck(next) : { to: 'verdict' };
  }
  const again = nextAgain(flow, state);
  return again ? toCheck(again) : { to: 'closed', outcome: 'decided' };
}

function toCheck({ stage, check }: PlannedCheck): Next {
  return { to: 'check', stage, check: check.id };
}

/** The next check where checks are weighed against each other; undefined when it is enough. */
function nextByWorth(
  flow: Flow,
  state: CaseState,
  diagnosing: readonly PlannedCheck[],
): PlannedCheck | undefined {
  // What does not fit together proves nothing: the answer that fits least is asked once more.
  const doubted = diagnosing.find(({ check }) => isDoubted(flow, state, check.id));
  if (doubted && isPossible(flow, state, doubted.check)) return doubted;
  const open = openChecks(flow, state, diagnosing);
  const { proved } = assess(flow, state);
  if (proved.length > 0) return rivalCheck(flow, state, open);
  // What was to be put right comes first, and what the weighing itself goes by: stages that go as
  // written, and bare facts.
  const first =
    open.find(({ check }) => state.answers[check.id] !== undefined) ??
    open.find(
      ({ stage, check }) =>
        !flow.byWorth.includes(stage) ||
        (flow.likelihoods[check.id] === undefined && !isOfCircuit(flow, check.id)),
    );
  if (first !== undefined) return first;
  const isSending = state.context['role'] === 'dispatcher';
  const [leader] = assess(flow, state).leaders;
  if (isSending && leader !== undefined && isSendSettled(flow, state, leader[0])) return undefined;
  const weighed = weigh(flow, state, open);
  if (weighed === undefined) return open[0];
  const plan = planFrom(weighed);
  const chosen =
    plan.type === 'check'
      ? plan.id
      : (checkForRemedy(flow, state, open) ??
        checkForProof(flow, state, open) ??
        stillTelling(flow, state, weighed));
  const next = open.find(({ check }) => check.id === chosen);
  return next === undefined ? undefined : (gateOf(flow, next.check, open) ?? next);
}

/** Short of certainty what tells most is still asked, so that an open case is not left open. */
function stillTelling(flow: Flow, state: CaseState, weighed: WeighedCase): string | undefined {
  const [leader] = assess(flow, state).leaders;
  if ((leader?.[1] ?? 0) >= likelyEnough) return undefined;
  // A caller on the line is only kept for what tells much at once.
  return mostTelling(weighed, state.context['role'] === 'dispatcher' ? 0.08 : 0.01);
}

/** A rival this likely is looked at before a fault counts as proved, where it takes a moment. */
const likelyRival = 0.1;
const momentMinutes = 2;

/** An open check that alone would prove another fault that is still likely. */
function rivalCheck(
  flow: Flow,
  state: CaseState,
  open: readonly PlannedCheck[],
): PlannedCheck | undefined {
  const { leaders, proved, findings } = assess(flow, state);
  const rivals = leaders.filter(
    ([id, share]) => share >= likelyRival && !proved.some((fault) => fault.id === id),
  );
  const deciding = rivals.flatMap(([id]) =>
    (flow.faults[id]?.proofs ?? [])
      .filter((proof) => holds(proof, findings.known) !== false)
      .map((proof) => checksOf(proof).filter((check) => !findings.known.finding(check)))
      .flatMap((missing) => (new Set(missing).size === 1 ? missing : [])),
  );
  return open.find(({ check }) => deciding.includes(check.id) && minutesOf(check) <= momentMinutes);
}

/**
 * What a check's own condition hangs on, and what a hard stop hangs on that would forbid it, is
 * asked before it where the flow is written so: a gear lever before a start.
 */
function gateOf(flow: Flow, check: Check, open: readonly PlannedCheck[]): PlannedCheck | undefined {
  const stops = flow.stops.filter(
    (stop) => covers(stop.forbids, check) && !stop.except.includes(check.id),
  );
  const conditions = [
    ...stops.map(({ when }) => when),
    ...(check.requires ? [check.requires] : []),
  ];
  const hanging = conditions.flatMap(checksOf);
  const before = open.slice(
    0,
    open.findIndex((one) => one.check.id === check.id),
  );
  return before.find((one) => hanging.includes(one.check.id));
}

/** A proof is sought for so many minutes, however likely it is that it fails. */
const proofMinutes = 30;

/** Nobody waits for hours to have a fault this likely proved, if it changes nothing. */
const beyondDoubt = 0.99;

/**
 * A check that takes the leading fault nearer to its proof: of the proofs still open the one that
 * takes least, and of its checks the shortest. What takes long is only made where the proof would
 * change what is done or there is doubt, and where the mistake that it spares, as likely as the proof
 * is to come about, would take longer; a dispatcher needs none, but for sending nobody.
 */
function checkForProof(
  flow: Flow,
  state: CaseState,
  open: readonly PlannedCheck[],
): string | undefined {
  const assessment = assess(flow, state);
  const fault = leadingFault(flow, assessment.ranking);
  const judged = { flow, fault, strength: 'likely' } as const;
  const isSending = state.context['role'] === 'dispatcher';
  if (isSending && sendFor(judged, assessment) !== nobody) return undefined;
  const mistake = Math.max(
    ...fault.remedies.map(({ remedy }) => flow.costs?.remedies[remedy]?.wrong ?? 0),
  );
  const share = assessment.ranking.find(([id]) => id === fault.id)?.[1] ?? 0;
  const changes =
    remedyFor({ ...judged, strength: 'proved' }, assessment) !== remedyFor(judged, assessment);
  const isOpen = (id: string): boolean => open.some(({ check }) => check.id === id);
  const { findings } = assessment;
  const missing = fault.proofs
    .filter((proof) => holds(proof, findings.known) !== false)
    .map((proof) => ({
      proof,
      checks: [...new Set(checksToMake(proof))]
        .filter((id) => !findings.known.finding(id))
        .flatMap((id) => flow.checks[id] ?? []),
    }))
    // One check may have to be made before another can be.
    .filter(
      ({ checks }) =>
        checks.some(({ id }) => isOpen(id)) &&
        checks.every(
          (check) => state.answers[check.id] === undefined && hasKit(flow, check, state),
        ),
    )
    .map(({ proof, checks }) => ({
      proof,
      checks,
      takes: checks.reduce((sum, check) => sum + minutesOf(check), 0),
    }))
    .filter(
      ({ proof, checks, takes }) =>
        takes <= proofMinutes ||
        ((changes || share < beyondDoubt) &&
          takes <= mistake * share * chanceToProve(flow, findings, { fault, proof, checks })),
    )
    .sort((one, other) => one.takes - other.takes);
  return missing[0]?.checks
    .filter(({ id }) => isOpen(id))
    .toSorted((one, other) => minutesOf(one) - minutesOf(other))[0]?.id;
}

/**
 * How likely it is, with a fault, that the longest of the checks that a proof of it lacks answers so
 * that the proof may still come about, and the others can then be made.
 */
function chanceToProve(
  flow: Flow,
  findings: Findings,
  sought: { readonly fault: Fault; readonly proof: Condition; readonly checks: readonly Check[] },
): number {
  const { fault, proof, checks } = sought;
  const { known } = findings;
  const [longest, ...others] = checks.toSorted((one, other) => minutesOf(other) - minutesOf(one));
  const check = longest?.id ?? '';
  const position = Object.keys(flow.faults).indexOf(fault.id);
  const rows = answerRows(flow, findings, check);
  if (rows === undefined) return 1;
  return [...rows].reduce((sum, [answer, row]) => {
    const supposed = { check, weights: { [answer]: 1 } };
    const then: Known = {
      finding: (id) => (id === check ? supposed : known.finding(id)),
      findings: (id) => (id === check ? [supposed] : known.findings(id)),
      context: (path) => known.context(path),
      raised: (interrupt) => known.raised(interrupt),
      limit: (name) => known.limit(name),
    };
    const isPossibleThen =
      holds(proof, then) !== false && others.every((other) => bearsOn(other, then));
    return isPossibleThen ? sum + (row[position] ?? 0) : sum;
  }, 0);
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

/** An open check that decides between the remedies of the leading fault. */
function checkForRemedy(
  flow: Flow,
  state: CaseState,
  open: readonly PlannedCheck[],
): string | undefined {
  const { remedies } = leadingFault(flow, assess(flow, state).ranking);
  const hanging = remedies.flatMap(({ when }) => (when === undefined ? [] : checksOf(when)));
  return open.find(({ check }) => hanging.includes(check.id))?.check.id;
}

/** True where a remedy of a fault needs someone else, and that hangs on an open check. */
function turnsOn(flow: Flow, fault: string, open: ReadonlySet<string>): boolean {
  return (flow.faults[fault]?.remedies ?? []).some(
    ({ send, when }) =>
      send !== undefined && when !== undefined && checksOf(when).some((check) => open.has(check)),
  );
}
