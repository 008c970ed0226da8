/**
 * How well the next check is chosen, and how long a choice takes; every figure is a ratio to
 * something measured in the same run. All problems are invented.
 *
 * Cost: the expected cost of playing a problem to its end, over the exact optimum; beside it, what
 * plain ways of choosing cost. Problems of 40 faults x 60 checks x 4 outcomes have no known
 * optimum: there the mean over cases drawn by seed, over that of the rule that takes the most
 * information for its cost. Time: in bare loops (`bare-loop.ts`) timed between the choices, so that
 * a busy machine slows both.
 */
import { defineProblem, policyCost, type DiagnosisProblem } from '@keyturn/evidence';
import { exactOptimum } from '../support/exact-optimum.ts';
import { instances } from '../support/instances.ts';
import { largeProblem, simulatedCost } from '../support/large-problem.ts';
import { drawOf, randomProblem } from '../support/random-problem.ts';
import { policies } from '../support/reference-policies.ts';
import { kindOf, kinds, variedProblem } from '../support/varied-problem.ts';
import { bareLoopOf } from './bare-loop.ts';
import { choiceClock } from './choice-times.ts';
import { mean, print, row } from './print-figures.ts';

const seeds = 80;
const variedSeeds = 63;
const greatest = 12;
const beside = ['fixed_95', 'ig', 'voi1'] as const;
const largeModels = 6;
const casesPerModel = 30;
const width = 24;

const large = Array.from({ length: largeModels }, (_, seed) =>
  defineProblem(largeProblem(seed + 1)),
);
const bareLoop = bareLoopOf(large[0] as DiagnosisProblem);
const small = choiceClock(bareLoop);
const big = choiceClock(bareLoop);

/** Ratios to the optimum of one group of problems, by the way of choosing. */
interface Ratios {
  readonly title: string;
  readonly ours: readonly number[];
  readonly others: readonly (readonly number[])[];
  readonly unsolved: number;
}

function ratiosOf(title: string, problems: readonly DiagnosisProblem[]): Ratios {
  const ours: number[] = [];
  const others = beside.map((): number[] => []);
  for (const problem of problems) {
    const optimum = exactOptimum(problem);
    if (optimum === undefined) continue;
    ours.push(policyCost(problem, small.choose) / optimum);
    beside.forEach((name, index) => {
      others[index]?.push(policyCost(problem, policies[name]) / optimum);
    });
  }
  return { title, ours, others, unsolved: problems.length - ours.length };
}

const above = (ratios: readonly number[]): string => {
  const percent = (ratio: number, digits: number): string => ((ratio - 1) * 100).toFixed(digits);
  return `${percent(mean(ratios), 2)} / ${percent(Math.max(...ratios), 2)}`;
};

function printRatios({ title, ours, others, unsolved }: Ratios): void {
  const count = `${String(ours.length)}${unsolved > 0 ? ` of ${String(ours.length + unsolved)}` : ''}`;
  print(row(title, [count, ...[ours, ...others].map(above)], width));
}

print('expected cost above the exact optimum, per cent, mean / worst');
print(row('', ['optimum known', 'ours', ...beside], width));
printRatios(
  ratiosOf(
    'shared instances',
    instances.map(({ problem }) => problem),
  ),
);
const byChance = Array.from({ length: seeds }, (_, seed) => drawOf(seed, greatest));
for (const mode of ['terminal', 'continue'] as const) {
  const drawn = byChance.filter((draw) => draw.mode === mode);
  const problems = drawn.map((draw) => defineProblem(randomProblem(draw)));
  printRatios(ratiosOf(`by chance, ${mode}`, problems));
}
for (const kind of kinds) {
  const drawn = Array.from({ length: variedSeeds }, (_, seed) => seed);
  const problems = drawn.filter((seed) => kindOf(seed) === kind);
  printRatios(
    ratiosOf(
      kind,
      problems.map((seed) => defineProblem(variedProblem(seed))),
    ),
  );
}
print(
  `by chance: seeds 0 to ${String(seeds - 1)} up to ${String(greatest)} x ${String(greatest)}; ` +
    `the kinds: seeds 0 to ${String(variedSeeds - 1)}, 8 to 12 faults x 5 to 12 checks`,
);

print();
print(`40 faults x 60 checks x 4 outcomes, mean cost of ${String(casesPerModel)} cases each`);
print(row('', ['ours', 'ig', 'ours / ig'], width));
const overInformation = large.map((problem, index) => {
  const draw = { seed: index + 1, cases: casesPerModel };
  const own = simulatedCost(problem, big.choose, draw);
  const information = simulatedCost(problem, policies.ig, draw);
  const cells = [own.toFixed(1), information.toFixed(1), (own / information).toFixed(3)];
  print(row(`seed ${String(index + 1)}`, cells, width));
  return own / information;
});
print(row('mean', ['', '', mean(overInformation).toFixed(3)], width));

print();
print('time of one choice: bare loops (milliseconds); the worst timed again');
print(row('', ['choices', 'median', 'worst'], width));
for (const [title, clock] of [
  ['up to 12 x 12', small],
  ['40 x 60 x 4', big],
] as const) {
  const { count, medianLoops, medianMs, worstLoops, worstMs } = clock.read();
  const cells = [
    String(count),
    `${medianLoops.toFixed(0)} (${medianMs.toFixed(2)})`,
    `${worstLoops.toFixed(0)} (${worstMs.toFixed(1)})`,
  ];
  print(row(title, cells, width));
}
print(row('one bare loop', ['', `1 (${bareLoop().toFixed(4)})`], width));
