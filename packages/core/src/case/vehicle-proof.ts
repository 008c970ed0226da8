/**
 * What a case of the vehicle says of a part that comes back.
 */
import { holds } from '../flow/condition.ts';
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
