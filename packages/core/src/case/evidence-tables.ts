/**
 * The likelihoods of a flow laid out for reckoning: for each check and answer a row over the
 * faults, in the flow's order, and its logarithms. Laid out once for each flow.
 */
import { defineModel, type EvidenceModel } from '@keyturn/evidence';
import type { Condition } from '../flow/condition.ts';
import type { Flow, LikelihoodTable } from '../flow/flow.ts';

/** What one table says: answer to its row over the faults. */
export interface EvidenceTable {
  readonly given?: Condition;
  readonly rows: ReadonlyMap<string, AnswerRow>;
  /** Logarithms of how likely it is that none of the answers is given, where several may hold. */
  readonly absentLogs: Float64Array;
  /** The part of each fault's answers that hang on the circuit, and how those are reported. */
  readonly byCircuit?: {
    readonly parts: Float64Array;
    /** True answer to reported answer to likelihood. */
    readonly reported: ReadonlyMap<string, ReadonlyMap<string, number>>;
  };
}

/** How likely one answer is with each fault. */
export interface AnswerRow {
  readonly likelihoods: Float64Array;
  readonly logs: Float64Array;
  /** Logarithms of how likely it is that this answer is not given, where several may hold. */
  readonly absentLogs: Float64Array;
}

/** The evidence of a flow. */
export interface EvidenceTables {
  /** The faults with their priors, before anything is known of the vehicle. */
  readonly model: EvidenceModel;
  /** What the context does to priors: when, and a row of logarithms over the faults. */
  readonly factors: readonly { readonly when: Condition; readonly logs: Float64Array }[];
  /** Check to its tables; the first whose condition holds is the one that counts. */
  readonly tables: ReadonlyMap<string, readonly EvidenceTable[]>;
  /** Checks of whose answers several may hold. */
  readonly several: ReadonlySet<string>;
  /** For each fault whether it is "none of these". */
  readonly open: readonly boolean[];
}

const laidOut = new WeakMap<Flow, EvidenceTables>();

/** The evidence tables of a flow. */
export function evidenceTables(flow: Flow): EvidenceTables {
  const known = laidOut.get(flow);
  if (known !== undefined) return known;
  const made = layOut(flow);
  laidOut.set(flow, made);
  return made;
}

function layOut(flow: Flow): EvidenceTables {
  const faults = Object.keys(flow.faults);
  return {
    model: defineModel(
      faults,
      faults.map((fault) => flow.priors[fault]?.weight ?? 0),
    ),
    factors: contextFactors(flow, faults),
    tables: new Map(
      Object.entries(flow.likelihoods).map(([check, tables]) => [
        check,
        tables.map((table) => layOutTable(faults, table, answerRows(faults, table.rows))),
      ]),
    ),
    open: faults.map((fault) => flow.faults[fault]?.best === 'open'),
    several: new Set(
      Object.values(flow.checks)
        .filter(({ form }) => form.kind === 'choice' && form.several)
        .map(({ id }) => id),
    ),
  };
}

function layOutTable(
  faults: readonly string[],
  { given, byCircuit }: LikelihoodTable,
  rows: EvidenceTable['rows'],
): EvidenceTable {
  const present = [...rows].flatMap(([answer, row]) => (answer === 'none' ? [] : [row]));
  const absentLogs = Float64Array.from(faults, (_, fault) =>
    present.reduce((sum, row) => sum + (row.absentLogs[fault] ?? 0), 0),
  );
  return {
    ...(given === undefined ? {} : { given }),
    rows,
    absentLogs,
    ...(byCircuit === undefined
      ? {}
      : {
          byCircuit: {
            parts: Float64Array.from(faults, (fault) => byCircuit.parts[fault] ?? 0),
            reported: new Map(
              Object.entries(byCircuit.reported).map(([truth, row]) => [
                truth,
                new Map(Object.entries(row)),
              ]),
            ),
          },
        }),
  };
}

/** Many faults hang on the same few conditions; each is held once, for all of them. */
function contextFactors(flow: Flow, faults: readonly string[]): EvidenceTables['factors'] {
  const factors = new Map<string, { readonly when: Condition; readonly logs: Float64Array }>();
  for (const [index, fault] of faults.entries()) {
    for (const { when, times } of flow.priors[fault]?.factors ?? []) {
      const key = JSON.stringify(when);
      const factor = factors.get(key) ?? { when, logs: new Float64Array(faults.length) };
      factor.logs[index] = (factor.logs[index] ?? 0) + Math.log(times);
      factors.set(key, factor);
    }
  }
  return [...factors.values()];
}

function answerRows(
  faults: readonly string[],
  rows: Flow['likelihoods'][string][number]['rows'],
): ReadonlyMap<string, AnswerRow> {
  const answers = Object.keys(rows[faults[0] ?? ''] ?? {});
  return new Map(
    answers.map((answer) => {
      const likelihoods = Float64Array.from(faults, (fault) => rows[fault]?.[answer] ?? 0);
      const absentLogs = likelihoods.map((likelihood) => Math.log1p(-likelihood));
      return [answer, { likelihoods, logs: likelihoods.map(Math.log), absentLogs }];
    }),
  );
}
