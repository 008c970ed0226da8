import { EvidenceError } from '../evidence-error.ts';
import { defineModel, type EvidenceModel } from '../evidence-model.ts';
import { requireInRange } from '../require-numbers.ts';
import type { Counts } from './counts.ts';
import { pooledCounts, type CountsGroup } from './pooled-counts.ts';

/** How many cases the estimates that come before the counts are worth. */
export interface PriorWeights {
  /** Cases that the published prior is worth, w0: above 0. It must be stated where it is used. */
  readonly publishedCases: number;
  /** The role or channel that is estimated by itself; all cases together when absent. */
  readonly group?: CountsGroup & {
    /** Cases that the estimate from all cases together is worth, w1: above 0. */
    readonly pooledCases: number;
  };
}

/**
 * The priors after the confirmed causes: (w p + n) / (w + N), n of N cases being of that fault, the
 * mean of a Dirichlet distribution. For a role or a channel p is in its turn the estimate from all
 * cases together, so that a group with few cases stays near it.
 *
 * Counts are a selection, so a prior drawn from them is too.
 *
 * @returns a model of the same hypotheses; with nothing counted the very model that was given
 * @throws EvidenceError `unknown-hypothesis` when a confirmed cause is none of the model's, or
 *   `out-of-range` for a weight
 */
export function learnedPriors(
  model: EvidenceModel,
  counts: Counts,
  weights: PriorWeights,
): EvidenceModel {
  const { publishedCases, group } = weights;
  const pooled = updated(model, confirmedIn(model, counts), publishedCases);
  if (group === undefined) return pooled;
  return updated(pooled, confirmedIn(model, counts, group), group.pooledCases);
}

function updated(
  model: EvidenceModel,
  confirmed: readonly number[],
  priorCases: number,
): EvidenceModel {
  requireInRange(priorCases, {
    what: 'the weight of a prior in cases',
    least: Number.MIN_VALUE,
    greatest: Number.MAX_SAFE_INTEGER,
  });
  if (confirmed.every((count) => count === 0)) return model;
  return defineModel(
    model.hypotheses,
    model.priors.map((prior, index) => priorCases * prior + (confirmed[index] ?? 0)),
  );
}

function confirmedIn(
  model: EvidenceModel,
  counts: Counts,
  group: CountsGroup = {},
): readonly number[] {
  const pooled = new Map(Object.entries(pooledCounts(counts, group)));
  const odd = [...pooled.keys()].find((fault) => !model.hypotheses.includes(fault));
  if (odd !== undefined) {
    throw new EvidenceError(
      'unknown-hypothesis',
      `the confirmed cause "${odd}" is none of the model's hypotheses`,
      { hypothesis: odd },
    );
  }
  return model.hypotheses.map((fault) => pooled.get(fault)?.confirmed ?? 0);
}
