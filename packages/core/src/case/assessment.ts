/**
 * Everything that follows from the state of a case.
 */
import { holds } from '../flow/condition.ts';
import type { Fault, Flow, Stop } from '../flow/flow.ts';
import { rankFaults } from './belief.ts';
import { findingsOf, type Findings } from './findings.ts';
import type { Weighted } from './message.ts';
import { stopsInForce } from './possible.ts';
import type { CaseState } from './state.ts';

/** What is believed of a case, and what binds it. */
export interface Assessment {
  readonly findings: Findings;
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
const leastProbability = 0.1;

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

/** Findings and stops at once; the ranking and what is proved when they are first asked for. */
function work(flow: Flow, state: CaseState): Assessment {
  const findings = findingsOf(flow, state);
  let ranking: readonly Weighted[] | undefined;
  let proved: readonly Fault[] | undefined;
  return {
    findings,
    stops: stopsInForce(flow, findings.known),
    get ranking() {
      return (ranking ??= rankFaults(flow, findings));
    },
    get proved() {
      return (proved ??= provedFaults(flow, findings, this.ranking));
    },
  };
}

function provedFaults(
  flow: Flow,
  findings: Findings,
  ranking: readonly Weighted[],
): readonly Fault[] {
  return ranking
    .filter(([, probability]) => probability >= leastProbability)
    .flatMap(([id]) => {
      const fault = flow.faults[id];
      return fault?.proofs.some((proof) => holds(proof, findings.known) === true) ? [fault] : [];
    });
}
