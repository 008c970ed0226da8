import { expect, test } from 'vitest';
import { compileFlow } from '../chart/compile.ts';
import { loadFlow } from '../flow/load.ts';
import { smallFlow } from '../flow/small-flow.ts';
import { kitMissing } from './kit-missing.ts';
import { openCase, turn } from './turn.ts';

const result = loadFlow(smallFlow);
if (result.type === 'issues') throw new Error('the small flow has issues');
const chart = compileFlow(result.flow);

const at = '2026-01-01T08:00:00.000Z';

function missingWith(kit: readonly string[], rest?: number): readonly string[] {
  const { case: opened } = openCase(chart, { id: 'k1', at, context: { kit } });
  if (rest === undefined) return kitMissing(chart, opened);
  const answers = [{ check: 'battery-rest', value: { value: rest, unit: 'V' } }];
  return kitMissing(chart, turn(chart, opened, { at, input: { type: 'answers', answers } }).case);
}

test('one thing that would let a check be made is missing; where two are, neither alone helps', () => {
  expect(missingWith([])).toEqual(['voltmeter']);
  expect(missingWith(['voltmeter'])).toEqual(['helper']);
});

test('nothing is missing for what does not bear on the case', () => {
  expect(missingWith(['voltmeter', 'helper'])).toEqual([]);
  expect(missingWith(['voltmeter', 'helper'], 12.7)).toEqual([]);
  expect(missingWith(['voltmeter', 'helper'], 11.5)).toEqual(['charger']);
});
