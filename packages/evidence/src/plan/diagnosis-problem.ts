import { EvidenceError } from '../evidence-error.ts';
import { requireInRange, requireLength } from '../require-numbers.ts';
import { indexNames, namedIndex } from './named-index.ts';

/**
 * `terminal`: a verdict ends the case, right or wrong.
 * `continue`: a wrong verdict costs its penalty, rules out what it fixes, and the case goes on.
 */
export type VerdictMode = 'terminal' | 'continue';

/** A fault; exactly one of those given holds. */
export interface FaultDefinition {
  readonly id: string;
  /** Weight before any finding, 0 or more; any scale, at least one above 0. */
  readonly prior: number;
}

/** Something one can decide to do: a repair, or sending someone. */
export interface VerdictDefinition {
  readonly id: string;
  /** Cost of acting on it, 0 or more, in the one unit of all costs, such as minutes. */
  readonly cost: number;
  /** Cost on top where it does not fix the fault that holds, 0 or more. */
  readonly wrongPenalty: number;
  /** The faults that it fixes. */
  readonly fixes: readonly string[];
}

/** Something to fetch or arrange, paid once in a case: a meter, a person under the bonnet. */
export interface SetupDefinition {
  readonly id: string;
  /** Cost, 0 or more. */
  readonly cost: number;
}

/** What must have been done, with one of these outcomes, before a check can be. */
export interface RequirementDefinition {
  readonly check: string;
  readonly outcomes: readonly string[];
}

/** A question or measurement. It is done once: repeated, it would say the same. */
export interface CheckDefinition {
  readonly id: string;
  /** Cost without its setups, 0 or more. */
  readonly cost: number;
  /** At least one. */
  readonly outcomes: readonly string[];
  /** For each fault, in the order of the faults, P(outcome | fault) in the order of the outcomes. */
  readonly likelihoods: readonly ArrayLike<number>[];
  /** Setups that it needs. None when absent. */
  readonly setups?: readonly string[];
  /** Every entry must hold. None when absent. */
  readonly requires?: readonly RequirementDefinition[];
  /**
   * Of plans that cost the same, the one with the smaller rank is taken.
   *
   * @defaultValue 0
   */
  readonly safety?: number;
}

/** What `defineProblem` takes. */
export interface ProblemDefinition {
  readonly mode: VerdictMode;
  readonly faults: readonly FaultDefinition[];
  readonly verdicts: readonly VerdictDefinition[];
  /** At most 30. None when absent. */
  readonly setups?: readonly SetupDefinition[];
  readonly checks: readonly CheckDefinition[];
}

/** A requirement by positions. */
export interface Requirement {
  /** Position of the check that must be done. */
  readonly check: number;
  /** For each of its outcomes, 1 where that outcome will do, else 0. */
  readonly allowed: Uint8Array;
}

/** A checked problem, flat and by positions; made once and never changed. */
export interface DiagnosisProblem {
  readonly mode: VerdictMode;
  /** Ids in written order; a position in one of these is an index elsewhere. */
  readonly faults: readonly string[];
  readonly verdicts: readonly string[];
  readonly setups: readonly string[];
  readonly checks: readonly string[];
  /** Outcome ids of each check. */
  readonly outcomes: readonly (readonly string[])[];
  /** Probabilities in the order of the faults, sum 1. */
  readonly priors: Float64Array;
  readonly verdictCost: Float64Array;
  readonly wrongPenalty: Float64Array;
  /** For each verdict, 1 for each fault that it fixes, else 0: verdicts x faults. */
  readonly fixes: Uint8Array;
  readonly setupCost: Float64Array;
  readonly checkCost: Float64Array;
  /** For each check a bit for each setup that it needs. */
  readonly checkSetups: Int32Array;
  readonly checkSafety: Float64Array;
  readonly checkRequires: readonly (readonly Requirement[])[];
  /** For each check its likelihoods, outcome by outcome, each over all faults. */
  readonly likelihoods: readonly Float64Array[];
}

