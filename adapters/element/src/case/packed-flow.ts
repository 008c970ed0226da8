/**
 * A flow in the form in which a page carries it: checked when it was built, and small. Most of a
 * flow is likelihoods, where most faults share a row; each row is written once.
 */
import type { Flow, LikelihoodTable } from '@keyturn/core';

/** A table of likelihoods: its different rows, and which of them each fault has. */
interface PackedTable extends Omit<LikelihoodTable, 'rows'> {
  readonly answers: readonly string[];
  /** Likelihoods, in the order of `answers`. */
  readonly rows: readonly (readonly number[])[];
  /** For each fault, in the order of `PackedFlow.faultIds`, the number of its row. */
  readonly of: readonly number[];
}

/** A flow as a page carries it: plain JSON. */
export interface PackedFlow extends Omit<Flow, 'likelihoods' | 'circuit'> {
  readonly faultIds: readonly string[];
  readonly likelihoods: Readonly<Record<string, readonly PackedTable[]>>;
  /** The circuit as JSON, where `∞` is the resistance of an open one: JSON has no such number. */
  readonly circuit?: string;
}

/** Packs a flow that has been loaded and checked. */
export function packFlow({ circuit, ...flow }: Flow): PackedFlow {
  const tables = Object.entries(flow.likelihoods);
  const faultIds = [
    ...new Set(tables.flatMap(([, some]) => some.flatMap(({ rows }) => Object.keys(rows)))),
  ];
  return {
    ...flow,
    faultIds,
    likelihoods: Object.fromEntries(
      tables.map(([check, some]) => [check, some.map((table) => packTable(table, faultIds))]),
    ),
    ...(circuit === undefined ? {} : { circuit: JSON.stringify(circuit, withoutInfinity) }),
  };
}

function withoutInfinity(_: string, value: unknown): unknown {
  return value === Infinity ? '∞' : value;
}

function withInfinity(_: string, value: unknown): unknown {
  return value === '∞' ? Infinity : value;
}

function packTable({ rows, ...more }: LikelihoodTable, faultIds: readonly string[]): PackedTable {
  const answers = Object.keys(Object.values(rows)[0] ?? {});
  const known = new Map<string, number>();
  const of = faultIds.map((fault) => {
    const row = JSON.stringify(answers.map((answer) => rows[fault]?.[answer] ?? 0));
    const number = known.get(row) ?? known.size;
    known.set(row, number);
    return number;
  });
  return {
    ...more,
    answers,
    rows: [...known.keys()].map((row) => JSON.parse(row) as number[]),
    of,
  };
}

/** The flow as it was before it was packed. */
export function unpackFlow({ faultIds, circuit, ...packed }: PackedFlow): Flow {
  return {
    ...packed,
    likelihoods: Object.fromEntries(
      Object.entries(packed.likelihoods).map(([check, some]) => [
        check,
        some.map((table) => unpackTable(table, faultIds)),
      ]),
    ),
    ...(circuit === undefined
      ? {}
      : { circuit: JSON.parse(circuit, withInfinity) as NonNullable<Flow['circuit']> }),
  };
}

function unpackTable(
  { answers, rows, of, ...more }: PackedTable,
  faultIds: readonly string[],
): LikelihoodTable {
  const full = rows.map((row) =>
    Object.fromEntries(answers.map((answer, index) => [answer, row[index] ?? 0])),
  );
  return {
    ...more,
    rows: Object.fromEntries(faultIds.map((fault, index) => [fault, full[of[index] ?? 0] ?? {}])),
  };
}
