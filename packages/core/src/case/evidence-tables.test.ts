import { expect, test } from 'vitest';
import { loadFlow } from '../flow/load.ts';
import { smallFlow } from '../flow/small-flow.ts';
import { tablesFor } from './evidence-tables.ts';

const loaded = loadFlow([
  ...smallFlow,
  { path: 'roles.yaml', text: 'mistaken-times: { driver: 3 }\n' },
]);
if (loaded.type === 'issues') throw new Error('the small flow has issues');
const { flow } = loaded;

test.each([
  // 96 of 100, of which 1 in 100 is any answer: .99 x .96 + .01 / 2; a driver errs twice more.
  { role: 'mechanic', high: 0.9554 },
  { role: undefined, high: 0.9554 },
  { role: 'driver', high: 0.98 * 0.9554 + 0.02 / 2 },
])('an answer of a $role says as much as they can be trusted', ({ role, high }) => {
  const [table] = tablesFor(flow, role).get('drop-ground') ?? [];
  const place = Object.keys(flow.faults).indexOf('ground-cable');
  expect(table?.rows.get('high')?.likelihoods[place]).toBeCloseTo(high, 12);
});

test('no mistakes are added where none are counted in', () => {
  const rows = (role: string) => tablesFor(flow, role).get('battery-recharged')?.[0]?.rows;
  expect(rows('driver')).toEqual(rows('mechanic'));
});
