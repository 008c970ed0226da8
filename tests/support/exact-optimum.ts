/**
 * The least expected cost that there is, by the package's own search without doubt and with more
 * work than a choice may take; tests hold it to plain recursion on small problems.
 */
import type { DiagnosisProblem } from '@keyturn/evidence';
import { deepen, NO_DOUBT } from '../../packages/evidence/src/plan/deepen.ts';
import { positionOf } from '../../packages/evidence/src/plan/diagnosis-state.ts';
import { frameOf } from '../../packages/evidence/src/plan/frame.ts';
import { createSearch, levelAt } from '../../packages/evidence/src/plan/search.ts';

/** Undefined where it would take too long. */
export function exactOptimum(problem: DiagnosisProblem): number | undefined {
  const search = createSearch(frameOf(problem, positionOf(problem, {})));
  const { act, total } = levelAt(search, 0);
  const acting = { type: 'act', index: -1, value: act, proof: 'searched' } as const;
  const found = deepen(search, acting, { steps: 150_000_000, doubts: NO_DOUBT });
  return found.proof === 'exact' ? found.value / total : undefined;
}