/** Bits of a 32-bit number that can be used without its sign. */
const MOST_SETUPS = 30;

/** How far a row of probabilities may be from 1 in all: room for figures written to six digits. */
const SUM_TOLERANCE = 1e-6;

/**
 * Checks a problem and lays it out flat. No side effects.
 *
 * @throws EvidenceError `no-hypotheses` without a fault; `missing-part` without a verdict or for a
 *   check without outcomes; `duplicate-id` and `unknown-id`, naming what and which; `out-of-range`
 *   for a number; `length-mismatch` and `not-a-distribution` for a row of likelihoods or the
 *   priors; `no-way-out` for a fault that no verdict fixes where a wrong verdict does not end the
 *   case
 */
export function defineProblem(definition: ProblemDefinition): DiagnosisProblem {
  const { mode, faults, verdicts, checks, setups = [] } = definition;
  if (faults.length === 0) {
    throw new EvidenceError('no-hypotheses', 'a problem needs at least one fault', {});
  }
  if (verdicts.length === 0) {
    throw new EvidenceError('missing-part', 'a problem needs at least one verdict', {
      what: 'verdict',
    });
  }
  requireInRange(setups.length, {
    what: 'the count of setups',
    least: 0,
    greatest: MOST_SETUPS,
    whole: true,
  });
  const faultIndex = indexNames('fault', faults);
  const setupIndex = indexNames('setup', setups);
  const checkIndex = indexNames('check', checks);
  indexNames('verdict', verdicts);
  const outcomeIndexes = checks.map(({ id, outcomes }) => {
    if (outcomes.length === 0) {
      throw new EvidenceError('missing-part', `check ${id} needs at least one outcome`, {
        what: 'outcome',
        check: id,
      });
    }
    return indexNames(
      `outcome of ${id}`,
      outcomes.map((outcome) => ({ id: outcome })),
    );
  });
  return Object.freeze({
    mode,
    faults: idsOf(faults),
    verdicts: idsOf(verdicts),
    setups: idsOf(setups),
    checks: idsOf(checks),
    outcomes: Object.freeze(checks.map(({ outcomes }) => Object.freeze([...outcomes]))),
    priors: normalPriors(faults),
    verdictCost: costs('verdict', verdicts),
    wrongPenalty: Float64Array.from(verdicts, ({ id, wrongPenalty }) =>
      requireCost(wrongPenalty, 'the penalty of a wrong verdict', { verdict: id }),
    ),
    fixes: fixedFaults(definition, faultIndex),
    setupCost: costs('setup', setups),
    checkCost: costs('check', checks),
    checkSetups: Int32Array.from(checks, ({ id, setups: needed = [] }) =>
      needed.reduce(
        (bits, setup) =>
          bits | (1 << namedIndex(setupIndex, { what: 'setup', id: setup, where: `check ${id}` })),
        0,
      ),
    ),
    checkSafety: Float64Array.from(checks, ({ id, safety = 0 }) => {
      requireInRange(safety, {
        what: 'a safety rank',
        least: -Number.MAX_VALUE,
        greatest: Number.MAX_VALUE,
        facts: { check: id },
      });
      return safety;
    }),
    checkRequires: Object.freeze(
      checks.map(({ id, requires = [] }) =>
        Object.freeze(
          requires.map(({ check, outcomes }): Requirement => {
            const where = `what check ${id} requires`;
            const index = namedIndex(checkIndex, { what: 'check', id: check, where });
            const known = outcomeIndexes[index] as ReadonlyMap<string, number>;
            const allowed = new Uint8Array(known.size);
            for (const outcome of outcomes) {
              allowed[namedIndex(known, { what: `outcome of ${check}`, id: outcome, where })] = 1;
            }
            return Object.freeze({ check: index, allowed });
          }),
        ),
      ),
    ),
    likelihoods: Object.freeze(checks.map((check) => flatLikelihoods(check, faults))),
  });
}

