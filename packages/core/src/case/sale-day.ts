/**
 * The day on which a part was sold, and what was measured before it.
 */
import type { Flow } from '../flow/flow.ts';
import { dayOf, looksLikeDay } from '../policy/calendar.ts';
import { isReading, isSaid, type CaseState } from './state.ts';

/** The check that is answered with the day of the sale; undefined where a flow has none. */
export function saleCheck(flow: Flow): string | undefined {
  const known = saleChecks.get(flow);
  if (known !== undefined) return known.check;
  const check = Object.values(flow.checks).find(({ form }) => form.kind === 'date')?.id;
  saleChecks.set(flow, { check });
  return check;
}

const saleChecks = new WeakMap<Flow, { readonly check: string | undefined }>();

/** The day of the sale, ISO 8601, where the case was told one. */
export function saleDay(flow: Flow, state: CaseState): string | undefined {
  const date = saleCheck(flow);
  const answer = date === undefined ? undefined : state.answers[date]?.findLast(isSaid);
  if (!isSaid(answer) || isReading(answer)) return undefined;
  return answer.find(looksLikeDay);
}

/**
 * The day of the sale where a vehicle was measured no later than on it, by the days of the shop: then
 * the part was not in it. Undefined where it was measured later, or the day is not known.
 *
 * @param measured - ISO 8601, with its zone.
 */
export function soldNotBefore(flow: Flow, state: CaseState, measured: string): string | undefined {
  const sold = saleDay(flow, state);
  if (sold === undefined || Number.isNaN(Date.parse(measured))) return undefined;
  return dayOf(measured, state.policy?.['time-zone']) <= sold ? sold : undefined;
}
