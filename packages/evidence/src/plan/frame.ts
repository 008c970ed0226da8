import type { DiagnosisProblem, Requirement } from './diagnosis-problem.ts';
import { NOT_DONE } from './diagnosis-state.ts';
import type { Position } from './diagnosis-state.ts';
import { indexesWhere } from './indexes-where.ts';
import { verdictFrame } from './verdict-frame.ts';
import type { VerdictFrame } from './verdict-frame.ts';

/** A fault less likely than this plays no part in a choice; a share of the whole belief. */
const NEGLIGIBLE = 1e-9;

/**
 * What is still open of a problem at one position, flat and renumbered: the faults that are not
 * negligible, and the checks that may yet be done and may yet tell something.
 */
export interface Frame extends VerdictFrame {
  /** Whether the case goes on after a wrong verdict. */
  readonly goesOn: boolean;
  readonly faultCount: number;
  readonly checkCount: number;
  /** For each fault its position in the problem. */
  readonly faults: Int32Array;
  /** Belief, sum about 1. */
  readonly weights: Float64Array;
  /** For each check its position in the problem. */
  readonly checks: Int32Array;
  readonly cost: Float64Array;
  /** For each check the setups it needs that were not paid at the start. */
  readonly setups: Int32Array;
  readonly setupCost: Float64Array;
  readonly safety: Float64Array;
  readonly outcomeCount: Int32Array;
  /** For each check where its likelihoods begin: outcome by outcome, each over all faults. */
  readonly likelihoodAt: Int32Array;
  readonly likelihoods: Float64Array;
  /** For each check and fault the entropy of its outcomes, nats; 0 for a fault of a shared kind. */
  readonly outcomeEntropy: Float64Array;
  /** For each check where its outcomes begin in rows that hold one entry for every outcome. */
  readonly outcomeAt: Int32Array;
  readonly outcomeTotal: number;
  /** Requirements not yet met, by positions of this frame; undefined where there are none. */
  readonly requires: readonly (readonly Requirement[] | undefined)[];
  /** For each check, 1 where another open check requires it. */
  readonly opens: Uint8Array;
}

/** Makes the frame of a position. No side effects. */
export function frameOf(
  problem: DiagnosisProblem,
  position: Position,
  only?: readonly number[],
): Frame {
  const faults = indexesWhere(
    problem.faults.length,
    (fault) => (position.belief[fault] as number) > NEGLIGIBLE,
  );
  const checks = openChecks(problem, position, { faults, only });
  const place = new Map(checks.map((check, index) => [check, index]));
  const requires = checks.map((check) => {
    const unmet = (problem.checkRequires[check] ?? []).flatMap((requirement) => {
      const index = place.get(requirement.check);
      return index === undefined ? [] : [{ check: index, allowed: requirement.allowed }];
    });
    return unmet.length === 0 ? undefined : unmet;
  });
  const opens = new Uint8Array(checks.length);
  for (const unmet of requires) for (const { check } of unmet ?? []) opens[check] = 1;
  const outcomes = flatOutcomes(problem, { checks, faults });
  const verdicts = verdictFrame(problem, faults);
  return {
    goesOn: problem.mode === 'continue',
    faultCount: faults.length,
    checkCount: checks.length,
    faults: Int32Array.from(faults),
    weights: Float64Array.from(faults, (fault) => position.belief[fault] as number),
    checks: Int32Array.from(checks),
    cost: Float64Array.from(checks, (check) => problem.checkCost[check] as number),
    setups: Int32Array.from(
      checks,
      (check) => (problem.checkSetups[check] as number) & ~position.paid,
    ),
    setupCost: problem.setupCost,
    safety: Float64Array.from(checks, (check) => problem.checkSafety[check] as number),
    requires,
    opens,
    ...outcomes,
    ...verdicts,
    outcomeEntropy: entropies(outcomes, verdicts.isAlone),
  };
}

/** What one check costs now, with those of its setups that are not in `paid`. */
export function costNow(frame: Frame, check: number, paid: number): number {
  let cost = frame.cost[check] as number;
  let unpaid = (frame.setups[check] as number) & ~paid;
  for (let setup = 0; unpaid !== 0; setup += 1, unpaid >>= 1) {
    if ((unpaid & 1) === 1) cost += frame.setupCost[setup] as number;
  }
  return cost;
}

