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

/** The latest assessment of what was said, so that one turn works it out once. */
const latest = new WeakMap<
  CaseState['answers'],
  { readonly of: CaseState; readonly is: Assessment }
>();

/** Assesses a state. Pure: a state with the same content has the same assessment. */
export function assess(flow: Flow, state: CaseState): Assessment {
  const before = latest.get(state.answers);
  if (before?.of.context === state.context && before.of.raised === state.raised) return before.is;
  const findings = findingsOf(flow, state);
  const ranking = rankFaults(flow, findings);
  const is: Assessment = {
    findings,
    ranking,
    stops: stopsInForce(flow, findings.known),
    proved: ranking
      .filter(([, probability]) => probability >= leastProbability)
      .flatMap(([id]) => {
        const fault = flow.faults[id];
        return fault?.proofs.some((proof) => holds(proof, findings.known) === true) ? [fault] : [];
      }),
  };
  latest.set(state.answers, { of: state, is });
  return is;
}
