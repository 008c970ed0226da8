/**
 * Invented diagnosis problems of kinds that are hard to choose in, or near to the real ones, by
 * seed: the same seed gives the same problem. Beside those of `random-problem.ts`, which are of
 * every shape by chance.
 */
import type { CheckDefinition, ProblemDefinition, VerdictDefinition } from '@keyturn/evidence';
import { seeded } from './random-problem.ts';

/**
 * `signs`: each check bears on two to four faults, as where a car will not start.
 * `signs-on`: the same, and a wrong verdict does not end the case.
 * `parity`: only several checks together tell which verdict is right.
 * `setups`: six things to fetch, each check asking for one to three of them.
 * `dear`: repairs are cheap, checks dear, and the case goes on.
 * `overlap`: verdicts fix several faults each, and a fault has several verdicts.
 * `chain`: what a check may follow is often another check's outcome.
 */
export const kinds = ['signs', 'signs-on', 'parity', 'setups', 'dear', 'overlap', 'chain'] as const;
type Kind = (typeof kinds)[number];

/** Which kind a seed has. */
export function kindOf(seed: number): Kind {
  return kinds[seed % kinds.length] as Kind;
}

/** Draws the problem of a seed: 8 to 12 faults, 5 to 12 checks of 2 to 4 outcomes. */
export function variedProblem(seed: number): ProblemDefinition {
  const random = seeded(seed + 5_000_000);
  const kind = kindOf(seed);
  const between = (least: number, most: number): number =>
    least + Math.floor(random() * (most - least + 1));
  const faults = named('f', between(8, 12));
  const checkCount = between(5, 12);
  const goesOn = kind === 'signs-on' || kind === 'dear' || (kind !== 'signs' && random() < 0.5);
  const setups = named('s', kind === 'setups' ? 6 : 2);
  const checks = named('c', checkCount).map((id, index): CheckDefinition => {
    const outcomes = named('o', kind === 'parity' ? 2 : between(2, 4));
    const isTied = index > 0 && random() < (kind === 'chain' ? 0.6 : 0.15);
    return {
      id,
      cost: kind === 'dear' ? between(8, 40) : between(1, 12),
      outcomes,
      likelihoods: rowsOf(kind, {
        index,
        faults: faults.length,
        outcomes: outcomes.length,
        random,
      }),
      setups: setups.filter(() => random() < (kind === 'setups' ? 0.35 : 0.25)),
      requires: isTied
        ? [{ check: `c${String(between(0, index - 1))}`, outcomes: outcomesAllowed(random) }]
        : [],
    };
  });
  return {
    mode: goesOn ? 'continue' : 'terminal',
    faults: faults.map((id) => ({ id, prior: 0.02 + random() ** 3 })),
    verdicts: verdictsOf(kind, { faults, goesOn, random, between }),
    setups: setups.map((id) => ({ id, cost: between(2, kind === 'setups' ? 12 : 6) })),
    checks,
  };
}

function named(letter: string, count: number): readonly string[] {
  return Array.from({ length: count }, (_, index) => `${letter}${String(index)}`);
}

function outcomesAllowed(random: () => number): readonly string[] {
  return random() < 0.5 ? ['o0'] : ['o0', 'o1'];
}

function rowsOf(
  kind: Kind,
  draw: {
    readonly index: number;
    readonly faults: number;
    readonly outcomes: number;
    readonly random: () => number;
  },
): readonly (readonly number[])[] {
  const { index, faults, outcomes, random } = draw;
  const row = (power: number): readonly number[] => {
    const shares = Array.from({ length: outcomes }, () => (0.02 + random()) ** power);
    const total = shares.reduce((sum, share) => sum + share, 0);
    return shares.map((share) => share / total);
  };
  if (kind === 'parity' && index < 4) {
    return Array.from({ length: faults }, (_, fault) => {
      const isSet = ((fault >> index) & 1) === 1;
      return isSet ? [0.03, 0.97] : [0.97, 0.03];
    });
  }
  const usual = row(4);
  const told = 2 + Math.floor(random() * 3);
  const bears = new Set(Array.from({ length: told }, () => Math.floor(random() * faults)));
  return Array.from({ length: faults }, (_, fault) => (bears.has(fault) ? row(4) : usual));
}

function verdictsOf(
  kind: Kind,
  draw: {
    readonly faults: readonly string[];
    readonly goesOn: boolean;
    readonly random: () => number;
    readonly between: (least: number, most: number) => number;
  },
): readonly VerdictDefinition[] {
  const { faults, goesOn, random, between } = draw;
  const groups = groupsOf(kind, faults, random);
  const dear = kind === 'dear' ? 30 : 120;
  const repairs = groups.map((fixes, index): VerdictDefinition => ({
    id: `v${String(index)}`,
    cost: Math.round(5 + dear * random() ** 2),
    wrongPenalty: goesOn ? between(0, 30) : between(60, 300),
    fixes,
  }));
  return [...repairs, { id: 'tow', cost: between(150, 210), wrongPenalty: 0, fixes: faults }];
}

function groupsOf(
  kind: Kind,
  faults: readonly string[],
  random: () => number,
): readonly (readonly string[])[] {
  if (kind === 'parity') {
    const bits = (fault: number): number =>
      (fault ^ (fault >> 1) ^ (fault >> 2) ^ (fault >> 3)) & 1;
    return [0, 1].map((parity) => faults.filter((_, fault) => bits(fault) === parity));
  }
  if (kind !== 'overlap') return faults.map((fault) => [fault]);
  return faults.map((fault) => faults.filter((other) => other === fault || random() < 0.15));
}
