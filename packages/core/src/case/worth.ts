/**
 * What each check that can be asked now is worth: the case laid out as a problem of diagnosis at
 * least expected cost, for the planner of `evidence`.
 */
import { defineProblem, planNext, type DiagnosisProblem, type Plan } from '@keyturn/evidence';
import type { Check, Flow } from '../flow/flow.ts';
import { actionsFor } from './action.ts';
import { assess } from './assessment.ts';
import { answerRows, beliefIn } from './belief.ts';
import { evidenceTables } from './evidence-tables.ts';
import type { Worth } from './message.ts';
import { openChecks } from './open-checks.ts';
import { planOf, type PlannedCheck } from './plan.ts';
import type { CaseState } from './state.ts';

/** Minutes that a check takes: the vehicle stands while it waits, whatever else is done. */
export function minutesOf({ minutes }: Check): number {
  return minutes;
}

/** A fault less likely than this is not planned for: no check is asked on its account. */
const leastPlanned = 1e-4;

/** The case as a problem, and what is known in it. */
export interface WeighedCase {
  readonly problem: DiagnosisProblem;
  readonly belief: readonly number[];
  readonly setupsPaid: readonly string[];
}

/** Lays the case out over the checks that can be asked now; undefined where nothing is weighed. */
export function weigh(
  flow: Flow,
  state: CaseState,
  open: readonly PlannedCheck[],
): WeighedCase | undefined {
  const { costs } = flow;
  if (costs === undefined) return undefined;
  const assessment = assess(flow, state);
  const { model } = evidenceTables(flow);
  const all = beliefIn(flow, assessment.findings);
  const kept = [...all.keys()].filter((index) => (all[index] ?? 0) >= leastPlanned);
  const problem = defineProblem({
    mode: 'terminal',
    faults: kept.map((index) => ({ id: model.hypotheses[index] ?? '', prior: all[index] ?? 0 })),
    verdicts: actionsFor(
      { flow, costs },
      assessment,
      kept.map((index) => model.hypotheses[index] ?? ''),
    ),
    setups: Object.entries(costs.setups).map(([id, cost]) => ({ id, cost })),
    checks: open.flatMap(({ check }) => {
      const rows = answerRows(flow, assessment.findings, check.id);
      if (rows === undefined) return [];
      return [
        {
          id: check.id,
          cost: minutesOf(check),
          ...outcomesOf(check, rows, kept),
          setups: setupsOf(flow, state, check.id).filter((id) => costs.setups[id] !== undefined),
          safety: hazardOf(flow, check.id),
        },
      ];
    }),
  });
  return { problem, belief: kept.map((index) => all[index] ?? 0), setupsPaid: paidIn(flow, state) };
}

/** What asking a check now takes, and what the plan of which it is the first step saves. */
export function worthOfCheck(flow: Flow, state: CaseState, check: string): Worth | undefined {
  const open = openChecks(flow, state, planOf(flow).diagnosing);
  const weighed = weigh(flow, state, open);
  const planned = flow.checks[check];
  if (weighed === undefined || planned === undefined) return undefined;
  const { setups = {} } = flow.costs ?? {};
  const toFetch = setupsOf(flow, state, check).filter((id) => !weighed.setupsPaid.includes(id));
  const plan = planFrom(weighed);
  return {
    minutes: toFetch.reduce((sum, id) => sum + (setups[id] ?? 0), planned.minutes),
    saves: plan.act - plan.value,
  };
}

/** A check that tells less of the fault than this, in bits, is not worth a question. */
const leastBits = 0.03;

/** The check that tells most about the fault for its minutes, if it tells `leastRate` bits a minute. */
export function mostTelling(
  { problem, belief, setupsPaid }: WeighedCase,
  leastRate: number,
): string | undefined {
  const total = belief.reduce((sum, one) => sum + one, 0);
  let best: { readonly id: string; readonly rate: number } | undefined;
  for (const [index, id] of problem.checks.entries()) {
    const bits = informationIn(
      problem,
      belief.map((one) => one / total),
      index,
    );
    const rate = bits / costNow(problem, index, setupsPaid);
    if (bits >= leastBits && rate >= leastRate && rate > (best?.rate ?? 0)) best = { id, rate };
  }
  return best?.id;
}

