import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { convert } from './quantity.ts';
import { unitCodes, unitDimension, type UnitCode } from './unit.ts';

/** Our units in the words of mathjs, a general library; undefined where it has no such unit. */
const names: Readonly<Record<UnitCode, string | undefined>> = {
  V: 'V',
  mV: 'mV',
  A: 'A',
  mA: 'mA',
  kA: 'kA',
  'A.h': 'A hour',
  Ohm: 'ohm',
  mOhm: 'mohm',
  K: 'K',
  Cel: 'degC',
  '[degF]': 'degF',
  'N.m': 'N m',
  '[lbf_av].[ft_i]': 'lbf foot',
  '[lbf_av].[in_i]': 'lbf inch',
  'kgf.m': 'kgf m',
  N: 'N',
  kN: 'kN',
  ms: 'ms',
  s: 's',
  min: 'minute',
  h: 'hour',
  d: 'day',
  wk: 'week',
  mo: 'month',
  a: 'year',
  Hz: 'Hz',
  '/min': 'minute^-1',
  L: 'litre',
  '[cin_i]': 'cuin',
  mm2: 'mm^2',
  mm: 'mm',
  m: 'm',
  '[in_i]': 'inch',
  '[ft_i]': 'foot',
  W: 'W',
  kW: 'kW',
  '[HP]': 'hp',
  kPa: 'kPa',
  bar: 'bar',
  '[psi]': 'psi',
  '%': undefined,
  '1': undefined,
};

type Pair = readonly [from: UnitCode, to: UnitCode];

const known = unitCodes.filter((code) => names[code] !== undefined);
const pairs = known.flatMap((from) => known.map((to): Pair => [from, to]));
const alike = pairs.filter(([from, to]) => unitDimension(from) === unitDimension(to));

describe('units convert as they do in a general unit library, to 1e-9', () => {
  test.each(alike)('%s to %s', (from, to) => {
    for (const value of [-12.5, 0.001, 1, 14.4, 7200]) {
      const theirs = unit(value, names[from]).toNumber(names[to]);
      expect(Math.abs(convert({ value, unit: from }, to).value / theirs - 1)).toBeLessThan(1e-9);
    }
  });

  test('and the library refuses every pair that is refused here', () => {
    const unlike = pairs.filter(([from, to]) => unitDimension(from) !== unitDimension(to));
    expect(unlike.length).toBeGreaterThan(1000);
    for (const [from, to] of unlike) {
      expect(() => unit(1, names[from]).toNumber(names[to])).toThrow();
      expect(() => convert({ value: 1, unit: from }, to)).toThrow('unit-mismatch');
    }
  });
});
