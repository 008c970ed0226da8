import { readdirSync, readFileSync } from 'node:fs';
import { loadFlow } from '@keyturn/core/load';
import { expect, test } from 'vitest';
import { packFlow, unpackFlow } from './packed-flow.ts';

const folder = new URL('../../../../flows/no-start/', import.meta.url);
const loaded = loadFlow(
  readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => ({ path: file, text: readFileSync(new URL(file, folder), 'utf8') })),
);
if (loaded.type === 'issues') throw new Error('the flow has issues');
const { flow } = loaded;

test('a flow comes out of its packing as it went in', () => {
  const carried = JSON.parse(JSON.stringify(packFlow(flow))) as ReturnType<typeof packFlow>;
  expect(unpackFlow(carried)).toEqual(flow);
});

test('the packing is worth its trouble', () => {
  const before = JSON.stringify(flow.likelihoods).length;
  expect(JSON.stringify(packFlow(flow).likelihoods).length).toBeLessThan(before / 4);
});