/** Expected information of a check about the fault, bits. */
function informationIn(
  { outcomes, likelihoods, faults }: DiagnosisProblem,
  belief: readonly number[],
  check: number,
): number {
  const row = likelihoods[check] ?? new Float64Array();
  return (outcomes[check] ?? []).reduce((bits, _, outcome) => {
    const chances = belief.map((one, fault) => one * (row[outcome * faults.length + fault] ?? 0));
    const chance = chances.reduce((sum, one) => sum + one, 0);
    return chances.reduce(
      (sum, joint, fault) =>
        joint > 0 ? sum + joint * Math.log2(joint / (chance * (belief[fault] ?? 0))) : sum,
      bits,
    );
  }, 0);
}

/** Minutes of a check, with what must still be fetched or reached for it. */
function costNow(
  { checkCost, checkSetups, setups, setupCost }: DiagnosisProblem,
  check: number,
  paid: readonly string[],
): number {
  return setups.reduce(
    (sum, id, bit) =>
      ((checkSetups[check] ?? 0) >> bit) & 1 && !paid.includes(id)
        ? sum + (setupCost[bit] ?? 0)
        : sum,
    checkCost[check] ?? 0,
  );
}

/** The answers that a check may give, and how likely each is with each of the faults kept. */
function outcomesOf(
  check: Check,
  rows: ReadonlyMap<string, Float64Array>,
  kept: readonly number[],
) {
  const isSeveral = check.form.kind === 'choice' && check.form.several;
  const answers = [...rows.keys()].filter((answer) => !isSeveral || answer !== 'none');
  const rowOf = (index: number): readonly number[] =>
    answers.map((answer) => rows.get(answer)?.[index] ?? 0);
  return {
    outcomes: isSeveral ? [...answers, 'none'] : answers,
    likelihoods: kept.map((index) =>
      isSeveral ? severalShares(rowOf(index)) : shares(rowOf(index)),
    ),
  };
}

/**
 * With a third of the work a plan is dearer by 0.05 minutes in the mean of the choices that the cards
 * come to: less than the likelihoods are known.
 */
const effort = 0.3;

/** The plan of least expected cost from here. */
export function planFrom({ problem, belief, setupsPaid }: WeighedCase): Plan {
  return planNext(problem, { belief, setupsPaid }, effort);
}

/**
 * Of choices of which several may hold, the plan reckons with one of them or none: with each alone
 * as likely against none as it is by itself.
 */
function severalShares(row: readonly number[]): readonly number[] {
  const odds = row.map((one) => one / (1 - one));
  return shares([...odds, 1]);
}

function shares(row: readonly number[]): readonly number[] {
  const sum = row.reduce((total, one) => total + one, 0);
  return row.map((one) => one / sum);
}

/** Where one must be for a check, and the kit that must be fetched for it. */
function setupsOf(flow: Flow, state: CaseState, id: string): readonly string[] {
  const check = flow.checks[id];
  if (check === undefined) return [];
  const { kit } = state.context;
  const has = (item: string): boolean => !Array.isArray(kit) || kit.includes(item);
  const items = check.needs.map((anyOf) => anyOf.find(has) ?? anyOf[0] ?? '');
  return [check.at, ...items];
}

/** Whoever has been at a place, or has used an item, need not go or fetch again. */
function paidIn(flow: Flow, state: CaseState): readonly string[] {
  const { setups = {} } = flow.costs ?? {};
  return [...new Set(state.order.flatMap((id) => setupsOf(flow, state, id)))].filter(
    (id) => setups[id] !== undefined,
  );
}

/** How much can go wrong in a check: the safer one goes first where two are worth the same. */
function hazardOf(flow: Flow, id: string): number {
  const { does = [], at } = flow.checks[id] ?? {};
  return (at === 'below' ? 1 : 0) + does.length;
}
