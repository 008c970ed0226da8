/**
 * Everything that follows from the state of a case.
 */
import { holds } from '../flow/condition.ts';
import type { Fault, Flow, Stop } from '../flow/flow.ts';
import { beliefIn, ranked } from './belief.ts';
import { findingsOf, type Findings } from './findings.ts';
import type { Weighted } from './message.ts';
import { stopsInForce } from './possible.ts';
import type { CaseState } from './state.ts';

/** What is believed of a case, and what binds it. */
export interface Assessment {
  readonly findings: Findings;
  /** The faults worth showing, likeliest first. */
  readonly leaders: readonly Weighted[];
  /** Every fault, likeliest first. */
  readonly ranking: readonly Weighted[];
  /** The hard stops in force. */
  readonly stops: readonly Stop[];
  /** Faults that the findings prove, likeliest first. */
  readonly proved: readonly Fault[];
}

/**
 * Conditions that prove a fault prove nothing while everything else speaks against it: then some
 * reading is wrong, or there are two faults. Below this probability a proof does not stand.
 */
const leastProbability = 0.2;

/** A fault less likely than this is not worth showing. */
const leastShown = 0.005;

interface Assessed {
  readonly flow: Flow;
  readonly state: CaseState;
  readonly assessment: Assessment;
}

/** The latest assessment, so that the steps of one turn share it. */
let latest: Assessed | undefined;

/** Assesses a state. Pure: a state with the same content has the same assessment. */
export function assess(flow: Flow, state: CaseState): Assessment {
  if (latest === undefined || !isSame(latest, flow, state)) {
    latest = { flow, state, assessment: work(flow, state) };
  }
  return latest.assessment;
}

/** True where nothing that an assessment depends on differs. */
function isSame(before: Assessed, flow: Flow, state: CaseState): boolean {
  return (
    before.flow === flow &&
    before.state.answers === state.answers &&
    before.state.context === state.context &&
    before.state.raised === state.raised
  );
}

/** Findings and stops at once; what is believed when it is first asked for. */
function work(flow: Flow, state: CaseState): Assessment {
  const findings = findingsOf(flow, state);
  const belief = once(() => beliefIn(flow, findings));
  const leaders = once(() => ranked(flow, belief(), leastShown));
  const ranking = once(() => ranked(flow, belief()));
  const proved = once(() => provedFaults(flow, findings, leaders()));
  return {
    findings,
    stops: stopsInForce(flow, findings.known),
    get leaders() {
      return leaders();
    },
    get ranking() {
      return ranking();
    },
    get proved() {
      return proved();
    },
  };
}

function once<Value>(make: () => Value): () => Value {
  let made: Value | undefined;
  return () => (made ??= make());
}

function provedFaults(
  flow: Flow,
  findings: Findings,
  leaders: readonly Weighted[],
): readonly Fault[] {
  return leaders.flatMap(([id, probability]) => {
    const fault = flow.faults[id];
    if (fault === undefined || probability < leastProbability) return [];
    return fault.proofs.some((proof) => holds(proof, findings.known) === true) ? [fault] : [];
  });
}
