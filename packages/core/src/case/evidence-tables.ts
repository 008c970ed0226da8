/**
 * The likelihoods of a flow laid out for reckoning: for each check and answer a row over the
 * faults, in the flow's order, and its logarithms. Laid out once for each flow.
 */
import { defineModel, noisyLikelihoods, type EvidenceModel } from '@keyturn/evidence';
import { pairsOf, priorsWithPairs, rowOfPair, type PairOfFaults } from './fault-pairs.ts';
import type { Condition } from '../flow/condition.ts';
import type { Flow, LikelihoodTable } from '../flow/flow.ts';

/** What one table says: answer to its row over the faults. */
export interface EvidenceTable {
  /** The check and the position among its tables: no other table has this name. */
  readonly name: string;
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
  /** Pairs of faults; every row below is over the faults, then the pairs. */
  readonly pairs: readonly PairOfFaults[];
  /** Logarithms of the priors of faults and pairs. */
  readonly logPriors: Float64Array;
  /** What the context does to priors: when, and a row of logarithms over the faults. */
  readonly factors: readonly { readonly when: Condition; readonly logs: Float64Array }[];
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
  const model = defineModel(
    faults,
    faults.map((fault) => flow.priors[fault]?.weight ?? 0),
  );
  const pairs = pairsOf(flow);
  const several = new Set(
    Object.values(flow.checks)
      .filter(({ form }) => form.kind === 'choice' && form.several)
      .map(({ id }) => id),
  );
  const names = hypothesesOf(faults, pairs);
  return {
    model,
    pairs,
    logPriors: Float64Array.from(priorsWithPairs(model.priors, pairs), Math.log),
    factors: contextFactors(flow, faults, pairs),
    open: names.map((fault) => flow.faults[fault]?.best === 'open'),
    several,
  };
}

/** Check to its tables; the first whose condition holds is the one that counts. */
type TablesOfChecks = ReadonlyMap<string, readonly EvidenceTable[]>;

const laidOutByTimes = new WeakMap<Flow, Map<number, TablesOfChecks>>();

/** The tables of a flow as a role answers, which may be mistaken more often than they have it. */
export function tablesFor(flow: Flow, role: unknown): TablesOfChecks {
  const times = (typeof role === 'string' ? flow.mistakenTimes[role] : undefined) ?? 1;
  const known = laidOutByTimes.get(flow) ?? new Map<number, TablesOfChecks>();
  laidOutByTimes.set(flow, known);
  const made = known.get(times) ?? layOutTables(flow, times);
  known.set(times, made);
  return made;
}

function layOutTables(flow: Flow, times: number): TablesOfChecks {
  const { model, pairs, several } = evidenceTables(flow);
  const names = hypothesesOf(model.hypotheses, pairs);
  return new Map(
    Object.entries(flow.likelihoods).map(([check, tables]) => [
      check,
      tables.map((table, position) => {
        const name = `${check} ${String(position)} × ${String(times)}`;
        const honest = several.has(check) ? table : withAnything(flow, mistakenMore(table, times));
        const whole = withPairs(honest, { model, pairs, several: several.has(check) });
        return { name, ...layOutTable(names, whole, answerRows(names, whole.rows)) };
      }),
    ]),
  );
}

/** A table with so many times the mistakes that are counted in. */
function mistakenMore(table: LikelihoodTable, times: number): LikelihoodTable {
  const { mistaken, rows, byCircuit } = table;
  if (mistaken === undefined || times === 1) return table;
  const more = (times - 1) * mistaken.share;
  const mistake = (row: Readonly<Record<string, number>>): Readonly<Record<string, number>> => {
    const answers = Object.keys(row);
    const shares = Object.values(row);
    const sum = shares.reduce((total, one) => total + one, 0);
    const neighbours =
      mistaken.for &&
      answers.map((answer) =>
        (mistaken.for?.[answer] ?? []).map((other) => answers.indexOf(other)),
      );
    const noisy = noisyLikelihoods(
      shares.map((one) => one / sum),
      more,
      neighbours,
    );
    return Object.fromEntries(answers.map((answer, at) => [answer, (noisy[at] ?? 0) * sum]));
  };
  const mistakes = (all: LikelihoodTable['rows']): LikelihoodTable['rows'] =>
    Object.fromEntries(Object.entries(all).map(([id, row]) => [id, mistake(row)]));
  return {
    ...table,
    rows: mistakes(rows),
    ...(byCircuit && { byCircuit: { ...byCircuit, reported: mistakes(byCircuit.reported) } }),
  };
}

/**
 * A cause that nobody listed shows itself as anything, so often, in every check and reading. Half, as
 * a rule of thumb has it, counts it out after a few ordinary findings: with this share it comes first
 * or second as often as not where the true fault is left out (a test draws such vehicles).
 */
