import { describe, expect, test } from 'vitest';
import { compileFlow } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallCosts, smallFlow } from '../flow/small-flow.ts';
import { chooseNext } from './choose.ts';
import { Kept } from './kept.ts';
import { reckon, reckonWorth } from './reckon.ts';
import type { CaseState } from './state.ts';
import { openCase, turn } from './turn.ts';
import { worthOfCheck } from './worth.ts';

const loaded = loadFlow([...smallFlow, smallCosts]);
if (loaded.type === 'issues') throw new Error('the small flow has issues');
const chart = compileFlow(loaded.flow);
const { flow } = chart;

/** The case of an engine that turns slowly, opened at some time, with so much found besides. */
function slow(
  id: string,
  at: string,
  found: Readonly<Record<string, readonly string[]>>,
): CaseState {
  const context = { kit: ['voltmeter'], place: 'home', vehicle: { transmission: 'automatic' } };
  const { case: opened } = openCase(chart, { id, at, context });
  const all = { scene: ['safe'], complaint: ['slow-crank'], history: ['none'], ...found };
  const answers = Object.entries(all).map(([check, value]) => ({ check, value }));
  return turn(chart, opened, { at, input: { type: 'answers', answers } }).case.state;
}

const early = '2026-01-01T08:00:00.000Z';
const late = '2026-06-30T21:30:00.000Z';

describe('what follows from the answers', () => {
  test('is the same for whoever gives them, whenever', () => {
    const one = slow('k1', early, {});
    const other = slow('k2', late, {});
    expect(reckon(flow, other)).toEqual(reckon(flow, one));
    expect(reckon(flow, { ...other }).next).toEqual(chooseNext(flow, other));
  });

  test('is reckoned anew where one answer differs', () => {
    const look = slow('k3', early, { 'battery-look': ['sound'] });
    expect(reckon(flow, look).next).toEqual(chooseNext(flow, look));
    expect(reckon(flow, look).next).not.toEqual(reckon(flow, slow('k4', early, {})).next);
  });

  test('is the worth of a check, too', () => {
    const state = slow('k5', late, {});
    const worth = worthOfCheck(flow, state, 'battery-rest');
    expect(worth).toBeDefined();
    expect(reckonWorth(flow, state, 'battery-rest')).toEqual(worth);
    expect(reckonWorth(flow, slow('k6', early, {}), 'battery-rest')).toEqual(worth);
  });
});

test('of what is kept, the value that has not been wanted for longest goes', () => {
  const kept = new Kept<number>(2);
  let made = 0;
  const want = (key: string): number => kept.of(key, () => (made += 1));
  expect([want('a'), want('b'), want('a'), want('c'), want('a'), want('b')]).toEqual([
    1, 2, 1, 3, 1, 4,
  ]);
});
