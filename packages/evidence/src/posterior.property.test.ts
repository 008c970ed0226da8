import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  defineModel,
  floorLikelihoods,
  posterior,
  prepareFinding,
  rank,
  weightOfEvidence,
} from './index.ts';
import type { EvidenceModel, LikelihoodFinding } from './index.ts';

interface Case {
  readonly model: EvidenceModel;
  readonly findings: readonly LikelihoodFinding[];
}

const likelihood = fc.double({ min: 0.001, max: 1, noNaN: true });

/** Cases of 2 to 35 hypotheses and 0 to 25 findings, tempered or not; nothing forbidden. */
const cases: fc.Arbitrary<Case> = fc.integer({ min: 2, max: 35 }).chain((size) =>
  fc
    .record({
      priors: fc.array(likelihood, { minLength: size, maxLength: size }),
      rows: fc.array(
        fc.record({
          likelihoods: fc.array(likelihood, { minLength: size, maxLength: size }),
          exponent: fc.double({ min: 0.05, max: 1, noNaN: true }),
        }),
        { maxLength: 25 },
      ),
    })
    .map(({ priors, rows }) => ({
      model: defineModel(
        priors.map((_, index) => `h${index}`),
        priors,
      ),
      findings: rows.map((row, index) => ({ id: `f${index}`, ...row })),
    })),
);

function reordered<Item>(items: readonly Item[], order: readonly number[]): Item[] {
  return items
    .map((item, index) => ({ item, key: order[index] ?? 0 }))
    .sort((left, right) => left.key - right.key)
    .map(({ item }) => item);
}

function greatestGap(left: ArrayLike<number>, right: ArrayLike<number>): number {
  expect(left.length).toBe(right.length);
  return Math.max(
    ...Array.from(left, (value, index) => Math.abs(value - (right[index] ?? Number.NaN))),
  );
}

const keys = fc.array(fc.nat(), { minLength: 35, maxLength: 35 });

test('beliefs sum to 1 and none leaves 0 to 1', () => {
  fc.assert(
    fc.property(cases, ({ model, findings }) => {
      const belief = posterior(model, findings);
      expect(belief.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
      expect(belief.every((value) => value >= 0 && value <= 1)).toBe(true);
    }),
  );
});

test('the order of findings is irrelevant to 1e-12', () => {
  fc.assert(
    fc.property(cases, keys, ({ model, findings }, order) => {
      const belief = posterior(model, findings);
      const again = posterior(model, reordered(findings, order));
      expect(greatestGap(belief, again)).toBeLessThan(1e-12);
    }),
  );
});

test('the order of hypotheses is irrelevant to 1e-12', () => {
  fc.assert(
    fc.property(cases, keys, ({ model, findings }, order) => {
      const swapped = posterior(
        defineModel(reordered(model.hypotheses, order), reordered(model.priors, order)),
        findings.map((finding) => ({
          ...finding,
          likelihoods: reordered(finding.likelihoods, order),
        })),
      );
      const belief = reordered([...posterior(model, findings)], order);
      expect(greatestGap(belief, swapped)).toBeLessThan(1e-12);
    }),
  );
});

test('a finding alike for all moves nothing', () => {
  fc.assert(
    fc.property(cases, likelihood, ({ model, findings }, alike) => {
      const idle = { id: 'idle', likelihoods: model.priors.map(() => alike) };
      const moved = posterior(model, [...findings, idle]);
      expect(greatestGap(posterior(model, findings), moved)).toBeLessThan(1e-12);
    }),
  );
});

test('taking a finding back restores the former ranking exactly', () => {
  fc.assert(
    fc.property(cases, fc.nat(), ({ model, findings: written }, position) => {
      const findings = written.map((finding) => prepareFinding(model, finding));
      const before = rank(model, posterior(model, findings));
      const extra = prepareFinding(model, {
        id: 'extra',
        likelihoods: model.priors.map((_, index) => (index === 0 ? 0 : 1)),
      });
      const longer = findings.toSpliced(position % (findings.length + 1), 0, extra);
      expect(rank(model, posterior(model, longer))).not.toEqual(before);
      const retracted = longer.filter(({ id }) => id !== 'extra');
      expect(rank(model, posterior(model, retracted))).toEqual(before);
    }),
  );
});

test('decibans sum to the posterior odds over the prior odds', () => {
  fc.assert(
    fc.property(cases, fc.nat(), ({ model, findings }, pick) => {
      const index = pick % model.hypotheses.length;
      const hypothesis = model.hypotheses[index] ?? '';
      const belief = posterior(model, findings);
      const others = (row: ArrayLike<number>): number =>
        Array.from(row).reduce((sum, value, other) => (other === index ? sum : sum + value), 0);
      const odds = (row: ArrayLike<number>): number => (row[index] ?? Number.NaN) / others(row);
      const sum = weightOfEvidence(model, findings, hypothesis).reduce(
        (total, { decibans }) => total + decibans,
        0,
      );
      expect(sum).toBeCloseTo(10 * Math.log10(odds(belief) / odds(model.priors)), 8);
    }),
  );
});

test('no floored finding moves a hypothesis by more than thirty decibans', () => {
  const tiny = fc.double({ min: 0, max: 1, minExcluded: true, noNaN: true });
  fc.assert(
    fc.property(cases, fc.array(tiny, { minLength: 35, maxLength: 35 }), ({ model }, row) => {
      const likelihoods = floorLikelihoods(row.slice(0, model.hypotheses.length));
      const [weight] = weightOfEvidence(model, [{ id: 'odd', likelihoods }], 'h0');
      expect(Math.abs(weight?.decibans ?? Number.NaN)).toBeLessThan(30 + 1e-9);
    }),
  );
});
