import process, { argv, chdir, exit, stdout } from 'node:process';
import { prepare, root } from './prepare.mjs';

await prepare();
chdir(root);
const { parseCLI, startVitest } = await import('vitest/node');

const { filter, options } = parseCLI(['vitest', 'run', ...argv.slice(2)]);
const vitest = await startVitest('test', filter, { ...options, run: true });
const modules = vitest.state.getTestModules();
const errors = vitest.state.getUnhandledErrors();
await vitest.close();

const states = modules.flatMap((module) => [...module.children.allTests()].map(stateOf));
// A file that cannot even be read has no tests to count, and still has failed.
const broken = modules.filter((module) => module.state() === 'failed' && isEmpty(module)).length;
const passed = count('passed');
const failed = count('failed') + broken;
const skipped = count('skipped');

stdout.write(
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`,
  () => exit(passed > 0 && failed === 0 && errors.length === 0 ? (process.exitCode ?? 0) : 1),
);

function stateOf(test) {
  return test.result().state;
}

function count(state) {
  return states.filter((each) => each === state).length;
}

function isEmpty(module) {
  return ![...module.children.allTests()].some((test) => test.result().state === 'failed');
}
