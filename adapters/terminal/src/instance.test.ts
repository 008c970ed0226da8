import { expect, test } from 'vitest';
import { readInstances } from './instance.ts';

const sound = {
  format: 'seqdiag-1',
  name: 'two',
  mode: 'terminal',
  faults: [
    { id: 'battery', prior: 2 },
    { id: 'starter', prior: 2 },
  ],
  verdicts: [{ id: 'charge', cost: 1, wrong_penalty: 5, fixes: ['battery'] }],
  setups: { meter: 4 },
  tests: [
    {
      id: 'volts',
      cost: 1,
      outcomes: ['low', 'ok'],
      setup: 'meter',
      p: { battery: [1, 0], starter: [0, 1] },
    },
  ],
};

test('an instance is read, its priors brought to a sum of 1', () => {
  const [read, ...more] = readInstances('two.json', JSON.stringify(sound));
  expect(more).toEqual([]);
  expect(read?.name).toBe('two');
  expect([...(read?.problem.priors ?? [])]).toEqual([0.5, 0.5]);
  expect(read?.problem.checks).toEqual(['volts']);
  expect([...(read?.problem.checkSetups ?? [])]).toEqual([1]);
});

test('a file may hold several', () => {
  expect(readInstances('two.json', JSON.stringify([sound, sound]))).toHaveLength(2);
});

const [volts] = sound.tests;

test.each<[title: string, data: unknown, said: string]>([
  ['no instance', null, 'the file: '],
  ['another format', { ...sound, format: 'seqdiag-2' }, 'format: '],
  ['no name', { ...sound, name: undefined }, 'name: '],
  ['an unknown mode', { ...sound, mode: 'repeat' }, 'mode: '],
  ['no faults', { ...sound, faults: [] }, 'faults: '],
  ['a prior below 0', { ...sound, faults: [{ id: 'a', prior: -1 }] }, 'faults.0.prior: '],
  [
    'a penalty left out',
    { ...sound, verdicts: [{ id: 'a', cost: 1, fixes: [] }] },
    'wrong_penalty',
  ],
  [
    'a probability above 1',
    { ...sound, tests: [{ ...volts, p: { battery: [2, 0], starter: [0, 1] } }] },
    'tests.0.p.battery.0: ',
  ],
  [
    'a fault without a row',
    { ...sound, tests: [{ ...volts, p: { battery: [1, 0] } }] },
    'tests.0.p.starter: expected 2 probabilities, one for each outcome of volts',
  ],
  [
    'a row too short',
    { ...sound, tests: [{ ...volts, p: { battery: [1], starter: [0, 1] } }] },
    'tests.0.p.battery: expected 2 probabilities',
  ],
  [
    'a row for no fault',
    { ...sound, tests: [{ ...volts, p: { ...volts?.p, pump: [0, 1] } }] },
    'tests.0.p.pump: expected only faults of two',
  ],
  [
    'probabilities that do not sum to 1',
    { ...sound, tests: [{ ...volts, p: { battery: [1, 0], starter: [0.5, 0.4] } }] },
    'the outcomes of check volts given starter sum to 0.9',
  ],
  [
    'a requirement of nothing',
    { ...sound, tests: [{ ...volts, requires: [{ test: 'rest', outcomes: ['low'] }] }] },
    'names the check "rest", which does not exist',
  ],
  ['a fault that nothing fixes', { ...sound, mode: 'continue' }, 'no verdict fixes starter'],
])('refuses %s, saying where', (_, data, said) => {
  const read = (): unknown => readInstances('two.json', JSON.stringify(data));
  expect(read).toThrow('two.json: ');
  expect(read).toThrow(said);
});

test('refuses what is no JSON', () => {
  expect(() => readInstances('two.json', '{')).toThrow('two.json: not JSON: ');
});
