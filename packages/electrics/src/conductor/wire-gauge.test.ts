import { describe, expect, test } from 'vitest';
import { awgAreaMm2, awgDiameterMm } from './wire-gauge.ts';

describe('AWG diameters are those of ASTM B258', () => {
  // Inches from memory; mm and mm2 computed from the definition and rounded.
  test.each([
    ['4/0', -3, 0.46, 11.684, 107.22],
    ['3/0', -2, 0.4096, 10.405, 85.03],
    ['2/0', -1, 0.3648, 9.266, 67.43],
    ['1/0', 0, 0.3249, 8.252, 53.48],
    ['1', 1, 0.2893, 7.348, 42.41],
    ['2', 2, 0.2576, 6.544, 33.63],
    ['4', 4, 0.2043, 5.189, 21.15],
    ['6', 6, 0.162, 4.115, 13.3],
    ['8', 8, 0.1285, 3.264, 8.366],
    ['10', 10, 0.1019, 2.588, 5.261],
    ['12', 12, 0.0808, 2.053, 3.309],
    ['14', 14, 0.0641, 1.628, 2.081],
    ['16', 16, 0.0508, 1.291, 1.309],
    ['18', 18, 0.0403, 1.024, 0.823],
  ])('AWG %s', (_, awg, inches, millimetres, squareMillimetres) => {
    expect(awgDiameterMm(awg) / 25.4).toBeCloseTo(inches, 4);
    // 1/0 comes to 8.2515 mm and is printed as 8.252, from its inches.
    expect(Math.abs(awgDiameterMm(awg) - millimetres)).toBeLessThan(0.000_55);
    expect(Math.abs(awgAreaMm2(awg) / squareMillimetres - 1)).toBeLessThan(0.0005);
  });

  test('39 numbers up the diameter is 1/92, by definition', () => {
    expect(awgDiameterMm(-3) / awgDiameterMm(36)).toBeCloseTo(92, 9);
  });
});

test.each([
  ['beyond 4/0', -4],
  ['beyond 40', 41],
  ['that is none', NaN],
])('an AWG number %s is refused', (_, awg) => {
  expect(() => awgDiameterMm(awg)).toThrow('value-out-of-range');
  expect(() => awgAreaMm2(awg)).toThrow('value-out-of-range');
});
