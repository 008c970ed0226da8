/**
 * What an answer says of every state of every fault: from the flow's tables, from the state of the
 * circuit, or from both, where a table says which part of the answers hangs on the circuit.
 */
import { predicted, type LatentPosterior } from '@keyturn/evidence';
import type { Finding } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import { answerChances, anyDensity, densities } from './circuit-evidence.ts';
import type { AnswerRow, EvidenceTable } from './evidence-tables.ts';
import { anyPart, evidenceTables } from './evidence-tables.ts';
import type { Findings } from './findings.ts';
import { hypothesesOf, type AnswerChances, type Hypotheses } from './hypotheses.ts';
import { tableFor } from './table-for.ts';

/**
 * How likely each answer of a check is in each state of each fault; undefined where the flow says
 * nothing of it.
 */
export function chancesOf(
  flow: Flow,
  findings: Findings,
  check: string,
): AnswerChances | undefined {
  const hypotheses = hypothesesOf(flow, findings);
  const table = tableFor(flow, findings.known, check);
  const circuit =
    table === undefined || table.byCircuit !== undefined
      ? answerChances(flow, hypotheses, { check, findings })
      : undefined;
  if (table === undefined && circuit === undefined) return undefined;
  const name = `${table?.name ?? ''} ${circuit?.name ?? ''}`;
  const { open } = evidenceTables(flow);
  return hypotheses.laidOut.of(name, () => ({
    name,
    rows:
      table === undefined
        ? circuitRows(hypotheses, open, circuit)
        : tableRows(hypotheses, table, circuit),
  }));
}

/** Of what hangs on the circuit alone. */
function circuitRows(
  hypotheses: Hypotheses,
  open: readonly boolean[],
  circuit: AnswerChances | undefined,
): AnswerChances['rows'] {
  const rows = [...(circuit?.rows ?? [])];
  const any = 1 / rows.length;
  return new Map(rows.map(([answer, row]) => [answer, ofCircuit(hypotheses, row, { open, any })]));
}

/** Of what a table tells, by the circuit too where the table says so. */
function tableRows(
  hypotheses: Hypotheses,
  table: EvidenceTable,
  circuit: AnswerChances | undefined,
): AnswerChances['rows'] {
  return new Map(
    [...table.rows].map(([answer, { likelihoods }]) => {
      const direct = ofFaults(hypotheses, likelihoods);
      return [
        answer,
        circuit === undefined
          ? direct
          : withCircuit(direct, { answer, table, circuit: circuit.rows, hypotheses }),
      ];
    }),
  );
}

/**
 * For each answer of a check how likely it is with each fault, given what is believed of the states;
 * undefined where the flow says nothing of it. The same as `chancesOf` summed over states, without
 * laying them out.
 */
export function expectedAnswers(
  flow: Flow,
  findings: Findings,
  asked: { readonly check: string; readonly posterior: LatentPosterior },
): ReadonlyMap<string, Float64Array> | undefined {
  const { check, posterior } = asked;
  const hypotheses = hypothesesOf(flow, findings);
  const { space, solved } = hypotheses;
  const table = tableFor(flow, findings.known, check);
  if (table !== undefined && table.byCircuit === undefined) {
    return new Map([...table.rows].map(([answer, { likelihoods }]) => [answer, likelihoods]));
  }
  const circuit = answerChances(flow, hypotheses, { check, findings });
  const expected =
    circuit &&
    new Map(
      [...circuit.rows].map(([answer, row]) => [
        answer,
        predicted(space, posterior, { chances: row, places: solved }),
      ]),
    );
  if (table?.byCircuit === undefined) {
    const { open } = evidenceTables(flow);
    return (
      expected &&
      new Map(
        [...expected].map(([answer, row]) => [
          answer,
          row.map((share, fault) =>
            open[fault] === true ? anyOr(1 / expected.size, share) : share,
          ),
        ]),
      )
    );
  }
  const { parts, reported } = table.byCircuit;
  return new Map(
    [...table.rows].map(([answer, { likelihoods }]) => {
      const row = likelihoods.slice();
      for (const [truth, chances] of expected ?? []) {
        const said = reported.get(truth)?.get(answer) ?? 0;
        for (let fault = 0; fault < row.length; fault += 1) {
          row[fault] = (row[fault] ?? 0) + (parts[fault] ?? 0) * said * (chances[fault] ?? 0);
        }
      }
      return [answer, row];
    }),
  );
}

