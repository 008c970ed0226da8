import { describe, expect, test } from 'vitest';
import { awgAreaMm2, awgDiameterMm, cableDrop, copperResistance } from './copper-resistance.ts';

describe('AWG by formula agrees with the handbook table of solid copper at 20 Cel (ASTM B258)', () => {
  // The printed column of ohms per 1000 ft; diameters and areas computed from the definition.
  test.each([
    ['4/0', -3, 11.684, 107.22, 0.049],
    ['3/0', -2, 10.405, 85.03, 0.0618],
    ['2/0', -1, 9.266, 67.43, 0.0779],
    ['1/0', 0, 8.252, 53.48, 0.0983],
    ['1', 1, 7.348, 42.41, 0.1239],
    ['2', 2, 6.544, 33.63, 0.1563],
    ['4', 4, 5.189, 21.15, 0.2485],
    ['6', 6, 4.115, 13.3, 0.3951],
    ['8', 8, 3.264, 8.366, 0.6282],
    ['10', 10, 2.588, 5.261, 0.9989],
    ['12', 12, 2.053, 3.309, 1.588],
    ['14', 14, 1.628, 2.081, 2.525],
    ['16', 16, 1.291, 1.309, 4.016],
    ['18', 18, 1.024, 0.823, 6.385],
  ])('AWG %s', (_, awg, diameter, area, ohmsPer1000Feet) => {
    expect(Math.abs(awgDiameterMm(awg) - diameter)).toBeLessThan(0.0006);
    expect(Math.abs(awgAreaMm2(awg) / area - 1)).toBeLessThan(0.0005);
    const ohms = copperResistance({ awg, lengthM: 304.8 }).value / 1000;
    // Four decimals are printed below 1 ohm, three above.
    expect(Math.abs(ohms - ohmsPer1000Feet)).toBeLessThan(awg < 12 ? 0.000_11 : 0.000_51);
  });
});

describe('copper by temperature', () => {
  // NBS Handbook 100: 0.00393 per kelvin at 20 Cel.
  test.each([
    [-18, 0.851],
    [20, 1],
    [80, 1.236],
  ])('at %d Cel it has %d of its resistance at 20 Cel', (temperatureC, part) => {
    const warm = copperResistance({ areaMm2: 25, lengthM: 1 }).value;
    expect(copperResistance({ areaMm2: 25, lengthM: 1, temperatureC }).value / warm).toBeCloseTo(
      part,
      3,
    );
  });

  test('1 m of 1 mm2 has 1/58 ohm (International Annealed Copper Standard)', () => {
    const { value, unit } = copperResistance({ areaMm2: 1, lengthM: 1 });
    expect(unit).toBe('mOhm');
    expect(value).toBeCloseTo(1000 / 58, 2);
  });
});

describe('flexible cable has at most the resistance of IEC 60228 class 5', () => {
  test.each([
    [10, 1.91],
    [16, 1.21],
    [25, 0.78],
    [35, 0.554],
    [50, 0.386],
    [70, 0.272],
    [95, 0.206],
  ])('%d mm2: %d ohm/km', (areaMm2, ohmsPerKm) => {
    expect(cableDrop({ areaMm2, lengthM: 1000, currentA: 1 }).value).toBeCloseTo(ohmsPerKm, 9);
  });

  test.each([
    ['25 mm2, 1.5 m, 150 A', { areaMm2: 25, lengthM: 1.5, currentA: 150 }, 0.176],
    ['25 mm2, 1.5 m, 200 A', { areaMm2: 25, lengthM: 1.5, currentA: 200 }, 0.234],
    ['35 mm2, 2 m, 200 A', { areaMm2: 35, lengthM: 2, currentA: 200 }, 0.222],
    ['50 mm2, 4.5 m, 250 A', { areaMm2: 50, lengthM: 4.5, currentA: 250 }, 0.434],
    [
      '50 mm2, 4.5 m, 250 A at 80 Cel',
      { areaMm2: 50, lengthM: 4.5, currentA: 250, temperatureC: 80 },
      0.537,
    ],
    ['16 mm2, 1.5 m, 200 A', { areaMm2: 16, lengthM: 1.5, currentA: 200 }, 0.363],
  ])('%s', (_, cable, drop) => {
    expect(Math.abs(cableDrop(cable).value - drop)).toBeLessThan(0.0006);
  });

  test('a size between two listed ones lies between them', () => {
    const drop = (areaMm2: number): number =>
      cableDrop({ areaMm2, lengthM: 1, currentA: 100 }).value;
    expect(drop(30)).toBeGreaterThan(drop(35));
    expect(drop(30)).toBeLessThan(drop(25));
  });

  test('AWG 2 cable drops a tenth more than solid copper, as class 5 does', () => {
    const cable = cableDrop({ awg: 2, lengthM: 1, currentA: 1 }).value * 1000;
    const solid = copperResistance({ awg: 2, lengthM: 1 }).value;
    expect(cable / solid).toBeGreaterThan(1.08);
    expect(cable / solid).toBeLessThan(1.15);
  });
});

test.each([
  ['no area', () => copperResistance({ areaMm2: 0, lengthM: 1 })],
  ['a negative length', () => cableDrop({ areaMm2: 25, lengthM: -1, currentA: 1 })],
  ['no current', () => cableDrop({ areaMm2: 25, lengthM: 1, currentA: 0 })],
  ['an AWG number beyond 4/0', () => awgDiameterMm(-4)],
  ['an AWG number beyond 40', () => awgDiameterMm(41)],
  ['no number', () => awgAreaMm2(NaN)],
])('%s is refused', (_, action) => {
  expect(action).toThrow('value-out-of-range');
});
