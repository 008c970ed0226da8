import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ElectricsError } from '../electrics-error.ts';
import { convert, type Quantity } from './quantity.ts';
import { isUnit, unitCodes, unitDimension, type UnitCode } from './unit.ts';

type Row = readonly [value: number, from: UnitCode, to: UnitCode, expected: number];

describe('conversion factors are those of NIST SP 811 (2008), Appendix B.8, from memory', () => {
  test.each<Row>([
    [1, '[lbf_av].[ft_i]', 'N.m', 1.355_818],
    [1, '[lbf_av].[in_i]', 'N.m', 0.112_984_8],
    [1, 'kgf.m', 'N.m', 9.806_65],
    [1, '[psi]', 'kPa', 6.894_757],
    [1, 'bar', 'kPa', 100],
    [1, '[in_i]', 'mm', 25.4],
    [1, '[ft_i]', 'm', 0.3048],
    [1, '[cin_i]', 'L', 0.016_387_06],
    [1, '[HP]', 'W', 745.6999],
    [1, '/min', 'Hz', 0.016_666_67],
    [1, 'h', 's', 3600],
    [1, 'd', 's', 86_400],
  ])('%d %s in %s is %d', (value, from, to, expected) => {
    const converted = convert({ value, unit: from }, to).value;
    // SP 811 prints seven significant digits.
    expect(Math.abs(converted / expected - 1)).toBeLessThan(5e-7);
  });

  test('the pound-force foot is exact to its last digit', () => {
    expect(convert({ value: 1, unit: '[lbf_av].[ft_i]' }, 'N.m').value).toBeCloseTo(
      1.355_817_948_331_400_4,
      14,
    );
  });

  test.each<Row>([
    [32, '[degF]', 'Cel', 0],
    [212, '[degF]', 'Cel', 100],
    [-40, '[degF]', 'Cel', -40],
    [0, 'Cel', 'K', 273.15],
    [80, '[degF]', 'Cel', 26.666_666_7],
    [21, 'Cel', '[degF]', 69.8],
  ])('%d %s is %d %s on the temperature scale', (value, from, to, expected) => {
    expect(convert({ value, unit: from }, to).value).toBeCloseTo(expected, 6);
  });

  test.each<Row>([
    [12_400, 'mV', 'V', 12.4],
    [0.015, 'Ohm', 'mOhm', 15],
    [18, 'mo', 'a', 1.5],
    [40, '%', '1', 0.4],
    [1.6, 'kW', 'W', 1600],
    [33.6, 'kN', 'N', 33_600],
  ])('%d %s in %s is %d', (value, from, to, expected) => {
    expect(convert({ value, unit: from }, to).value).toBeCloseTo(expected, 9);
  });
});

describe('a converted quantity', () => {
  test('keeps its resolution as a difference, without the offset of the scale', () => {
    expect(convert({ value: 20, unit: 'Cel', resolution: 1 }, '[degF]').resolution).toBeCloseTo(
      1.8,
    );
  });

  test('is 1/1.8 degrees Celsius for a difference of one degree Fahrenheit', () => {
    // NIST SP 811 (2008), Appendix B.8, exact.
    const { resolution } = convert({ value: 212, unit: '[degF]', resolution: 1 }, 'Cel');
    expect(resolution).toBeCloseTo(1 / 1.8, 12);
  });

  test('keeps the meter that it was read with', () => {
    const meter = { percent: 0.1, digits: 2, counts: 6000 };
    expect(convert({ value: 12.4, unit: 'V', meter }, 'mV')).toEqual({
      value: 12_400,
      unit: 'mV',
      meter,
    });
  });

  test('has no resolution where it had none', () => {
    expect(convert({ value: 1, unit: 'V' }, 'mV')).toEqual({ value: 1000, unit: 'mV' });
  });

  test('comes back the same from every unit of its dimension', () => {
    const code = fc.constantFrom(...unitCodes);
    fc.assert(
      fc.property(
        code,
        code,
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        (from, to, value) => {
          fc.pre(unitDimension(from) === unitDimension(to));
          const there: Quantity = { value, unit: from, resolution: 0.5 };
          const back = convert(convert(there, to), from);
          expect(back.value).toBeCloseTo(value, 6);
          expect(back.resolution).toBeCloseTo(0.5, 9);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('misuse is refused with its facts', () => {
  function thrownBy(action: () => unknown): ElectricsError {
    try {
      action();
    } catch (error) {
      if (error instanceof ElectricsError) {
        return error;
      }
      throw error;
    }
    throw new Error('nothing was thrown');
  }

  test('volts are not amperes', () => {
    const error = thrownBy(() => convert({ value: 1, unit: 'V' }, 'A'));
    expect(error.name).toBe('ElectricsError');
    expect(error.code).toBe('unit-mismatch');
    expect(error.facts).toEqual({
      from: 'V',
      to: 'A',
      fromDimension: 'voltage',
      toDimension: 'current',
    });
    expect(error.message).toContain('from V, to A');
  });

  test('a unit that nobody knows', () => {
    const error = thrownBy(() => unitDimension('furlong'));
    expect(error.code).toBe('unit-unknown');
    expect(error.facts).toEqual({ unit: 'furlong' });
  });

  test('a number that is none', () => {
    expect(thrownBy(() => convert({ value: NaN, unit: 'V' }, 'mV')).code).toBe('value-not-finite');
  });

  test.each(['v', 'MV', 'ohm', '', 'toString', 'Volt'])('%j is no unit code', (text) => {
    expect(isUnit(text)).toBe(false);
  });
});
