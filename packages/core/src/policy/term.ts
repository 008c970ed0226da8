/**
 * How long ago a sale was, by the terms of the shop.
 */
import { dayOf, daysLater, monthsLater } from './calendar.ts';
import type { Policy, SoldPart } from './policy.ts';
import type { SaleTerm } from './sale-terms.ts';

/** The last day of a term for a part sold on a day; undefined where the shop has no such term. */
export function lastDayOf(
  term: SaleTerm,
  sale: { readonly policy: Policy; readonly part: SoldPart; readonly sold: string },
): string | undefined {
  const { policy, part, sold } = sale;
  if (term === 'policy.return-window') return daysLater(sold, policy['return-window'].days);
  const months = policy.warranty[part]?.months;
  return months === undefined ? undefined : monthsLater(sold, months);
}

/** The day of an instant where the shop is. */
export function shopDay(policy: Policy | null, at: string): string {
  return dayOf(at, policy?.['time-zone']);
}
