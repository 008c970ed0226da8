/**
 * What the case of the customer's vehicle changes in a return.
 */
import { soldNotBefore, type Flow, type Input } from '@keyturn/core';
import { answering } from '../../engine/engine.ts';
import type { CounterReturn, VehicleCase } from '../return/counter-return.ts';

/** The check that the case of the vehicle answers. */
export const proofCheck = 'vehicle-proof';

/** What is kept with the return, and what its case is told. */
export interface CaseTaken {
  readonly change: Partial<CounterReturn>;
  readonly inputs: readonly Input[];
}

/** A case not later than the sale tells on what the part was bought, and nothing of the part. */
export function caseTaken(flow: Flow, offered: VehicleCase, back: CounterReturn): CaseTaken {
  const { code, proof } = offered;
  if (soldAfter(flow, offered, back) !== undefined) {
    return { change: ofAnotherPart(offered), inputs: [] };
  }
  // A code beyond what a context holds is kept with the return alone.
  const told: readonly Input[] =
    code.length > 500 ? [] : [{ type: 'context', set: { case: code } }];
  return {
    change: { vehicle: offered },
    inputs: [...told, answering(back.sitting.case, proofCheck, [proof[back.part]])],
  };
}

/** A case of the vehicle with another part in it tells on what this one was bought, and no more. */
export function ofAnotherPart(offered: VehicleCase): Partial<CounterReturn> {
  return { diagnosis: boughtOn(offered) };
}

/** A case that a day of sale told afterwards shows to be older than the part. */
export function olderCase(
  flow: Flow,
  back: CounterReturn,
): (CaseTaken & { readonly sold: string }) | undefined {
  const { vehicle } = back;
  const sold = vehicle === null ? undefined : soldAfter(flow, vehicle, back);
  if (vehicle === null || sold === undefined) return undefined;
  return {
    sold,
    change: { vehicle: null, diagnosis: boughtOn(vehicle) },
    inputs: [answering(back.sitting.case, proofCheck, ['incomplete'])],
  };
}

/**
 * The day of the sale, where the case is not later. By hand it is told now, whenever it was measured,
 * and the clerk has said that the part was in the vehicle.
 */
function soldAfter(
  flow: Flow,
  { at, isByHand = false }: VehicleCase,
  { sitting }: CounterReturn,
): string | undefined {
  return isByHand ? undefined : soldNotBefore(flow, sitting.case.state, at);
}

function boughtOn({ fault, strength }: VehicleCase): CounterReturn['diagnosis'] {
  return { by: 'case', fault, strength };
}
