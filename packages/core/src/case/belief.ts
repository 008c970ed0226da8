/**
 * How likely each fault is, from the flow's evidence and what has been found.
 */
import { latentPosterior, temperedExponent, type LatentPosterior } from '@keyturn/evidence';
import { holds, type Finding, type Known } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import { chancesOf, expectedAnswers, logsOfFinding } from './answer-evidence.ts';
import { evidenceTables, type EvidenceTable } from './evidence-tables.ts';
import { foldPairs } from './fault-pairs.ts';
import type { Findings } from './findings.ts';
import { hypothesesOf } from './hypotheses.ts';
import { tableFor } from './table-for.ts';
import type { Weighted } from './message.ts';

/** What one finding says of each state of each fault. */
export interface StateFinding {
  /** The check, or `context`. */
  readonly id: string;
  /** Natural logarithms of the likelihoods, in the order of the states. */
  readonly logs: Float64Array;
}

const believed = new WeakMap<Findings, LatentPosterior>();

/** What is believed of the faults and of the hidden states of each. */
export function posteriorIn(flow: Flow, findings: Findings): LatentPosterior {
  const known = believed.get(findings);
  if (known !== undefined) return known;
  const made = posteriorOf(flow, findings, stateFindings(flow, findings));
  believed.set(findings, made);
  return made;
}

/** The same, of some of the findings. */
export function posteriorOf(
  flow: Flow,
  findings: Findings,
  found: readonly StateFinding[],
): LatentPosterior {
  return latentPosterior(
    hypothesesOf(flow, findings).space,
    evidenceTables(flow).logPriors,
    found.map(({ logs }) => logs),
  );
}

/** How likely each fault is, in the order of the flow's faults; a pair counts for its first fault. */
export function beliefIn(flow: Flow, findings: Findings): Float64Array {
  return beliefOf(flow, posteriorIn(flow, findings));
}

/** The same, of what is believed. */
export function beliefOf(flow: Flow, { hypotheses }: LatentPosterior): Float64Array {
  return foldPairs(hypotheses, evidenceTables(flow).pairs);
}

/** Two faults that are likelier to be there together than anything else is, and how likely. */
export interface LeadingPair {
  readonly first: string;
  readonly second: string;
  readonly probability: number;
}

/** The pair that leads, if one does. */
export function leadingPair(flow: Flow, findings: Findings): LeadingPair | undefined {
  const { model, pairs } = evidenceTables(flow);
  const { hypotheses } = posteriorIn(flow, findings);
  const best = indexOfGreatest(hypotheses);
  const pair = pairs[best - model.hypotheses.length];
  return (
    pair && {
      first: model.hypotheses[pair.first] ?? '',
      second: model.hypotheses[pair.second] ?? '',
      probability: hypotheses[best] ?? 0,
    }
  );
}

/** The faults by probability, likeliest first; with `least`, only those at least so likely. */
export function ranked(flow: Flow, belief: Float64Array, least = 0): readonly Weighted[] {
  const { model } = evidenceTables(flow);
  const likely: Weighted[] = [];
  for (let index = 0; index < belief.length; index += 1) {
    const share = belief[index] ?? 0;
    if (share >= least) likely.push([model.hypotheses[index] ?? '', share]);
  }
  return likely.sort((a, b) => b[1] - a[1]);
}

/** The ranking if a check were to give an answer, for each of these answers. */
export function rankingsWith(
  flow: Flow,
  findings: Findings,
  asked: { readonly check: string; readonly answers: readonly string[] },
): readonly (readonly Weighted[])[] {
  const { check, answers } = asked;
  // An answer that shares its cause with others changes how much those count, and one that may hold
  // beside others says as well that those do not.
  const isEntangled =
    flow.commonCauses.some(({ checks }) => checks.includes(check)) ||
    evidenceTables(flow).several.has(check);
  if (isEntangled) {
    return answers.map((answer) => {
      const all = new Map(findings.all).set(check, [{ check, weights: { [answer]: 1 } }]);
      return ranked(flow, beliefIn(flow, { ...findings, all }));
    });
  }
  const belief = beliefIn(flow, findings);
  const rows = answerRows(flow, findings, check);
  return answers.map((answer) => {
    const row = rows?.get(answer);
    return ranked(flow, row === undefined ? belief : weighedBy(belief, row));
  });
}

/** A belief after a finding that is as likely with each fault as the row says. */
function weighedBy(belief: Float64Array, row: Float64Array): Float64Array {
  const joint = belief.map((share, fault) => share * (row[fault] ?? 0));
  const sum = total(joint);
  return joint.map((share) => share / sum);
}

/**
 * For each answer of a check how likely it is with each fault, in the flow's order, given all that
 * has been found; undefined where the flow says nothing of it.
 */
