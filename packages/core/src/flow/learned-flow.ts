/**
 * A flow whose priors and likelihoods are drawn from confirmed outcomes as well. It is a flow like
 * any other, of the same id and version, so that nothing that reads one needs to know of counts.
 */
import {
  answerCountsOf,
  defineModel,
  learnedPriors,
  learnedRow,
  pooledCounts,
  refuseOtherFlow,
  type Counts,
  type CountsRefusal,
  type FaultCounts,
  type PriorWeights,
} from '@keyturn/evidence';
import { deepFreeze } from './deep-freeze.ts';
import type { Flow, LikelihoodTable } from './flow.ts';
import { leastLikelihood } from './least-likelihood.ts';

/** How many cases what is written in the flow is worth beside the counts. */
export interface LearningWeights extends PriorWeights {
  /** Cases that a written row of likelihoods is worth: above 0, usually about 20. */
  readonly rowCases: number;
}

/** The learned flow, or why the counts are not its own. */
export type LearnedFlow = { readonly type: 'flow'; readonly flow: Flow } | CountsRefusal;

/**
 * The flow after what was counted. With nothing counted it weighs as it did. No side effects.
 *
 * @throws EvidenceError for a weight out of range, or a confirmed cause that is none of its faults
 */
export function learnedFlow(flow: Flow, counts: Counts, weights: LearningWeights): LearnedFlow {
  const refusal = refuseOtherFlow(counts, flow);
  if (refusal !== undefined) return refusal;
  const pooled = pooledCounts(counts);
  const likelihoods = Object.entries(flow.likelihoods).map(([check, tables]) => [
    check,
    tables.map((table, position) => ({
      ...table,
      rows: learnedRows(table, {
        pooled,
        question: questionOf(check, tables, position),
        rowCases: weights.rowCases,
        several: isSeveral(flow, check),
      }),
    })),
  ]);
  return {
    type: 'flow',
    flow: deepFreeze({
      ...flow,
      priors: priorsAfter(flow, counts, weights),
      likelihoods: Object.fromEntries(likelihoods) as Flow['likelihoods'],
    }),
  };
}

/** What the answers to a check are counted under: the check, and which of its tables if several. */
export function questionOf(check: string, tables: readonly unknown[], position: number): string {
  return tables.length === 1 ? check : `${check}/${String(position + 1)}`;
}

function priorsAfter(flow: Flow, counts: Counts, weights: PriorWeights): Flow['priors'] {
  const faults = Object.keys(flow.faults);
  const written = defineModel(
    faults,
    faults.map((fault) => flow.priors[fault]?.weight ?? 0),
  );
  const learned = learnedPriors(written, counts, weights);
  if (learned === written) return flow.priors;
  return Object.fromEntries(
    Object.entries(flow.priors).map(([fault, prior]) => [
      fault,
      { ...prior, weight: learned.priors[faults.indexOf(fault)] ?? 0 },
    ]),
  );
}

/** A row that hangs on the circuit stays as it was written: its answers are not the row's alone. */
function learnedRows(
  { rows, byCircuit }: LikelihoodTable,
  scope: {
    readonly pooled: Readonly<Record<string, FaultCounts>>;
    readonly question: string;
    readonly rowCases: number;
    readonly several: boolean;
  },
): LikelihoodTable['rows'] {
  const { pooled, question, rowCases, several } = scope;
  return Object.fromEntries(
    Object.entries(rows).map(([fault, row]) => {
      const { done, answers } = answerCountsOf(pooled, question, fault);
      if (done === 0 || (byCircuit?.parts[fault] ?? 0) > 0) return [fault, row];
      const names = Object.keys(row);
      const shares = Object.values(row);
      const seen = names.map((name) => (Object.hasOwn(answers, name) ? (answers[name] ?? 0) : 0));
      // Of answers that may hold together each is there or not, by itself.
      const learned = several
        ? shares.map(
            (share, index) =>
              learnedRow([share, 1 - share], rowCases, [
                seen[index] ?? 0,
                done - (seen[index] ?? 0),
              ])[0] ?? share,
          )
        : learnedRow(shares, rowCases, seen);
      return [fault, Object.fromEntries(names.map((name, at) => [name, bounded(learned[at])]))];
    }),
  );
}

/** However many cases never gave an answer, it is not held to be impossible. */
function bounded(likelihood = leastLikelihood): number {
  return Math.min(1 - leastLikelihood, Math.max(leastLikelihood, likelihood));
}

function isSeveral(flow: Flow, check: string): boolean {
  const form = flow.checks[check]?.form;
  return form?.kind === 'choice' && form.several;
}
