/**
 * What a turn costs: an event in, the next question out, the case saved as JSON and restored.
 *
 * A turn in which the next check is planned for is measured against one choice of the planner on
 * the same problem: nearly all of it is that choice. A turn that asks as it is written is
 * measured against a bare XState machine with as many states, restored from JSON as its
 * documentation has it (an actor from a persisted snapshot), sent one event and saved as JSON.
 * Each has a process of its own, as it would in use, since what one leaves behind slows another.
 */
import { fork } from 'node:child_process';
import { once } from 'node:events';

const rounds = 40;
const program = new URL('turn-measures.ts', import.meta.url);

const bare = start('bare');
const turnOf10 = start('turn of 10');
const turnOf200 = start('turn of 200');
const planning = start('planning turn');
const newVehicle = start('new vehicle');
const choice = start('choice');
const loading = start('loading');

const baseline: number[] = [];
const short: number[] = [];
const long: number[] = [];
const planned: number[] = [];
const met: number[] = [];
const chosen: number[] = [];
const loads: number[] = [];
// Interleaved, so that a slow moment of the machine falls on all.
for (let round = 0; round < rounds; round += 1) {
  baseline.push(await bare.measure());
  short.push(await turnOf10.measure());
  long.push(await turnOf200.measure());
  planned.push(await planning.measure());
  met.push(await newVehicle.measure());
  chosen.push(await choice.measure());
  loads.push(await loading.measure());
}
for (const { end } of [bare, turnOf10, turnOf200, planning, newVehicle, choice, loading]) end();

print('a turn that plans, against one choice of the planner', planned, chosen, 1.5);
print('the same on a vehicle not met before, against one that was', met, planned, 3);
print('a turn that asks as written, against the bare machine', short, baseline, 3);
print('the same in a case of 200 turns, against one of 10', long, short, 1.2);
process.stdout.write(
  `loading and compiling the flow: ${median(loads).toFixed(0)} ms (at most 150 ms)\n`,
);

/** A process that takes one measure for every call. */
function start(name: string): {
  readonly measure: () => Promise<number>;
  readonly end: () => void;
} {
  const child = fork(program, [name], { execArgv: ['--import', 'tsx'] });
  return {
    async measure() {
      child.send('once');
      const [milliseconds] = (await once(child, 'message')) as [number];
      return milliseconds;
    },
    end() {
      child.kill();
    },
  };
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

function print(
  what: string,
  ours: readonly number[],
  theirs: readonly number[],
  most: number,
): void {
  const ratio = median(ours.map((value, index) => value / (theirs[index] ?? 1)));
  const micro = (values: readonly number[]): string => `${(median(values) * 1000).toFixed(0)} µs`;
  process.stdout.write(
    `${what}: ${ratio.toFixed(2)} × (at most ${String(most)} ×; ${micro(ours)} against ${micro(theirs)})\n`,
  );
}
