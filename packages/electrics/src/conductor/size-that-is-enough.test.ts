import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cableDrop } from './cable.ts';
import { sizeThatIsEnough, type CableTask } from './size-that-is-enough.ts';

describe('the smallest battery cable that keeps the drop', () => {
  // The cable's own drop at its size is that of IEC 60228 class 5: 35 mm2, 2 m, 200 A 0.2216 V;
  // 25 mm2 0.312 V.
  test.each<readonly [string, CableTask, number | undefined, number | undefined]>([
    ['just what 35 mm2 drops', { lengthM: 2, currentA: 200, dropV: 0.2217 }, 35, 1],
    ['just below that', { lengthM: 2, currentA: 200, dropV: 0.2215 }, 50, 1],
    ['0.25 V', { lengthM: 2, currentA: 200, dropV: 0.25 }, 35, 2],
    ['the same at 80 Cel', { lengthM: 2, currentA: 200, dropV: 0.25, temperatureC: 80 }, 50, 1],
    [
      'the same of tinned copper',
      { lengthM: 2, currentA: 200, dropV: 0.225, material: 'tinned-copper' },
      50,
      1,
    ],
    [
      'the same of aluminium',
      { lengthM: 2, currentA: 200, dropV: 0.25, material: 'aluminium' },
      50,
      0,
    ],
    ['a lot', { lengthM: 1, currentA: 1, dropV: 1 }, 10, 8],
    ['what only 4/0 keeps', { lengthM: 4.5, currentA: 250, dropV: 0.22 }, undefined, -3],
  ])('%s', (_, task, areaMm2, awg) => {
    expect(sizeThatIsEnough(task)).toEqual({ type: 'size', areaMm2, awg });
  });

  test('where even 4/0 drops too much it says how much', () => {
    const result = sizeThatIsEnough({ lengthM: 4.5, currentA: 250, dropV: 0.2 });
    expect(result).toMatchObject({ type: 'none', reason: 'beyond-the-thickest' });
    const leastDrop = cableDrop({ awg: -3, lengthM: 4.5, currentA: 250 });
    expect(result).toMatchObject({ leastDrop });
    expect(leastDrop.value).toBeGreaterThan(0.2);
  });

  const sizes = [10, 16, 25, 35, 50, 70, 95];

  test('keeps the drop, and the next smaller one does not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 1, max: 800, noNaN: true }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        (lengthM, currentA, dropV) => {
          const drop = (areaMm2: number): number => cableDrop({ areaMm2, lengthM, currentA }).value;
          const result = sizeThatIsEnough({ lengthM, currentA, dropV });
          const chosen = result.type === 'size' ? result.areaMm2 : undefined;
          const smaller = sizes.filter((size) => chosen === undefined || size < chosen);
          expect(smaller.every((size) => drop(size) > dropV)).toBe(true);
          expect(chosen === undefined || drop(chosen) <= dropV).toBe(true);
        },
      ),
    );
  });
});

test.each<readonly [string, CableTask]>([
  ['no drop at all', { lengthM: 1, currentA: 1, dropV: 0 }],
  ['no length', { lengthM: 0, currentA: 1, dropV: 1 }],
  ['no current', { lengthM: 1, currentA: 0, dropV: 1 }],
])('%s is refused', (_, task) => {
  expect(() => sizeThatIsEnough(task)).toThrow('value-out-of-range');
});
