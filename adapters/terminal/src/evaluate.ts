/**
 * `npm run -s evaluate -- FILE…`: how well the next check is chosen, on sequential-diagnosis
 * instances. For each it prints one line of JSON: `name`; `cost`, the exact expected cost of
 * choosing as Keyturn does, over every case that it can come to; `first`, the first action; and
 * `milliseconds`, the longest single choice, of a program that has been running for a choice.
 * Exits 0, or 2 on a file that it cannot read: then nothing is printed.
 */
import { readFileSync } from 'node:fs';
import { planNext, policyCost } from '@keyturn/evidence';
import { InstanceError, readInstances, type Instance } from './instance.ts';

process.exitCode = evaluateFiles(process.argv.slice(2));

function evaluateFiles(paths: readonly string[]): number {
  if (paths.length === 0) {
    process.stderr.write('evaluate: give one or more files of sequential-diagnosis instances\n');
    return 2;
  }
  try {
    const instances = paths.flatMap((path) => readInstances(path, readText(path)));
    for (const instance of instances) {
      process.stdout.write(`${JSON.stringify(evaluate(instance))}\n`);
    }
    return 0;
  } catch (error) {
    if (!(error instanceof InstanceError)) throw error;
    process.stderr.write(`evaluate: ${error.message}\n`);
    return 2;
  }
}

function evaluate({ name, problem }: Instance): Readonly<Record<string, string | number>> {
  // Only a program that has just been started takes so long over its first choice.
  const { type, id } = planNext(problem);
  let longest = 0;
  const cost = policyCost(problem, (_, state) => {
    const begin = performance.now();
    const plan = planNext(problem, state);
    longest = Math.max(longest, performance.now() - begin);
    return plan;
  });
  const first = `${type === 'check' ? 'test' : 'verdict'}:${id}`;
  return { name, cost, first, milliseconds: Math.round(longest * 1000) / 1000 };
}

function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (cause) {
    throw new InstanceError(`${path}: cannot be read: ${(cause as Error).message}`);
  }
}
