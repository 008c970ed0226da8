/**
 * What proves a repair, and how the case ended.
 */
import type { Check, Flow, Interrupt } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import type { DoneMessage } from './message.ts';
import { bearsOn } from './possible.ts';
import { isSaid, latestAnswer, type CaseState } from './state.ts';

/**
 * True for the work, and for the checks that prove it; a vehicle that has started needs none. Where
 * the work was not done there is nothing to prove.
 */
export function provesRepair(flow: Flow, state: CaseState, check: Check): boolean {
  if (check.form.kind === 'work') return startedBy(flow, state) === undefined;
  if (isLeftUndone(flow, state)) return false;
  // What a stop hung on is looked at once more, whatever the fault was.
  if (check.form.kind === 'choice' && check.like !== undefined) return true;
  const proof = proofOfRepair(flow, state);
  return Object.hasOwn(proof, check.id) || Object.hasOwn(proof, check.like ?? '');
}

/** How the case ended, from the readings taken after the repair. */
export function outcomeOf(flow: Flow, state: CaseState): DoneMessage['outcome'] {
  const isDone = workOf(flow).every(({ id }) => isSaid(latestAnswer(state, id)));
  if (!isDone && startedBy(flow, state) === undefined) return 'handed-over';
  const results = proofResults(flow, state).map(([, result]) => result);
  if (results.includes(false)) return 'still-failing';
  return results.includes(true) && !results.includes(undefined) ? 'proved-repaired' : 'unproved';
}

function workOf(flow: Flow): readonly Check[] {
  return Object.values(flow.checks).filter((check) => check.form.kind === 'work');
}

/** True where some work was asked for and not done, and the vehicle does not run of itself. */
function isLeftUndone(flow: Flow, state: CaseState): boolean {
  const isUndone = ({ id }: Check): boolean => {
    const answer = latestAnswer(state, id);
    return answer !== undefined && !isSaid(answer);
  };
  return startedBy(flow, state) === undefined && workOf(flow).some(isUndone);
}

/** How a closed case ended; where the repair is not proved, with what is missing for that. */
export function doneMessage(flow: Flow, state: CaseState): DoneMessage {
  const { outcome } = state;
  const lacks = proofResults(flow, state).flatMap(([check, result]) =>
    result === undefined ? [check] : [],
  );
  return {
    kind: 'done',
    outcome: outcome ?? 'ended',
    ...(outcome === 'unproved' && lacks.length > 0 ? { lacks } : {}),
  };
}

/** Each check of the proof with how it came out, as `isGood` has it. */
function proofResults(
  flow: Flow,
  state: CaseState,
): readonly (readonly [check: string, result: boolean | undefined])[] {
  return Object.entries(proofOfRepair(flow, state)).map(([check, good]) => [
    check,
    isGood(flow, state, { check, good }),
  ]);
}

/**
 * The checks that prove the repair, with the answers that count as good: that it runs meanwhile is
 * proved otherwise than a repair, and a remedy may have a proof of its own.
 */
export function proofOfRepair(
  flow: Flow,
  state: CaseState,
): Readonly<Record<string, readonly string[]>> {
  const started = startedBy(flow, state);
  if (started !== undefined) return started.prove;
  const { verdict } = state;
  const fault = flow.faults[verdict?.fault ?? ''];
  const done = fault?.remedies.find(({ remedy }) => remedy === verdict?.remedy);
  return done?.prove ?? fault?.prove ?? {};
}

/** The interrupt by which the vehicle is known to run meanwhile, if one was raised. */
function startedBy(flow: Flow, state: CaseState): Interrupt | undefined {
  return state.raised
    .map((id) => flow.interrupts[id])
    .find((interrupt) => interrupt?.then === 'prove');
}

/** Undefined where it was not taken. What has no bound on this vehicle counts as good. */
function isGood(
  flow: Flow,
  state: CaseState,
  proof: { readonly check: string; readonly good: readonly string[] },
): boolean | undefined {
  const { known } = assess(flow, state).findings;
  const check = flow.checks[proof.check];
  if (check !== undefined && !bearsOn(check, known)) return true;
  // Asked again later, the later answer counts.
  const later = Object.values(flow.checks).find(({ like }) => like === proof.check);
  const finding = known.finding(later?.id ?? '') ?? known.finding(proof.check);
  if (finding === undefined) return undefined;
  return proof.good.reduce((sum, answer) => sum + (finding.weights[answer] ?? 0), 0) > 0.5;
}
