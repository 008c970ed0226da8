import { expect, test } from 'vitest';
import { compileFlow } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallCosts, smallFlow } from '../flow/small-flow.ts';
import { actionsFor, expectedCost } from './action.ts';
import { assess } from './assessment.ts';
import { openCase } from './turn.ts';

const result = loadFlow([...smallFlow, smallCosts]);
if (result.type === 'issues') throw new Error('the small flow has issues');
const { flow } = result;
const { costs } = flow;
if (costs === undefined) throw new Error('the small flow has no costs');
const chart = compileFlow(flow);

/** What each action is expected to cost a person in a role before anything is found. */
function expectedFor(role: string) {
  const at = '2026-01-01T08:00:00.000Z';
  const assessment = assess(flow, openCase(chart, { id: 'k1', at, context: { role } }).case.state);
  const actions = actionsFor({ flow, costs: costs! }, assessment, Object.keys(flow.faults));
  return {
    share: Object.fromEntries(assessment.ranking),
    cost: Object.fromEntries(
      actions.map((action) => [action.id, expectedCost(action, assessment)]),
    ),
  };
}

test('what is done costs its own, and the mistake as likely as it is one', () => {
  const { share, cost } = expectedFor('mechanic');
  expect(cost['recharge-then-prove']).toBeCloseTo(45 + 60 * (1 - share['battery-discharged']!));
  expect(cost['replace-cable']).toBeCloseTo(90 + 120 * (1 - share['ground-cable']!));
  // The visit helps whatever the fault is.
  expect(cost['technician-visit']).toBeCloseTo(90);
});

test('a mistake is dearer for a driver, and a dispatcher sends', () => {
  const { share, cost } = expectedFor('driver');
  expect(cost['replace-cable']).toBeCloseTo(90 + 180 * (1 - share['ground-cable']!));
  expect(Object.keys(expectedFor('dispatcher').cost)).toEqual(['boost-van', 'technician-van']);
});
