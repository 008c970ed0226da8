import { describe, expect, test } from 'vitest';
import { testFigures } from './test-figures.ts';

const battery = (fields: Readonly<Record<string, string | number>>): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(fields).map(([field, value]) => [`part.battery.${field}`, value]),
  );

describe('the figures that a battery is tested with', () => {
  test.each([
    [640, 'en', 320],
    [640, 'sae', 320],
    // Labels print it rounded down to 10 A.
    [625, 'sae', 310],
  ])('are half of %d A %s: %d A', (rating, standard, load) => {
    const figures = testFigures(battery({ rating, standard }) as never);
    expect(figures).toEqual({
      rating: { value: rating, unit: 'A' },
      standard,
      load: { value: load, unit: 'A' },
    });
  });

  test('by another standard are reckoned by way of SAE, and not at all where nothing leads there', () => {
    // A marine figure is taken at 0 °C and is higher: 780 A of it are some 600 A by SAE.
    const marine = testFigures(battery({ rating: 780, standard: 'mca' }) as never);
    expect(marine.load).toEqual({ value: 300, unit: 'A' });
    expect(testFigures(battery({ rating: 500, standard: 'jis' }) as never).load).toBeUndefined();
  });

  test('are none without a standard, since a DIN figure halved would be far too little', () => {
    expect(testFigures(battery({ rating: 640 }) as never)).toEqual({
      rating: { value: 640, unit: 'A' },
    });
    expect(testFigures({})).toEqual({});
  });

  test.each([
    ['agm', 8],
    ['flooded', 2],
    ['efb', 2],
    ['gel', 2],
  ])('let a battery of the kind %s rest for %d h after a charge', (technology, hours) => {
    expect(testFigures(battery({ technology }) as never).rest).toEqual({ value: hours, unit: 'h' });
  });
});
