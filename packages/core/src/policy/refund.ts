/**
 * What a shop's terms give back for a part, to the minor unit, with the arithmetic.
 */
import { wholeMonths } from './calendar.ts';
import type { Fee, Policy, SoldPart, Warranty } from './policy.ts';
import { lastDayOf } from './term.ts';

/** What of the terms a decision pays by. */
export const payments = ['price', 'return-window', 'warranty', 'deposit'] as const;

/** One way of paying back. */
export type Payment = (typeof payments)[number];

/** One line of the arithmetic, in minor units; what is kept back is below 0. */
export type RefundLine =
  | { readonly line: 'price'; readonly amount: number }
  | { readonly line: 'restocking'; readonly amount: number; readonly percent?: number }
  /** The part that was used up: `percent` is still paid, or `left` months `of` all months. */
  | {
      readonly line: 'used';
      readonly amount: number;
      readonly months: number;
      readonly percent?: number;
      readonly left?: number;
      readonly of?: number;
    }
  | { readonly line: 'deposit'; readonly amount: number };

/** What is paid back: lines that add up to the total, in minor units of the currency. */
export interface Refund {
  readonly currency: string;
  readonly lines: readonly RefundLine[];
  readonly total: number;
}

/** What the amount hangs on and is not known: no terms at all, none for the part, the price, the day. */
export type Lacking = 'terms' | 'warranty' | 'price' | 'day';

/** What is known of the sale. */
export interface Sale {
  readonly policy: Policy;
  readonly part: SoldPart;
  /** What was paid for the part, in minor units, the deposit apart. */
  readonly price?: number | undefined;
  /** The day of the sale and the day of the return, ISO 8601. */
  readonly sold?: string | undefined;
  readonly day: string;
  /** True where the old unit is still owed, so that its deposit is held. */
  readonly isDepositHeld: boolean;
}

/**
 * The refund, or undefined where the terms, the price or the day that it hangs on is not known, or
 * the term has run out. A part of a price is rounded to the minor unit, a half in the customer's favour.
 */
export function refundOf(payment: Payment, sale: Sale): Refund | undefined {
  const { policy, part, price, isDepositHeld } = sale;
  const deposit = isDepositHeld ? policy['exchange-deposit']?.[part] : undefined;
  const back: readonly RefundLine[] =
    deposit === undefined ? [] : [{ line: 'deposit', amount: deposit }];
  const paid = payment === 'deposit' ? [] : partOfPrice(payment, sale, price);
  if (paid === undefined || paid.length + back.length === 0) return undefined;
  const lines = [...paid, ...back];
  const total = lines.reduce((sum, { amount }) => sum + amount, 0);
  return { currency: policy.currency, lines, total };
}

/** What is lacking for an amount; empty where nothing is. */
export function lackingFor(
  payment: Payment,
  sale: Pick<Sale, 'part' | 'price' | 'sold'> & { readonly policy: Policy | null },
): readonly Lacking[] {
  const { policy, part, price, sold } = sale;
  if (policy === null) return ['terms'];
  if (payment === 'deposit') return [];
  const terms = policy.warranty[part];
  const isByTime = payment === 'warranty' && terms?.['pro-rata'] !== undefined;
  return [
    ...(payment === 'warranty' && terms === undefined ? (['warranty'] as const) : []),
    ...(price === undefined ? (['price'] as const) : []),
    ...(isByTime && sold === undefined ? (['day'] as const) : []),
  ];
}

function partOfPrice(
  payment: Exclude<Payment, 'deposit'>,
  sale: Sale,
  price: number | undefined,
): readonly RefundLine[] | undefined {
  if (price === undefined || (payment !== 'price' && isPast(payment, sale))) return undefined;
  const whole: RefundLine = { line: 'price', amount: price };
  switch (payment) {
    case 'price':
      return [whole];
    case 'return-window': {
      const fee = sale.policy['return-window'].restocking;
      return fee === undefined ? [whole] : [whole, restockingLine(fee, price)];
    }
    case 'warranty': {
      const terms = sale.policy.warranty[sale.part];
      if (terms === undefined) return undefined;
      if (terms['pro-rata'] === undefined) return [whole];
      if (sale.sold === undefined) return undefined;
      const used = usedLine(terms, price, wholeMonths(sale.sold, sale.day));
      return used === undefined ? undefined : [whole, used];
    }
  }
}

/** True where the term had run out by the day of the return. */
function isPast(payment: 'return-window' | 'warranty', sale: Sale): boolean {
  const { policy, part, sold, day } = sale;
  if (sold === undefined) return false;
  const last = lastDayOf(`policy.${payment}`, { policy, part, sold });
  return last !== undefined && day > last;
}

function restockingLine(fee: Fee, price: number): RefundLine {
  if ('amount' in fee) return { line: 'restocking', amount: -Math.min(fee.amount, price) };
  const kept = price - partOf(price, 100 - fee.percent, 100);
  return { line: 'restocking', percent: fee.percent, amount: -kept };
}

function usedLine(terms: Warranty, price: number, months: number): RefundLine | undefined {
  const rule = terms['pro-rata'];
  if (rule === 'by-month') {
    const left = Math.max(0, terms.months - months);
    const amount = partOf(price, left, terms.months) - price;
    return { line: 'used', months, left, of: terms.months, amount };
  }
  // On the very last day of the warranty its months are full, and the last step still holds.
  const step = rule?.findLast(({ from }) => from <= months);
  if (step === undefined) return undefined;
  const amount = partOf(price, step.percent, 100) - price;
  return { line: 'used', months, percent: step.percent, amount };
}

/** A part of an amount in whole minor units, a half rounded up; percents have two decimals. */
function partOf(amount: number, share: number, of: number): number {
  const parts = BigInt(Math.round(share * 100));
  const all = BigInt(of) * 100n;
  return Number((BigInt(amount) * parts * 2n + all) / (2n * all));
}
