import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { addOutcome, emptyCounts, type Counts } from '@keyturn/evidence';
import { expect, onTestFinished, test } from 'vitest';
import { shippedFlow } from '@keyturn/flows';
import { noOutcomes, textOf } from './kept-outcomes.ts';
import { learnedChart } from './learned-chart.ts';

const { chart } = shippedFlow('no-start', 'en');
const key = { id: chart.flow.id, version: chart.flow.version };

/** A file of outcomes that came from elsewhere: so many confirmed causes of one kind. */
function kept(cause: string, count: number): string {
  let counts: Counts = emptyCounts(key);
  for (let index = 0; index < count; index += 1) {
    const added = addOutcome(counts, {
      id: `o${String(index)}`,
      flow: key,
      role: 'mechanic',
      channel: 'terminal',
      cause,
      answers: {},
    });
    if (added.type === 'counts') counts = added.counts;
  }
  return written(textOf({ ...noOutcomes(key), imported: [counts] }));
}

function written(text: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'learned-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = path.join(folder, 'kept.json');
  writeFileSync(file, text);
  return file;
}

/** Prior of a fault among all, before anything is known of a case. */
function share({ flow }: typeof chart, fault: string): number {
  const weights = Object.values(flow.priors).map(({ weight }) => weight);
  return (flow.priors[fault]?.weight ?? 0) / weights.reduce((sum, one) => sum + one, 0);
}

test('a hundred confirmed causes weigh as much as what is written', () => {
  const learned = learnedChart(chart, kept('ring-gear', 100));
  expect(share(learned, 'ring-gear')).toBeCloseTo((share(chart, 'ring-gear') + 1) / 2, 9);
  expect(learned.flow.version).toBe(chart.flow.version);
});

test('with nothing counted it weighs as it is written', () => {
  expect(learnedChart(chart, kept('ring-gear', 0)).flow).toEqual(chart.flow);
});

test.each([
  ['that is not there', () => 'none.json', 'none.json is not there'],
  [
    'of another version',
    () => written(textOf(noOutcomes({ ...key, version: '0' }))),
    `the counts are of ${key.id} 0, not of ${key.id} ${key.version}`,
  ],
  ['that is no JSON', () => written('{\n  nothing'), 'kept.json, line 2: '],
  ['with a cause that is none', () => kept('flat-tyre', 1), 'the confirmed cause "flat-tyre"'],
])('a file %s is refused', (_, file, said) => {
  expect(() => learnedChart(chart, file())).toThrow(said);
});
