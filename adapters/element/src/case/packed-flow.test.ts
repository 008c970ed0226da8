import { shippedFlow } from '@keyturn/terminal';
import { expect, test } from 'vitest';
import { packFlow, unpackFlow } from './packed-flow.ts';

const { flow } = shippedFlow('no-start', 'en').chart;

test('a flow comes out of its packing as it went in', () => {
  const carried = JSON.parse(JSON.stringify(packFlow(flow))) as ReturnType<typeof packFlow>;
  expect(unpackFlow(carried)).toEqual(flow);
});

test('the packing is worth its trouble', () => {
  const before = JSON.stringify(flow.likelihoods).length;
  expect(JSON.stringify(packFlow(flow).likelihoods).length).toBeLessThan(before / 4);
});
