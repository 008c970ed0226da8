import { expect, test } from 'vitest';
import { temperedExponent } from './tempered-exponent.ts';

test.each([
  { count: 1, correlation: 0.8, exponent: 1 },
  { count: 2, correlation: 0, exponent: 1 },
  { count: 2, correlation: 0.8, exponent: 0.555556 },
  { count: 4, correlation: 1, exponent: 0.25 },
])('$count findings of correlation $correlation: $exponent', ({ count, correlation, exponent }) => {
  expect(temperedExponent(count, correlation)).toBeCloseTo(exponent, 6);
});

test.each([
  { count: 0, correlation: 0.5, value: 0 },
  { count: 1.5, correlation: 0.5, value: 1.5 },
  { count: 2, correlation: -0.1, value: -0.1 },
  { count: 2, correlation: 1.1, value: 1.1 },
  { count: Number.NaN, correlation: 0.5, value: Number.NaN },
])('refuses $count findings of correlation $correlation', ({ count, correlation, value }) => {
  expect(() => temperedExponent(count, correlation)).toThrow(
    expect.objectContaining({ code: 'out-of-range', facts: { value } }),
  );
});
