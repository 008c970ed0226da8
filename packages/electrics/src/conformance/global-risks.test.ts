import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { globalRisks, type Inspection } from './global-risks.ts';
import { normalProbability } from './normal-probability.ts';

const tolerance = { low: 1499.8, high: 1500.2 };

const resistors: Inspection = {
  prior: { mean: 1500, deviation: 0.12 },
  measurementUncertainty: 0.04,
  tolerance,
  acceptance: tolerance,
};

describe('resistors of 1500 ohm: figures from memory of JCGM 106:2012, risks recomputed', () => {
  test('90.4 % of the batch conforms', () => {
    expect(globalRisks(resistors).conformance).toBeCloseTo(0.904, 3);
  });

  test.each([
    ['accepted within the tolerance', 0, 0.0189, 0.0372],
    ['accepted within a guard band of 0.02 ohm', 0.02, 0.0099, 0.069],
  ])('%s', (_, width, consumersRisk, producersRisk) => {
    const acceptance = { low: tolerance.low + width, high: tolerance.high - width };
    const risks = globalRisks({ ...resistors, acceptance });
    expect(risks.consumersRisk).toBeCloseTo(consumersRisk, 4);
    expect(risks.producersRisk).toBeCloseTo(producersRisk, 4);
  });
});

const ordinary = fc.record({
  deviation: fc.double({ min: 0.001, max: 10, noNaN: true }),
  uncertainty: fc.double({ min: 0.0001, max: 10, noNaN: true }),
  mean: fc.double({ min: -5, max: 5, noNaN: true }),
  half: fc.double({ min: 0.1, max: 5, noNaN: true }),
  guard: fc.double({ min: -1, max: 0.09, noNaN: true }),
});

function inspectionOf(row: {
  readonly [name in 'deviation' | 'uncertainty' | 'mean' | 'half' | 'guard']: number;
}): Inspection {
  const accepted = row.half - row.guard;
  return {
    prior: { mean: row.mean, deviation: row.deviation },
    measurementUncertainty: row.uncertainty,
    tolerance: { low: -row.half, high: row.half },
    acceptance: { low: -accepted, high: accepted },
  };
}

test('what is accepted is what conforms, less the wrongly rejected, and the wrongly accepted', () => {
  // What is measured is normal with both variances together, so that its share is known exactly.
  fc.assert(
    fc.property(ordinary, (row) => {
      const { conformance, consumersRisk, producersRisk } = globalRisks(inspectionOf(row));
      const deviation = Math.hypot(row.deviation, row.uncertainty);
      const below = (limit: number): number => normalProbability((limit - row.mean) / deviation);
      const accepted = row.half - row.guard;
      expect(conformance - producersRisk + consumersRisk).toBeCloseTo(
        below(accepted) - below(-accepted),
        10,
      );
    }),
  );
});

test('a wider guard band spares the consumer and costs the producer', () => {
  fc.assert(
    fc.property(ordinary, fc.double({ min: 0, max: 0.5, noNaN: true }), (row, more) => {
      const narrow = globalRisks(inspectionOf({ ...row, guard: row.guard - more }));
      const wide = globalRisks(inspectionOf(row));
      expect(wide.consumersRisk).toBeLessThanOrEqual(narrow.consumersRisk + 1e-12);
      expect(wide.producersRisk).toBeGreaterThanOrEqual(narrow.producersRisk - 1e-12);
    }),
  );
});

test('an exact measurement accepted within the tolerance is never wrong', () => {
  const { consumersRisk, producersRisk } = globalRisks({ ...resistors, measurementUncertainty: 0 });
  expect(consumersRisk).toBe(0);
  expect(producersRisk).toBeCloseTo(0, 15);
});

test('a tolerance may be open at one end', () => {
  const open = globalRisks({
    ...resistors,
    tolerance: { low: 1499.8 },
    acceptance: { low: 1499.8 },
  });
  const both = globalRisks(resistors);
  // Symmetric about the mean, and no thing is wrong at both ends.
  expect(open.consumersRisk).toBeCloseTo(both.consumersRisk / 2, 6);
  expect(open.producersRisk).toBeCloseTo(both.producersRisk / 2, 6);
});

test.each<readonly [string, Partial<Inspection>]>([
  ['a batch without any deviation', { prior: { mean: 1500, deviation: 0 } }],
  ['a mean that is none', { prior: { mean: NaN, deviation: 1 } }],
  ['an uncertainty below 0', { measurementUncertainty: -0.1 }],
  ['an endless uncertainty', { measurementUncertainty: Infinity }],
  ['a low end above the high one', { tolerance: { low: 2, high: 1 } }],
  ['an acceptance of nothing', { acceptance: { low: 2, high: 1 } }],
])('%s is refused', (_, wrong) => {
  expect(() => globalRisks({ ...resistors, ...wrong })).toThrow('value-out-of-range');
});
