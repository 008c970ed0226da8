/**
 * The choice of the next check, against exact figures for instances invented for testing and
 * against plain recursion from the definitions.
 */
import {
  defineProblem,
  planNext,
  policyCost,
  prospects,
  type DiagnosisProblem,
  type ProblemDefinition,
} from '@keyturn/evidence';
import { describe, expect, test } from 'vitest';
import { instances } from './support/instances.ts';
import { largeProblem, simulatedCost } from './support/large-problem.ts';
import { drawOf, randomProblem } from './support/random-problem.ts';
import {
  actNow,
  entropy,
  fixedStopCost,
  information,
  isAdmissible,
  knownCost,
  lookAhead,
  nodeOf,
  optimum,
  policies,
  startOf,
} from './support/reference-policies.ts';

const digits = 6;
const ours = (problem: DiagnosisProblem): number => policyCost(problem, planNext);

describe.each(instances)('$name', (instance) => {
  const { problem, policy_cost: costs } = instance;
  const start = startOf(problem);

  test('is played for the least expected cost that there is', () => {
    const plan = planNext(problem);
    expect(plan.proof).toBe('exact');
    expect(plan.value).toBeCloseTo(instance.optimal, digits);
    expect(`test:${plan.id}`).toBe(instance.optimal_first);
    expect(ours(problem)).toBeCloseTo(instance.optimal, digits);
  });

  test('acting at once, knowing the fault and the entropy have their figures', () => {
    const bare = planNext(defineProblem({ ...definitionOf(problem), checks: [] }));
    expect(bare.act).toBeCloseTo(instance.act_now, digits);
    expect(bare.id).toBe(instance.act_now_first_verdict);
    expect(actNow(problem, start.belief).cost).toBeCloseTo(instance.act_now, digits);
    expect(knownCost(problem, start.belief)).toBeCloseTo(instance.perfect_information, digits);
    expect(entropy(start.belief)).toBeCloseTo(instance.prior_entropy_bits, digits);
  });

  test.each(Object.entries(instance.first_test))('what %s may bring', (check, figures) => {
    const found = prospects(problem, {}, check);
    expect(found.isPossible).toBe(true);
    expect(found.cost).toBeCloseTo(figures.cost_with_setup, digits);
    expect(found.informationBits).toBeCloseTo(figures.mutual_information_bits, digits);
    expect(found.oneStepValue).toBeLessThanOrEqual(figures.one_step_value + 1e-6);
    // Where cases go on, ours sends for help later in the order than the figures do, if cheaper.
    if (problem.mode === 'terminal' || check !== 'hum') {
      expect(found.oneStepValue).toBeCloseTo(figures.one_step_value, digits);
    }
    for (const outcome of found.outcomes) {
      expect(outcome.probability).toBeCloseTo(figures.p_outcome[outcome.id]!, digits);
      outcome.posterior.forEach((share, fault) => {
        expect(share).toBeCloseTo(figures.posterior[outcome.id]![fault]!, digits);
      });
    }
  });

  test.each(Object.entries(instance.first_test))('%s first, then best play', (check, figures) => {
    const { outcomes, cost } = prospects(problem, {}, check);
    const after = outcomes.map(({ id, probability }) => {
      const done = [{ check, outcome: id }];
      return probability > 0 ? probability * planNext(problem, { done }).value : 0;
    });
    const value = after.reduce((total, one) => total + one, cost);
    expect(value).toBeCloseTo(figures.optimal_value, digits);
  });

  test('only the checks that may come first have figures', () => {
    const first = problem.checks.filter((_, check) => isAdmissible(problem, start, check));
    expect(first).toEqual(Object.keys(instance.first_test));
    const possible = problem.checks.filter((check) => prospects(problem, {}, check).isPossible);
    expect(possible).toEqual(first);
  });

  test.each(Object.entries(policies))('%s costs what it must', (name, policy) => {
    const cost = policyCost(problem, policy);
    // A tie may be broken either way.
    if (cost > instance.optimal * 1.01) expect(cost).toBeCloseTo(costs[name]!, digits);
    else expect(cost).toBeLessThanOrEqual(Math.max(costs[name]!, instance.optimal * 1.01) + 1e-6);
  });

  test('the best stopping along the chart costs what it must', () => {
    expect(fixedStopCost(problem)).toBeCloseTo(costs['fixed_stop']!, digits);
  });

  test('the plain recursion comes to the same optimum', () => {
    expect(optimum(problem)(start).value).toBeCloseTo(instance.optimal, digits);
  });
});

