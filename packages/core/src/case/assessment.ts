/**
 * Everything that follows from the state of a case.
 */
import { holds } from '../flow/condition.ts';
import type { Fault, Flow, Stop } from '../flow/flow.ts';
import { beliefIn, ranked } from './belief.ts';
import { suspectAmong } from './contradiction.ts';
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
  /** The check whose answer fits least, where the answers hardly fit together; else empty. */
  readonly suspect: string;
}

/**
 * Conditions that prove a fault prove nothing while everything else speaks against it: then some
 * reading is wrong, or there are two faults. Below this probability a proof does not stand.
 */
const leastProbability = 0.2;

/** A fault less likely than this is not worth showing. */
const leastShown = 0.005;

/** The latest assessment, so that the steps of one turn share it. */
let latest: LazyAssessment | undefined;

/** Assesses a state. Pure: a state with the same content has the same assessment. */
export function assess(flow: Flow, state: CaseState): Assessment {
  if (latest?.isOf(flow, state) !== true) latest = new LazyAssessment(flow, state);
  return latest;
}

/**
 * Findings and stops at once; what is believed when it is first asked for. A class, since one is
 * made for every turn, and getters of an object literal are costly to make.
 */
class LazyAssessment implements Assessment {
  readonly findings: Findings;
  readonly stops: readonly Stop[];
  readonly #flow: Flow;
  readonly #state: CaseState;
  #belief: Float64Array | undefined;
  #leaders: readonly Weighted[] | undefined;
  #ranking: readonly Weighted[] | undefined;
  #proved: readonly Fault[] | undefined;
  #suspect: string | undefined;

  constructor(flow: Flow, state: CaseState) {
    this.#flow = flow;
    this.#state = state;
    this.findings = findingsOf(flow, state);
    this.stops = stopsInForce(flow, this.findings.known);
  }

  get leaders(): readonly Weighted[] {
    return (this.#leaders ??= ranked(this.#flow, this.#believed(), leastShown));
  }

  get ranking(): readonly Weighted[] {
    return (this.#ranking ??= ranked(this.#flow, this.#believed()));
  }

  get proved(): readonly Fault[] {
    return (this.#proved ??= provedFaults(this.#flow, this.findings, this.leaders));
  }

  get suspect(): string {
    return (this.#suspect ??= suspectAmong(this.#flow, this.findings) ?? '');
  }

  /** True where nothing that an assessment depends on differs. */
  isOf(flow: Flow, { answers, context, raised }: CaseState): boolean {
    return (
      this.#flow === flow &&
      this.#state.answers === answers &&
      this.#state.context === context &&
      this.#state.raised === raised
    );
  }

  #believed(): Float64Array {
    return (this.#belief ??= beliefIn(this.#flow, this.findings));
  }
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