function idsOf(entries: readonly { readonly id: string }[]): readonly string[] {
  return Object.freeze(entries.map(({ id }) => id));
}

function costs(
  what: string,
  entries: readonly { readonly id: string; readonly cost: number }[],
): Float64Array {
  return Float64Array.from(entries, ({ id, cost }) =>
    requireCost(cost, `the cost of a ${what}`, { [what]: id }),
  );
}

function requireCost(cost: number, what: string, facts: Readonly<Record<string, string>>): number {
  requireInRange(cost, { what, least: 0, greatest: Number.MAX_VALUE, facts });
  return cost;
}

function normalPriors(faults: readonly FaultDefinition[]): Float64Array {
  let total = 0;
  for (const { id, prior } of faults) {
    requireInRange(prior, {
      what: 'a prior',
      least: 0,
      greatest: Number.MAX_VALUE,
      facts: { fault: id },
    });
    total += prior;
  }
  if (!(total > 0 && Number.isFinite(total))) {
    throw new EvidenceError(
      'not-a-distribution',
      `the priors sum to ${total}: their sum must be finite and above 0`,
      { total },
    );
  }
  return Float64Array.from(faults, ({ prior }) => prior / total);
}

function fixedFaults(
  { mode, faults, verdicts }: ProblemDefinition,
  faultIndex: ReadonlyMap<string, number>,
): Uint8Array {
  const width = faults.length;
  const fixes = new Uint8Array(verdicts.length * width);
  verdicts.forEach((verdict, row) => {
    for (const fault of verdict.fixes) {
      const where = `verdict ${verdict.id}`;
      fixes[row * width + namedIndex(faultIndex, { what: 'fault', id: fault, where })] = 1;
    }
  });
  if (mode === 'terminal') return fixes;
  const stuck = faults.filter(
    (_, fault) => !verdicts.some((__, row) => fixes[row * width + fault]),
  );
  if (stuck.length === 0) return fixes;
  const ids = idsOf(stuck);
  throw new EvidenceError(
    'no-way-out',
    `no verdict fixes ${ids.join(', ')}: where a wrong verdict goes on, each fault needs one`,
    { faults: ids },
  );
}

function flatLikelihoods(
  { id, outcomes, likelihoods }: CheckDefinition,
  faults: readonly FaultDefinition[],
): Float64Array {
  if (likelihoods.length !== faults.length) {
    throw new EvidenceError(
      'length-mismatch',
      `check ${id} has ${likelihoods.length} rows of likelihoods for ${faults.length} faults`,
      { check: id, seen: likelihoods.length, wanted: faults.length },
    );
  }
  const flat = new Float64Array(outcomes.length * faults.length);
  faults.forEach((fault, column) => {
    const facts = { check: id, fault: fault.id };
    const row = likelihoods[column] as ArrayLike<number>;
    requireLength(row, outcomes.length, { what: 'a row of likelihoods', facts });
    let total = 0;
    for (let outcome = 0; outcome < outcomes.length; outcome += 1) {
      const likelihood = row[outcome] as number;
      if (!(likelihood >= 0 && likelihood <= 1)) {
        throw new EvidenceError(
          'out-of-range',
          `a likelihood must be from 0 to 1: check ${id}, fault ${fault.id}, value ${likelihood}`,
          { ...facts, outcome: outcomes[outcome] ?? '', value: likelihood },
        );
      }
      total += likelihood;
    }
    if (!(Math.abs(total - 1) <= SUM_TOLERANCE)) {
      throw new EvidenceError(
        'not-a-distribution',
        `the outcomes of check ${id} given ${fault.id} sum to ${total}: they must sum to 1`,
        { ...facts, total },
      );
    }
    for (let outcome = 0; outcome < outcomes.length; outcome += 1) {
      flat[outcome * faults.length + column] = (row[outcome] as number) / total;
    }
  });
  return flat;
}
