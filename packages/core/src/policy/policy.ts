/**
 * The terms on which one shop takes parts back. They are the shop's own: where none are given,
 * nothing is put in their place. Local consumer law precedes all of them.
 */
import * as z from 'zod/mini';

/** The parts that a shop may have terms for. */
export const soldParts = ['starter', 'battery'] as const;

/** A part that is sold and may come back. */
export type SoldPart = (typeof soldParts)[number];

/** A part of a price in percent, to two decimals, or an amount in minor units of the currency. */
export type Fee = { readonly percent: number } | { readonly amount: number };

/** What is paid back in a stretch of the warranty: from a whole month of use up to another. */
export interface ProRataStep {
  readonly from: number;
  readonly to: number;
  readonly percent: number;
}

/** The warranty on one part. */
export interface Warranty {
  readonly months: number;
  /**
   * What is paid back by how long it was used: the months that are left of all months, or steps
   * that cover the warranty once. The whole price where it is missing.
   */
  readonly 'pro-rata'?: 'by-month' | readonly ProRataStep[] | undefined;
}

/** The terms of one shop. */
export interface Policy {
  readonly shop: string;
  /** Where the shop is, as it stands on a slip; in one line. */
  readonly address?: string | undefined;
  /** ISO 4217. */
  readonly currency: string;
  /** IANA time zone in which its days are counted; left out, as the clock of the case has them. */
  readonly 'time-zone'?: string | undefined;
  readonly 'return-window': { readonly days: number; readonly restocking?: Fee | undefined };
  readonly warranty: Readonly<Partial<Record<SoldPart, Warranty | undefined>>>;
  /** What was paid for the old unit until it is brought, in minor units. */
  readonly 'exchange-deposit'?: Readonly<Partial<Record<SoldPart, number | undefined>>> | undefined;
}

/** A whole number from a least value to a most, and what is said where it is none. */
const whole = (expected: string, least: number, most: number) =>
  z.int(expected).check(z.minimum(least, expected), z.maximum(most, expected));

const aPercentage = 'a percentage from 0 to 100, to two decimals';
const percent = z
  .number(aPercentage)
  .check(z.minimum(0, aPercentage), z.maximum(100, aPercentage), z.multipleOf(0.01, aPercentage));
const minorUnits = whole('a whole number of minor units of the currency, such as cents', 0, 1e12);
const months = whole('whole months', 0, 600);
const currency = 'a currency by its three capital letters, ISO 4217';
const text = z.string('a text').check(z.minLength(1, 'a text'), z.maxLength(120, 'a shorter text'));

const step = z.strictObject({ from: months, to: months, percent }, 'a step { from, to, percent }');
const warranty = z.strictObject(
  {
    months: whole('whole months, at least 1', 1, 600),
    'pro-rata': z.optional(z.union([z.literal('by-month'), z.array(step).check(z.minLength(1))])),
  },
  '{ months, pro-rata }',
);

const perPart = <Item extends z.ZodMiniType>(item: Item) =>
  z.strictObject(
    { starter: z.optional(item), battery: z.optional(item) },
    'terms for starter, battery or both',
  );

/** The shape of a policy; that its steps leave no gap is checked by `policyFaults`. */
export const policyShape: z.ZodMiniType<Policy> = z.strictObject(
  {
    shop: text,
    address: z.optional(text),
    currency: z.string(currency).check(z.regex(/^[A-Z]{3}$/u, currency)),
    'time-zone': z.optional(text),
    'return-window': z.strictObject(
      {
        days: whole('whole days', 0, 3660),
        restocking: z.optional(
          z.union([z.strictObject({ percent }), z.strictObject({ amount: minorUnits })]),
        ),
      },
      '{ days, restocking }',
    ),
    warranty: perPart(warranty),
    'exchange-deposit': z.optional(perPart(minorUnits)),
  },
  'shop, address, currency, time-zone, return-window, warranty, exchange-deposit',
);

/** What is wrong with terms that have their shape: where, and what was expected. */
export interface PolicyFault {
  readonly path: readonly (string | number)[];
  readonly expected: string;
}

/** Gaps and overlaps of terms, and names that no clock or currency has. */
export function policyFaults(policy: Policy): readonly PolicyFault[] {
  const faults: PolicyFault[] = [];
  for (const part of soldParts) {
    const terms = policy.warranty[part];
    const steps = terms?.['pro-rata'];
    if (terms === undefined || steps === undefined || steps === 'by-month') continue;
    const at = ['warranty', part, 'pro-rata'];
    let covered = 0;
    for (const [index, { from, to }] of steps.entries()) {
      if (from !== covered) {
        const what = from > covered ? 'no gap' : 'no overlap';
        faults.push({
          path: [...at, index, 'from'],
          expected: `${String(covered)}, where the step before ends: ${what}`,
        });
      }
      if (to <= from) {
        faults.push({ path: [...at, index, 'to'], expected: `more than ${String(from)}` });
      }
      covered = Math.max(covered, to);
    }
    if (covered !== terms.months) {
      faults.push({
        path: [...at, steps.length - 1, 'to'],
        expected: `${String(terms.months)}, the months of the warranty`,
      });
    }
  }
  const zone = policy['time-zone'];
  if (zone !== undefined && !isTimeZone(zone)) {
    faults.push({ path: ['time-zone'], expected: 'an IANA time zone, such as Europe/Lisbon' });
  }
  return faults;
}

function isTimeZone(timeZone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone });
    return true;
  } catch {
    return false;
  }
}
