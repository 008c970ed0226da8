/**
 * How likely each fault is, from the flow's likelihoods and what has been found.
 */
import {
  defineModel,
  posterior,
  prepareFinding,
  rank,
  temperedExponent,
  type EvidenceModel,
  type PreparedFinding,
} from '@keyturn/evidence';
import { holds, type Finding, type Known } from '../flow/condition.ts';
import type { Flow, LikelihoodTable } from '../flow/flow.ts';
import { likeliest, type Findings } from './findings.ts';
import type { Weighted } from './message.ts';

/** The faults by probability, likeliest first. */
export function rankFaults(flow: Flow, findings: Findings): readonly Weighted[] {
  const model = modelFor(flow, findings.known);
  return rank(model, posterior(model, preparedFindings(flow, model, findings)));
}

/** The ranking if a check, unanswered so far, were to give an answer. */
export function rankWith(flow: Flow, findings: Findings, supposed: Finding): readonly Weighted[] {
  const all = new Map(findings.all);
  all.set(supposed.check, [supposed]);
  return rankFaults(flow, { ...findings, all });
}

/**
 * The leading faults that answers still possible could bring about: one answer, or two one after
 * the other, that together are not too unlikely to reckon with.
 */
export function leadersWithin(
  flow: Flow,
  findings: Findings,
  outlook: {
    /** The checks that may still be answered, with their answers. */
    readonly checks: readonly { readonly id: string; readonly answers: readonly string[] }[];
    /** Probability, of one, from which an answer or a pair of answers is reckoned with. */
    readonly least: number;
  },
): ReadonlySet<string> {
  const model = modelFor(flow, findings.known);
  const faults = model.hypotheses;
  const now = posterior(model, preparedFindings(flow, model, findings));
  const rows = outlook.checks.map(({ id, answers }) => {
    const table = tableFor(flow, findings.known, id);
    return table === undefined
      ? []
      : answers.map((answer) => faults.map((fault) => table.rows[fault]?.[answer] ?? 0));
  });
  const leaders = new Set<string>();
  const follow = (weights: ArrayLike<number>, from: number, depth: number): void => {
    for (let index = from; index < rows.length; index += 1) {
      for (const row of rows[index] ?? []) {
        const after = row.map((likelihood, fault) => likelihood * (weights[fault] ?? 0));
        if (sum(after) < outlook.least) continue;
        leaders.add(faults[indexOfGreatest(after)] ?? '');
        if (depth > 1) follow(after, index + 1, depth - 1);
      }
    }
  };
  follow(now, 0, 2);
  return leaders;
}

function sum(values: readonly number[]): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

function indexOfGreatest(values: readonly number[]): number {
  let best = 0;
  for (let index = 1; index < values.length; index += 1) {
    if ((values[index] ?? 0) > (values[best] ?? 0)) best = index;
  }
  return best;
}

/** Priors in the present context: published or usual weights, times what the context says. */
function modelFor(flow: Flow, known: Known): EvidenceModel {
  const faults = Object.keys(flow.faults);
  const weights = faults.map((fault) => {
    const prior = flow.priors[fault];
    return (prior?.factors ?? []).reduce(
      (weight, factor) => (holds(factor.when, known) === true ? weight * factor.times : weight),
      prior?.weight ?? 0,
    );
  });
  return defineModel(faults, weights);
}

function preparedFindings(
  flow: Flow,
  model: EvidenceModel,
  findings: Findings,
): readonly PreparedFinding[] {
  const exponents = exponentsOf(flow, findings);
  return [...findings.all].flatMap(([check, found]) => {
    const telling = flow.checks[check]?.form.kind === 'choice' ? found[0] : found.at(-1);
    const table = tableFor(flow, findings.known, check);
    // Of choices the first tells of the state in which the complaint arose; later ones follow work.
    // Of readings the last is the better one.
    if (telling === undefined || table === undefined) return [];
    const several = isSeveral(flow, check);
    const likelihoods = model.hypotheses.map((fault) =>
      several ? likelihoodOfSet(table, fault, telling) : likelihoodOfOne(table, fault, telling),
    );
    return [prepareFinding(model, { id: check, likelihoods, exponent: exponents.get(check) ?? 1 })];
  });
}

/** The first table of a check whose condition holds. */
function tableFor(flow: Flow, known: Known, check: string): LikelihoodTable | undefined {
  return flow.likelihoods[check]?.find(
    ({ given }) => given === undefined || holds(given, leaning(known)) === true,
  );
}

/** What is known, with every reading near a bound taken for the likelier side. */
function leaning(known: Known): Known {
  return {
    ...known,
    finding: (check) => {
      const finding = known.finding(check);
      if (finding?.value === undefined) return finding;
      const best = likeliest(finding.weights);
      return best === undefined ? finding : { ...finding, weights: { [best[0]]: 1 } };
    },
  };
}

function isSeveral(flow: Flow, check: string): boolean {
  const form = flow.checks[check]?.form;
  return form?.kind === 'choice' && form.several;
}

/** A reading near a bound carries both branches by their weight. */
function likelihoodOfOne(table: LikelihoodTable, fault: string, finding: Finding): number {
  const row = table.rows[fault] ?? {};
  const entries = Object.entries(finding.weights);
  if (entries.length === 0) return 1;
  return entries.reduce((sum, [answer, share]) => sum + share * (row[answer] ?? 0), 0);
}

/** Each answer that may hold by itself counts as there or not there. */
function likelihoodOfSet(table: LikelihoodTable, fault: string, finding: Finding): number {
  return Object.entries(table.rows[fault] ?? {})
    .filter(([answer]) => answer !== 'none')
    .reduce(
      (product, [answer, share]) => product * (finding.weights[answer] === 1 ? share : 1 - share),
      1,
    );
}

/** Findings of one cause measured more than once are tempered, as many as were made. */
function exponentsOf(flow: Flow, findings: Findings): ReadonlyMap<string, number> {
  const exponents = new Map<string, number>();
  for (const { checks, correlation } of flow.commonCauses) {
    const made = checks.filter((check) => findings.all.has(check));
    for (const check of made) exponents.set(check, temperedExponent(made.length, correlation));
  }
  return exponents;
}
