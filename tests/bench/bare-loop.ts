/**
 * The least that a choice could take: one look along every check of a problem for the most
 * information for its cost, the entropies of all outcomes worked out beforehand.
 */
import type { DiagnosisProblem } from '@keyturn/evidence';
import { median } from './print-figures.ts';

const rounds = 7;
const looks = 10;

/** Makes a clock that tells, in milliseconds, how long one look takes at the moment. */
export function bareLoopOf(problem: DiagnosisProblem): () => number {
  const faults = problem.faults.length;
  const checks = problem.checks.length;
  const outcomes = problem.outcomes[0]?.length ?? 0;
  const likelihoods = Float64Array.from(problem.likelihoods.flatMap((row) => [...row]));
  const entropies = new Float64Array(checks * faults);
  for (let check = 0; check < checks; check += 1) {
    for (let outcome = 0; outcome < outcomes; outcome += 1) {
      for (let fault = 0; fault < faults; fault += 1) {
        const chance = likelihoods[(check * outcomes + outcome) * faults + fault] as number;
        entropies[check * faults + fault]! -= chance > 0 ? chance * Math.log(chance) : 0;
      }
    }
  }
  const belief = problem.priors;
  let best = -1;
  const look = (): void => {
    let greatestRate = 0;
    for (let check = 0; check < checks; check += 1) {
      let gain = 0;
      for (let fault = 0; fault < faults; fault += 1) {
        gain -= (belief[fault] as number) * (entropies[check * faults + fault] as number);
      }
      for (let outcome = 0; outcome < outcomes; outcome += 1) {
        const at = (check * outcomes + outcome) * faults;
        let mass = 0;
        for (let fault = 0; fault < faults; fault += 1) {
          mass += (belief[fault] as number) * (likelihoods[at + fault] as number);
        }
        gain -= mass * Math.log(mass);
      }
      const rate = gain / (problem.checkCost[check] as number);
      if (rate > greatestRate) {
        greatestRate = rate;
        best = check;
      }
    }
  };
  for (let index = 0; index < 2000; index += 1) look();
  if (best < 0) throw new Error('no check tells anything');
  return () =>
    median(
      Array.from({ length: rounds }, () => {
        const begin = performance.now();
        for (let index = 0; index < looks; index += 1) look();
        return (performance.now() - begin) / looks;
      }),
    );
}