/** The definition of a problem, from its flat form. */
function definitionOf(problem: DiagnosisProblem): ProblemDefinition {
  const width = problem.faults.length;
  return {
    mode: problem.mode,
    faults: problem.faults.map((id, fault) => ({ id, prior: problem.priors[fault]! })),
    verdicts: problem.verdicts.map((id, verdict) => ({
      id,
      cost: problem.verdictCost[verdict]!,
      wrongPenalty: problem.wrongPenalty[verdict]!,
      fixes: problem.faults.filter((_, fault) => problem.fixes[verdict * width + fault] === 1),
    })),
    setups: problem.setups.map((id, setup) => ({ id, cost: problem.setupCost[setup]! })),
    checks: problem.checks.map((id, check) => ({
      id,
      cost: problem.checkCost[check]!,
      outcomes: problem.outcomes[check]!,
      likelihoods: problem.faults.map((_, fault) =>
        problem.outcomes[check]!.map(
          (_outcome, outcome) => problem.likelihoods[check]![outcome * width + fault]!,
        ),
      ),
      setups: problem.setups.filter(
        (_, setup) => (problem.checkSetups[check]! & (1 << setup)) !== 0,
      ),
      requires: problem.checkRequires[check]!.map((required) => ({
        check: problem.checks[required.check]!,
        outcomes: problem.outcomes[required.check]!.filter(
          (_, outcome) => required.allowed[outcome] === 1,
        ),
      })),
      safety: problem.checkSafety[check]!,
    })),
  };
}

const seeds = Array.from({ length: 60 }, (_, seed) => seed);
const random = seeds.map((seed) => {
  const draw = drawOf(seed, 6);
  return [`seed ${seed}: ${draw.mode}, ${draw.shape}`, randomProblem(draw)] as const;
});

describe.each(random)('an invented problem, %s', (_, definition) => {
  const problem = defineProblem(definition);
  const start = startOf(problem);
  const plan = planNext(problem);
  const best = optimum(problem)(start);

  test('has the value of plain recursion, which is what playing it costs', () => {
    const act = actNow(problem, start.belief).cost;
    if (problem.mode === 'terminal') expect(plan.act).toBeCloseTo(act, digits);
    else expect(plan.act).toBeLessThanOrEqual(act + 1e-9);
    expect(plan.value).toBeGreaterThanOrEqual(best.value - 1e-9);
    if (plan.proof === 'exact') {
      expect(plan.value).toBeCloseTo(best.value, digits);
      expect(ours(problem)).toBeCloseTo(best.value, digits);
    } else {
      expect(ours(problem) / best.value).toBeLessThan(1.01);
    }
  });

  test('costs no less than with the fault known, and no more than acting at once', () => {
    expect(plan.value).toBeGreaterThanOrEqual(knownCost(problem, start.belief) - 1e-9);
    expect(plan.value).toBeLessThanOrEqual(plan.act + 1e-9);
  });

  test('is told no more by a check than there is to be told', () => {
    for (const check of problem.checks) {
      const { informationBits, outcomes, oneStepValue, cost } = prospects(problem, {}, check);
      const index = problem.checks.indexOf(check);
      expect(informationBits).toBeCloseTo(information(problem, start, index), 9);
      expect(informationBits).toBeGreaterThanOrEqual(0);
      expect(informationBits).toBeLessThanOrEqual(entropy(start.belief) + 1e-9);
      expect(outcomes.reduce((total, { probability }) => total + probability, 0)).toBeCloseTo(1, 9);
      const after = outcomes.map(({ probability, act }) => probability * act);
      expect(after.reduce((total, one) => total + one, cost)).toBeCloseTo(oneStepValue, 9);
      expect(oneStepValue - cost).toBeLessThanOrEqual(plan.act + 1e-9);
    }
  });

  test('is chosen for in the same way every time', () => {
    expect(planNext(problem)).toEqual(plan);
    expect(planNext(defineProblem(definition))).toEqual(plan);
  });

  test('costs the same in another order of faults, verdicts and checks', () => {
    const order = [...definition.faults.keys()].reverse();
    const turned = defineProblem({
      ...definition,
      faults: order.map((fault) => definition.faults[fault]!),
      verdicts: definition.verdicts.toReversed(),
      checks: definition.checks.toReversed().map((check) => ({
        ...check,
        likelihoods: order.map((fault) => check.likelihoods[fault]!),
      })),
    });
    expect(planNext(turned).value / plan.value).toBeCloseTo(1, 12);
  });

  test('costs as many times more as every cost is raised', () => {
    const scaled = defineProblem({
      ...definition,
      verdicts: definition.verdicts.map((verdict) => ({
        ...verdict,
        cost: 3 * verdict.cost,
        wrongPenalty: 3 * verdict.wrongPenalty,
      })),
      setups: (definition.setups ?? []).map((setup) => ({ ...setup, cost: 3 * setup.cost })),
      checks: definition.checks.map((check) => ({ ...check, cost: 3 * check.cost })),
    });
    expect(planNext(scaled).value / (3 * plan.value)).toBeCloseTo(1, 12);
  });

  test('never costs more for a check more', () => {
    const fewer = defineProblem({ ...definition, checks: definition.checks.slice(0, -1) });
    expect(plan.value).toBeLessThanOrEqual(planNext(fewer).value + 1e-9);
  });

  test('is played alike when a fault is halved into two alike', () => {
    const [first, ...rest] = definition.faults;
    const halved = defineProblem({
      ...definition,
      faults: [
        { id: first!.id, prior: first!.prior / 2 },
        { id: 'twin', prior: first!.prior / 2 },
        ...rest,
      ],
      verdicts: definition.verdicts.map((verdict) => ({
        ...verdict,
        fixes: verdict.fixes.includes(first!.id) ? [...verdict.fixes, 'twin'] : verdict.fixes,
      })),
      checks: definition.checks.map((check) => ({
        ...check,
        likelihoods: [check.likelihoods[0]!, ...check.likelihoods],
      })),
    });
    const { type, id, value } = planNext(halved);
    expect({ type, id }).toEqual({ type: plan.type, id: plan.id });
    expect(value).toBeCloseTo(plan.value, 9);
  });

  test('asks nothing before what it requires is answered', () => {
    policyCost(problem, (_problem, state) => {
      const chosen = planNext(problem, state);
      if (chosen.type === 'check') {
        expect(prospects(problem, state, chosen.id).isPossible).toBe(true);
        expect(state.done!.map(({ check }) => check)).not.toContain(chosen.id);
      }
      return chosen;
    });
  });
});

