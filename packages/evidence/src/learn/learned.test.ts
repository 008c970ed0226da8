import { describe, expect, test } from 'vitest';
import { addOutcome, defineModel, emptyCounts, learnedPriors, learnedRow } from '../index.ts';
import type { Counts, Outcome } from '../index.ts';

const flow = { id: 'no-start', version: '1' };

/** Confirmed cases: so many of a cause, by a role. */
function counted(
  cases: readonly (readonly [cause: string, count: number, role: string])[],
): Counts {
  let counts = emptyCounts(flow);
  for (const [index, [cause, count, role]] of cases.entries()) {
    for (let one = 0; one < count; one += 1) {
      const id = `c${index}-${one}`;
      const outcome: Outcome = { id, flow, role, channel: 'terminal', cause, answers: {} };
      const result = addOutcome(counts, outcome);
      if (result.type === 'counts') counts = result.counts;
    }
  }
  return counts;
}

const model = defineModel(['worn', 'earth', 'starter'], [0.3, 0.5, 0.2]);

describe('priors drawn from confirmed causes', () => {
  test('are .366667 for 5 of 10 cases when .3 is worth 20 (worked by hand: 11 / 30)', () => {
    const counts = counted([
      ['worn', 5, 'driver'],
      ['earth', 5, 'driver'],
    ]);
    const { priors, hypotheses } = learnedPriors(model, counts, { publishedCases: 20 });
    expect(hypotheses).toEqual(model.hypotheses);
    expect(priors[0]).toBeCloseTo(0.366667, 6);
    expect(priors[1]).toBeCloseTo(15 / 30, 12);
    expect(priors[2]).toBeCloseTo(4 / 30, 12);
  });

  test('of a role start from those of all cases together (worked by hand: .366667 x 10 + 4 of 4)', () => {
    const counts = counted([
      ['worn', 4, 'mechanic'],
      ['worn', 1, 'driver'],
      ['earth', 5, 'driver'],
    ]);
    const group = { role: 'mechanic', pooledCases: 10 };
    const { priors } = learnedPriors(model, counts, { publishedCases: 20, group });
    expect(priors[0]).toBeCloseTo((10 * (11 / 30) + 4) / 14, 12);
  });

  test('of a role without cases are those of all cases together', () => {
    const counts = counted([['worn', 5, 'driver']]);
    const group = { channel: 'other', pooledCases: 10 };
    expect(learnedPriors(model, counts, { publishedCases: 20, group })).toEqual(
      learnedPriors(model, counts, { publishedCases: 20 }),
    );
  });

  test('are the very ones published when nothing is counted', () => {
    expect(learnedPriors(model, emptyCounts(flow), { publishedCases: 20 })).toBe(model);
  });

  test('go to the observed shares as cases grow (worked by hand: 304 / 320)', () => {
    const { priors } = learnedPriors(model, counted([['starter', 300, 'driver']]), {
      publishedCases: 20,
    });
    expect(priors[2]).toBeCloseTo(304 / 320, 12);
  });

  test('are refused for a cause that the model does not have, by its name', () => {
    expect(() =>
      learnedPriors(model, counted([['wiring', 1, 'driver']]), { publishedCases: 20 }),
    ).toThrow(
      expect.objectContaining({ code: 'unknown-hypothesis', facts: { hypothesis: 'wiring' } }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('are refused at %d cases', (cases) => {
    expect(() => learnedPriors(model, emptyCounts(flow), { publishedCases: cases })).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });
});

describe('a row drawn from confirmed cases', () => {
  test('of two answers is .366667 for 5 of 10 when .3 is worth 20 (beta-binomial, by hand)', () => {
    const [yes, no] = learnedRow([0.3, 0.7], 20, [5, 5]);
    expect(yes).toBeCloseTo(0.366667, 6);
    expect(no).toBeCloseTo(0.633333, 6);
  });

  test('of three answers sums to 1 (worked by hand: 16, 7 and 7 of 30)', () => {
    const row = learnedRow([0.5, 0.25, 0.25], 20, [6, 2, 2]);
    [16 / 30, 7 / 30, 7 / 30].forEach((share, answer) => {
      expect(row[answer]).toBeCloseTo(share, 12);
    });
  });

  test('is the written one, bit for bit, when nothing was seen', () => {
    const written = [0.1, 0.3, 0.07, 0.53];
    for (const rowCases of [3, 7, 20, 49]) {
      expect(learnedRow(written, rowCases, [0, 0, 0, 0])).toEqual(written);
    }
  });

  test.each([
    ['counts of another length', [0.3, 0.7], 20, [1], 'length-mismatch'],
    ['half a case', [0.3, 0.7], 20, [0.5, 1], 'out-of-range'],
    ['a count below 0', [0.3, 0.7], 20, [-1, 1], 'out-of-range'],
    ['a likelihood above 1', [1.3, 0.7], 20, [1, 1], 'out-of-range'],
    ['no weight', [0.3, 0.7], 0, [1, 1], 'out-of-range'],
  ])('is refused for %s', (_, likelihoods, cases, seen, code) => {
    expect(() => learnedRow(likelihoods, cases, seen)).toThrow(expect.objectContaining({ code }));
  });
});
