import { expect, test } from 'vitest';
import { decimalsOf, minorUnits, typedAmount } from './money.ts';

// ISO 4217, transcribed lists seen: IQD 3, ISK none, IDR, ALL and AFN 2; the rest from memory. A
// platform shows some of them in whole units, and still their minor unit is a hundredth.
test.each([
  ['EUR', 2],
  ['JPY', 0],
  ['ISK', 0],
  ['IDR', 2],
  ['HUF', 2],
  ['IQD', 3],
  ['KWD', 3],
  ['CLF', 4],
])('%s has %i decimals', (currency, decimals) => {
  expect(decimalsOf(currency)).toBe(decimals);
});

test.each([
  ['129.90', 'EUR', 12_990],
  ['129,9', 'EUR', 12_990],
  ['129', 'EUR', 12_900],
  ['١٢٩٫٩٠', 'EUR', 12_990],
  ['1200', 'JPY', 1200],
  ['1.234', 'TND', 1234],
])('takes “%s” in %s as %i minor units', (typed, currency, minor) => {
  expect(minorUnits(typed, currency)).toBe(minor);
});

test.each([
  ['129.999', 'EUR'],
  ['12.5', 'JPY'],
  ['-5', 'EUR'],
  ['about 20', 'EUR'],
  ['1.234,50', 'EUR'],
  ['', 'EUR'],
])('takes no amount from “%s” in %s', (typed, currency) => {
  expect(minorUnits(typed, currency)).toBeUndefined();
});

test('an amount is typed as it is read', () => {
  expect(typedAmount(12_990, 'EUR')).toBe('129.90');
  expect(typedAmount(1200, 'JPY')).toBe('1200');
});
