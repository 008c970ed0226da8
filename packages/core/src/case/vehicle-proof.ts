/**
 * What a case of the vehicle says of a part that comes back.
 */
import { holds } from '../flow/condition.ts';
import type { Flow } from '../flow/flow.ts';
import type { SoldPart } from '../policy/policy.ts';
import { assess } from './assessment.ts';
import type { CaseState } from './state.ts';

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
