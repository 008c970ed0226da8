import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandWeights } from './band-weights.ts';
import { sharpBound, type Bound } from './bound.ts';
import {
  acceptance,
  conformanceProbability,
  decide,
  type Decision,
  type Tolerance,
} from './conformance.ts';
import { expandedUncertainty, standardUncertainty, type Meter } from '../quantity/meter.ts';
import { commonPractice } from '../source.ts';

const invented = commonPractice('made up for this test');
const exact: Meter = { percent: 0, digits: 0, digit: 0 };

function volts(value: number): Bound {
  return sharpBound(value, 'V', invented);
}

describe('figures from memory of JCGM 106:2012, probabilities recomputed', () => {
  test.each<readonly [string, number, number, Tolerance, number]>([
    ['Zener diode: breaks down at -5.47 V, at most -5.40 V', -5.47, 0.05, { high: -5.4 }, 0.919],
    ['container: bursts at 509.7 kPa, at least 490 kPa', 509.7, 8.6, { low: 490 }, 0.989],
    ['motor oil: 13.6 mm2/s, between 12.5 and 16.3', 13.6, 1.8, { low: 12.5, high: 16.3 }, 0.663],
  ])('%s', (_, value, uncertainty, tolerance, expected) => {
    expect(conformanceProbability({ value, uncertainty }, tolerance)).toBeCloseTo(expected, 3);
  });
});

describe('readings of a hand-held meter (u = a/√3, JCGM 100, 4.3.7), computed', () => {
  // The verdicts are those with a guard band of 1.645 u, the one-sided 95 % point, from memory.
  type Side = 'low' | 'high';
  test.each<readonly [string, number, Side, number, Decision['type'], number, number]>([
    ['rest 12.45 V, at least 12.40 V', 12.45, 'low', 12.4, 'borderline', 0.85, 2],
    ['rest 12.52 V, at least 12.40 V', 12.52, 'low', 12.4, 'inside', 0.994, 3],
    ['load test 9.55 V, at least 9.60 V', 9.55, 'low', 9.6, 'borderline', 0.1, 2],
    ['load test 9.40 V, at least 9.60 V', 9.4, 'low', 9.6, 'outside', 0, 3],
    ['drop 0.198 V, at most 0.200 V', 0.198, 'high', 0.2, 'borderline', 0.876, 2],
    ['drop 0.190 V, at most 0.200 V', 0.19, 'high', 0.2, 'inside', 1, 3],
  ])('%s', (_, value, side, limit, type, probability, digits) => {
    const reading = { value, unit: 'V' } as const;
    const decision = decide(reading, { [side]: volts(limit) });
    expect(decision.type).toBe(type);
    expect(decision.probability).toBeCloseTo(probability, digits);

    const guard = { expandedUncertainty: standardUncertainty(reading), ratio: 1.645 };
    const isIn = (limits: Tolerance): boolean =>
      value >= (limits.low ?? -Infinity) && value <= (limits.high ?? Infinity);
    const accepted = acceptance({ [side]: limit }, guard);
    const kept = acceptance({ [side]: limit }, { ...guard, ratio: -1.645 });
    expect([accepted.type, kept.type]).toEqual(['accepts', 'accepts']);
    expect(accepted.type === 'accepts' && isIn(accepted)).toBe(type === 'inside');
    expect(kept.type === 'accepts' && isIn(kept)).toBe(type !== 'outside');
  });
});

