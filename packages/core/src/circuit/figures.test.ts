import { expect, test } from 'vitest';
import { quantile } from './figures.ts';
import { evenPlaces } from './low-discrepancy.ts';

test('a figure lies between the values of equal steps of vehicles', () => {
  expect(quantile([0, 10, 40], 0)).toBe(0);
  expect(quantile([0, 10, 40], 0.5)).toBe(10);
  expect(quantile([0, 10, 40], 0.75)).toBe(25);
  expect(quantile([7], 0.3)).toBe(7);
});

test('the last step up to an open circuit is open', () => {
  expect(quantile([1, 2, Infinity], 0.4)).toBeCloseTo(1.8, 12);
  expect(quantile([1, 2, Infinity], 0.6)).toBe(Infinity);
  expect(quantile([Infinity], 0.2)).toBe(Infinity);
});

test('places fill each dimension evenly, are the same each time and not tied to each other', () => {
  const one = evenPlaces(32, 0);
  const other = evenPlaces(32, 5);
  const steps = Array.from({ length: 32 }, (_, step) => (step + 0.5) / 32);
  expect([...one].sort((a, b) => a - b)).toEqual(steps);
  expect(evenPlaces(32, 0)).toEqual(one);
  const products = [...one].map((place, point) => (place - 0.5) * ((other[point] ?? 0) - 0.5));
  const covariance = products.reduce((sum, value) => sum + value, 0) / 32;
  expect(Math.abs(covariance * 12)).toBeLessThan(0.25);
  expect(() => evenPlaces(8, 99)).toThrow(RangeError);
});
