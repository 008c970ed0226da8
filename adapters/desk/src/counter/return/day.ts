/**
 * What a day at the counter came to: decisions, reasons, and money to the minor unit.
 */
import type { Policy } from '@keyturn/core';
import type { CounterReturn } from './counter-return.ts';

/** A return that has ended. */
export type EndedReturn = CounterReturn & {
  readonly closed: NonNullable<CounterReturn['closed']>;
};

/** What was paid back in one currency, in its minor units. */
interface PaidBack {
  readonly currency: string;
  /** Everything that was paid back, deposits included. */
  readonly total: number;
  readonly deposits: number;
}

/** The sums of a day. */
export interface DaySums {
  /** Decision to how often, the most frequent first. */
  readonly decisions: readonly (readonly [decide: string, count: number])[];
  /** Reason to how often, the most frequent first. */
  readonly reasons: readonly (readonly [reason: string, count: number])[];
  readonly paid: readonly PaidBack[];
}

/** Tells returns that have ended from those that lie on the counter. */
export function isEnded(back: CounterReturn): back is EndedReturn {
  return back.closed !== null;
}

/** The day on which an instant falls where the shop is, ISO 8601. */
export function shopDayOf(at: string, policy: Policy | null): string {
  return new Intl.DateTimeFormat('en-CA', {
    timeZone: policy?.['time-zone'],
    numberingSystem: 'latn',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(new Date(at));
}

/** Adds up returns that have ended. */
export function sumsOf(ended: readonly EndedReturn[]): DaySums {
  const paid = new Map<string, PaidBack>();
  for (const { closed } of ended) {
    if (closed.refund === null || closed.refund === undefined) continue;
    const { currency, total, lines } = closed.refund;
    const before = paid.get(currency) ?? { currency, total: 0, deposits: 0 };
    const deposits = lines.reduce(
      (sum, { line, amount }) => (line === 'deposit' ? sum + amount : sum),
      before.deposits,
    );
    paid.set(currency, { currency, total: before.total + total, deposits });
  }
  return {
    decisions: counted(ended.map(({ closed }) => closed.decide)),
    reasons: counted(ended.map(({ closed }) => closed.reason)),
    paid: [...paid.values()].toSorted((one, other) => (one.currency < other.currency ? -1 : 1)),
  };
}

function counted(names: readonly string[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].toSorted(([, one], [, other]) => other - one);
}
