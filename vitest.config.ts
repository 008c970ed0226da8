import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

// Tests run from source: the private `source` condition of each package leads to its .ts files,
// so no build is wanted between a change and its test.
const conditions = ['source'];

/** Short files that take minutes; of all others the largest take longest. */
const long =
  /\/(?:understanding|case-store-crash|translations|no-start-cards|counter-time)\.test\.ts$/u;

/** Begins with what takes longest, so that no processor is idle in the end. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification): boolean => long.test(moduleId);
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions, externalConditions: conditions } },
  test: {
    include: [
      'packages/*/src/**/*.test.ts',
      'adapters/*/src/**/*.test.ts',
      'tests/**/*.test.ts',
      'examples/**/*.test.ts',
    ],
    exclude: ['**/node_modules/**', '**/dist/**'],
    // A limit against tests that never end, and no measure of speed: machines are busy at times.
    testTimeout: 60_000,
    // One more than there are processors: at a page a test waits half its time, as a hand does
    // between two keys, and a program that is stopped by force writes for a while before.
    maxWorkers: availableParallelism() + 1,
    sequence: { sequencer: LongestFirst },
    // A worker takes file after file in one process, so that the packages are read, the flows
    // compiled and their languages learned once in each worker and not once for each file. No test
    // may therefore leave anything behind, in the environment or in a global.
    isolate: false,
    setupFiles: ['tests/setup/end-with-runner.ts', 'tests/setup/fail-on-console.ts'],
  },
});
