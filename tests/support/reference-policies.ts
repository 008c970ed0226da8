/**
 * Ways of choosing the next check to measure ours against, and the plain recursion for the least
 * expected cost: written for being read, from the definitions alone, and sharing nothing with the
 * package but the layout of a problem.
 */
import type { DiagnosisProblem, DiagnosisState, Policy, PolicyChoice } from '@keyturn/evidence';

/** Where a case stands. */
export interface Node {
  /** Sum 1. */
  readonly belief: readonly number[];
  /** For each check the position of its outcome, or -1. */
  readonly done: readonly number[];
}

/** The best verdict or order of verdicts, and its expected cost. */
interface Act {
  readonly cost: number;
  readonly verdict: number;
}

const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);
const nat = (share: number): number => (share > 0 ? -share * Math.log2(share) : 0);
const likelihood = (
  problem: DiagnosisProblem,
  check: number,
  at: { readonly outcome: number; readonly fault: number },
): number => problem.likelihoods[check]![at.outcome * problem.faults.length + at.fault]!;

/** The start of a case. */
export function startOf(problem: DiagnosisProblem): Node {
  return { belief: [...problem.priors], done: problem.checks.map(() => -1) };
}

/** A state as a node; the belief must be given. */
export function nodeOf(problem: DiagnosisProblem, state: DiagnosisState): Node {
  const done = problem.checks.map(() => -1);
  for (const { check, outcome } of state.done ?? []) {
    const index = problem.checks.indexOf(check);
    done[index] = problem.outcomes[index]!.indexOf(outcome!);
  }
  return { belief: Array.from(state.belief ?? problem.priors), done };
}

const fixes = (problem: DiagnosisProblem, verdict: number, fault: number): boolean =>
  problem.fixes[verdict * problem.faults.length + fault] === 1;

/** Share of the belief that a verdict fixes. */
function fixedShare(problem: DiagnosisProblem, belief: readonly number[], verdict: number): number {
  return sum(belief.filter((_, fault) => fixes(problem, verdict, fault)));
}

/** Expected cost of acting at once. */
export function actNow(problem: DiagnosisProblem, belief: readonly number[]): Act {
  const verdicts = problem.verdicts.map((_, verdict) => verdict);
  const right = (verdict: number): number => problem.verdictCost[verdict]!;
  const wrong = (verdict: number): number => problem.wrongPenalty[verdict]!;
  if (problem.mode === 'terminal') {
    return least(
      verdicts.map((verdict) => ({
        verdict,
        cost: right(verdict) + wrong(verdict) * (1 - fixedShare(problem, belief, verdict)),
      })),
    );
  }
  // The largest share fixed per cost goes first, and again of what is left; or one that covers all.
  const covers = verdicts
    .filter((verdict) => fixedShare(problem, belief, verdict) >= 1 - 1e-12)
    .map((verdict): Act => ({ verdict, cost: right(verdict) }));
  let left = [...belief];
  let spent = 0;
  let first = -1;
  while (sum(left) > 1e-12) {
    const remaining = sum(left);
    const rate = (verdict: number): number =>
      fixedShare(problem, left, verdict) / (right(verdict) + wrong(verdict) || 1e-300);
    const best = verdicts.reduce((one, other) => (rate(other) > rate(one) ? other : one));
    if (first < 0) first = best;
    const own = fixedShare(problem, left, best);
    spent += right(best) * remaining + wrong(best) * Math.max(0, remaining - own);
    left = left.map((share, fault) => (fixes(problem, best, fault) ? 0 : share));
  }
  return least([{ cost: spent, verdict: first }, ...covers]);
}

function least(acts: readonly Act[]): Act {
  return acts.reduce((best, act) => (act.cost < best.cost - 1e-12 ? act : best));
}

/** Expected cost were the fault known; no plan is cheaper. */
export function knownCost(problem: DiagnosisProblem, belief: readonly number[]): number {
  return sum(
    belief.map((share, fault) => {
      const costs = problem.verdicts.map((_, verdict) => {
        if (fixes(problem, verdict, fault)) return problem.verdictCost[verdict]!;
        if (problem.mode === 'continue') return Number.POSITIVE_INFINITY;
        return problem.verdictCost[verdict]! + problem.wrongPenalty[verdict]!;
      });
      return share * Math.min(...costs);
    }),
  );
}

/** Whether a check may be done now. */
export function isAdmissible(problem: DiagnosisProblem, node: Node, check: number): boolean {
  if (node.done[check] !== -1) return false;
  return problem.checkRequires[check]!.every(
    (required) => required.allowed[node.done[required.check]!] === 1,
  );
}

