/**
 * The instances of tests/instances, with the exact figures for each.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { DiagnosisProblem } from '@keyturn/evidence';
import { readInstances } from '../../adapters/terminal/src/instance.ts';

/** The figures for one instance, in minutes and bits. */
export interface Figures {
  readonly name: string;
  readonly optimal: number;
  readonly optimal_first: string;
  readonly act_now: number;
  readonly act_now_first_verdict: string;
  readonly perfect_information: number;
  readonly prior_entropy_bits: number;
  readonly first_test: Readonly<
    Record<
      string,
      {
        readonly cost_with_setup: number;
        readonly p_outcome: Readonly<Record<string, number>>;
        readonly posterior: Readonly<Record<string, readonly number[]>>;
        readonly mutual_information_bits: number;
        readonly one_step_value: number;
        readonly optimal_value: number;
      }
    >
  >;
  readonly policy_cost: Readonly<Record<string, number>>;
}

/** Where a file of tests/instances is. */
export function instancePath(name: string): string {
  return fileURLToPath(new URL(`../instances/${name}.json`, import.meta.url));
}

const { cases } = JSON.parse(readFileSync(instancePath('expected'), 'utf8')) as {
  readonly cases: readonly Figures[];
};

/** Each instance and its figures. */
export const instances: readonly (Figures & { readonly problem: DiagnosisProblem })[] = cases.map(
  (figures) => {
    const path = instancePath(figures.name);
    const [read] = readInstances(path, readFileSync(path, 'utf8'));
    if (read === undefined) throw new Error(`${path} is empty`);
    return { ...figures, problem: read.problem };
  },
);
