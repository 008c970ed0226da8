import { expect, test } from 'vitest';
import { compileFlow } from '../chart/compile.ts';
import type { Chart } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallCosts, smallFlow } from '../flow/small-flow.ts';
import { openChecks } from './open-checks.ts';
import { planOf } from './plan.ts';
import type { CaseState } from './state.ts';
import { openCase, turn } from './turn.ts';
import { mostTelling, planFrom, weigh, worthOfCheck, type WeighedCase } from './worth.ts';

function chartOf(files: typeof smallFlow): Chart {
  const result = loadFlow(files);
  if (result.type === 'issues') throw new Error('the small flow has issues');
  return compileFlow(result.flow);
}

const chart = chartOf([...smallFlow, smallCosts]);
const { flow } = chart;
const at = '2026-01-01T08:00:00.000Z';
const kit = ['voltmeter', 'helper'];

/** The state of a case in which so much has been answered. */
function stateAfter(answers: Record<string, string>, context: Record<string, unknown> = {}) {
  const { case: opened } = openCase(chart, { id: 'k1', at, context: { kit, ...context } });
  const listed = Object.entries(answers).map(([check, value]) => ({ check, value: [value] }));
  return turn(chart, opened, { at, input: { type: 'answers', answers: listed } }).case.state;
}

function weighed(state: CaseState): WeighedCase {
  const found = weigh(flow, state, openChecks(flow, state, planOf(flow).diagnosing));
  if (found === undefined) throw new Error('nothing is weighed');
  return found;
}

const slow = { scene: 'safe', complaint: 'slow-crank' };

test('what can be done is what the faults call for, each with its costs', () => {
  const { problem } = weighed(stateAfter(slow));
  expect(problem.faults).toEqual(['battery-discharged', 'ground-cable', 'unlisted']);
  expect(problem.verdicts).toEqual(['recharge-then-prove', 'replace-cable', 'technician-visit']);
  expect([...problem.verdictCost]).toEqual([45, 90, 90]);
  // The visit helps whatever the fault is.
  expect([...problem.fixes]).toEqual([1, 0, 0, 0, 1, 0, 1, 1, 1]);
});

test('a mistake is as many times dearer as the role has it', () => {
  const wrong = (role: string) => [...weighed(stateAfter(slow, { role })).problem.wrongPenalty];
  expect(wrong('mechanic')).toEqual([60, 120, 0]);
  expect(wrong('driver')).toEqual([90, 180, 0]);
});

test('for a dispatcher it is whom to send', () => {
  const { problem } = weighed(stateAfter(slow, { role: 'dispatcher' }));
  expect(problem.verdicts).toEqual(['boost-van', 'technician-van']);
});

test('what has been fetched or reached is paid', () => {
  expect(weighed(stateAfter(slow)).setupsPaid).toEqual([]);
  expect(weighed(stateAfter({ ...slow, 'battery-look': 'sound' })).setupsPaid).toEqual(['bonnet']);
  const measured = stateAfter({ ...slow, 'battery-rest': 'ready' });
  expect([...weighed(measured).setupsPaid].sort()).toEqual(['bonnet', 'voltmeter']);
});

test('only checks that kit, place and preconditions allow are weighed', () => {
  expect(weighed(stateAfter(slow)).problem.checks).toContain('drop-ground');
  expect(weighed(stateAfter(slow, { kit: [] })).problem.checks).not.toContain('drop-ground');
});

test('the plan saves what its first check is worth, and says what that takes', () => {
  // For a mechanic a mistake costs too little here for any check to pay.
  expect(planFrom(weighed(stateAfter(slow, { role: 'mechanic' }))).type).toBe('verdict');
  const state = stateAfter(slow, { role: 'driver' });
  const plan = planFrom(weighed(state));
  expect(plan.type).toBe('check');
  const worth = worthOfCheck(flow, state, 'battery-rest');
  // 1.5 minutes, 4 to fetch the voltmeter and 1 to open the bonnet.
  expect(worth?.minutes).toBeCloseTo(6.5, 9);
  expect(worth?.saves).toBeCloseTo(plan.act - plan.value, 9);
});

test('the most telling check tells enough for its minutes, or there is none', () => {
  const found = weighed(stateAfter(slow));
  // What is remembered takes seconds.
  expect(mostTelling(found, 0.01)).toBe('history');
  expect(mostTelling(found, 10)).toBeUndefined();
});

test('nothing is weighed in a flow without costs', () => {
  const bare = chartOf(smallFlow);
  const state = stateAfter(slow);
  expect(weigh(bare.flow, state, [])).toBeUndefined();
  expect(worthOfCheck(bare.flow, state, 'battery-rest')).toBeUndefined();
});
