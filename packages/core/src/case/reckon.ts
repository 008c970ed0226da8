/**
 * What follows from the answers of a case: what comes next, who leads, and what the check in hand is
 * worth. Many people say the same at first, and what was worked out for one holds for the others.
 */
import type { Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { chooseNext } from './choose.ts';
import { Kept } from './kept.ts';
import type { Weighted, Worth } from './message.ts';
import type { CaseState, Next } from './state.ts';
import { worthOfCheck } from './worth.ts';

/** What comes next, and the leading faults to a hundredth of a percent. */
export interface Reckoned {
  readonly next: Next;
  readonly leaders: readonly Weighted[];
}

/** States of which that is kept for each flow: some 2 kB each. */
const mostStates = 2000;

interface KeptOfFlow {
  readonly reckoned: Kept<Reckoned>;
  readonly worth: Kept<{ readonly worth: Worth | undefined }>;
}

const flows = new WeakMap<Flow, KeptOfFlow>();

/** What comes next in a state, and who leads in it. Deterministic, no side effects to be seen. */
export function reckon(flow: Flow, state: CaseState): Reckoned {
  const workOut = (): Reckoned => ({
    next: chooseNext(flow, state),
    leaders: leadersOf(flow, state),
  });
  return isWeighed(flow, state) ? keptOf(flow).reckoned.of(keyOf(state), workOut) : workOut();
}

/** What a check is worth in a state; undefined where checks are not weighed. */
export function reckonWorth(flow: Flow, state: CaseState, check: string): Worth | undefined {
  const workOut = () => ({ worth: worthOfCheck(flow, state, check) });
  return keptOf(flow).worth.of(`${check} ${keyOf(state)}`, workOut).worth;
}

function leadersOf(flow: Flow, state: CaseState): readonly Weighted[] {
  if (flow.decisions.length > 0) return [];
  return assess(flow, state).leaders.map(([id, share]) => [id, Math.round(share * 1e4) / 1e4]);
}

/** True where the next check is weighed, which is what takes long. */
function isWeighed(flow: Flow, state: CaseState): boolean {
  return flow.byWorth.length > 0 && state.verdict === null && state.outcome === null;
}

/** Everything that weighing hangs on: neither the time nor what was worked out before. */
function keyOf({ at: _, opened: _o, due: _d, next: _n, leaders: _l, ...told }: CaseState): string {
  return JSON.stringify(told);
}

function keptOf(flow: Flow): KeptOfFlow {
  const known = flows.get(flow);
  if (known !== undefined) return known;
  const made: KeptOfFlow = { reckoned: new Kept(mostStates), worth: new Kept(mostStates) };
  flows.set(flow, made);
  return made;
}
