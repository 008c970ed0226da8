/**
 * What the limits of `electrics` depend on, taken from a case.
 */
import { convert, type LimitContext } from '@keyturn/electrics';
import type { Flow } from '../flow/flow.ts';
import { holds, type Known } from '../flow/condition.ts';
import type { Context } from './context.ts';
import { isReading, isSaid, type CaseState } from './state.ts';

/** What the part that is judged, else the vehicle, is rated for, in V: 12 where it is not known. */
export function nominalOf(context: Context): 12 | 24 {
  return (context['part.nominal'] ?? context['vehicle.nominal']) === 24 ? 24 : 12;
}

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
  // A part on the counter goes before the vehicle that it came from.
  const ofBattery = (field: string): unknown =>
    context[`part.battery.${field}`] ?? context[`vehicle.battery.${field}`];
  return {
    nominal: (context['part.nominal'] ?? context['vehicle.nominal']) as LimitContext['nominal'],
    starterBuild: context['part.build'] as LimitContext['starterBuild'],
    starterClass: context['part.class'] as LimitContext['starterClass'],
    temperature: context['temperature'] as number | undefined,
    technology: ofBattery('technology') as LimitContext['technology'],
    rating: ofBattery('rating') as number | undefined,
    ratingStandard: ofBattery('standard') as LimitContext['ratingStandard'],
    fuel: fuel === 'petrol' || fuel === 'diesel' ? fuel : undefined,
    displacement: context['vehicle.displacement'] as number | undefined,
    cylinders: context['vehicle.cylinders'] as number | undefined,
    batteryLocation: context['vehicle.battery.location'] as LimitContext['batteryLocation'],
    batteryAge: ofBattery('age') as number | undefined,
    smartCharging: context['vehicle.smartCharging'] as boolean | undefined,
    boltSize: context['bolt.size'] as LimitContext['boltSize'],
    boltClass: context['bolt.class'] as LimitContext['boltClass'],
    boltInto: context['bolt.material'] as LimitContext['boltInto'],
    studSize: context['stud.size'] as LimitContext['studSize'],
    studMaterial: context['stud.material'] as LimitContext['studMaterial'],
    postKind: context['post.kind'] as LimitContext['postKind'],
    expectedCurrent: context['vehicle.notes.expectedCurrent'] as number | undefined,
    turning,
    restVoltage: measured('restVoltage'),
    crankVoltage: measured('crankVoltage'),
    crankCurrent: measured('crankCurrent'),
  };
}
