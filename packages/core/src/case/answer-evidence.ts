/**
 * What an answer says of every state of every fault: from the flow's tables, from the state of the
 * circuit, or from both, where a table says which part of the answers hangs on the circuit.
 */
import type { Finding } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import { answerChances, anyDensity, densities } from './circuit-evidence.ts';
import type { AnswerRow, EvidenceTable } from './evidence-tables.ts';
import { evidenceTables } from './evidence-tables.ts';
import type { Findings } from './findings.ts';
import { hypothesesOf, type Hypotheses } from './hypotheses.ts';
import { tableFor } from './table-for.ts';

/**
 * For each answer of a check how likely it is in each state of each fault; undefined where the flow
 * says nothing of it.
 */
export function chancesOf(
  flow: Flow,
  findings: Findings,
  check: string,
): ReadonlyMap<string, Float64Array> | undefined {
  const hypotheses = hypothesesOf(flow, findings);
  const table = tableFor(flow, findings.known, check);
  const circuit =
    table === undefined || table.byCircuit !== undefined
      ? answerChances(flow, hypotheses, { check, findings })
      : undefined;
  if (table === undefined) {
    return circuit && new Map(
      [...circuit].map(([answer, row]) => [answer, ofCircuit(flow, hypotheses, row, circuit.size)]),
    );
  }
  const { owner } = hypotheses.space;
  return new Map(
    [...table.rows].map(([answer, { likelihoods }]) => {
      const direct = Float64Array.from(owner, (fault) => likelihoods[fault] ?? 0);
      return [
        answer,
        circuit === undefined ? direct : withCircuit(direct, { answer, table, circuit, hypotheses }),
      ];
    }),
  );
}

/** A cause that nobody listed shows itself as anything half of the time. */
const anyPart = 0.5;

/** Likelihoods in the solved states, laid out over the states of all faults. */
function ofCircuit(
  flow: Flow,
  { space, solved }: Hypotheses,
  row: Float64Array,
  any: number | undefined,
): Float64Array {
  const { open } = evidenceTables(flow);
  const chance = any === undefined ? 0 : 1 / any;
  return Float64Array.from(solved, (state, at) => {
    const likelihood = row[state] ?? 0;
    return open[space.owner[at] ?? 0] === true
      ? anyPart * chance + (1 - anyPart) * likelihood
      : likelihood;
  });
}

/** What the table says of itself, and the part of the answers that are as the circuit has it. */
function withCircuit(
  direct: Float64Array,
  given: {
    readonly answer: string;
    readonly table: EvidenceTable;
    readonly circuit: ReadonlyMap<string, Float64Array>;
    readonly hypotheses: Hypotheses;
  },
): Float64Array {
  const { answer, table, circuit, hypotheses } = given;
  const { owner } = hypotheses.space;
  const { parts, reported } = table.byCircuit ?? { parts: new Float64Array(), reported: new Map() };
  const row = direct.slice();
  for (const [truth, chances] of circuit) {
    const said = reported.get(truth)?.get(answer) ?? 0;
    for (let at = 0; at < row.length; at += 1) {
      const part = parts[owner[at] ?? 0] ?? 0;
      if (part === 0) continue;
      row[at] = (row[at] ?? 0) + part * said * (chances[hypotheses.solved[at] ?? 0] ?? 0);
    }
  }
  return row;
}

/** Logarithms of a finding's likelihood in each state; undefined where it says nothing. */
export function logsOfFinding(
  flow: Flow,
  findings: Findings,
  finding: Finding,
): Float64Array | undefined {
  const { check, value } = finding;
  const table = tableFor(flow, findings.known, check);
  const hypotheses = hypothesesOf(flow, findings);
  if (table !== undefined && evidenceTables(flow).several.has(check)) {
    const logs = logsOfSet(table, finding);
    return Float64Array.from(hypotheses.space.owner, (fault) => logs[fault] ?? 0);
  }
  const placed = findings.placed.get(check);
  if (table === undefined && value !== undefined && placed !== undefined) {
    const row = densities(flow, hypotheses, { check, placed, value, findings });
    if (row !== undefined) {
      const any = 1 / anyDensity(flow, check, findings.limits);
      return ofCircuit(flow, hypotheses, row, any).map(Math.log);
    }
  }
  const rows = chancesOf(flow, findings, check);
  return rows && logsOfWeights(rows, finding);
}

/** A reading near a bound carries both branches by their weight; one without bounds says nothing. */
function logsOfWeights(
  rows: ReadonlyMap<string, Float64Array>,
  finding: Finding,
): Float64Array | undefined {
  let sum: Float64Array | undefined;
  for (const [answer, share] of Object.entries(finding.weights)) {
    const row = rows.get(answer);
    if (row === undefined || share <= 0) continue;
    sum ??= new Float64Array(row.length);
    for (let at = 0; at < row.length; at += 1) {
      sum[at] = (sum[at] ?? 0) + share * (row[at] ?? 0);
    }
  }
  return sum?.map(Math.log);
}

/** Each answer that may hold by itself counts as there or not there. */
function logsOfSet(table: EvidenceTable, finding: Finding): Float64Array {
  return Object.keys(finding.weights).reduce((sum, answer) => {
    const row: AnswerRow | undefined = answer === 'none' ? undefined : table.rows.get(answer);
    return row === undefined
      ? sum
      : sum.map((log, fault) => log + (row.logs[fault] ?? 0) - (row.absentLogs[fault] ?? 0));
  }, table.absentLogs);
}
