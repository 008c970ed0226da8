import type { Frame } from './frame.ts';

/**
 * How far a plan's cost can be relied on. `exact`: no plan is cheaper. `searched`: it is the cost
 * of a plan, the cheapest found. `estimated`: a cheaper plan than any found is expected, not seen.
 */
export type Proof = 'exact' | 'searched' | 'estimated';

/** What a search found to do first. */
export interface Found {
  /** `act`: acting at once; `verdict`: trying one as an experiment. */
  readonly type: 'act' | 'check' | 'verdict';
  /** Position of the check or verdict in the problem; -1 for acting. */
  readonly index: number;
  /** Expected cost of the plan, times the total of the weights. */
  readonly value: number;
  readonly proof: Proof;
}

/** What an option of a frame is in the problem: a check, or behind the checks a verdict. */
export function foundOption(
  frame: Frame,
  option: number,
  plan: { readonly value: number; readonly proof: Proof },
): Found {
  return option < frame.checkCount
    ? { type: 'check', index: frame.checks[option] as number, ...plan }
    : { type: 'verdict', index: option - frame.checkCount, ...plan };
}

/** The option of a frame that was found; -1 for acting, or where the frame has no such check. */
export function optionOf(frame: Frame, found: Found): number {
  if (found.type === 'check') return frame.checks.indexOf(found.index);
  return found.type === 'verdict' ? frame.checkCount + found.index : -1;
}