/** What a check costs now, with its setups that no check done so far has paid. */
function checkCost(problem: DiagnosisProblem, node: Node, check: number): number {
  let paid = 0;
  node.done.forEach((outcome, other) => {
    if (outcome >= 0) paid |= problem.checkSetups[other]!;
  });
  const unpaid = problem.checkSetups[check]! & ~paid;
  const setups = Array.from(problem.setupCost).filter((_, bit) => (unpaid & (1 << bit)) !== 0);
  return problem.checkCost[check]! + sum(setups);
}

/** Each possible outcome of a check: how likely, and what follows. */
function outcomesOf(
  problem: DiagnosisProblem,
  node: Node,
  check: number,
): readonly { readonly probability: number; readonly node: Node }[] {
  return problem.outcomes[check]!.flatMap((_, outcome) => {
    const joint = node.belief.map(
      (share, fault) => share * likelihood(problem, check, { outcome, fault }),
    );
    const probability = sum(joint);
    if (probability <= 0) return [];
    const belief = joint.map((share) => share / probability);
    return [{ probability, node: { belief, done: node.done.with(check, outcome) } }];
  });
}

function afterFailure(problem: DiagnosisProblem, node: Node, verdict: number) {
  const joint = node.belief.map((share, fault) => (fixes(problem, verdict, fault) ? 0 : share));
  const probability = sum(joint);
  const belief = probability > 0 ? joint.map((share) => share / probability) : joint;
  return { probability, node: { ...node, belief } };
}

/** Entropy of a belief, bits. */
export function entropy(belief: readonly number[]): number {
  return sum(belief.map(nat));
}

/** Expected information of a check about the fault, bits. */
export function information(problem: DiagnosisProblem, node: Node, check: number): number {
  const after = outcomesOf(problem, node, check).map(
    (outcome) => outcome.probability * entropy(outcome.node.belief),
  );
  return entropy(node.belief) - sum(after);
}

/** Checks that may be done, and that tell something or open one that does. */
function usefulChecks(problem: DiagnosisProblem, node: Node): readonly number[] {
  const live = problem.faults.map((_, fault) => fault).filter((fault) => node.belief[fault]! > 0);
  const tells = (check: number): boolean =>
    problem.outcomes[check]!.some((_, outcome) =>
      live.some(
        (fault) =>
          likelihood(problem, check, { outcome, fault }) !==
          likelihood(problem, check, { outcome, fault: live[0]! }),
      ),
    );
  const isUseful = (check: number): boolean =>
    tells(check) ||
    problem.checkRequires.some(
      (requires, other) =>
        node.done[other] === -1 &&
        requires.some((required) => required.check === check) &&
        isUseful(other),
    );
  return problem.checks
    .map((_, check) => check)
    .filter((check) => isAdmissible(problem, node, check) && isUseful(check));
}

/** What follows a check, when each belief is then worth what is said. */
function checkValue(
  problem: DiagnosisProblem,
  node: Node,
  { check, worth }: { readonly check: number; readonly worth: (after: Node) => number },
): number {
  const after = outcomesOf(problem, node, check).map(
    (outcome) => outcome.probability * worth(outcome.node),
  );
  return checkCost(problem, node, check) + sum(after);
}

function verdictValue(
  problem: DiagnosisProblem,
  node: Node,
  { verdict, worth }: { readonly verdict: number; readonly worth: (after: Node) => number },
): number {
  const failed = afterFailure(problem, node, verdict);
  const rest =
    failed.probability > 1e-12
      ? failed.probability * (problem.wrongPenalty[verdict]! + worth(failed.node))
      : 0;
  return problem.verdictCost[verdict]! + rest;
}

/** Verdicts that fix something, but not all: where cases go on, each is an experiment. */
function experiments(problem: DiagnosisProblem, node: Node): readonly number[] {
  if (problem.mode === 'terminal') return [];
  return problem.verdicts
    .map((_, verdict) => verdict)
    .filter((verdict) => {
      const share = fixedShare(problem, node.belief, verdict);
      return share > 1e-12 && share < 1 - 1e-12;
    });
}

interface Valued extends PolicyChoice {
  readonly value: number;
}

function choices(
  problem: DiagnosisProblem,
  node: Node,
  { worth, tries }: { readonly worth: (after: Node) => number; readonly tries: boolean },
): readonly Valued[] {
  const act = actNow(problem, node.belief);
  return [
    { type: 'verdict', index: act.verdict, value: act.cost },
    ...usefulChecks(problem, node).map((check): Valued => ({
      type: 'check',
      index: check,
      value: checkValue(problem, node, { check, worth }),
    })),
    ...(tries ? experiments(problem, node) : []).map((verdict): Valued => ({
      type: 'verdict',
      index: verdict,
      value: verdictValue(problem, node, { verdict, worth }),
    })),
  ];
}

function cheapest(all: readonly Valued[]): Valued {
  return all.reduce((best, one) => (one.value < best.value - 1e-9 ? one : best));
}

