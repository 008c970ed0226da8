/**
 * Two faults at once: how likely, and how they show themselves together in a check that the circuit
 * tells nothing of.
 */
import type { Flow } from '../flow/flow.ts';

/** A pair by the positions of its faults; `first` is put right first. */
export interface PairOfFaults {
  readonly first: number;
  readonly second: number;
  readonly times: number;
}

/** Pairs together are at most so likely beforehand. */
const mostOfPairs = 0.08;

/** The pairs of a flow. */
export function pairsOf({ faults, circuit }: Flow): readonly PairOfFaults[] {
  const ids = Object.keys(faults);
  return (circuit?.pairs ?? []).map(({ first, second, times }) => ({
    first: ids.indexOf(first),
    second: ids.indexOf(second),
    times,
  }));
}

/** Priors of the faults, then of the pairs: chance times what the trade sees; sum 1. */
export function priorsWithPairs(
  priors: readonly number[],
  pairs: readonly PairOfFaults[],
): readonly number[] {
  const chances = pairs.map(
    ({ first, second, times }) => times * (priors[first] ?? 0) * (priors[second] ?? 0),
  );
  const together = chances.reduce((sum, one) => sum + one, 0);
  const scale = Math.min(1, mostOfPairs / (together || 1));
  return [
    ...priors.map((prior) => prior * (1 - together * scale)),
    ...chances.map((one) => one * scale),
  ];
}

/** What holds of faults and of pairs, brought to the faults: a pair counts for its first fault. */
export function foldPairs(values: Float64Array, pairs: readonly PairOfFaults[]): Float64Array {
  const folded = values.slice(0, values.length - pairs.length);
  for (const [index, { first }] of pairs.entries()) {
    folded[first] = (folded[first] ?? 0) + (values[folded.length + index] ?? 0);
  }
  return folded;
}

/** Of one check, for each fault: answer to likelihood, and the part that hangs on the circuit. */
interface FaultRow {
  readonly row: Readonly<Record<string, number>>;
  readonly part: number;
}

/**
 * How a pair shows itself. Where each answer is there or not by itself, and of two answers the rarer,
 * either fault brings it (noisy or); else the fault counts that shows itself more.
 * `usual` is the row to hold both against: the mean over all faults.
 */
export function rowOfPair(
  one: FaultRow,
  other: FaultRow,
  scope: { readonly usual: FaultRow; readonly several: boolean },
): FaultRow {
  const { usual, several } = scope;
  const answers = Object.keys(one.row);
  const either = (answer: string): number =>
    noisyOr(one.row[answer] ?? 0, other.row[answer] ?? 0, usual.row[answer] ?? 0);
  if (several) return { row: Object.fromEntries(answers.map((id) => [id, either(id)])), part: 0 };
  const [first = '', second = ''] = answers;
  if (answers.length === 2 && one.part === 0 && other.part === 0) {
    const rare = (usual.row[first] ?? 0) < (usual.row[second] ?? 0) ? first : second;
    const likely = either(rare);
    return {
      row: Object.fromEntries(answers.map((id) => [id, id === rare ? likely : 1 - likely])),
      part: 0,
    };
  }
  return away(other, usual) > away(one, usual) ? other : one;
}

/** 1 - (1 - p)(1 - q) / (1 - background): what neither fault brings is there all the same. */
function noisyOr(one: number, other: number, background: number): number {
  const least = Math.min(one, other, background);
  return Math.min(1 - 1e-6, 1 - ((1 - one) * (1 - other)) / (1 - least));
}

/** How far a row is from what is usual. */
function away(one: FaultRow, usual: FaultRow): number {
  return Object.keys(one.row).reduce(
    (sum, answer) => sum + Math.abs((one.row[answer] ?? 0) - (usual.row[answer] ?? 0)),
    Math.abs(one.part - usual.part),
  );
}
