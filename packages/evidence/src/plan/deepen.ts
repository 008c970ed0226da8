import { foundOption, optionOf } from './found.ts';
import type { Found } from './found.ts';
import { createMemo } from './memo.ts';
import { levelAt, SAME } from './search.ts';
import type { Search } from './search.ts';
import { tryOption } from './solve.ts';
import { sweep } from './sweep.ts';

/**
 * From hoping for little to hoping for all that the bound allows: how much a plan is trusted to
 * save at a branch, 1 standing for as much of what is to be saved as the best plan so far saves
 * on the whole, less for more.
 */
const DOUBTS = [3, 2.4, 1.9, 1.5, 1.25, 1.1, 1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0];

/** Without doubt at once. */
export const NO_DOUBT: readonly number[] = [0];

/** With more doubt than this a search would see one step only. */
const MOST_DOUBT = 0.95;

/** How far a search may go. */
export interface Limits {
  /** Steps of the innermost loops that it may take. */
  readonly steps: number;
  /** Doubts, the greatest first; all of them when absent. */
  readonly doubts?: readonly number[];
}

/**
 * Searches again and again with less doubt, until nothing is doubted or the budget is spent; what
 * a search that is broken off has found by then counts. What is known already, `before`, is kept
 * unless something cheaper is found.
 */
export function deepen(search: Search, before: Found, limits: Limits): Found {
  const { steps, doubts = DOUBTS } = limits;
  const root = levelAt(search, 0);
  const spread = root.act - root.known;
  let found = before;
  search.budget = search.work + steps;
  let last = Number.POSITIVE_INFINITY;
  for (const share of doubts) {
    const doubt = spread > 0 ? (share * (found.value - root.known)) / spread : 0;
    search.doubt = Math.min(MOST_DOUBT, doubt);
    if (search.doubt >= last) continue;
    last = search.doubt;
    search.before = search.memo;
    search.memo = createMemo(search.key.length);
    const { isDone, ...better } = searchOnce(search, found);
    found = { ...better, proof: isDone && search.doubt === 0 ? 'exact' : 'searched' };
    if (!isDone || found.proof === 'exact') break;
  }
  return found;
}

function searchOnce(search: Search, before: Found): Found & { readonly isDone: boolean } {
  const { frame } = search;
  const root = levelAt(search, 0);
  sweep(search, root, root.act * (1 + SAME));
  const earlier = optionOf(frame, before);
  // The best so far goes first, so that its value cuts the others short.
  const options = [...root.order.subarray(0, root.count)].filter((option) => option !== earlier);
  if (earlier >= 0) options.unshift(earlier);
  const costs = new Map<number, number>();
  let best = before.value;
  let isDone = true;
  for (const option of options) {
    // A little beyond the best, so that what is as good is seen to be.
    const limit = best * (1 + 2 * SAME);
    const cost = tryOption(search, 0, { option, limit });
    if (Number.isNaN(cost)) {
      isDone = false;
      break;
    }
    if (cost < limit) costs.set(option, cost);
    if (cost < best) best = cost;
  }
  if (root.act <= best * (1 + SAME)) {
    return { type: 'act', index: -1, value: root.act, proof: 'searched', isDone };
  }
  if (earlier >= 0 && !costs.has(earlier)) costs.set(earlier, before.value);
  const rank = (option: number): number => frame.safety[option] ?? Number.POSITIVE_INFINITY;
  const [chosen] = [...costs]
    .filter(([, cost]) => cost <= best * (1 + SAME))
    .sort(([left], [right]) => compare(rank(left), rank(right)) || left - right);
  return chosen === undefined
    ? { ...before, isDone }
    : { ...foundOption(frame, chosen[0], { value: chosen[1], proof: 'searched' }), isDone };
}

function compare(left: number, right: number): number {
  return left === right ? 0 : left - right;
}
