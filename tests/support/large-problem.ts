/**
 * Large invented problems in which one check settles nothing and many settle it, and cases drawn
 * from a problem.
 */
import type { DiagnosisProblem, Policy, ProblemDefinition } from '@keyturn/evidence';
import { seeded } from './random-problem.ts';

/** 40 faults, each with a verdict of its own; 60 checks of 4 outcomes, each bearing on every fault. */
export function largeProblem(seed: number): ProblemDefinition {
  const random = seeded(seed);
  // The higher, the more one outcome stands out under a fault.
  const sharpness = 1 + 2 * random();
  const faults = Array.from({ length: 40 }, (_, index) => `f${String(index)}`);
  return {
    mode: 'terminal',
    faults: faults.map((id) => ({ id, prior: 0.2 + random() })),
    verdicts: [
      ...faults.map((id, index) => ({
        id: `v${String(index)}`,
        cost: Math.round(10 + 50 * random()),
        wrongPenalty: Math.round(150 + 250 * random()),
        fixes: [id],
      })),
      { id: 'tow', cost: Math.round(180 + 120 * random()), wrongPenalty: 0, fixes: faults },
    ],
    checks: Array.from({ length: 60 }, (_, check) => ({
      id: `c${String(check)}`,
      cost: Math.round(1 + 9 * random()),
      outcomes: ['o0', 'o1', 'o2', 'o3'],
      likelihoods: faults.map(() => {
        const shares = Array.from({ length: 4 }, () => (0.02 + random()) ** sharpness);
        const total = shares.reduce((sum, share) => sum + share, 0);
        return shares.map((share) => share / total);
      }),
    })),
  };
}

/**
 * The mean cost of a way of choosing over cases drawn by seed: the same seed draws the same faults
 * and the same answers, whatever is asked.
 */
export function simulatedCost(
  problem: DiagnosisProblem,
  policy: Policy,
  { seed, cases }: { readonly seed: number; readonly cases: number },
): number {
  let total = 0;
  for (let index = 0; index < cases; index += 1) {
    total += oneCase(problem, policy, seeded(seed * 1000 + index));
  }
  return total / cases;
}

function oneCase(problem: DiagnosisProblem, policy: Policy, random: () => number): number {
  const width = problem.faults.length;
  const fault = drawn(problem.priors, random());
  const luck = problem.checks.map(() => random());
  const belief = [...problem.priors];
  const done: { check: string; outcome: string }[] = [];
  for (let cost = 0; ;) {
    const { type, index } = policy(problem, { belief, done });
    if (type === 'verdict') {
      // The chance of being wrong, not whether this case was: that asks for far fewer cases.
      const wrong = belief.filter((_, other) => problem.fixes[index * width + other] === 0);
      const chance = wrong.reduce((sum, share) => sum + share, 0);
      return cost + problem.verdictCost[index]! + chance * problem.wrongPenalty[index]!;
    }
    cost += problem.checkCost[index]!;
    const flat = problem.likelihoods[index]!;
    const chances = problem.outcomes[index]!.map((_, outcome) => flat[outcome * width + fault]!);
    const outcome = drawn(chances, luck[index]!);
    done.push({ check: problem.checks[index]!, outcome: problem.outcomes[index]![outcome]! });
    for (let other = 0; other < width; other += 1) belief[other]! *= flat[outcome * width + other]!;
    const sum = belief.reduce((all, share) => all + share, 0);
    for (let other = 0; other < width; other += 1) belief[other]! /= sum;
  }
}

/** The position at which the running sum of the chances passes a number from 0 to 1. */
function drawn(chances: ArrayLike<number>, luck: number): number {
  let passed = 0;
  for (let index = 0; index < chances.length; index += 1) {
    passed += chances[index]!;
    if (luck < passed) return index;
  }
  return chances.length - 1;
}
