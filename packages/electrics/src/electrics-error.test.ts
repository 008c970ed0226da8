import { expect, test } from 'vitest';
import { ElectricsError } from './electrics-error.ts';

test('an error tells its facts to a developer', () => {
  const error = new ElectricsError('value-out-of-range', { awg: 50, low: -3, high: 40 });
  expect(error).toBeInstanceOf(Error);
  expect(error.message).toBe('value-out-of-range: awg 50, low -3, high 40');
});

test('an error without facts is its code', () => {
  expect(new ElectricsError('value-not-finite').message).toBe('value-not-finite');
});