describe('a decision', () => {
  const u = 0.1;
  const meter: Meter = { percent: 0, digits: 1, digit: u * Math.sqrt(3) };
  // The 95 % point of the normal distribution, 1.644 854, from memory.
  test.each<readonly [string, number, Decision['type']]>([
    ['just inside the 95 % point', 12 + 1.645 * u, 'inside'],
    ['just short of it', 12 + 1.6448 * u, 'borderline'],
    ['on the limit', 12, 'borderline'],
    ['just short of the 5 % point', 12 - 1.6448 * u, 'borderline'],
    ['just beyond it', 12 - 1.645 * u, 'outside'],
  ])('%s is %s', (_, value, type) => {
    expect(decide({ value, unit: 'V' }, { low: volts(12) }, meter).type).toBe(type);
  });

  test('needs a tolerance that is wide beside the meter', () => {
    const bounds = { low: volts(12), high: volts(12.3) };
    const decision = decide({ value: 12.15, unit: 'V' }, bounds, meter);
    // Phi(1.5) - Phi(-1.5) = 0.8664: Abramowitz and Stegun, Table 26.1.
    expect(decision.type).toBe('borderline');
    expect(decision.probability).toBeCloseTo(0.866_386, 5);
  });

  test('goes by the meter that was said', () => {
    const reading = { value: 12.45, unit: 'V', resolution: 0.01 } as const;
    const fine = { percent: 0.1, digits: 2, counts: 6000 };
    expect(decide(reading, { low: volts(12.4) }).type).toBe('borderline');
    expect(decide({ ...reading, meter: fine }, { low: volts(12.4) }).type).toBe('inside');
  });

  test('at the ends of a zone is at 5 % and 95 %', () => {
    const zone: Bound = { low: 12.4, high: 12.6, unit: 'V', source: invented };
    const inside = (value: number): number =>
      decide({ value, unit: 'V' }, { low: zone }, exact).probability;
    expect(inside(12.4)).toBeCloseTo(0.05, 4);
    expect(inside(12.5)).toBeCloseTo(0.5, 12);
    expect(inside(12.6)).toBeCloseTo(0.95, 4);
  });

  test('takes millivolts against volts and Fahrenheit against Celsius', () => {
    const drop = { high: volts(0.2) };
    expect(decide({ value: 198, unit: 'mV' }, drop)).toEqual({
      type: 'borderline',
      probability: expect.closeTo(
        decide({ value: 0.198, unit: 'V' }, drop).probability,
        12,
      ) as number,
    });
    const frost = { low: sharpBound(0, 'Cel', invented) };
    expect(decide({ value: 28, unit: '[degF]' }, frost).type).toBe('outside');
  });

  test('leaves nothing inside bounds that have crossed', () => {
    expect(decide({ value: 12, unit: 'V' }, { low: volts(13), high: volts(11) })).toEqual({
      type: 'outside',
      probability: 0,
    });
  });

  test('has the probability of the middle one of three bands', () => {
    const value = fc.double({ min: 8, max: 16, noNaN: true });
    const bound = fc
      .tuple(value, fc.double({ min: 0, max: 1, noNaN: true }))
      .map(([low, width]): Bound => ({ low, high: low + width, unit: 'V', source: invented }));
    fc.assert(
      fc.property(value, bound, bound, (read, low, high) => {
        const reading = { value: read, unit: 'V' } as const;
        const weight = bandWeights(reading, [low, high])[1];
        expect(decide(reading, { low, high }).probability).toBeCloseTo(weight!, 12);
      }),
    );
  });

  test('never turns back from inside as the reading rises over a lower bound', () => {
    const order = { outside: 0, borderline: 1, inside: 2 };
    const value = fc.double({ min: 8, max: 16, noNaN: true });
    fc.assert(
      fc.property(value, value, value, (limit, one, other) => {
        const typeAt = (read: number): Decision['type'] =>
          decide({ value: read, unit: 'V' }, { low: volts(limit) }, meter).type;
        const [less, more] = [typeAt(Math.min(one, other)), typeAt(Math.max(one, other))];
        expect(order[less]).toBeLessThanOrEqual(order[more]);
      }),
    );
  });
});

describe('guard bands', () => {
  const tolerance = { low: 12.4, high: 14.8 };

  test.each<readonly [string, number, Tolerance]>([
    ['guarded acceptance keeps U within the limits', 1, { low: 12.5, high: 14.7 }],
    ['simple acceptance goes by the limits', 0, { low: 12.4, high: 14.8 }],
    ['guarded rejection keeps U beyond the limits', -1, { low: 12.3, high: 14.9 }],
  ])('%s', (_, ratio, { low, high }) => {
    expect(acceptance(tolerance, { expandedUncertainty: 0.1, ratio })).toEqual({
      type: 'accepts',
      low: expect.closeTo(low!, 9) as number,
      high: expect.closeTo(high!, 9) as number,
    });
  });

  test('accept nothing where they meet', () => {
    expect(acceptance(tolerance, { expandedUncertainty: 1.3, ratio: 1 })).toEqual({
      type: 'accepts-nothing',
    });
  });

  test.each([
    ['accepts falsely with less than 2.5 % where w = U (ILAC-G8:09/2019, 4.2)', 1, 0.0228],
    ['with 50 % where w = 0 (ILAC-G8:09/2019, 4.2)', 0, 0.5],
  ])('at the edge of what is accepted one %s', (_, ratio, risk) => {
    const reading = { value: 12.4, unit: 'V' } as const;
    const guard = { expandedUncertainty: expandedUncertainty(reading), ratio };
    const accepts = acceptance({ low: 12.4 }, guard);
    const edge = accepts.type === 'accepts' ? accepts.low! : NaN;
    const estimate = { value: edge, uncertainty: standardUncertainty(reading) };
    expect(1 - conformanceProbability(estimate, { low: 12.4 })).toBeCloseTo(risk, 4);
  });
});

describe('misuse is refused', () => {
  const good = { value: 12, uncertainty: 0.1 };
  test.each<readonly [string, () => unknown, string]>([
    [
      'no value',
      () => conformanceProbability({ ...good, value: NaN }, { low: 1 }),
      'value-not-finite',
    ],
    [
      'an uncertainty below 0',
      () => conformanceProbability({ ...good, uncertainty: -1 }, { low: 1 }),
      'value-out-of-range',
    ],
    [
      'a low end above the high one',
      () => conformanceProbability(good, { low: 2, high: 1 }),
      'value-out-of-range',
    ],
    ['an end that is no number', () => conformanceProbability(good, { low: NaN }), 'value-out'],
    [
      'a guard band of a negative uncertainty',
      () => acceptance({ low: 1 }, { expandedUncertainty: -1, ratio: 1 }),
      'value-out-of-range',
    ],
    [
      'guard bands within no tolerance',
      () => acceptance({ low: 2, high: 1 }, { expandedUncertainty: 0, ratio: 1 }),
      'value-out-of-range',
    ],
    [
      'amperes against volts',
      () => decide({ value: 1, unit: 'A' }, { low: volts(1) }),
      'unit-mismatch',
    ],
    ['a reading of NaN', () => decide({ value: NaN, unit: 'V' }, { low: volts(1) }), 'not-finite'],
  ])('%s', (_, action, code) => {
    expect(action).toThrow(code);
  });
});
