import { expect, test } from 'vitest';
import fc from 'fast-check';
import { EvidenceError } from './evidence-error.ts';
import { defineLatentSpace, latentPosterior, predicted } from './latent.ts';

const logs = (...values: readonly number[]): Float64Array => Float64Array.from(values, Math.log);
const priors = logs(0.3, 0.7);

// Two hypotheses with two states of one hidden cause each: low of the first 80 %, of the other 20 %.
const space = defineLatentSpace([
  [0.8, 0.2],
  [0.2, 0.8],
]);
// What a meter shows where the cause is low, and where it is not.
const low = logs(1, 1e-12, 1, 1e-12);

test('a cause seen twice is counted once: .3 becomes .631579, and not .872727', () => {
  // By hand: odds 3:7 times 4 are 12:7; the cause is then known, and a second look tells nothing.
  const once = latentPosterior(space, priors, [low]).hypotheses;
  expect(once[0]).toBeCloseTo(12 / 19, 9);
  const twice = latentPosterior(space, priors, [low, low]).hypotheses;
  expect(twice[0]).toBeCloseTo(12 / 19, 9);
  // Two findings that are independent given the hypothesis would be counted twice.
  const alone = defineLatentSpace([[1], [1]]);
  const four = logs(0.8, 0.2);
  expect(latentPosterior(alone, priors, [four]).hypotheses[0]).toBeCloseTo(0.631579, 6);
  expect(latentPosterior(alone, priors, [four, four]).hypotheses[0]).toBeCloseTo(0.872727, 6);
});

test('half a look at the cause, by hand', () => {
  // 90 % right each time: P(two lows | first) = .8 × .81 + .2 × .01, of the other .2 × .81 + .8 × .01.
  const shown = logs(0.9, 0.1, 0.9, 0.1);
  const { hypotheses } = latentPosterior(space, priors, [shown, shown]);
  const one = 0.3 * (0.8 * 0.81 + 0.2 * 0.01);
  const other = 0.7 * (0.2 * 0.81 + 0.8 * 0.01);
  expect(hypotheses[0]).toBeCloseTo(one / (one + other), 12);
});

test('what is expected next goes by what was found of the cause', () => {
  const places = Int32Array.of(0, 1, 0, 1);
  const chances = Float64Array.of(0.9, 0.1);
  const before = predicted(space, latentPosterior(space, priors, []), { chances, places });
  expect([...before]).toEqual([
    expect.closeTo(0.8 * 0.9 + 0.2 * 0.1, 12),
    expect.closeTo(0.2 * 0.9 + 0.8 * 0.1, 12),
  ]);
  const after = predicted(space, latentPosterior(space, priors, [low]), { chances, places });
  expect([...after]).toEqual([expect.closeTo(0.9, 9), expect.closeTo(0.9, 9)]);
});

const likelihood = fc.double({ min: 1e-6, max: 1, noNaN: true });
const someSpace = fc
  .array(fc.array(likelihood, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 5 })
  .chain((weights) => {
    const states = weights.reduce((sum, row) => sum + row.length, 0);
    const row = fc.array(likelihood, { minLength: states, maxLength: states });
    return fc.record({
      weights: fc.constant(weights),
      priors: fc.array(likelihood, { minLength: weights.length, maxLength: weights.length }),
      findings: fc.array(row, { maxLength: 6 }),
    });
  });

test('any posterior sums to 1, whatever the order of the findings, and states sum to 1 as well', () => {
  fc.assert(
    fc.property(someSpace, ({ weights, priors: given, findings }) => {
      const made = defineLatentSpace(weights);
      const rows = findings.map((row) => logs(...row));
      const { hypotheses, states } = latentPosterior(made, logs(...given), rows);
      expect(hypotheses.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
      const sums = new Float64Array(made.hypotheses);
      for (const [at, of] of made.owner.entries()) sums[of]! += states[at]!;
      for (const sum of sums) expect(sum).toBeCloseTo(1, 12);
      const turned = latentPosterior(made, logs(...given), rows.toReversed()).hypotheses;
      for (const [at, one] of hypotheses.entries()) {
        expect(Math.abs(one - turned[at]!)).toBeLessThan(1e-12);
      }
    }),
  );
});

test('a finding alike for all states moves nothing; splitting a state in two alike neither', () => {
  fc.assert(
    fc.property(someSpace, ({ weights, priors: given, findings }) => {
      const made = defineLatentSpace(weights);
      const rows = findings.map((row) => logs(...row));
      const plain = latentPosterior(made, logs(...given), rows).hypotheses;
      const flat = new Float64Array(made.owner.length).fill(Math.log(0.3));
      const same = latentPosterior(made, logs(...given), [...rows, flat]).hypotheses;
      const first = weights[0]![0]!;
      const split = defineLatentSpace([
        [first / 2, first / 2, ...weights[0]!.slice(1)],
        ...weights.slice(1),
      ]);
      const doubled = rows.map((row) => Float64Array.of(row[0]!, ...row));
      const halved = latentPosterior(split, logs(...given), doubled).hypotheses;
      for (const [at, one] of plain.entries()) {
        expect(Math.abs(one - same[at]!)).toBeLessThan(1e-12);
        expect(Math.abs(one - halved[at]!)).toBeLessThan(1e-9);
      }
    }),
  );
});

test('refuses weights that are none, rows of another length and findings that nothing allows', () => {
  expect(() => defineLatentSpace([[1], [0, 0]])).toThrow(EvidenceError);
  expect(() => defineLatentSpace([[Number.NaN]])).toThrow(/weight of a state/u);
  expect(() => latentPosterior(space, priors, [logs(1, 1)])).toThrow(/row of a finding/u);
  expect(() => latentPosterior(space, logs(1), [])).toThrow(/row of priors/u);
  expect(() => latentPosterior(space, priors, [logs(0, 0, 0, 0)])).toThrow(/no state/u);
});