export function answerRows(
  flow: Flow,
  findings: Findings,
  check: string,
): ReadonlyMap<string, Float64Array> | undefined {
  const posterior = posteriorIn(flow, findings);
  const rows = expectedAnswers(flow, findings, { check, posterior });
  const { pairs } = evidenceTables(flow);
  if (rows === undefined || pairs.length === 0) return rows;
  const belief = beliefOf(flow, posterior);
  return new Map(
    [...rows].map(([answer, row]) => {
      const joint = foldPairs(
        row.map((share, index) => share * (posterior.hypotheses[index] ?? 0)),
        pairs,
      );
      // A fault that is out of the question is given the row that it has by itself.
      return [
        answer,
        joint.map((sum, fault) => {
          const share = belief[fault] ?? 0;
          return share > 0 ? Math.min(1, sum / share) : (row[fault] ?? 0);
        }),
      ];
    }),
  );
}

/**
 * The leading faults that answers still possible could bring about: one answer, or two one after
 * the other, that together are not too unlikely to reckon with.
 */
export function leadersWithin(
  flow: Flow,
  findings: Findings,
  outlook: {
    /** The checks that may still be answered. */
    readonly checks: readonly string[];
    /** Probability, of one, from which an answer or a pair of answers is reckoned with. */
    readonly least: number;
  },
): ReadonlySet<string> {
  const { model, pairs } = evidenceTables(flow);
  const { space } = hypothesesOf(flow, findings);
  const { hypotheses, states } = posteriorIn(flow, findings);
  const joint = states.map((share, state) => share * (hypotheses[space.owner[state] ?? 0] ?? 0));
  const rows = outlook.checks.map((check) => [
    ...(chancesOf(flow, findings, check)?.rows.values() ?? []),
  ]);
  const leaders = new Set<string>();
  const follow = (belief: Float64Array, from: number, depth: number): void => {
    for (let index = from; index < rows.length; index += 1) {
      for (const row of rows[index] ?? []) {
        const after = belief.map((share, state) => share * (row[state] ?? 0));
        if (total(after) < outlook.least) continue;
        leaders.add(
          model.hypotheses[indexOfGreatest(foldPairs(summed(after, space), pairs))] ?? '',
        );
        if (depth > 1) follow(after, index + 1, depth - 1);
      }
    }
  };
  follow(joint, 0, 2);
  return leaders;
}

function summed(
  values: Float64Array,
  { hypotheses, owner }: { readonly hypotheses: number; readonly owner: Int32Array },
): Float64Array {
  const sums = new Float64Array(hypotheses);
  for (let state = 0; state < values.length; state += 1) {
    const of = owner[state] ?? 0;
    sums[of] = (sums[of] ?? 0) + (values[state] ?? 0);
  }
  return sums;
}

function total(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}

function indexOfGreatest(values: Float64Array): number {
  let best = 0;
  for (let index = 1; index < values.length; index += 1) {
    if ((values[index] ?? 0) > (values[best] ?? 0)) best = index;
  }
  return best;
}

/** What the context says of the faults: it multiplies the priors. */
export function contextFindings(flow: Flow, findings: Findings): readonly StateFinding[] {
  const known = fromContext.get(findings.known);
  if (known !== undefined) return known;
  const { owner } = hypothesesOf(flow, findings).space;
  const made = evidenceTables(flow)
    .factors.filter(({ when }) => holds(when, findings.known) === true)
    .map(({ logs }) => {
      const laid = new Float64Array(owner.length);
      for (let at = 0; at < laid.length; at += 1) laid[at] = logs[owner[at] ?? 0] ?? 0;
      return { id: 'context', logs: laid };
    });
  fromContext.set(findings.known, made);
  return made;
}

const fromContext = new WeakMap<Known, readonly StateFinding[]>();

/** Every finding as the belief takes it: what the context says first, then the answers in order. */
export function stateFindings(flow: Flow, findings: Findings): readonly StateFinding[] {
  const exponents = exponentsOf(flow, findings);
  const found = [...contextFindings(flow, findings)];
  for (const [check, answers] of findings.all) {
    const telling = tellingOf(flow, check, answers);
    const logs = telling && logsOfFinding(flow, findings, telling);
    if (logs === undefined) continue;
    const exponent = exponents.get(check) ?? 1;
    found.push({ id: check, logs: exponent === 1 ? logs : logs.map((log) => exponent * log) });
  }
  return found;
}

/**
 * Of choices the first tells of the state in which the complaint arose; later ones follow work. Of
 * readings the last is the better one.
 */
export function tellingOf(
  flow: Flow,
  check: string,
  answers: readonly Finding[],
): Finding | undefined {
  return flow.checks[check]?.form.kind === 'choice' ? answers[0] : answers.at(-1);
}

/** The table of a check that counts as things stand. */
export function tableOf(flow: Flow, findings: Findings, check: string): EvidenceTable | undefined {
  return tableFor(flow, findings.known, check);
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
