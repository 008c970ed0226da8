import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

// Tests run from source: the private `source` condition of each package leads to its .ts files,
// so no build is wanted between a change and its test.
const conditions = ['source'];

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
    // Left to itself the runner keeps one of two processors free, and takes twice as long.
    maxWorkers: Math.max(2, availableParallelism()),
    // A worker takes file after file in one process, so that the packages are read, the flows
    // compiled and their languages learned once in each worker and not once for each file. No test
    // may therefore leave anything behind, in the environment or in a global.
    isolate: false,
    setupFiles: ['tests/setup/end-with-runner.ts', 'tests/setup/fail-on-console.ts'],
  },
});
