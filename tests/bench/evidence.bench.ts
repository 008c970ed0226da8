/**
 * How well the next check is chosen, and how long a choice takes; every figure is a ratio to
 * something measured in the same run. All problems are invented.
 *
 * Cost: the expected cost of playing a problem to its end, over the exact optimum, on the instances
 * of tests/instances and on problems of both modes drawn by seed; beside it, what the plain ways of
 * choosing cost. Large problems have no exact optimum: there the mean over cases drawn by seed, over
 * that of the rule that takes the most information for its cost. Baseline of time: a bare loop that
 * looks for the most information for its cost, the entropies of all outcomes worked out beforehand.
 */
import { defineProblem, planNext, policyCost, type DiagnosisProblem } from '@keyturn/evidence';
import { exactOptimum } from '../support/exact-optimum.ts';
import { instances } from '../support/instances.ts';
import { largeProblem, simulatedCost } from '../support/large-problem.ts';
import { drawOf, randomProblem } from '../support/random-problem.ts';
import { policies } from '../support/reference-policies.ts';

const seeds = 200;
const greatest = 12;
const beside = ['fixed_95', 'ig', 'voi1', 'pC'] as const;
const largeModels = 6;
const casesPerModel = 60;

const times: number[] = [];
const ours = (problem: DiagnosisProblem, state: Parameters<typeof planNext>[1]) => {
  const begin = performance.now();
  const plan = planNext(problem, state);
  times.push(performance.now() - begin);
  return plan;
};

const print = (line: string): boolean => process.stdout.write(`${line}\n`);
const sorted = (values: readonly number[]): readonly number[] => values.toSorted((a, b) => a - b);
const median = (values: readonly number[]): number =>
  sorted(values)[Math.floor(values.length / 2)] ?? Number.NaN;
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const share = (ratio: number): string => `${((ratio - 1) * 100).toFixed(2)} %`;

function printCosts(title: string, problems: readonly DiagnosisProblem[]): void {
  const ratios: Record<string, number[]> = { ours: [] };
  let unsolved = 0;
  for (const problem of problems) {
    const optimum = exactOptimum(problem);
    if (optimum === undefined) {
      unsolved += 1;
      continue;
    }
    ratios['ours']?.push(policyCost(problem, ours) / optimum);
    for (const name of beside) {
      (ratios[name] ??= []).push(policyCost(problem, policies[name]) / optimum);
    }
  }
  print(`${title}: above the optimum, mean / worst of ${String(ratios['ours']?.length ?? 0)}`);
  if (unsolved > 0) print(`  (${String(unsolved)} more are too hard for the optimum to be known)`);
  for (const [name, all] of Object.entries(ratios)) {
    print(`  ${name.padEnd(9)} ${share(mean(all))} / ${share(Math.max(...all))}`);
  }
}

function printTimes(title: string, bareMs: number): void {
  const worst = Math.max(...times);
  print(
    `${title}: median ${median(times).toFixed(2)} ms (${(median(times) / bareMs).toFixed(0)} bare loops), ` +
      `worst ${worst.toFixed(1)} ms (${(worst / bareMs).toFixed(0)}), of ${String(times.length)}`,
  );
  times.length = 0;
}

/** Looks once for the most information for its cost; how long that takes, in milliseconds. */
function bareLoop(problem: DiagnosisProblem): number {
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
  const measured: number[] = [];
  for (let round = 0; round < 60; round += 1) {
    const begin = performance.now();
    for (let index = 0; index < 100; index += 1) look();
    measured.push((performance.now() - begin) / 100);
  }
  if (best < 0) throw new Error('no check tells anything');
  return median(measured);
}

const large = Array.from({ length: largeModels }, (_, seed) =>
  defineProblem(largeProblem(seed + 1)),
);
const bareMs = bareLoop(large[0] as DiagnosisProblem);
print(`bare loop over 40 faults x 60 checks x 4 outcomes: ${(bareMs * 1000).toFixed(1)} µs`);

printCosts(
  'shared instances',
  instances.map(({ problem }) => problem),
);
printCosts(
  `seeds 0 to ${String(seeds - 1)}, up to ${String(greatest)} x ${String(greatest)}`,
  Array.from({ length: seeds }, (_, seed) => defineProblem(randomProblem(drawOf(seed, greatest)))),
);
printTimes('  one choice', bareMs);

print(`large dense problems, mean of ${String(casesPerModel)} cases each, over most information`);
const overInformation = large.map((problem, index) => {
  const draw = { seed: index + 1, cases: casesPerModel };
  const own = simulatedCost(problem, ours, draw);
  const information = simulatedCost(problem, policies.ig, draw);
  print(
    `  seed ${String(index + 1)}: ${own.toFixed(1)} over ${information.toFixed(1)}: ${(own / information).toFixed(3)}`,
  );
  return own / information;
});
print(`  mean ${mean(overInformation).toFixed(3)}`);
printTimes('  one choice', bareMs);
