import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MeterAccuracy } from './meter-accuracy.ts';
import {
  assumedMeter,
  classAccuracy,
  expandedUncertainty,
  standardUncertainty,
  type Meter,
} from './meter.ts';
import { convert, type Quantity } from './quantity.ts';
import { meterClasses } from '../tables/meter-classes.ts';
import type { UnitCode } from './unit.ts';

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

describe('two standard uncertainties cover some 95 % (JCGM 100, 6.3.3, from memory)', () => {
  // Computed: 2 a/√3 of the meter's limit a.
  test.each<readonly [string, Quantity, Meter | undefined, number, number]>([
    ['12.40 V', { value: 12.4, unit: 'V' }, undefined, 0.095, 3],
    ['12.40 V with 3 digits', { value: 12.4, unit: 'V' }, halfPercentThreeDigits, 0.106, 3],
    ['9.60 V', { value: 9.6, unit: 'V' }, undefined, 0.079, 3],
    ['0.200 V', { value: 0.2, unit: 'V' }, undefined, 0.0035, 4],
    ['50.0 mV at ±(1 % + 4)', { value: 50, unit: 'mV' }, onePercentFourDigits, 1.04, 2],
  ])('%s', (_, reading, meter, expected, digits) => {
    expect(expandedUncertainty(reading, meter)).toBeCloseTo(expected, digits);
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

  test('an ohmmeter is taken for ±(1 % + 3 digits of 0.1 ohm, of 1 ohm from 200 ohm on)', () => {
    // Common practice, no source.
    expect(standardUncertainty({ value: 85, unit: 'Ohm' })).toBeCloseTo(1.15 / Math.sqrt(3), 9);
    expect(standardUncertainty({ value: 680, unit: 'Ohm' })).toBeCloseTo(9.8 / Math.sqrt(3), 9);
  });

  test('hundredths of an ohm as typed make no ohmmeter finer than its leads', () => {
    expect(assumedMeter({ value: 0.25, unit: 'Ohm', resolution: 0.01 }).digit).toBe(0.1);
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

describe('a reading whose meter was said', () => {
  const display = { percent: 1, digits: 1 };

  test.each<readonly [string, Quantity, number]>([
    ['6000 counts show 19.99 V and 59.99 V in hundredths', { value: 24.8, unit: 'V' }, 0.01],
    ['2000 counts show 24.8 V in tenths', { value: 24.8, unit: 'V' }, 0.1],
    ['6000 counts show 5.4 V in thousandths', { value: 5.4, unit: 'V' }, 0.001],
    ['20 000 counts show 12.4 V in thousandths', { value: 12.4, unit: 'V' }, 0.001],
    ['1000 counts show 12.4 V in tenths', { value: 12.4, unit: 'V' }, 0.1],
    ['6000 counts show 410 A in tenths', { value: 410, unit: 'A' }, 0.1],
    ['2000 counts show 410 A whole', { value: 410, unit: 'A' }, 1],
    ['6000 counts show 450 ohm in tenths', { value: 450, unit: 'Ohm' }, 0.1],
  ])('%s', (title, reading, digit) => {
    const counts = Number(title.replace(' 000', '000').split(' ')[0]);
    expect(assumedMeter({ ...reading, meter: { ...display, counts } }).digit).toBeCloseTo(digit, 9);
  });

  test.each<readonly [string, Quantity, number | undefined, number]>([
    [
      'hundredths cannot be seen at 24.8 V on 2000 counts',
      { value: 24.82, unit: 'V', resolution: 0.01 },
      2000,
      0.1,
    ],
    [
      'nobody having said the counts, the display is as fine as was typed',
      { value: 24.82, unit: 'V', resolution: 0.01 },
      undefined,
      0.01,
    ],
    [
      'tenths of a millivolt can be seen at 50 mV on 2000 counts',
      { value: 50, unit: 'mV', resolution: 0.1 },
      2000,
      0.0001,
    ],
    [
      '12.4 V was rounded by hand from the thousandths of 20 000 counts',
      { value: 12.4, unit: 'V', resolution: 0.1 },
      20_000,
      0.001,
    ],
    [
      'a reading of nothing keeps the step typed',
      { value: 0, unit: 'V', resolution: 0.001 },
      2000,
      0.001,
    ],
  ])('%s', (_, reading, counts, digit) => {
    const meter = assumedMeter({ ...reading, meter: { ...display, counts } });
    expect(meter.digit).toBeCloseTo(digit, 9);
  });

  test('has the limit of error of that meter: ±(0.1 % + 2 digits) at 12.40 V is 0.0324 V', () => {
    const meter: MeterAccuracy = { percent: 0.1, digits: 2, counts: 6000 };
    const uncertainty = standardUncertainty({ value: 12.4, unit: 'V', meter });
    expect(uncertainty * Math.sqrt(3)).toBeCloseTo(0.0324, 9);
  });

  test('also where no meter would be assumed or another instrument reads it', () => {
    const said = { percent: 2, digits: 3 };
    const limitOf = (reading: Quantity): number =>
      Math.sqrt(3) * standardUncertainty({ ...reading, meter: said });
    expect(limitOf({ value: 10, unit: 'mOhm' })).toBeCloseTo(0.2 + 3 * 0.1, 9);
    expect(limitOf({ value: 20, unit: 'Cel' })).toBeCloseTo(0.4 + 3, 9);
    expect(limitOf({ value: 100, unit: 'kPa' })).toBeCloseTo(2, 9);
    expect(assumedMeter({ value: 100, unit: 'kPa', resolution: 1, meter: said }).digit).toBe(1);
  });

  test('is as uncertain in any unit of its dimension', () => {
    const units = fc.constantFrom<readonly [UnitCode, UnitCode]>(['V', 'mV'], ['A', 'mA']);
    const meter = fc.record({
      percent: fc.double({ min: 0, max: 5, noNaN: true }),
      digits: fc.integer({ min: 0, max: 9 }),
      counts: fc.constantFrom(undefined, 2000, 4000, 6000, 20_000),
    });
    fc.assert(
      fc.property(units, meter, fc.integer({ min: 1, max: 29_989 }), (pair, said, hundredths) => {
        // Off the ends of ranges, where a last bit decides which of two ranges is meant.
        const value = hundredths / 100 + 0.0037;
        const reading: Quantity = { value, unit: pair[0], resolution: 0.01, meter: said };
        const converted = convert(reading, pair[1]);
        const scale = converted.resolution! / 0.01;
        expect(standardUncertainty(converted) / (scale * standardUncertainty(reading))).toBeCloseTo(
          1,
          9,
        );
      }),
    );
  });

  test.each<readonly [string, MeterAccuracy]>([
    ['a negative percentage', { percent: -1, digits: 2 }],
    ['digits that are no number', { percent: 1, digits: NaN }],
    ['an endless percentage', { percent: Infinity, digits: 2 }],
    ['a display without counts', { percent: 1, digits: 2, counts: 0 }],
  ])('is refused with %s', (_, meter) => {
    expect(() => standardUncertainty({ value: 12.4, unit: 'V', meter })).toThrow(
      'value-out-of-range',
    );
  });
});

describe('the classes of meters (common practice, no source)', () => {
  const kinds = [
    ['V', 36],
    ['A', 600],
    ['Ohm', 1000],
  ] as const;

  test('the usual class is the meter assumed when nobody said which', () => {
    const kind = fc.constantFrom(...kinds);
    const resolutions = fc.constantFrom(undefined, 0.001, 0.01, 0.1, 1);
    fc.assert(
      fc.property(
        kind,
        fc.double({ min: 0, max: 1, noNaN: true }),
        resolutions,
        ([unit, most], share, resolution) => {
          const reading: Quantity = {
            value: share * most,
            unit,
            ...(resolution === undefined ? {} : { resolution }),
          };
          const meter = classAccuracy('usual', unit)!;
          expect(standardUncertainty({ ...reading, meter })).toBe(standardUncertainty(reading));
        },
      ),
    );
  });

  test('a fine meter is more certain than the usual one, and that than a simple one', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        ([unit, most], share) => {
          const uncertainty = (name: keyof typeof meterClasses.rows): number =>
            standardUncertainty({ value: share * most, unit, meter: classAccuracy(name, unit)! });
          expect(uncertainty('fine')).toBeLessThan(uncertainty('usual'));
          expect(uncertainty('usual')).toBeLessThan(uncertainty('simple'));
        },
      ),
    );
  });

  test('are of volts, amperes and ohms, not of milliohms or degrees', () => {
    expect(classAccuracy('fine', 'mV')).toBe(meterClasses.rows.fine.voltage);
    expect(classAccuracy('simple', 'A')).toBe(meterClasses.rows.simple.current);
    expect(classAccuracy('usual', 'Ohm')).toBe(meterClasses.rows.usual.resistance);
    expect(classAccuracy('fine', 'mOhm')).toBeUndefined();
    expect(classAccuracy('fine', 'Cel')).toBeUndefined();
  });
});
