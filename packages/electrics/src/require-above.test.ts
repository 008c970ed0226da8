import { expect, test } from 'vitest';
import { ElectricsError } from './electrics-error.ts';
import { requireAbove } from './require-above.ts';

test.each([
  ['just above', 1e-9, 0],
  ['far above', 900, 0],
  ['above a negative end', -1, -2],
])('a number %s is let through', (_, value, low) => {
  expect(() => {
    requireAbove('lengthM', value, low);
  }).not.toThrow();
});

test.each([
  ['at the end', 0, '0'],
  ['below it', -1, '-1'],
  ['that is none', NaN, 'NaN'],
  ['without an end', Infinity, 'Infinity'],
  ['without a beginning', -Infinity, '-Infinity'],
])('a number %s is refused by its name, with the end', (_, value, said) => {
  const refused = (): void => {
    requireAbove('lengthM', value, 0);
  };
  expect(refused).toThrow(ElectricsError);
  expect(refused).toThrow(`value-out-of-range: lengthM ${said}, low 0`);
});
