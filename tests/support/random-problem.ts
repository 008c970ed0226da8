/**
 * Invented diagnosis problems by seed: the same seed gives the same problem.
 */
import type {
  CheckDefinition,
  FaultDefinition,
  ProblemDefinition,
  RequirementDefinition,
  VerdictDefinition,
} from '@keyturn/evidence';

/** Numbers from 0 to 1, 1 excluded, from a seed: a linear congruential generator modulo 2^48. */
export function seeded(seed: number): () => number {
  let state = BigInt(seed) * 2_862_933_555_777_941_757n + 3_037_000_493n;
  const next = (): number => {
    state = (state * 25_214_903_917n + 11n) % 281_474_976_710_656n;
    return Number(state) / 281_474_976_710_656;
  };
  // The first numbers of near seeds are near each other.
  for (let index = 0; index < 8; index += 1) next();
  return next;
}

/** How the likelihoods of a problem are drawn. */
type Shape = 'signs' | 'dense' | 'sharp' | 'pairs' | 'weak';

/** Shapes in the order in which seeds go through them. */
const shapes: readonly Shape[] = ['signs', 'dense', 'sharp', 'pairs', 'weak'];

/** What to draw. */
export interface Draw {
  readonly seed: number;
  readonly mode: 'terminal' | 'continue';
  readonly shape: Shape;
  readonly faults: number;
  readonly checks: number;
  /** Outcomes of every check; 2 or 3, by chance, when absent. */
  readonly outcomes?: number;
  /** Without setups and requirements; false when absent. */
  readonly plain?: boolean;
}

/** A draw for a number: modes and shapes in turn, sizes by chance up to the greatest given. */
export function drawOf(seed: number, greatest: number): Draw {
  const random = seeded(seed + 1_000_000);
  const size = (): number => 4 + Math.floor(random() * (greatest - 3));
  return {
    seed,
    mode: seed % 2 === 0 ? 'terminal' : 'continue',
    shape: shapes[Math.floor(seed / 2) % shapes.length] as Shape,
    faults: size(),
    checks: size(),
  };
}

/** Draws a problem. */
export function randomProblem(draw: Draw): ProblemDefinition {
  const random = seeded(draw.seed);
  const { mode, plain = false } = draw;
  const faults = Array.from({ length: draw.faults }, (_, index): FaultDefinition => ({
    id: `f${String(index)}`,
    prior: 0.05 + random() ** 2,
  }));
  const checks = Array.from({ length: draw.checks }, (_, index): CheckDefinition => {
    const outcomes = draw.outcomes ?? (random() < 0.6 ? 2 : 3);
    return {
      id: `c${String(index)}`,
      cost: Math.round(1 + 11 * random() ** 2),
      outcomes: Array.from({ length: outcomes }, (_o, outcome) => `o${String(outcome)}`),
      likelihoods: drawRows({ draw, index, outcomes, random }),
      ...(!plain && random() < 0.4 ? { setups: drawSetups(random) } : {}),
      ...(!plain && index > 0 && random() < 0.2
        ? { requires: [drawRequirement(index, random)] }
        : {}),
    };
  });
  return {
    mode,
    faults,
    verdicts: drawVerdicts(draw, random),
    setups: [
      { id: 'meter', cost: 4 },
      { id: 'person', cost: 6 },
    ],
    checks,
  };
}

function drawSetups(random: () => number): readonly string[] {
  const chance = random();
  return chance < 0.5 ? ['meter'] : chance < 0.8 ? ['person'] : ['meter', 'person'];
}

function drawRequirement(index: number, random: () => number): RequirementDefinition {
  const outcomes = random() < 0.5 ? ['o0'] : ['o0', 'o1'];
  return { check: `c${String(Math.floor(random() * index))}`, outcomes };
}

function drawVerdicts(draw: Draw, random: () => number): readonly VerdictDefinition[] {
  const groups: string[][] = [];
  for (let fault = 0; fault < draw.faults; fault += 1) {
    const shared = groups.length > 0 && random() < 0.2;
    if (shared) groups[Math.floor(random() * groups.length)]?.push(`f${String(fault)}`);
    else groups.push([`f${String(fault)}`]);
  }
  const single = groups.map((fixes, index): VerdictDefinition => ({
    id: `v${String(index)}`,
    cost: Math.round(5 + 120 * random() ** 2),
    wrongPenalty: Math.round(draw.mode === 'terminal' ? 60 + 240 * random() : 30 * random()),
    fixes,
  }));
  const tow = {
    id: 'tow',
    cost: 150 + Math.round(60 * random()),
    wrongPenalty: 0,
    fixes: Array.from({ length: draw.faults }, (_, index) => `f${String(index)}`),
  };
  return random() < 0.8 ? [...single, tow] : single;
}

function drawRows({
  draw,
  index,
  outcomes,
  random,
}: {
  readonly draw: Draw;
  readonly index: number;
  readonly outcomes: number;
  readonly random: () => number;
}): readonly (readonly number[])[] {
  const usual = row(outcomes, random, 3);
  return Array.from({ length: draw.faults }, (_, fault) => {
    switch (draw.shape) {
      case 'signs':
        return random() < 0.3 ? row(outcomes, random, 3) : usual;
      case 'dense':
        return row(outcomes, random, 1.5);
      case 'sharp':
        return peaked(outcomes, Math.floor(random() * outcomes), random() < 0.5 ? 0 : 0.03);
      case 'pairs':
        // Two checks on the two bits of a fault's number: neither alone tells its parity.
        return peaked(outcomes, (fault >> (index % 3)) & 1, 0.05);
      case 'weak':
        return row(outcomes, random, 0.6);
    }
  });
}

/** Shares that sum to 1; the greater the power, the more one outcome has of it. */
function row(outcomes: number, random: () => number, power: number): readonly number[] {
  const shares = Array.from({ length: outcomes }, () => (0.02 + random()) ** power);
  const total = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => share / total);
}

function peaked(outcomes: number, peak: number, rest: number): readonly number[] {
  return Array.from({ length: outcomes }, (_, outcome) =>
    outcome === peak ? 1 - rest : rest / (outcomes - 1),
  );
}
