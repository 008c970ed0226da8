/**
 * How likely each fault is, from the flow's likelihoods and what has been found.
 */
import { posterior, rank, temperedExponent, type PreparedFinding } from '@keyturn/evidence';
import { holds, type Finding, type Known } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import { evidenceTables, type AnswerRow, type EvidenceTable } from './evidence-tables.ts';
import { likeliest, type Findings } from './findings.ts';
import type { Weighted } from './message.ts';

/** How likely each fault is, in the order of the flow's faults. */
export function beliefIn(flow: Flow, findings: Findings): Float64Array {
  return posterior(evidenceTables(flow).model, preparedFindings(flow, findings));
}

/** The faults by probability, likeliest first; with `least`, only those at least so likely. */
export function ranked(flow: Flow, belief: Float64Array, least = 0): readonly Weighted[] {
  const { model } = evidenceTables(flow);
  if (least === 0) return rank(model, belief);
  const likely: Weighted[] = [];
  for (let index = 0; index < belief.length; index += 1) {
    const share = belief[index] ?? 0;
    if (share >= least) likely.push([model.hypotheses[index] ?? '', share]);
  }
  return likely.sort((a, b) => b[1] - a[1]);
}

/** The ranking if a check, unanswered so far, were to give an answer. */
export function rankWith(flow: Flow, findings: Findings, supposed: Finding): readonly Weighted[] {
  const all = new Map(findings.all);
  all.set(supposed.check, [supposed]);
  return ranked(flow, beliefIn(flow, { ...findings, all }));
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
  const { model } = evidenceTables(flow);
  const rows = outlook.checks.map((check) => [
    ...(tableFor(flow, findings.known, check)?.rows.values() ?? []),
  ]);
  const leaders = new Set<string>();
  const follow = (belief: Float64Array, from: number, depth: number): void => {
    for (let index = from; index < rows.length; index += 1) {
      for (const { likelihoods } of rows[index] ?? []) {
        const after = likelihoods.map((likelihood, fault) => likelihood * (belief[fault] ?? 0));
        if (total(after) < outlook.least) continue;
        leaders.add(model.hypotheses[indexOfGreatest(after)] ?? '');
        if (depth > 1) follow(after, index + 1, depth - 1);
      }
    }
  };
  follow(beliefIn(flow, findings), 0, 2);
  return leaders;
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

/** Logarithms of the priors as the context conditions them, in the order of the flow's faults. */
export function priorWeights(flow: Flow, findings: Findings): Float64Array {
  return posterior(evidenceTables(flow).model, contextFindings(flow, findings.known)).map(Math.log);
}

/** What the context says of the faults, to be weighed like findings: it multiplies the priors. */
function contextFindings(flow: Flow, known: Known): PreparedFinding[] {
  return evidenceTables(flow)
    .factors.filter(({ when }) => holds(when, known) === true)
    .map(({ logs }) => ({ id: 'context', logLikelihoods: logs }));
}

/** Every finding as the belief takes it: what the context says first, then the answers in order. */
export function preparedFindings(flow: Flow, findings: Findings): readonly PreparedFinding[] {
  const { several } = evidenceTables(flow);
  const exponents = exponentsOf(flow, findings);
  const prepared = contextFindings(flow, findings.known);
  for (const [check, found] of findings.all) {
    // Of choices the first tells of the state in which the complaint arose; later ones follow
    // work. Of readings the last is the better one.
    const telling = flow.checks[check]?.form.kind === 'choice' ? found[0] : found.at(-1);
    const table = tableFor(flow, findings.known, check);
    if (telling === undefined || table === undefined) continue;
    const logs = several.has(check) ? logsOfSet(table, telling) : logsOfOne(table, telling);
    if (logs === undefined) continue;
    const exponent = exponents.get(check) ?? 1;
    const logLikelihoods = exponent === 1 ? logs : logs.map((log) => exponent * log);
    prepared.push({ id: check, logLikelihoods });
  }
  return prepared;
}

/** The table of a check that counts as things stand. */
export function tableOf(flow: Flow, findings: Findings, check: string): EvidenceTable | undefined {
  return tableFor(flow, findings.known, check);
}

/** The first table of a check whose condition holds. */
function tableFor(flow: Flow, known: Known, check: string): EvidenceTable | undefined {
  const tables = evidenceTables(flow).tables.get(check);
  const [first] = tables ?? [];
  if (first?.given === undefined) return first;
  const side = leaning(known);
  return tables?.find(({ given }) => given === undefined || holds(given, side) === true);
}

/** What is known, with every reading near a bound taken for the likelier side. */
function leaning(known: Known): Known {
  return {
    finding: (check) => {
      const finding = known.finding(check);
      if (finding?.value === undefined) return finding;
      const best = likeliest(finding.weights);
      return best === undefined ? finding : { ...finding, weights: { [best[0]]: 1 } };
    },
    findings: (check) => known.findings(check),
    context: (path) => known.context(path),
    raised: (interrupt) => known.raised(interrupt),
    limit: (name) => known.limit(name),
  };
}

/** A reading near a bound carries both branches by their weight; one without bounds says nothing. */
function logsOfOne(table: EvidenceTable, finding: Finding): Float64Array | undefined {
  const parts: (readonly [row: AnswerRow, share: number])[] = [];
  for (const [answer, share] of Object.entries(finding.weights)) {
    const row = table.rows.get(answer);
    if (row !== undefined && share > 0) parts.push([row, share]);
  }
  const [first, ...others] = parts;
  if (first === undefined) return undefined;
  if (others.length === 0) return first[0].logs;
  return first[0].likelihoods.map((_, fault) => {
    let sum = 0;
    for (const [row, share] of parts) sum += share * (row.likelihoods[fault] ?? 0);
    return Math.log(sum);
  });
}

/** Each answer that may hold by itself counts as there or not there. */
function logsOfSet(table: EvidenceTable, finding: Finding): Float64Array {
  return Object.keys(finding.weights).reduce((sum, answer) => {
    const row = answer === 'none' ? undefined : table.rows.get(answer);
    return row === undefined
      ? sum
      : sum.map((log, fault) => log + (row.logs[fault] ?? 0) - (row.absentLogs[fault] ?? 0));
  }, table.absentLogs);
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
