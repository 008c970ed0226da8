/**
 * A table of decisions gone through from its top: the line that decides, or what is asked next.
 */
import type { DecisionLine, Flow } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import type { Findings } from './findings.ts';
import { planOf, type PlannedCheck } from './plan.ts';
import { Settling } from './settled.ts';
import { isSaid, type CaseState } from './state.ts';

/** What a table says of a case: its line, or that it hangs on checks that may be asked. */
export type Judgement =
  | { readonly type: 'line'; readonly line: DecisionLine }
  | { readonly type: 'open'; readonly checks: readonly string[] };

/**
 * Goes through the table of a flow. Of the lines above the first that holds, those that are not
 * known yet say what is asked: so no question is put that cannot change the decision.
 */
export function judge(flow: Flow, state: CaseState, findings: Findings): Judgement {
  const settling = new Settling(flow, state, findings);
  const checks = new Set<string>();
  for (const line of flow.decisions) {
    const truth = line.when === undefined ? true : settling.truth(line.when);
    if (truth === true) {
      return checks.size === 0 ? { type: 'line', line } : { type: 'open', checks: [...checks] };
    }
    if (truth === undefined && line.when !== undefined) {
      for (const check of settling.hanging(line.when)) checks.add(check);
    }
  }
  throw withoutLast(flow);
}

function withoutLast({ id }: Flow): Error {
  return new Error(`the decisions of the flow ${id} have no last line`);
}

/** The line by which a case would be decided as things stand, whatever may still be asked. */
export function lineOf(flow: Flow, state: CaseState): DecisionLine {
  const settling = new Settling(flow, state, assess(flow, state).findings);
  const line = flow.decisions.find(
    ({ when }) => when === undefined || settling.truth(when) === true,
  );
  if (line === undefined) throw withoutLast(flow);
  return line;
}

/** The check that a table asks next, in the written order; undefined where it decides. */
export function nextByTable(flow: Flow, state: CaseState): PlannedCheck | undefined {
  const { findings } = assess(flow, state);
  const settling = new Settling(flow, state, findings);
  const wanted = planOf(flow).diagnosing.find(({ check }) => check.id === state.wanted);
  return wanted && settling.isAskable(wanted.check) ? wanted : hangingChecks(flow, state)[0];
}

/** The checks on which a decision hangs and that may be asked now, in the written order. */
export function hangingChecks(flow: Flow, state: CaseState): readonly PlannedCheck[] {
  const { findings } = assess(flow, state);
  const judgement = judge(flow, state, findings);
  if (judgement.type === 'line') return [];
  const settling = new Settling(flow, state, findings);
  return planOf(flow).diagnosing.filter(
    ({ check }) => judgement.checks.includes(check.id) && settling.isAskable(check),
  );
}

/** What a decision that stands asks for once more, until that was said or cannot be. */
export function nextAgain(flow: Flow, state: CaseState): PlannedCheck | undefined {
  const again = state.decision?.again ?? [];
  const settling = new Settling(flow, state, assess(flow, state).findings);
  return planOf(flow).diagnosing.find(({ check }) => {
    if (!again.includes(check.id)) return false;
    const answers = state.answers[check.id] ?? [];
    return (answers.length < 2 || isSaid(answers.at(-1))) && settling.isAskable(check);
  });
}