/** Looks so many steps ahead, then acts; 0 acts. */
export function lookAhead(problem: DiagnosisProblem, node: Node, steps: number): Valued {
  const { cost, verdict } = actNow(problem, node.belief);
  if (steps === 0) return { type: 'verdict', index: verdict, value: cost };
  const worth = (after: Node): number => lookAhead(problem, after, steps - 1).value;
  return cheapest(choices(problem, node, { worth, tries: steps > 1 }));
}

/** The best choice and its least expected cost, by plain recursion over all findings. */
export function optimum(problem: DiagnosisProblem): (node: Node) => Valued {
  const known = new Map<string, Valued>();
  const best = (node: Node): Valued => {
    const key = `${node.done.join()} ${node.belief.map((share) => Number(share > 0)).join('')}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const worth = (after: Node): number => best(after).value;
    const found = cheapest(choices(problem, node, { worth, tries: true }));
    known.set(key, found);
    return found;
  };
  return best;
}

/** Cost of the best stopping along the written order; a check not possible when reached is skipped. */
export function fixedStopCost(problem: DiagnosisProblem): number {
  const from = (node: Node, next: number): number => {
    const act = actNow(problem, node.belief).cost;
    const tried = experiments(problem, node).map((verdict) =>
      verdictValue(problem, node, { verdict, worth: (after) => from(after, next) }),
    );
    if (next === problem.checks.length) return Math.min(act, ...tried);
    const going = isAdmissible(problem, node, next)
      ? checkValue(problem, node, { check: next, worth: (after) => from(after, next + 1) })
      : from(node, next + 1);
    return Math.min(act, going, ...tried);
  };
  return from(startOf(problem), 0);
}

/** How sharply a check tells the likeliest fault it tells, from the rest, for its cost. */
function discrimination(problem: DiagnosisProblem, node: Node, check: number): number {
  const all = node.belief.map((share, fault) => {
    if (share <= 0 || share >= 1) return 0;
    const distance = problem.outcomes[check]!.map((_, outcome) => {
      const others = node.belief.map((other, index) =>
        index === fault ? 0 : other * likelihood(problem, check, { outcome, fault: index }),
      );
      return Math.abs(likelihood(problem, check, { outcome, fault }) - sum(others) / (1 - share));
    });
    return (share * sum(distance)) / 2;
  });
  return Math.max(...all) / checkCost(problem, node, check);
}

/** Takes the check with the greatest worth, or acts once knowing the fault is worth no more than it. */
function greatest(worth: (problem: DiagnosisProblem, node: Node, check: number) => number): Policy {
  return (problem, state) => {
    const node = nodeOf(problem, state);
    const act = actNow(problem, node.belief);
    const checks = usefulChecks(problem, node);
    const worths = new Map(checks.map((check) => [check, worth(problem, node, check)]));
    const [best] = checks.toSorted((a, b) => worths.get(b)! - worths.get(a)! || a - b);
    const hoped = act.cost - knownCost(problem, node.belief);
    return best === undefined || hoped <= checkCost(problem, node, best)
      ? { type: 'verdict', index: act.verdict }
      : { type: 'check', index: best };
  };
}

/** The chart in its written order, until nothing is left or one verdict is likely enough. */
function fixed(enough: number): Policy {
  return (problem, state) => {
    const node = nodeOf(problem, state);
    const { verdict } = actNow(problem, node.belief);
    const next = problem.checks.findIndex((_, check) => isAdmissible(problem, node, check));
    return next < 0 || fixedShare(problem, node.belief, verdict) >= enough
      ? { type: 'verdict', index: verdict }
      : { type: 'check', index: next };
  };
}

const ahead =
  (steps: number): Policy =>
  (problem, state) =>
    lookAhead(problem, nodeOf(problem, state), steps);

/** Ways of choosing, by the names of the expected figures. */
export const policies = {
  immediate: ahead(0),
  fixed_all: fixed(Number.POSITIVE_INFINITY),
  fixed_95: fixed(0.95),
  pC: greatest(discrimination),
  /** Most information per cost. */
  ig: greatest(
    (problem, node, check) => information(problem, node, check) / checkCost(problem, node, check),
  ),
  voi1: ahead(1),
  voi2: ahead(2),
  voi1r: (problem, state) => {
    const node = nodeOf(problem, state);
    const act = actNow(problem, node.belief);
    const worth = (after: Node): number => actNow(problem, after.belief).cost;
    const gains = usefulChecks(problem, node).map((check) => {
      const cost = checkCost(problem, node, check);
      const gain = act.cost - checkValue(problem, node, { check, worth }) + cost;
      return { check, gain, rate: gain / cost, isWorth: gain > cost + 1e-9 };
    });
    const [best] = gains
      .filter(({ isWorth }) => isWorth)
      .sort((a, b) => b.rate - a.rate || a.check - b.check);
    return best === undefined
      ? { type: 'verdict', index: act.verdict }
      : { type: 'check', index: best.check };
  },
} satisfies Record<string, Policy>;
