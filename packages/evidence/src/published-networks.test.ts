import { describe, expect, test } from 'vitest';
import { defineModel, marginal, posterior, weightOfEvidence } from './index.ts';
import type { EvidenceModel, LikelihoodFinding } from './index.ts';

type State = Readonly<Record<string, string>>;

/** A network as a model whose hypotheses are the joint states of its causes. */
function jointModel(
  domains: Readonly<Record<string, readonly string[]>>,
  prior: (state: State) => number,
): { readonly model: EvidenceModel; readonly states: readonly State[] } {
  let states: readonly State[] = [{}];
  for (const [variable, values] of Object.entries(domains)) {
    states = states.flatMap((state) => values.map((value) => ({ ...state, [variable]: value })));
  }
  const names = states.map((state) => JSON.stringify(state));
  return { model: defineModel(names, states.map(prior)), states };
}

function has(variable: string, value: string): (hypothesis: string) => boolean {
  return (hypothesis) => (JSON.parse(hypothesis) as State)[variable] === value;
}

function expectation(probabilities: Float64Array, row: readonly number[]): number {
  return row.reduce((sum, value, index) => sum + value * (probabilities[index] ?? Number.NaN), 0);
}

// S. L. Lauritzen and D. J. Spiegelhalter 1988, Local computations with probabilities on graphical
// structures and their application to expert systems, J. R. Statist. Soc. B 50, 157-224.
describe('ASIA, Lauritzen and Spiegelhalter 1988', () => {
  const yesNo = ['yes', 'no'];
  const pick = (value: string | undefined, yes: number): number =>
    value === 'yes' ? yes : 1 - yes;
  const either = (state: State): boolean => state['tub'] === 'yes' || state['lung'] === 'yes';
  const { model, states } = jointModel(
    { asia: yesNo, smoke: yesNo, tub: yesNo, lung: yesNo, bronc: yesNo },
    ({ asia, smoke, tub, lung, bronc }) =>
      pick(asia, 0.01) *
      pick(smoke, 0.5) *
      pick(tub, asia === 'yes' ? 0.05 : 0.01) *
      pick(lung, smoke === 'yes' ? 0.1 : 0.01) *
      pick(bronc, smoke === 'yes' ? 0.6 : 0.3),
  );
  const xrayRow = states.map((state) => (either(state) ? 0.98 : 0.05));
  const dyspRow = states.map((state) =>
    state['bronc'] === 'yes' ? (either(state) ? 0.9 : 0.8) : either(state) ? 0.7 : 0.1,
  );
  const dysp: LikelihoodFinding = { id: 'dysp', likelihoods: dyspRow };
  const xray: LikelihoodFinding = { id: 'xray', likelihoods: xrayRow };
  const asia: LikelihoodFinding = {
    id: 'asia',
    likelihoods: states.map((state) => (state['asia'] === 'yes' ? 1 : 0)),
  };
  const noSmoke: LikelihoodFinding = {
    id: 'no smoke',
    likelihoods: states.map((state) => (state['smoke'] === 'no' ? 1 : 0)),
  };

  test.each([
    { given: 'nothing', findings: [], tub: 0.0104, lung: 0.055, bronc: 0.45 },
    { given: 'dysp', findings: [dysp], tub: 0.018845, lung: 0.102759, bronc: 0.833967 },
    {
      given: 'asia, dysp',
      findings: [asia, dysp],
      tub: 0.087751,
      lung: 0.099525,
      bronc: 0.811402,
    },
    {
      given: 'asia, dysp, xray, no smoke',
      findings: [asia, dysp, xray, noSmoke],
      tub: 0.632329,
      lung: 0.126466,
      bronc: 0.45896,
    },
  ])('causes given $given', ({ findings, tub, lung, bronc }) => {
    const belief = posterior(model, findings);
    expect(marginal(model, belief, has('tub', 'yes'))).toBeCloseTo(tub, 6);
    expect(marginal(model, belief, has('lung', 'yes'))).toBeCloseTo(lung, 6);
    expect(marginal(model, belief, has('bronc', 'yes'))).toBeCloseTo(bronc, 6);
  });

  test.each([
    { sign: 'xray', given: 'nothing', findings: [], row: xrayRow, expected: 0.11029 },
    { sign: 'dysp', given: 'nothing', findings: [], row: dyspRow, expected: 0.435971 },
    { sign: 'xray', given: 'dysp', findings: [dysp], row: xrayRow, expected: 0.162098 },
    { sign: 'xray', given: 'asia, dysp', findings: [asia, dysp], row: xrayRow, expected: 0.219539 },
  ])('$sign foretold given $given', ({ findings, row, expected }) => {
    expect(expectation(posterior(model, findings), row)).toBeCloseTo(expected, 6);
  });
});

// F. V. Jensen and T. D. Nielsen 2007, Bayesian Networks and Decision Graphs, the car start problem.
describe('car start, Jensen and Nielsen 2007', () => {
  const { model, states } = jointModel(
    { fuel: ['yes', 'no'], plugs: ['clean', 'dirty'] },
    ({ fuel, plugs }) => (fuel === 'no' ? 0.02 : 0.98) * (plugs === 'dirty' ? 0.04 : 0.96),
  );
  const noStartRow = states.map(({ fuel, plugs }) =>
    fuel === 'no' ? 1 : plugs === 'dirty' ? 0.99 : 0.01,
  );
  const meter = (id: string, withFuel: number, without: number): LikelihoodFinding => ({
    id,
    likelihoods: states.map(({ fuel }) => (fuel === 'yes' ? withFuel : without)),
  });
  const noStart: LikelihoodFinding = { id: 'no start', likelihoods: noStartRow };
  const half = meter('meter half', 0.6, 0.001);
  const empty = meter('meter empty', 0.01, 0.998);

  test('it fails to start .068216 of the time', () => {
    expect(expectation(posterior(model, []), noStartRow)).toBeCloseTo(0.068216, 6);
  });

  test.each([
    { given: 'no start', findings: [noStart], noFuel: 0.293186, dirty: 0.580626 },
    { given: 'no start, meter half', findings: [noStart, half], noFuel: 0.000691, dirty: 0.80435 },
    {
      given: 'no start, meter empty',
      findings: [noStart, empty],
      noFuel: 0.976413,
      dirty: 0.058041,
    },
  ])('faults given $given', ({ findings, noFuel, dirty }) => {
    const belief = posterior(model, findings);
    expect(marginal(model, belief, has('fuel', 'no'))).toBeCloseTo(noFuel, 6);
    expect(marginal(model, belief, has('plugs', 'dirty'))).toBeCloseTo(dirty, 6);
  });

  test('no start weighs 15.2151 decibans for dirty plugs, the half meter 4.7267 more', () => {
    const [first, second] = weightOfEvidence(model, [noStart, half], has('plugs', 'dirty'));
    expect(first?.id).toBe('no start');
    expect(first?.decibans).toBeCloseTo(15.2151, 4);
    expect(second?.id).toBe('meter half');
    expect(second?.decibans).toBeCloseTo(4.7267, 4);
  });
});
