import { afterEach, beforeEach, expect, vi, type MockInstance } from 'vitest';

// A library that talks to the console talks over the person who uses it, so output fails a test.
const methods = ['debug', 'error', 'info', 'log', 'warn'] as const;

let spies: MockInstance[] = [];

beforeEach(() => {
  spies = methods.map((method) => vi.spyOn(console, method));
});

afterEach(() => {
  const spoken = spies.flatMap((spy) => spy.mock.calls);
  for (const spy of spies) spy.mockRestore();
  expect(spoken, 'written to the console by a test').toEqual([]);
});