describe('looking ahead as far as there are checks', () => {
  const small = seeds
    .filter((seed) => seed % 2 === 0)
    .map((seed) => randomProblem({ ...drawOf(seed, 6), faults: 4, checks: 3 }));

  test.each(small.map((definition, index) => [index * 2, definition] as const))(
    'is the optimum where a verdict ends the case, seed %s',
    (_, definition) => {
      const problem = defineProblem(definition);
      const full = problem.checks.length;
      const { value } = planNext(problem);
      expect(lookAhead(problem, startOf(problem), full).value).toBeCloseTo(value, digits);
      const replayed = policyCost(problem, (_problem, state) =>
        lookAhead(problem, nodeOf(problem, state), full),
      );
      expect(replayed).toBeCloseTo(value, digits);
    },
  );
});

describe('a large problem, where one check settles nothing and many settle it', () => {
  test.each([1, 3, 5])(
    'is not given up at once, and chosen for alike every time, seed %s',
    (seed) => {
      const problem = defineProblem(largeProblem(seed));
      const plan = planNext(problem);
      expect(plan).toMatchObject({ type: 'check', proof: 'estimated' });
      expect(plan.value).toBeLessThan(plan.act);
      expect(planNext(problem)).toEqual(plan);
    },
  );

  // Some 100 choices by each way, on a machine that may be busy.
  test('costs less than by the most information for its cost', { timeout: 60_000 }, () => {
    const problem = defineProblem(largeProblem(5));
    const draw = { seed: 5, cases: 6 };
    expect(simulatedCost(problem, planNext, draw)).toBeLessThan(
      simulatedCost(problem, policies.ig, draw),
    );
  });

  test.each(['signs', 'dense', 'pairs', 'sharp', 'weak'] as const)(
    'costs no more than acting at once where cases go on, shape %s',
    (shape) => {
      const draw = { seed: 7, mode: 'continue', shape, faults: 30, checks: 24 } as const;
      const problem = defineProblem(randomProblem(draw));
      const plan = planNext(problem);
      expect(plan.value).toBeLessThanOrEqual(plan.act + 1e-9);
      expect(plan.value).toBeGreaterThanOrEqual(knownCost(problem, startOf(problem).belief));
      if (plan.type === 'check') expect(prospects(problem, {}, plan.id).isPossible).toBe(true);
      expect(planNext(problem)).toEqual(plan);
    },
  );
});

