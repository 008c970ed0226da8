import type { DiagnosisProblem } from './diagnosis-problem.ts';
import { indexesWhere } from './indexes-where.ts';

/** The verdicts of a problem over the faults that are still open, flat. */
export interface VerdictFrame {
  readonly verdictCount: number;
  readonly verdictCost: Float64Array;
  readonly wrongPenalty: Float64Array;
  /** For each verdict where its faults begin in `fixed`; one entry more at the end. */
  readonly fixedAt: Int32Array;
  readonly fixed: Int32Array;
  /** Verdicts that fix one fault, but not all: the fault, cost and penalty together, penalty. */
  readonly singleFault: Int32Array;
  readonly singleWrong: Float64Array;
  readonly singlePenalty: Float64Array;
  /** Verdicts that fix none or several faults, but not all. */
  readonly several: Int32Array;
  /** For each fault where the verdicts that fix it, but not all, begin in `fixers`; one more. */
  readonly fixersAt: Int32Array;
  readonly fixers: Int32Array;
  /** Least cost of a verdict that fixes every fault; infinite without one. */
  readonly coverCost: number;
  /** Whether no fault is fixed by two verdicts, those that fix every fault left out. */
  readonly isDisjoint: boolean;
  /** For each fault 1 where no other has the same cheapest right verdict. */
  readonly isAlone: Uint8Array;
  /** The faults that have their cheapest right verdict in common, where there are several. */
  readonly kinds: readonly Int32Array[];
  /** For each fault the least cost were it known to hold. */
  readonly least: Float64Array;
  readonly room: ActRoom;
}

/** Room for `actCost`, so that a search does not ask for memory at every belief. */
interface ActRoom {
  readonly left: Float64Array;
  readonly mass: Float64Array;
  /** Verdicts that do not fix every fault, in an order that is kept from belief to belief. */
  readonly order: Int32Array;
  readonly rate: Float64Array;
}

/** Makes the verdicts' part of a frame of the faults at these positions. No side effects. */
export function verdictFrame(problem: DiagnosisProblem, faults: readonly number[]): VerdictFrame {
  const width = problem.faults.length;
  const fixed = problem.verdicts.map((_, verdict) =>
    indexesWhere(faults.length, (index) => {
      const fault = faults[index] as number;
      return problem.fixes[verdict * width + fault] === 1;
    }),
  );
  const fixers = faults.map((_, index) =>
    indexesWhere(fixed.length, (verdict) => {
      const own = fixed[verdict] ?? [];
      return own.length < faults.length && own.includes(index);
    }),
  );
  const some = indexesWhere(fixed.length, (verdict) => {
    const count = fixed[verdict]?.length ?? 0;
    return count > 0 && count < faults.length;
  });
  let coverCost = Number.POSITIVE_INFINITY;
  const least = new Float64Array(faults.length).fill(Number.POSITIVE_INFINITY);
  const cure = new Int32Array(faults.length);
  const cureCost = new Float64Array(faults.length).fill(Number.POSITIVE_INFINITY);
  fixed.forEach((own, verdict) => {
    const right = problem.verdictCost[verdict] as number;
    if (own.length === faults.length) coverCost = Math.min(coverCost, right);
    // Where a wrong verdict goes on, it is never the cheapest way to end the case.
    const wrong =
      problem.mode === 'terminal'
        ? right + (problem.wrongPenalty[verdict] as number)
        : Number.POSITIVE_INFINITY;
    for (const index of own) {
      if (right >= (cureCost[index] as number)) continue;
      cureCost[index] = right;
      cure[index] = verdict;
    }
    least.forEach((known, index) => {
      least[index] = Math.min(known, own.includes(index) ? right : wrong);
    });
  });
  const kinds = problem.verdicts
    .map((_, verdict) =>
      Int32Array.from(indexesWhere(faults.length, (index) => cure[index] === verdict)),
    )
    .filter((kind) => kind.length > 1);
  const isAlone = new Uint8Array(faults.length).fill(1);
  for (const kind of kinds) for (const index of kind) isAlone[index] = 0;
  const singles = some.filter((verdict) => fixed[verdict]?.length === 1);
  const penalty = (verdict: number): number => problem.wrongPenalty[verdict] as number;
  return {
    verdictCount: problem.verdicts.length,
    verdictCost: problem.verdictCost,
    wrongPenalty: problem.wrongPenalty,
    fixedAt: begins(fixed),
    fixed: Int32Array.from(fixed.flat()),
    singleFault: Int32Array.from(singles, (verdict) => fixed[verdict]?.[0] ?? 0),
    singleWrong: Float64Array.from(
      singles,
      (verdict) => (problem.verdictCost[verdict] as number) + penalty(verdict),
    ),
    singlePenalty: Float64Array.from(singles, penalty),
    several: Int32Array.from(
      indexesWhere(fixed.length, (verdict) => {
        const count = fixed[verdict]?.length ?? 0;
        return count < faults.length && count !== 1;
      }),
    ),
    fixersAt: begins(fixers),
    fixers: Int32Array.from(fixers.flat()),
    coverCost,
    isDisjoint: fixers.every((own) => own.length < 2),
    isAlone,
    kinds,
    least,
    room: {
      left: new Float64Array(faults.length),
      mass: new Float64Array(problem.verdicts.length),
      order: Int32Array.from(some),
      rate: new Float64Array(problem.verdicts.length),
    },
  };
}

function begins(rows: readonly (readonly number[])[]): Int32Array {
  const at = new Int32Array(rows.length + 1);
  rows.forEach((row, index) => {
    at[index + 1] = (at[index] as number) + row.length;
  });
  return at;
}
