/**
 * What a case of the vehicle says of a part that comes back.
 */
import { checksOf, holds, type Condition, type Known } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import type { SoldPart } from '../policy/policy.ts';
import { assess } from './assessment.ts';
import type { AnswerInput } from './input.ts';
import { soldNotBefore } from './sale-day.ts';
import { isReading, isSaid, type CaseState } from './state.ts';

/** The answers of the check `vehicle-proof` of a return. */
export type VehicleProof = 'against-part' | 'points-elsewhere' | 'incomplete';

/**
 * Whether the findings on a vehicle speak against a part: what feeds it was measured good, and still
 * it failed. Something else measured bad, or proved, points elsewhere and goes before that.
 *
 * @param flow - The flow of the vehicle's case, and `state` its state.
 */
export function vehicleProof(flow: Flow, state: CaseState, part: SoldPart): VehicleProof {
  const signs = flow.parts[part];
  if (signs === undefined) return 'incomplete';
  const { faults, against, elsewhere } = signs;
  const { known } = assess(flow, state).findings;
  const isOtherProved =
    state.verdict?.strength === 'proved' && !faults.includes(state.verdict.fault);
  if (isOtherProved || (elsewhere !== undefined && holds(elsewhere, known) === true)) {
    return 'points-elsewhere';
  }
  const isAgainst = against !== undefined && holds(against, known) === true;
  return isAgainst ? 'against-part' : 'incomplete';
}

/** On which checks it hangs what a case says of a part. */
export interface ProofGrounds {
  /** What was measured bad and is not of the part. */
  readonly elsewhere: readonly string[];
  /**
   * What it takes still for the case to speak against the part: not measured, or measured and not
   * good. None where nothing of a case can.
   */
  readonly lacking: readonly string[];
}

/** Why a case says of a part what it says. */
export function proofGrounds(flow: Flow, state: CaseState, part: SoldPart): ProofGrounds {
  const { against, elsewhere, byHand } = flow.parts[part] ?? {};
  const { known } = assess(flow, state).findings;
  const lacking = against === undefined ? [] : lackingOf(against, known, byHand?.readings ?? []);
  return {
    elsewhere: elsewhere === undefined ? [] : [...new Set(holding(elsewhere, known))],
    lacking: [...new Set(lacking)],
  };
}

/** The checks by which a condition holds; what was left unanswered is no ground of it. */
function holding(condition: Condition, known: Known): readonly string[] {
  if (holds(condition, known) !== true) return [];
  return condition.kind === 'any' || condition.kind === 'all'
    ? condition.of.flatMap((one) => holding(one, known))
    : condition.kind === 'not'
      ? []
      : checksOf(condition);
}

/** The checks that keep a condition from holding: of several ways those of the shortest by hand. */
function lackingOf(
  condition: Condition,
  known: Known,
  byHand: readonly string[],
): readonly string[] {
  if (holds(condition, known) === true) return [];
  if (condition.kind === 'all') return condition.of.flatMap((one) => lackingOf(one, known, byHand));
  if (condition.kind !== 'any') return checksOf(condition);
  const cost = (checks: readonly string[]): number =>
    checks.reduce((sum, check) => sum + (byHand.includes(check) ? 1 : notByHand), 0);
  const ways = condition.of.map((one) => lackingOf(one, known, byHand));
  return ways.toSorted((one, other) => cost(one) - cost(other))[0] ?? [];
}

/** What is not read by hand counts for more than all that is. */
const notByHand = 100;

/**
 * What the check `vehicle-proof` of a return is answered with once the day of the sale shows that the
 * vehicle (`vehicle.measured` of the context) was measured before the part was in it; undefined
 * where nothing speaks against the answer given.
 */
export function proofBeforeSale(flow: Flow, state: CaseState): AnswerInput | undefined {
  const check = 'vehicle-proof';
  const measured = state.context['vehicle.measured'];
  const answer = state.answers[check]?.at(-1);
  if (typeof measured !== 'string' || !isSaid(answer) || isReading(answer)) return undefined;
  const said: VehicleProof = 'incomplete';
  if (answer.includes(said) || soldNotBefore(flow, state, measured) === undefined) return undefined;
  return { check, value: [said] };
}
