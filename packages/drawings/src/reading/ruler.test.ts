import { describe, expect, test } from 'vitest';
import type { ScaleBound } from '@keyturn/core';
import { layOutRuler, ticksIn } from './ruler.ts';

const source = { provenance: 'common practice', text: '' } as const;
const bound = (low: number, high: number = low): ScaleBound => ({ low, high, source });

describe('a ruler with bounds at 12.4 V and from 12.7 V to 12.9 V', () => {
  const ruler = layOutRuler({ bounds: [bound(12.4), bound(12.7, 12.9)] }, 0, 330);
  const [flat, ready, zone, over] = ruler.stretches;

  test('gives every band the same room, and the bound that is a zone a place of its own', () => {
    expect(ruler.stretches.map(({ kind }) => kind)).toEqual(['band', 'band', 'zone', 'band']);
    expect([flat, ready, over].map((band) => (band?.right ?? 0) - (band?.left ?? 0))).toEqual([
      100, 100, 100,
    ]);
    expect(zone).toMatchObject({ left: 200, right: 230, low: 12.7, high: 12.9 });
  });

  test.each([
    [12.4, 100],
    [12.55, 150],
    [12.7, 200],
    [12.8, 215],
    [12.9, 230],
    [99, 330],
    [-3, 0],
  ])('shows %d V at %d', (value, x) => {
    expect(ruler.xOf(value)).toBeCloseTo(x);
  });

  test('says on which side a value is off it', () => {
    expect([11, 12.5, 14].map((value) => ruler.beyond(value))).toEqual([
      'below',
      undefined,
      'above',
    ]);
  });

  test('has ticks at round values inside a band, none at its ends', () => {
    const ticks = ready === undefined ? [] : ticksIn(ready);
    expect(ticks.map((tick) => tick.toFixed(2))).toEqual([
      '12.45',
      '12.50',
      '12.55',
      '12.60',
      '12.65',
    ]);
  });
});

test.each([
  ['tenths where they tell', [bound(12.4), bound(12.8)], 0.1],
  ['hundredths where they are needed', [bound(12.45), bound(12.8)], 0.01],
  ['whole amperes', [bound(100), bound(200)], 1],
])('bounds are written in %s', (_, bounds, step) => {
  expect(layOutRuler({ bounds }, 0, 300).step).toBeCloseTo(step);
});

test('bounds that overlap, as those of an unknown vehicle do, still have their values in order', () => {
  const ruler = layOutRuler({ bounds: [bound(100, 560), bound(270, 1550)] }, 0, 330);
  expect([50, 300, 1600].map((value) => ruler.xOf(value))).toEqual(
    [50, 300, 1600].map((value) => ruler.xOf(value)).sort((one, other) => one - other),
  );
});

test('what is expected lies whole on the ruler, beyond its usual ends', () => {
  const bounds = [bound(6.6, 7.6), bound(9.4)];
  const ruler = layOutRuler({ bounds, expected: { low: 11.8, high: 12.1 } }, 0, 330);
  expect(ruler.beyond(12.1)).toBeUndefined();
  expect(ruler.xOf(12.1)).toBeCloseTo(330);
  expect(ruler.xOf(11.8)).toBeLessThan(320);
  expect(layOutRuler({ bounds }, 0, 330).beyond(12.1)).toBe('above');
});
