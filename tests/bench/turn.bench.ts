/**
 * What a turn costs: an event in, the next question out, the case saved as JSON and restored.
 *
 * Baseline, in the same run: a bare XState machine with as many states, restored from JSON as its
 * documentation has it (an actor from a persisted snapshot), sent one event and saved as JSON.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { compileFlow, openCase, turn, type Case, type Chart, type Input } from '@keyturn/core';
import { loadFlow, type FileText } from '@keyturn/core/load';
import { assign, createActor, createMachine, type AnyStateMachine } from 'xstate';

const folder = new URL('../../flows/no-start/', import.meta.url);
const files: readonly FileText[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((path) => ({ path, text: readFileSync(new URL(path, folder), 'utf8') }));

const bareContext = { a: 0, b: 0, c: 0, d: 0, e: 0, f: 0, g: 0, h: 0 };
const chart = loadChart();
const states = countStates(chart.machine);
const bare = bareMachine(states);

const rounds = 15;
const perRound = 400;

const baseline: number[] = [];
const short: number[] = [];
const long: number[] = [];
const tenTurns = playTurns(10);
const twoHundredTurns = playTurns(200);
// Interleaved, so that a slow moment of the machine falls on all three.
for (let round = 0; round < rounds; round += 1) {
  baseline.push(measureBare());
  short.push(measureTurn(tenTurns));
  long.push(measureTurn(twoHundredTurns));
}
const loading = Array.from({ length: rounds }, () => timed(loadChart));

print('a turn, restored and saved, against the bare machine', short, baseline, 3);
print('the same in a case of 200 turns, against one of 10', long, short, 1.2);
process.stdout.write(
  `loading and compiling the flow: ${median(loading).toFixed(0)} ms (at most 150 ms)\n`,
);
process.stdout.write(`states of both machines: ${String(states)}\n`);

function loadChart(): Chart {
  const result = loadFlow(files);
  if (result.type === 'issues') throw new Error('the flow has issues');
  return compileFlow(result.flow);
}

/** One turn on a case as it lies in a store; the same turn every time. */
function measureTurn(stored: { readonly json: string; readonly input: Input }): number {
  return timed(() => {
    for (let index = 0; index < perRound; index += 1) {
      const kase = JSON.parse(stored.json) as Case;
      const step = turn(chart, kase, { at: kase.state.at, input: stored.input });
      JSON.stringify(step.case);
      JSON.stringify(step.events);
    }
  });
}

/** A case after so many turns, standing at a question; going back makes it long. */
function playTurns(turns: number): { readonly json: string; readonly input: Input } {
  const at = '2026-01-01T08:00:00.000Z';
  const context = {
    temperature: 12,
    kit: ['voltmeter', 'clamp-meter', 'helper'],
    place: 'home',
    vehicle: { fuel: 'petrol', transmission: 'manual', ignition: 'key' },
  };
  const answers: Record<string, string> = { complaint: 'slow-crank', when: 'after-standing' };
  let kase = openCase(chart, { id: 'bench', at, context }).case;
  let input = answerTo(kase, answers);
  for (let index = 0; index < turns; index += 1) {
    kase = turn(chart, kase, { at, input }).case;
    // From the tenth turn on every other turn goes back to the question before.
    input =
      index >= 9 && index % 2 === 1 ? { type: 'talk', talk: 'back' } : answerTo(kase, answers);
  }
  return { json: JSON.stringify(kase), input: answerTo(kase, answers) };
}

function answerTo(kase: Case, answers: Readonly<Record<string, string>>): Input {
  const { next } = kase.state;
  const check = next?.to === 'check' ? chart.flow.checks[next.check] : undefined;
  if (check?.form.kind !== 'choice') return { type: 'talk', talk: 'cannot' };
  const choice = answers[check.id] ?? check.form.choices[0] ?? '';
  return { type: 'answers', answers: [{ check: check.id, value: [choice] }] };
}

function measureBare(): number {
  const first = createActor(bare).start();
  let json = JSON.stringify(first.getPersistedSnapshot());
  first.stop();
  return timed(() => {
    for (let index = 0; index < perRound; index += 1) {
      const actor = createActor(bare, { snapshot: JSON.parse(json) as never }).start();
      actor.send({ type: 'ANSWER', value: index % 9 });
      json = JSON.stringify(actor.getPersistedSnapshot());
      actor.stop();
    }
  });
}

/** Compound states of ten leaves; a leaf has three guarded branches and a step back. */
function bareMachine(count: number): AnyStateMachine {
  const stages = Math.max(1, Math.round(count / 11));
  const leaves = stages * 10;
  const target = (index: number): string => {
    const place = ((index % leaves) + leaves) % leaves;
    return `#stage${String(Math.floor(place / 10))}.leaf${String(place % 10)}`;
  };
  const record = assign(({ event }) => {
    const { value } = event as unknown as { readonly value: number };
    return { a: value, b: value + 1, c: value + 2, d: value + 3 };
  });
  const below = (limit: number) => ({
    guard: ({ event }: { event: unknown }) => (event as { value: number }).value < limit,
  });
  const leaf = (index: number) => ({
    on: {
      ANSWER: [
        { ...below(3), target: target(index + 1), actions: record },
        { ...below(6), target: target(index + 2), actions: record },
        { target: target(index + 3), actions: record },
      ],
      BACK: { target: target(index - 1) },
    },
  });
  return createMachine({
    context: bareContext,
    initial: 'stage0',
    states: Object.fromEntries(
      Array.from({ length: stages }, (_, stage) => [
        `stage${String(stage)}`,
        {
          id: `stage${String(stage)}`,
          initial: 'leaf0',
          states: Object.fromEntries(
            Array.from({ length: 10 }, (_leaf, index) => [
              `leaf${String(index)}`,
              leaf(stage * 10 + index),
            ]),
          ),
        },
      ]),
    ),
  } as never);
}

function countStates(machine: AnyStateMachine): number {
  const count = (node: AnyStateMachine['root']): number =>
    1 + Object.values(node.states).reduce((sum, child) => sum + count(child), 0);
  return count(machine.root);
}

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
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
  const micro = (values: readonly number[]): string =>
    `${((median(values) / perRound) * 1000).toFixed(0)} µs`;
  process.stdout.write(
    `${what}: ${ratio.toFixed(2)} × (at most ${String(most)} ×; ${micro(ours)} against ${micro(theirs)})\n`,
  );
}
