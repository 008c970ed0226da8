import { describe, expect, test } from 'vitest';
import { defineModel } from './evidence-model.ts';
import { prepareFinding } from './finding.ts';
import { posterior } from './posterior.ts';
import { temperedExponent } from './tempered-exponent.ts';

const even = defineModel(['battery', 'starter'], [1, 1]);
const suspected = defineModel(['battery', 'other'], [0.3, 0.7]);

// Worked by hand: prior odds times the likelihood ratio.
describe('odds worked by hand', () => {
  test('even odds and a check right nine times in ten give .9', () => {
    const belief = posterior(even, [{ id: 'lamps', likelihoods: [0.9, 0.1] }]);
    expect(belief[0]).toBeCloseTo(0.9, 12);
    expect(belief[1]).toBeCloseTo(0.1, 12);
  });

  test.each([
    { times: 1, exponent: 1, expected: 12 / 19, shown: 0.631579 },
    { times: 2, exponent: 1, expected: 48 / 55, shown: 0.872727 },
    // Odds 3/7 times 16 to the power 1 / 1.8.
    { times: 2, exponent: temperedExponent(2, 0.8), expected: 0.66664, shown: 0.66664 },
    { times: 2, exponent: temperedExponent(2, 1), expected: 12 / 19, shown: 0.631579 },
  ])(
    'a 4:1 finding taken $times times to the power $exponent lifts .3 to $shown',
    ({ times, exponent, expected, shown }) => {
      const findings = Array.from({ length: times }, (_, index) => ({
        id: `voltage-${index}`,
        likelihoods: [0.8, 0.2],
        exponent,
      }));
      const belief = posterior(suspected, findings)[0];
      expect(belief).toBeCloseTo(shown, 6);
      expect(belief).toBeCloseTo(expected, 6);
    },
  );

  test('a reading weighs by the ratio of its densities, which may exceed 1 per volt', () => {
    const belief = posterior(even, [{ id: 'rest-voltage', likelihoods: [1.133717, 0.720417] }]);
    expect(belief[0]).toBeCloseTo(1.133717 / (1.133717 + 0.720417), 12);
  });
});

test('without findings the belief is the prior', () => {
  expect([...posterior(suspected, [])]).toEqual([expect.closeTo(0.3, 15), expect.closeTo(0.7, 15)]);
});

test('four hundred findings against everything do not underflow', () => {
  const findings = Array.from({ length: 400 }, (_, index) => ({
    id: `check-${index}`,
    likelihoods: [0.001, 0.001],
  }));
  expect([...posterior(even, findings)]).toEqual([0.5, 0.5]);
});

test('what physics forbids stays at nought whatever else is found', () => {
  const findings = [
    { id: 'turns-over', likelihoods: [1, 0] },
    { id: 'clicks', likelihoods: [0.001, 1] },
  ];
  expect([...posterior(even, findings)]).toEqual([1, 0]);
});

test('a prepared finding gives the same belief, bit for bit', () => {
  const finding = { id: 'lamps', likelihoods: [0.7, 0.2], exponent: 0.6 };
  expect(posterior(suspected, [prepareFinding(suspected, finding)])).toEqual(
    posterior(suspected, [finding]),
  );
});

describe('findings that forbid every hypothesis', () => {
  const noBattery = { id: 'lamps-bright', likelihoods: [0, 1] };
  const noStarter = { id: 'turns-over', likelihoods: [1, 0] };
  const nothing = { id: 'misread', likelihoods: [0, 0] };
  const harmless = { id: 'smell', likelihoods: [0.5, 0.4] };

  test.each([
    { title: 'one alone is named alone', findings: [noBattery, nothing], named: ['misread'] },
    {
      title: 'those that do so together are all named, the harmless one not',
      findings: [noBattery, harmless, noStarter],
      named: ['lamps-bright', 'turns-over'],
    },
  ])('$title', ({ findings, named }) => {
    expect(() => posterior(even, findings)).toThrow(
      expect.objectContaining({ code: 'impossible-finding', facts: { findings: named } }),
    );
  });

  test('a hypothesis without prior cannot save them', () => {
    const closed = defineModel(['battery', 'starter'], [1, 0]);
    expect(() => posterior(closed, [noBattery])).toThrow(
      expect.objectContaining({ facts: { findings: ['lamps-bright'] } }),
    );
  });
});
