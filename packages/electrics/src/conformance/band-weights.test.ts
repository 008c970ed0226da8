import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandWeights } from './band-weights.ts';
import type { Bound } from './bound.ts';
import type { Meter } from '../quantity/meter.ts';
import type { UnitCode } from '../quantity/unit.ts';
import { commonPractice } from '../source.ts';

const invented = commonPractice('made up for this test');

function sharp(value: number, unit: UnitCode): Bound {
  return { low: value, high: value, unit, source: invented };
}

/** A meter whose standard uncertainty is `uncertainty` whatever it reads. */
function meterOf(uncertainty: number): Meter {
  return { percent: 0, digits: 1, digit: uncertainty * Math.sqrt(3) };
}

describe('probabilities of conformance are those of the examples of JCGM 106:2012', () => {
  // Each value and uncertainty as in the guide (from memory); probabilities are computed again.
  test('Zener diode: -5.47 V, u 0.05 V, at most -5.40 V: 92 %', () => {
    const weights = bandWeights({ value: -5.47, unit: 'V' }, [sharp(-5.4, 'V')], meterOf(0.05));
    expect(weights[0]).toBeCloseTo(0.919, 3);
  });

  test('container: bursts at 509.7 kPa, u 8.6 kPa, at least 490 kPa: 99 %', () => {
    const weights = bandWeights({ value: 509.7, unit: 'kPa' }, [sharp(490, 'kPa')], meterOf(8.6));
    expect(weights[1]).toBeCloseTo(0.989, 3);
  });

  test('motor oil: 13.6, u 1.8, between 12.5 and 16.3: 66 %', () => {
    const bounds = [sharp(12.5, '1'), sharp(16.3, '1')];
    expect(bandWeights({ value: 13.6, unit: '1' }, bounds, meterOf(1.8))[1]).toBeCloseTo(0.663, 3);
  });
});

describe('readings of a hand-held meter against a sharp limit (u = a/√3, JCGM 100, 4.3.7)', () => {
  test.each([
    ['rest 12.45 V against 12.40 V is borderline', 12.45, 12.4, 1, 0.85, 2],
    ['rest 12.52 V against 12.40 V is ready', 12.52, 12.4, 1, 0.994, 3],
    ['load test 9.55 V against 9.60 V is borderline, not failed', 9.55, 9.6, 1, 0.1, 2],
    ['load test 9.40 V against 9.60 V has failed', 9.4, 9.6, 1, 0, 3],
    ['drop 0.198 V against 0.200 V is borderline', 0.198, 0.2, 0, 0.876, 2],
    ['drop 0.190 V against 0.200 V is good', 0.19, 0.2, 0, 1, 3],
  ])('%s', (_, value, limit, band, expected, digits) => {
    const weights = bandWeights({ value, unit: 'V' }, [sharp(limit, 'V')]);
    expect(weights[band]).toBeCloseTo(expected, digits);
  });

  test('12.42 V with u 0.05 V is above 12.40 V with probability 0.655422', () => {
    const weights = bandWeights({ value: 12.42, unit: 'V' }, [sharp(12.4, 'V')], meterOf(0.05));
    expect(weights[1]).toBeCloseTo(0.655_422, 6);
  });
});

describe('a limit that is itself a zone', () => {
  const zone: Bound = { low: 12.4, high: 12.6, unit: 'V', source: invented };
  const exact: Meter = { percent: 0, digits: 0, digit: 0 };

  test.each([
    ['at its low end 5 % are above', 12.4, 0.05],
    ['in its middle half is above', 12.5, 0.5],
    ['at its high end 95 % are above', 12.6, 0.95],
  ])('%s', (_, value, above) => {
    expect(bandWeights({ value, unit: 'V' }, [zone], exact)[1]).toBeCloseTo(above, 4);
  });

  test('adds its own spread to that of the meter', () => {
    const weights = bandWeights({ value: 12.6, unit: 'V' }, [zone], meterOf(0.06));
    // Deviation √(0.06² + (0.1/1.645)²) = 0.0854; Phi(0.1/0.0854) = 0.879.
    expect(weights[1]).toBeCloseTo(0.879, 3);
  });
});

test('a reading with no uncertainty lies on one side, and on a sharp limit on both', () => {
  const bounds = [sharp(3, 'a')];
  expect(bandWeights({ value: 2, unit: 'a' }, bounds)).toEqual([1, 0]);
  expect(bandWeights({ value: 3, unit: 'a' }, bounds)).toEqual([0.5, 0.5]);
  expect(bandWeights({ value: 4, unit: 'a' }, bounds)).toEqual([0, 1]);
});

test('a bound below the one before it leaves its band empty', () => {
  const weights = bandWeights({ value: 1.4, unit: 'V' }, [sharp(1.5, 'V'), sharp(0.5, 'V')]);
  expect(weights[1]).toBe(0);
});

test('a reading in millivolts or Fahrenheit is judged against volts and Celsius', () => {
  const drop = { low: 0.1, high: 0.12, unit: 'V', source: invented } as const;
  const inVolts = bandWeights({ value: 0.108, unit: 'V', resolution: 0.001 }, [drop]);
  const inMillivolts = bandWeights({ value: 108, unit: 'mV', resolution: 1 }, [drop]);
  expect(inMillivolts[0]).toBeCloseTo(inVolts[0] ?? NaN, 12);
  const frost = sharp(0, 'Cel');
  const celsius = bandWeights({ value: 1, unit: 'Cel' }, [frost]);
  const fahrenheit = bandWeights({ value: 33.8, unit: '[degF]' }, [frost]);
  expect(fahrenheit[0]).toBeCloseTo(celsius[0] ?? NaN, 12);
});

test('no bound at all is one band', () => {
  expect(bandWeights({ value: 1, unit: 'V' }, [])).toEqual([1]);
});

describe('for any reading and any bounds', () => {
  const volts = fc.double({ min: -30, max: 30, noNaN: true });
  const bound = fc.tuple(volts, fc.double({ min: 0, max: 2, noNaN: true })).map(([low, width]) => ({
    low,
    high: low + width,
    unit: 'V' as const,
    source: invented,
  }));
  const bounds = fc.array(bound, { maxLength: 5 });

  test('the weights are probabilities and sum to 1', () => {
    fc.assert(
      fc.property(volts, bounds, (value, limits) => {
        const weights = bandWeights({ value, unit: 'V' }, limits);
        expect(weights).toHaveLength(limits.length + 1);
        expect(weights.every((weight) => weight >= 0 && weight <= 1)).toBe(true);
        expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('a higher reading never has more weight below a bound', () => {
    const meter = meterOf(0.05);
    fc.assert(
      fc.property(
        volts,
        fc.double({ min: 0, max: 5, noNaN: true }),
        bound,
        (value, more, limit) => {
          const [lower = NaN] = bandWeights({ value, unit: 'V' }, [limit], meter);
          const [higher = NaN] = bandWeights({ value: value + more, unit: 'V' }, [limit], meter);
          expect(higher).toBeLessThanOrEqual(lower + 1e-12);
        },
      ),
    );
  });
});
