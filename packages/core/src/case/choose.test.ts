import { describe, expect, test } from 'vitest';
import { compileFlow, type Chart } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallCosts, smallFlow } from '../flow/small-flow.ts';
import { chooseNext } from './choose.ts';
import type { CaseState, Next } from './state.ts';
import { openCase, turn } from './turn.ts';

function chartOf(costs: string): Chart {
  const loaded = loadFlow([...smallFlow, { ...smallCosts, text: costs }]);
  if (loaded.type === 'issues') throw new Error('the small flow has issues');
  return compileFlow(loaded.flow);
}

const chart = chartOf(smallCosts.text);
const at = '2026-01-01T08:00:00.000Z';

type Value = readonly string[] | { readonly value: number; readonly unit: 'V' };

type Found = Readonly<Record<string, Value>>;

/** The case of an engine that turns slowly, with so much found besides. */
function slow(chart: Chart, found: Found, kit: readonly string[]): CaseState {
  const context = { kit, place: 'home', vehicle: { transmission: 'automatic' } };
  const { case: opened } = openCase(chart, { id: 'k1', at, context });
  const all = { scene: ['safe'], complaint: ['slow-crank'], history: ['none'], ...found };
  const listed = Object.entries(all).map(([check, value]) => ({ check, value }));
  return turn(chart, opened, { at, input: { type: 'answers', answers: listed } }).case.state;
}

const chosenIn = (chart: Chart, found: Found, kit: readonly string[]): Next =>
  chooseNext(chart.flow, slow(chart, found, kit));

const next = (found: Found, kit = ['voltmeter', 'helper']): Next => chosenIn(chart, found, kit);

const volts = (value: number) => ({ value, unit: 'V' }) as const;

describe('what comes next', () => {
  test('is a check that kit and people allow: without a meter no reading is asked for', () => {
    const chosen = next({}, []);
    expect(chosen.to === 'check' ? chart.flow.checks[chosen.check]?.form.kind : 'none').not.toBe(
      'reading',
    );
    expect(next({ 'battery-look': ['sound'] })).toMatchObject({ to: 'check' });
  });

  test('is to put it right once a fault is proved and no rival is left', () => {
    const found = {
      'battery-look': ['sound'],
      'battery-rest': volts(12.7),
      'drop-ground': volts(1.2),
    };
    expect(next(found)).toMatchObject({ check: 'repair' });
  });

  test('is no check that a stop forbids: with a leaking battery nobody cranks or charges', () => {
    const chosen = next({ 'battery-look': ['leaking'] }, ['voltmeter', 'helper', 'charger']);
    const does = chosen.to === 'check' ? chart.flow.checks[chosen.check]?.does : [];
    expect(does).toEqual([]);
  });

  test('is hours of charging only where the mistake that a proof spares takes longer', () => {
    const flat = { 'battery-look': ['sound'], 'battery-rest': volts(11.6) } as const;
    const kit = ['voltmeter', 'charger'];
    expect(next(flat, kit)).toMatchObject({ check: 'repair' });
    const dear = smallCosts.text.replace(
      'recharge-then-prove: { cost: 45, wrong: 60 }',
      'recharge-then-prove: { cost: 45, wrong: 400 }',
    );
    expect(dear).not.toBe(smallCosts.text);
    expect(chosenIn(chartOf(dear), flat, kit)).toMatchObject({ check: 'battery-recharged' });
  });

  test('is the same each time', () => {
    const state = slow(chart, { 'battery-look': ['sound'] }, ['voltmeter', 'helper']);
    expect(chooseNext(chart.flow, { ...state })).toEqual(chooseNext(chart.flow, state));
  });
});
