import { expect, test } from 'vitest';
import { measure } from './measure.ts';

const regular = { size: 10, weight: 'regular' } as const;

test('a text is as wide as its characters together, by its size', () => {
  expect(measure('12.4 V', regular)).toBeCloseTo(
    Array.from('12.4 V').reduce((sum, one) => sum + measure(one, regular), 0),
  );
  expect(measure('12.4 V', { ...regular, size: 20 })).toBeCloseTo(2 * measure('12.4 V', regular));
  expect(measure('12.4 V', { size: 10, weight: 'bold' })).toBeGreaterThan(
    measure('12.4 V', regular),
  );
});

test('isolates, soft hyphens and marks over letters take no room', () => {
  expect(measure('\u2067\u2066ab\u2069\u2069', regular)).toBe(measure('ab', regular));
  expect(measure('a\u00adb', regular)).toBe(measure('ab', regular));
  expect(measure('e\u0301', regular)).toBe(measure('e', regular));
});

test('a character without a known width is taken to be a wide one', () => {
  expect(measure('漢', regular)).toBe(10);
});
