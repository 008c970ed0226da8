/**
 * What the limits of `electrics` depend on, taken from a case.
 */
import { convert, type LimitContext } from '@keyturn/electrics';
import type { Flow } from '../flow/flow.ts';
import { holds, type Known } from '../flow/condition.ts';
import { isReading, isSaid, type CaseState } from './state.ts';

/** The latest figure of a check in its own unit; undefined where none was read. */
export function measuredValue(flow: Flow, state: CaseState, check: string): number | undefined {
  const form = flow.checks[check]?.form;
  const answer = state.answers[check]?.findLast(isSaid);
  return form?.kind === 'reading' && isReading(answer)
    ? convert(answer, form.unit).value
    : undefined;
}

/**
 * The context of the limits. `choices` sees answers that are not readings: whether the engine
 * turns must not depend on the bands that depend on it.
 */
export function limitContext(flow: Flow, state: CaseState, choices: Known): LimitContext {
  const { context } = state;
  const turning = flow.turning === undefined ? undefined : holds(flow.turning, choices);
  const measured = (quantity: string): number | undefined => {
    const check = flow.measured[quantity];
    return check === undefined ? undefined : measuredValue(flow, state, check);
  };
  const fuel = context['vehicle.fuel'];
  return {
    nominal: context['vehicle.nominal'] as LimitContext['nominal'],
    temperature: context['temperature'] as number | undefined,
    technology: context['vehicle.battery.technology'] as LimitContext['technology'],
    rating: context['vehicle.battery.rating'] as number | undefined,
    ratingStandard: context['vehicle.battery.standard'] as LimitContext['ratingStandard'],
    fuel: fuel === 'petrol' || fuel === 'diesel' ? fuel : undefined,
    displacement: context['vehicle.displacement'] as number | undefined,
    cylinders: context['vehicle.cylinders'] as number | undefined,
    batteryLocation: context['vehicle.battery.location'] as LimitContext['batteryLocation'],
    batteryAge: context['vehicle.battery.age'] as number | undefined,
    expectedCurrent: context['vehicle.notes.expectedCurrent'] as number | undefined,
    turning,
    restVoltage: measured('restVoltage'),
    crankVoltage: measured('crankVoltage'),
    crankCurrent: measured('crankCurrent'),
  };
}
