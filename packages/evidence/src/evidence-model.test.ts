import { expect, test } from 'vitest';
import { EvidenceError } from './evidence-error.ts';
import { defineModel } from './evidence-model.ts';

test('priors of any scale are brought to a sum of 1', () => {
  expect(defineModel(['battery', 'starter', 'earth'], [5, 3, 2])).toEqual({
    hypotheses: ['battery', 'starter', 'earth'],
    priors: [0.5, 0.3, 0.2],
  });
});

test('a model cannot be changed afterwards, nor through the rows it was made from', () => {
  const priors = [1, 1];
  const model = defineModel(['battery', 'starter'], priors);
  priors[0] = 9;
  expect(model.priors).toEqual([0.5, 0.5]);
  expect(Object.isFrozen(model)).toBe(true);
  expect(Object.isFrozen(model.priors)).toBe(true);
  expect(Object.isFrozen(model.hypotheses)).toBe(true);
});

test.each([
  { title: 'no hypothesis', names: [], priors: [], code: 'no-hypotheses', facts: {} },
  {
    title: 'one name twice',
    names: ['battery', 'battery'],
    priors: [1, 1],
    code: 'duplicate-hypothesis',
    facts: { hypothesis: 'battery' },
  },
  {
    title: 'a prior too few',
    names: ['battery', 'starter'],
    priors: [1],
    code: 'length-mismatch',
    facts: { seen: 1, wanted: 2 },
  },
  {
    title: 'a prior below 0',
    names: ['battery', 'starter'],
    priors: [1, -0.1],
    code: 'out-of-range',
    facts: { hypothesis: 'starter', value: -0.1 },
  },
  {
    title: 'a prior that is no number',
    names: ['battery', 'starter'],
    priors: [Number.NaN, 1],
    code: 'out-of-range',
    facts: { hypothesis: 'battery', value: Number.NaN },
  },
  {
    title: 'an infinite prior',
    names: ['battery'],
    priors: [Number.POSITIVE_INFINITY],
    code: 'out-of-range',
    facts: { hypothesis: 'battery', value: Number.POSITIVE_INFINITY },
  },
  {
    title: 'all priors 0',
    names: ['battery', 'starter'],
    priors: [0, 0],
    code: 'not-a-distribution',
    facts: { total: 0 },
  },
  {
    title: 'priors whose sum overflows',
    names: ['battery', 'starter'],
    priors: [Number.MAX_VALUE, Number.MAX_VALUE],
    code: 'not-a-distribution',
    facts: { total: Number.POSITIVE_INFINITY },
  },
])('refuses $title', ({ names, priors, code, facts }) => {
  expect(() => defineModel(names, priors)).toThrow(EvidenceError);
  expect(() => defineModel(names, priors)).toThrow(expect.objectContaining({ code, facts }));
});
