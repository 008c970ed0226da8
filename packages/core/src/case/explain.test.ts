import { expect, test } from 'vitest';
import { compileFlow } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallCosts, smallFlow } from '../flow/small-flow.ts';
import { weightsMessage } from './explain.ts';
import { openCase, turn } from './turn.ts';

const loaded = loadFlow([...smallFlow, smallCosts]);
if (loaded.type === 'issues') throw new Error('the small flow has issues');
const chart = compileFlow(loaded.flow);
const at = '2026-01-01T08:00:00.000Z';

/** The case of an engine that turns slowly and loses this much on its ground side, V. */
function slowWith(drop: number) {
  const { case: opened } = openCase(chart, {
    id: 'k1',
    at,
    context: { kit: ['voltmeter', 'helper'] },
  });
  return turn(chart, opened, {
    at,
    input: {
      type: 'answers',
      answers: [
        { check: 'scene', value: ['safe'] },
        { check: 'complaint', value: ['slow-crank'] },
        { check: 'drop-ground', value: { value: drop, unit: 'V' } },
      ],
    },
  }).case.state;
}

test('each finding weighs as many decibans as it moves the odds of the fault, the heaviest first', () => {
  const { findings } = weightsMessage(chart.flow, slowWith(0.9), 'ground-cable');
  // By hand: slow cranking takes 30 : 70 to 24 : 51, 0.41 dB, which is not worth telling. A high drop,
  // .9554 with a bad cable, .0545 with a flat battery and .1347 with what is not listed, takes 32 : 68
  // to 7.59 : 1.
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({
    check: 'drop-ground',
    answer: 'high',
    otherwise: 'battery-discharged',
  });
  expect(findings[0]?.decibans).toBeCloseTo(12.08, 1);
});

test('what speaks against the fault weighs less than nothing, and leaves the leader as it is', () => {
  const { findings } = weightsMessage(chart.flow, slowWith(0.05), 'ground-cable');
  expect(findings[0]?.check).toBe('drop-ground');
  expect(findings[0]?.decibans).toBeLessThan(-10);
});