describe('cases solved by hand', () => {
  test('repairs that cure one fault each go by probability per cost: 39 minutes', () => {
    const problem = repairs([0.5, 0.3, 0.2], [40, 12, 10]);
    expect(planNext(problem)).toMatchObject({ id: 'v1', value: expect.closeTo(39, 9) as number });
    // By hand: 12, then with the 0.7 left 10, then with the 0.5 left 40.
    expect(ours(problem)).toBeCloseTo(12 + 0.7 * 10 + 0.5 * 40, 9);
  });

  test('perfect probes with the last cause unprobed cost 19 minutes', () => {
    const costs = [40, 12, 10];
    const names = ['f0', 'f1', 'f2'];
    const problem = defineProblem({
      mode: 'terminal',
      faults: names.map((id, fault) => ({ id, prior: [0.5, 0.3, 0.2][fault]! })),
      verdicts: names.map((id) => ({ id, cost: 0, wrongPenalty: 1000, fixes: [id] })),
      checks: names.map((id, fault) => ({
        id: `probe-${id}`,
        cost: costs[fault]!,
        outcomes: ['yes', 'no'],
        likelihoods: names.map((other) => (other === id ? [1, 0] : [0, 1])),
      })),
    });
    expect(planNext(problem).value).toBeCloseTo(19, 9);
    expect(ours(problem)).toBeCloseTo(12 + 0.7 * 10, 9);
  });

  const halves = (right: number, cost: number) =>
    defineProblem({
      mode: 'terminal',
      faults: [
        { id: 'battery', prior: 0.8 },
        { id: 'starter', prior: 0.2 },
      ],
      verdicts: ['battery', 'starter'].map((id) => ({
        id,
        cost: 0,
        wrongPenalty: 50,
        fixes: [id],
      })),
      checks: [
        {
          id: 'check',
          cost,
          outcomes: ['dim', 'bright'],
          likelihoods: [
            [right, 1 - right],
            [1 - right, right],
          ],
        },
      ],
    });

  test.each([
    { right: 1, cost: 6, value: 6, oneStep: 6, type: 'check' },
    { right: 0.9, cost: 2, value: 7, oneStep: 7, type: 'check' },
    { right: 0.8, cost: 2, value: 10, oneStep: 12, type: 'verdict' },
  ])('a check that is right in $right of cases at $cost minutes: $type', (row) => {
    const problem = halves(row.right, row.cost);
    const plan = planNext(problem);
    expect(plan.act).toBeCloseTo(10, 9);
    expect(plan.value).toBeCloseTo(row.value, 9);
    expect(plan.type).toBe(row.type);
    expect(prospects(problem, {}, 'check').oneStepValue).toBeCloseTo(row.oneStep, 9);
  });

  test('information in bits', () => {
    expect(prospects(halves(0.8, 2), {}, 'check').informationBits).toBeCloseTo(0.182453, digits);
    const even = prospects(halves(0.9, 2), { belief: [1, 1] }, 'check');
    expect(even.informationBits).toBeCloseTo(0.531004, digits);
  });
});

/** Repairs that cure one fault each, tried until one has. */
function repairs(priors: readonly number[], costs: readonly number[]): DiagnosisProblem {
  return defineProblem({
    mode: 'continue',
    faults: priors.map((prior, fault) => ({ id: `f${fault}`, prior })),
    verdicts: costs.map((cost, fault) => ({
      id: `v${fault}`,
      cost,
      wrongPenalty: 0,
      fixes: [`f${fault}`],
    })),
    checks: [],
  });
}

describe('repairs that cure one fault each', () => {
  test.each(seeds.slice(0, 20))('are tried in the best of all orders, seed %s', (seed) => {
    const { faults, verdicts } = randomProblem({
      seed,
      mode: 'continue',
      shape: 'dense',
      faults: 6,
      checks: 0,
    });
    const priors = faults.map(({ prior }) => prior);
    const costs = faults.map((_, fault) => 1 + verdicts[fault % verdicts.length]!.cost + fault);
    const problem = repairs(priors, costs);
    const total = priors.reduce((sum, prior) => sum + prior, 0);
    const orderCost = (order: readonly number[]): number => {
      let left = 1;
      return order.reduce((spent, fault) => {
        const cost = left * costs[fault]!;
        left -= priors[fault]! / total;
        return spent + cost;
      }, 0);
    };
    const best = Math.min(...permutations([...priors.keys()]).map(orderCost));
    expect(planNext(problem).act).toBeCloseTo(best, 9);
    expect(ours(problem)).toBeCloseTo(best, 9);
  });
});

function permutations(items: readonly number[]): readonly (readonly number[])[] {
  if (items.length === 0) return [[]];
  return items.flatMap((item) =>
    permutations(items.filter((other) => other !== item)).map((rest) => [item, ...rest]),
  );
}
