/**
 * What `turn.bench.ts` compares. Started with the name of a measure, it takes it once for every
 * message, and answers with milliseconds.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { argv } from 'node:process';
import { compileFlow, openCase, turn, type Case, type Chart, type Input } from '@keyturn/core';
import { loadFlow, type FileText } from '@keyturn/core/load';
import { createActor } from 'xstate';
import { openChecks } from '../../packages/core/src/case/open-checks.ts';
import { planOf } from '../../packages/core/src/case/plan.ts';
import { planFrom, weigh, type WeighedCase } from '../../packages/core/src/case/worth.ts';
import { bareMachine, countStates } from './bare-machine.ts';

const folder = new URL('../../flows/no-start/', import.meta.url);
const files: readonly FileText[] = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((path) => ({ path, text: readFileSync(new URL(path, folder), 'utf8') }));
const chart = loadChart();
/** The same flow, asked as it is written: a turn of it does not plan. */
const written = compileFlow({ ...chart.flow, byWorth: [] });
const bare = bareMachine(countStates(chart.machine));
const perRound = 400;
const plansPerRound = 10;

const measures: Readonly<Record<string, () => () => number>> = {
  bare: () => measureBare,
  'turn of 10': () => measureTurn(written, playTurns(written, 10), perRound),
  'turn of 200': () => measureTurn(written, playTurns(written, 200), perRound),
  'planning turn': () => measureTurn(chart, planningTurn().stored, plansPerRound),
  'new vehicle': () => measureNewVehicles(planningTurn().stored),
  choice: () => measureChoice(planningTurn().weighed),
  loading: () => () => timed(loadChart),
};
const measure = measures[argv[2] ?? '']?.();
process.on('message', () => process.send?.(measure?.()));

function loadChart(): Chart {
  const result = loadFlow(files);
  if (result.type === 'issues') throw new Error('the flow has issues');
  return compileFlow(result.flow);
}

/** One turn on a case as it lies in a store; the same turn every time. */
function measureTurn(played: Chart, stored: Stored, times: number): () => number {
  return () =>
    timed(() => {
      for (let index = 0; index < times; index += 1) {
        const kase = JSON.parse(stored.json) as Case;
        const step = turn(played, kase, { at: kase.state.at, input: stored.input });
        JSON.stringify(step.case);
        JSON.stringify(step.events);
      }
    }) / times;
}

/** A turn that plans on vehicles that nobody has met: each a little warmer than the last. */
function measureNewVehicles(stored: Stored): () => number {
  let warmer = 0;
  return () =>
    timed(() => {
      for (let index = 0; index < plansPerRound; index += 1) {
        const kase = JSON.parse(stored.json) as Case;
        warmer += 0.001;
        const temperature = Number(kase.state.context['temperature']) + warmer;
        const context = { ...kase.state.context, temperature };
        const met: Case = { ...kase, state: { ...kase.state, context } };
        turn(chart, met, { at: kase.state.at, input: stored.input });
      }
    }) / plansPerRound;
}

/** The planner alone, on what a turn has just planned. */
function measureChoice(weighed: WeighedCase): () => number {
  return () =>
    timed(() => {
      for (let index = 0; index < plansPerRound; index += 1) planFrom(weighed);
    }) / plansPerRound;
}

/** The first turn that asks what the planner chose, and what it planned with. */
function planningTurn(): { readonly stored: Stored; readonly weighed: WeighedCase } {
  const { flow } = chart;
  for (let turns = 1; turns < 30; turns += 1) {
    const stored = playTurns(chart, turns);
    const kase = JSON.parse(stored.json) as Case;
    const { state } = turn(chart, kase, { at: kase.state.at, input: stored.input }).case;
    const weighed = weigh(flow, state, openChecks(flow, state, planOf(flow).diagnosing));
    if (weighed === undefined || state.next?.to !== 'check') continue;
    if (!flow.byWorth.includes(state.next.stage)) continue;
    const plan = planFrom(weighed);
    // Where the whole can be searched at once a choice takes next to no time.
    if (plan.id === state.next.check && plan.proof !== 'exact') return { stored, weighed };
  }
  throw new Error('no turn plans');
}

interface Stored {
  readonly json: string;
  readonly input: Input;
}

/** A case after so many turns, standing at a question; going back makes it long. */
function playTurns(played: Chart, turns: number): Stored {
  const at = '2026-01-01T08:00:00.000Z';
  const context = {
    temperature: 12,
    kit: ['voltmeter', 'clamp-meter', 'helper'],
    place: 'home',
    vehicle: { fuel: 'petrol', transmission: 'manual', ignition: 'key' },
  };
  const answers: Record<string, string> = { complaint: 'slow-crank', when: 'after-standing' };
  let kase = openCase(played, { id: 'bench', at, context }).case;
  let input = answerTo(kase, answers);
  for (let index = 0; index < turns; index += 1) {
    kase = turn(played, kase, { at, input }).case;
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
  const all = timed(() => {
    for (let index = 0; index < perRound; index += 1) {
      const actor = createActor(bare, { snapshot: JSON.parse(json) as never }).start();
      actor.send({ type: 'ANSWER', value: index % 9 });
      json = JSON.stringify(actor.getPersistedSnapshot());
      actor.stop();
    }
  });
  return all / perRound;
}

/** Milliseconds. */

function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}
