import { describe, expect, test } from 'vitest';
import { cableDrop, expectedDrop } from './cable.ts';
import { copperResistance } from './conductor.ts';

describe('a sound flexible cable drops at most', () => {
  // Computed from IEC 60228 class 5 and 0.00393 per kelvin, rounded to a millivolt.
  test.each([
    ['25 mm2, 1.5 m, 150 A', { areaMm2: 25, lengthM: 1.5, currentA: 150 }, 0.176],
    ['25 mm2, 1.5 m, 200 A', { areaMm2: 25, lengthM: 1.5, currentA: 200 }, 0.234],
    ['35 mm2, 2 m, 200 A', { areaMm2: 35, lengthM: 2, currentA: 200 }, 0.222],
    ['50 mm2, 4.5 m to the boot, 250 A', { areaMm2: 50, lengthM: 4.5, currentA: 250 }, 0.434],
    ['the same at 80 Cel', { areaMm2: 50, lengthM: 4.5, currentA: 250, temperatureC: 80 }, 0.537],
    ['16 mm2, 1.5 m, 200 A', { areaMm2: 16, lengthM: 1.5, currentA: 200 }, 0.363],
  ])('%s: its listed drop', (_, cable, drop) => {
    const { value, unit } = cableDrop(cable);
    expect(unit).toBe('V');
    // 0.1755 V is printed as 0.176.
    expect(Math.abs(value - drop)).toBeLessThan(0.000_51);
    expect(expectedDrop(cable).high).toBe(value);
  });

  test('a flat limit of 0.2 V would fail a perfect cable: 25 mm2, 1.5 m, 200 A', () => {
    expect(expectedDrop({ areaMm2: 25, lengthM: 1.5, currentA: 200 }).low).toBeGreaterThan(0.2);
  });

  test('of AWG 2 a tenth more than solid copper, as class 5 does', () => {
    const cable = cableDrop({ awg: 2, lengthM: 1, currentA: 1 }).value * 1000;
    const solid = copperResistance({ awg: 2, lengthM: 1 }).value;
    expect(cable / solid).toBeGreaterThan(1.08);
    expect(cable / solid).toBeLessThan(1.15);
  });

  test('of two in parallel half as much', () => {
    const cable = { areaMm2: 25, lengthM: 1.5, currentA: 200 };
    expect(cableDrop({ ...cable, strands: 2 }).value).toBeCloseTo(cableDrop(cable).value / 2, 12);
  });
});

test.each([
  ['no current', 0],
  ['a negative current', -200],
  ['a current that is no number', NaN],
])('%s is refused', (_, currentA) => {
  const cable = { areaMm2: 25, lengthM: 1, currentA };
  expect(() => cableDrop(cable)).toThrow('value-out-of-range');
  expect(() => expectedDrop(cable)).toThrow('value-out-of-range');
});