export const anyPart = 0.18;

/** A table in which "none of these" gives any answer at times, where it has no row of its own. */
function withAnything(flow: Flow, table: LikelihoodTable): LikelihoodTable {
  const { rows, byCircuit } = table;
  const texts = Object.entries(rows).map(([fault, row]) => [fault, JSON.stringify(row)] as const);
  const isOpen = (fault: string): boolean =>
    flow.faults[fault]?.best === 'open' &&
    texts.some(([other, text]) => other !== fault && text === JSON.stringify(rows[fault]));
  const mapped = <Value>(
    record: Readonly<Record<string, Value>>,
    change: (value: Value) => Value,
  ): Record<string, Value> =>
    Object.fromEntries(
      Object.entries(record).map(([fault, value]) => [
        fault,
        isOpen(fault) ? change(value) : value,
      ]),
    );
  return {
    ...table,
    rows: mapped(rows, (row) => {
      const answers = Object.keys(row);
      return Object.fromEntries(
        answers.map((answer) => [
          answer,
          anyPart / answers.length + (1 - anyPart) * (row[answer] ?? 0),
        ]),
      );
    }),
    ...(byCircuit && {
      byCircuit: { ...byCircuit, parts: mapped(byCircuit.parts, (part) => (1 - anyPart) * part) },
    }),
  };
}

/** The names of the faults, then of the pairs. */
function hypothesesOf(
  faults: readonly string[],
  pairs: readonly PairOfFaults[],
): readonly string[] {
  return [...faults, ...pairs.map((_, index) => pairName(index))];
}

/** A pair is nobody's id, so it has a name that no fault can have. */
function pairName(index: number): string {
  return `pair ${String(index)}`;
}

/** A table with a row for each pair. */
function withPairs(
  table: LikelihoodTable,
  scope: {
    readonly model: EvidenceModel;
    readonly pairs: readonly PairOfFaults[];
    readonly several: boolean;
  },
): LikelihoodTable {
  const { model, pairs, several } = scope;
  if (pairs.length === 0) return table;
  const { rows, byCircuit } = table;
  const of = (fault: number): { row: Readonly<Record<string, number>>; part: number } => {
    const name = model.hypotheses[fault] ?? '';
    return { row: rows[name] ?? {}, part: byCircuit?.parts[name] ?? 0 };
  };
  const usual = usualRow(model, of);
  const made = pairs.map(({ first, second }, index) => ({
    name: pairName(index),
    ...rowOfPair(of(first), of(second), { usual, several }),
  }));
  const added = <Value>(pick: (one: (typeof made)[number]) => Value): Record<string, Value> =>
    Object.fromEntries(made.map((one) => [one.name, pick(one)]));
  return {
    ...table,
    rows: { ...rows, ...added(({ row }) => row) },
    ...(byCircuit && {
      byCircuit: { ...byCircuit, parts: { ...byCircuit.parts, ...added(({ part }) => part) } },
    }),
  };
}

/** The mean over all faults. */
function usualRow(
  { hypotheses }: EvidenceModel,
  of: (fault: number) => { readonly row: Readonly<Record<string, number>>; readonly part: number },
): { readonly row: Readonly<Record<string, number>>; readonly part: number } {
  const all = hypotheses.map((_, fault) => of(fault));
  const mean = (pick: (one: (typeof all)[number]) => number): number =>
    all.reduce((sum, one) => sum + pick(one), 0) / all.length;
  return {
    row: Object.fromEntries(
      Object.keys(all[0]?.row ?? {}).map((answer) => [answer, mean(({ row }) => row[answer] ?? 0)]),
    ),
    part: mean(({ part }) => part),
  };
}

function layOutTable(
  faults: readonly string[],
  { given, byCircuit }: LikelihoodTable,
  rows: EvidenceTable['rows'],
): Omit<EvidenceTable, 'name'> {
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
function contextFactors(
  flow: Flow,
  faults: readonly string[],
  pairs: readonly PairOfFaults[],
): EvidenceTables['factors'] {
  const factors = new Map<string, { readonly when: Condition; readonly logs: Float64Array }>();
  for (const [index, fault] of faults.entries()) {
    for (const { when, times } of flow.priors[fault]?.factors ?? []) {
      const key = JSON.stringify(when);
      const factor = factors.get(key) ?? {
        when,
        logs: new Float64Array(faults.length + pairs.length),
      };
      factor.logs[index] = (factor.logs[index] ?? 0) + Math.log(times);
      for (const [position, { first, second }] of pairs.entries()) {
        if (first !== index && second !== index) continue;
        const at = faults.length + position;
        factor.logs[at] = (factor.logs[at] ?? 0) + Math.log(times);
      }
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