/** Whether every requirement of a check is met by the outcomes of this frame. */
export function isAllowed(frame: Frame, check: number, outcomes: Int32Array): boolean {
  const requires = frame.requires[check];
  if (requires === undefined) return true;
  for (const requirement of requires) {
    const outcome = outcomes[requirement.check] as number;
    if (outcome < 0 || requirement.allowed[outcome] !== 1) return false;
  }
  return true;
}

/** Checks not done that can still be reached, and that tell something or open one that does. */
function openChecks(
  problem: DiagnosisProblem,
  position: Position,
  {
    faults,
    only,
  }: { readonly faults: readonly number[]; readonly only: readonly number[] | undefined },
): number[] {
  const { outcomes } = position;
  const count = problem.checks.length;
  const open = new Set(indexesWhere(count, (check) => outcomes[check] === NOT_DONE));
  const reachable = ({ check, allowed }: Requirement): boolean =>
    open.has(check) || allowed[outcomes[check] as number] === 1;
  for (let before = -1; before !== open.size;) {
    before = open.size;
    for (const check of open) {
      if (!(problem.checkRequires[check] ?? []).every(reachable)) open.delete(check);
    }
  }
  const useful = new Set(
    (only ?? [...open]).filter((check) => open.has(check) && tells(problem, check, faults)),
  );
  // A set visits what is added to it on the way.
  for (const check of useful) {
    for (const requirement of problem.checkRequires[check] ?? []) {
      if (open.has(requirement.check)) useful.add(requirement.check);
    }
  }
  return [...useful].sort((left, right) => left - right);
}

/** Whether the outcomes of a check are likelier under some of the faults than under others. */
function tells(problem: DiagnosisProblem, check: number, faults: readonly number[]): boolean {
  const flat = problem.likelihoods[check] as Float64Array;
  const width = problem.faults.length;
  const first = faults[0] ?? 0;
  for (let row = 0; row < flat.length; row += width) {
    for (const fault of faults) if (flat[row + fault] !== flat[row + first]) return true;
  }
  return false;
}

function flatOutcomes(
  problem: DiagnosisProblem,
  { checks, faults }: { readonly checks: readonly number[]; readonly faults: readonly number[] },
): Pick<Frame, 'outcomeCount' | 'likelihoodAt' | 'likelihoods' | 'outcomeAt' | 'outcomeTotal'> {
  const width = problem.faults.length;
  const outcomeCount = Int32Array.from(checks, (check) => (problem.outcomes[check] ?? []).length);
  const outcomeAt = new Int32Array(checks.length);
  let outcomeTotal = 0;
  outcomeCount.forEach((count, check) => {
    outcomeAt[check] = outcomeTotal;
    outcomeTotal += count;
  });
  const likelihoods = new Float64Array(outcomeTotal * faults.length);
  let next = 0;
  for (const check of checks) {
    const flat = problem.likelihoods[check] as Float64Array;
    for (let row = 0; row < flat.length; row += width) {
      for (const fault of faults) likelihoods[next++] = flat[row + fault] as number;
    }
  }
  return {
    outcomeCount,
    likelihoodAt: outcomeAt.map((at) => at * faults.length),
    likelihoods,
    outcomeAt,
    outcomeTotal,
  };
}

function entropies(
  { outcomeCount, likelihoods }: Pick<Frame, 'outcomeCount' | 'likelihoods'>,
  isAlone: Uint8Array,
): Float64Array {
  const width = isAlone.length;
  const all = new Float64Array(outcomeCount.length * width);
  let at = 0;
  outcomeCount.forEach((count, check) => {
    for (let outcome = 0; outcome < count; outcome += 1) {
      for (let fault = 0; fault < width; fault += 1, at += 1) {
        const likelihood = likelihoods[at] as number;
        if (likelihood <= 0 || isAlone[fault] !== 1) continue;
        const place = check * width + fault;
        all[place] = (all[place] as number) - likelihood * Math.log(likelihood);
      }
    }
  });
  return all;
}