function anyOr(any: number, likelihood: number): number {
  return anyPart * any + (1 - anyPart) * likelihood;
}

/** Likelihoods in the solved states, laid out over the states of all faults. */
function ofCircuit(
  { space, solved }: Hypotheses,
  row: Float64Array,
  unlisted: { readonly open: readonly boolean[]; readonly any: number },
): Float64Array {
  const { open, any } = unlisted;
  const laid = new Float64Array(solved.length);
  for (let at = 0; at < laid.length; at += 1) {
    const likelihood = row[solved[at] ?? 0] ?? 0;
    laid[at] = open[space.owner[at] ?? 0] === true ? anyOr(any, likelihood) : likelihood;
  }
  return laid;
}

/** A row over the faults, laid out over the states of all faults. */
function ofFaults({ space: { owner } }: Hypotheses, row: Float64Array): Float64Array {
  const laid = new Float64Array(owner.length);
  for (let at = 0; at < laid.length; at += 1) laid[at] = row[owner[at] ?? 0] ?? 0;
  return laid;
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
  const { byCircuit } = table;
  const row = direct.slice();
  if (byCircuit === undefined) return row;
  const { parts, reported } = byCircuit;
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
  const { check, value, weights } = finding;
  const table = tableFor(flow, findings.known, check);
  const hypotheses = hypothesesOf(flow, findings);
  const { open, several } = evidenceTables(flow);
  const { logs } = hypotheses;
  if (table !== undefined && (several.has(check) || table.byCircuit === undefined)) {
    if (!several.has(check) && !isTold(table.rows, weights)) return undefined;
    return logs.of(JSON.stringify([table.name, weights]), () =>
      ofFaults(
        hypotheses,
        several.has(check) ? logsOfSet(table, finding) : logsOfWeights(rowsOf(table), weights),
      ),
    );
  }
  const placed = findings.placed.get(check);
  if (table === undefined && value !== undefined && placed !== undefined) {
    const read = densities(flow, hypotheses, { check, placed, value, findings });
    if (read !== undefined) {
      const any = anyDensity(flow, check, findings.limits);
      return logs.of(read.name, () => ofCircuit(hypotheses, read.row, { open, any }).map(Math.log));
    }
  }
  const chances = chancesOf(flow, findings, check);
  if (chances === undefined || !isTold(chances.rows, weights)) return undefined;
  return logs.of(JSON.stringify([chances.name, weights]), () =>
    logsOfWeights(chances.rows, weights),
  );
}

function rowsOf({ rows }: EvidenceTable): ReadonlyMap<string, Float64Array> {
  return new Map([...rows].map(([answer, { likelihoods }]) => [answer, likelihoods]));
}

/** False for a reading without bounds, which says nothing. */
function isTold(
  rows: ReadonlyMap<string, unknown>,
  weights: Readonly<Record<string, number>>,
): boolean {
  return Object.entries(weights).some(([answer, share]) => share > 0 && rows.has(answer));
}

/** A reading near a bound carries both branches by their weight. */
function logsOfWeights(
  rows: ReadonlyMap<string, Float64Array>,
  weights: Readonly<Record<string, number>>,
): Float64Array {
  const [first] = rows.values();
  const sum = new Float64Array(first?.length ?? 0);
  for (const [answer, share] of Object.entries(weights)) {
    const row = rows.get(answer);
    if (row === undefined || share <= 0) continue;
    for (let at = 0; at < sum.length; at += 1) {
      sum[at] = (sum[at] ?? 0) + share * (row[at] ?? 0);
    }
  }
  return sum.map(Math.log);
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
