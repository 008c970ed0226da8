import { describe, expect, test } from 'vitest';
import { assumedMeter, standardUncertainty, type Meter } from './meter.ts';
import type { Quantity } from './quantity.ts';

const halfPercentThreeDigits: Meter = { percent: 0.5, digits: 3, digit: 0.01, unit: 'V' };
const onePercentFourDigits: Meter = { percent: 1, digits: 4, digit: 0.1, unit: 'mV' };

describe('a meter of ±(0.5 % + 2 digits) has the standard uncertainty a/√3 of JCGM 100, 4.3.7', () => {
  test.each<readonly [string, Quantity, Meter | undefined, number]>([
    ['12.40 V on the 20 V range', { value: 12.4, unit: 'V' }, undefined, 0.0473],
    ['12.40 V with 3 digits', { value: 12.4, unit: 'V' }, halfPercentThreeDigits, 0.0531],
    ['9.60 V', { value: 9.6, unit: 'V' }, undefined, 0.0393],
    ['0.200 V on the 2 V range', { value: 0.2, unit: 'V' }, undefined, 0.001_73],
    ['50.0 mV at ±(1 % + 4)', { value: 50, unit: 'mV' }, onePercentFourDigits, 0.52],
  ])('%s', (_, reading, meter, expected) => {
    expect(Math.abs(standardUncertainty(reading, meter) / expected - 1)).toBeLessThan(0.005);
  });
});

describe('the limits of error of published worked examples', () => {
  // Explanations of multimeter accuracy: 98.8 to 101.2 V, and ±0.010 V.
  test.each<readonly [string, Quantity, Meter, number]>([
    [
      '±(1 % + 2) at 100.0 V',
      { value: 100, unit: 'V' },
      { percent: 1, digits: 2, digit: 0.1 },
      1.2,
    ],
    [
      '±(0.5 % + 1) at 1.755 V',
      { value: 1.755, unit: 'V' },
      { percent: 0.5, digits: 1, digit: 0.001 },
      0.009_775,
    ],
  ])('%s', (_, reading, meter, limit) => {
    expect(standardUncertainty(reading, meter) * Math.sqrt(3)).toBeCloseTo(limit, 6);
  });
});

describe('the step in which a reading was typed', () => {
  test('adds r/√12 in quadrature (JCGM 100, F.2.2.1)', () => {
    const meterAlone = standardUncertainty({ value: 12.4, unit: 'V' });
    const typedCoarsely = standardUncertainty({ value: 12.4, unit: 'V', resolution: 0.1 });
    expect(typedCoarsely).toBeCloseTo(Math.hypot(meterAlone, 0.1 / Math.sqrt(12)), 12);
  });

  test('never makes a reading more certain', () => {
    const uncertainty = (resolution: number): number =>
      standardUncertainty({ value: 0.15, unit: 'V', resolution });
    expect(uncertainty(0.001)).toBeLessThan(uncertainty(0.01));
    expect(uncertainty(0.01)).toBeLessThan(uncertainty(0.1));
    expect(uncertainty(0.1)).toBeLessThan(uncertainty(1));
  });

  test.each<readonly [string, Quantity, number]>([
    [
      '0.15 V in hundredths was read on the 20 V range',
      { value: 0.15, unit: 'V', resolution: 0.01 },
      0.01,
    ],
    [
      '0.150 V in thousandths on the finer range',
      { value: 0.15, unit: 'V', resolution: 0.001 },
      0.001,
    ],
    ['12.4 V in tenths was rounded by hand', { value: 12.4, unit: 'V', resolution: 0.1 }, 0.01],
    ['24.8 V is on the 200 V range', { value: 24.8, unit: 'V' }, 0.1],
    ['24.82 V was shown in hundredths', { value: 24.82, unit: 'V', resolution: 0.01 }, 0.01],
    ['24 V was rounded by hand', { value: 24, unit: 'V', resolution: 1 }, 0.1],
    ['50.0 mV was shown in tenths', { value: 50, unit: 'mV', resolution: 0.1 }, 0.0001],
    ['150 mV in whole millivolts', { value: 150, unit: 'mV', resolution: 1 }, 0.001],
  ])('%s', (_, reading, digit) => {
    const meter = assumedMeter(reading);
    expect(meter.unit).toBe('V');
    expect(meter.digit).toBeCloseTo(digit, 9);
  });
});

describe('readings without a voltmeter', () => {
  test('a clamp meter at 180 A is uncertain by some 2 A', () => {
    // ±(2 % + 3 digits of 0.1 A), common practice, no source.
    expect(standardUncertainty({ value: 180, unit: 'A' })).toBeCloseTo(3.9 / Math.sqrt(3), 6);
  });

  test('a thermometer is uncertain by 2 K, on either scale', () => {
    const celsius = standardUncertainty({ value: -8, unit: 'Cel' });
    expect(celsius).toBeCloseTo(2 / Math.sqrt(3), 9);
    expect(standardUncertainty({ value: 17.6, unit: '[degF]' })).toBeCloseTo(1.8 * celsius, 9);
  });

  test('an age is as certain as it was said', () => {
    expect(standardUncertainty({ value: 4, unit: 'a' })).toBe(0);
    expect(standardUncertainty({ value: 4, unit: 'a', resolution: 1 })).toBeCloseTo(0.2887, 4);
  });

  test('an ohmmeter is taken for ±(1 % + 3 digits of 0.1 ohm)', () => {
    // Common practice, no source.
    expect(standardUncertainty({ value: 85, unit: 'Ohm' })).toBeCloseTo(1.15 / Math.sqrt(3), 9);
  });

  test('milliohms are computed or come from a tester, ±(5 % + 0.1)', () => {
    expect(standardUncertainty({ value: 10, unit: 'mOhm' })).toBeCloseTo(0.6 / Math.sqrt(3), 9);
  });

  test('a voltmeter does not read amperes', () => {
    expect(() => standardUncertainty({ value: 1, unit: 'A' }, halfPercentThreeDigits)).toThrow(
      'unit-mismatch',
    );
  });
});
