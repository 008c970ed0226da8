import { readdirSync, readFileSync } from 'node:fs';
import { addOutcome, emptyCounts, type Counts } from '@keyturn/evidence';
import { expect, test } from 'vitest';
import { evidenceTables } from '../case/evidence-tables.ts';
import type { Flow } from './flow.ts';
import { learnedFlow } from './learned-flow.ts';
import { loadFlow } from './load.ts';

const folder = new URL('../../../../flows/no-start/', import.meta.url);
const loaded = loadFlow(
  readdirSync(folder)
    .filter((n) => n.endsWith('.yaml'))
    .map((n) => ({ path: n, text: readFileSync(new URL(n, folder), 'utf8') })),
);
if (loaded.type === 'issues') throw new Error('issues');
const { flow } = loaded;
const weights = { publishedCases: 20, rowCases: 20 };
const key = { id: flow.id, version: flow.version };

const learned = (counts: Counts): Flow => {
  const result = learnedFlow(flow, counts, weights);
  if (result.type === 'refused') throw new Error(result.message);
  return result.flow;
};

test('with nothing counted a flow weighs as it did, bit for bit', () => {
  const after = learned(emptyCounts(key));
  expect(evidenceTables(after)).toEqual(evidenceTables(flow));
  expect(after).toEqual(flow);
});

test('ten confirmed cases move the prior and the rows they spoke of, and no other', () => {
  let counts = emptyCounts(key);
  for (let i = 0; i < 10; i += 1) {
    const r = addOutcome(counts, {
      id: `o${i}`,
      flow: key,
      role: 'driver',
      channel: 'terminal',
      cause: 'ring-gear',
      answers: { 'fuel-level': ['has-fuel'], 'battery-look/2': ['sound'], history: ['damp'] },
    });
    if (r.type === 'counts') counts = r.counts;
  }
  const after = learned(counts);
  const share = (f: Flow): number => {
    const { model } = evidenceTables(f);
    return model.priors[model.hypotheses.indexOf('ring-gear')]!;
  };
  expect(share(after)).toBeCloseTo((20 * share(flow) + 10) / 30, 12);
  const row = (f: Flow, c: string, t: number, a: string) =>
    f.likelihoods[c]![t]!.rows['ring-gear']![a]!;
  expect(row(after, 'battery-look', 1, 'sound')).toBeCloseTo(
    (20 * row(flow, 'battery-look', 1, 'sound') + 10) / 30,
    9,
  );
  expect(row(after, 'battery-look', 0, 'sound')).toBe(row(flow, 'battery-look', 0, 'sound'));
  expect(row(after, 'history', 0, 'damp')).toBeCloseTo(
    (20 * row(flow, 'history', 0, 'damp') + 10) / 30,
    9,
  );
  expect(row(after, 'history', 0, 'water')).toBeCloseTo(
    (20 * row(flow, 'history', 0, 'water')) / 30,
    9,
  );
  expect(after.likelihoods['history']![0]!.rows['solenoid']).toEqual(
    flow.likelihoods['history']![0]!.rows['solenoid'],
  );
});

test('counts of another version are refused, both named', () => {
  expect(learnedFlow(flow, emptyCounts({ id: flow.id, version: '0' }), weights)).toMatchObject({
    code: 'other-flow',
    message: `the counts are of ${flow.id} 0, not of ${flow.id} ${flow.version}`,
  });
});
