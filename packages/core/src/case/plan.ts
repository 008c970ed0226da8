/**
 * The written order of a flow: what is asked before the verdict, and what after it. Laid out once
 * for each flow.
 */
import type { Check, Flow } from '../flow/flow.ts';

/** A check and the stage that asks it. */
export interface PlannedCheck {
  readonly stage: string;
  readonly check: Check;
}

/** The checks of a flow in the written order. */
export interface Plan {
  readonly diagnosing: readonly PlannedCheck[];
  readonly afterwards: readonly PlannedCheck[];
}

const plans = new WeakMap<Flow, Plan>();

/** The plan of a flow. */
export function planOf(flow: Flow): Plan {
  const known = plans.get(flow);
  if (known !== undefined) return known;
  const verdict = flow.stages.findIndex(({ id }) => id === flow.verdictAfter);
  const planned = (from: number, to?: number): readonly PlannedCheck[] =>
    flow.stages.slice(from, to).flatMap(({ id, checks }) =>
      checks.flatMap((name) => {
        const check = flow.checks[name];
        return check === undefined ? [] : [{ stage: id, check }];
      }),
    );
  const plan = { diagnosing: planned(0, verdict + 1), afterwards: planned(verdict + 1) };
  plans.set(flow, plan);
  return plan;
}
