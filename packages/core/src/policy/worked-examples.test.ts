/**
 * What comes back of a price, worked by hand, and the days that it hangs on, held against the
 * platform's own dates.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { monthsLater, wholeMonths } from './calendar.ts';
import type { Policy, Warranty } from './policy.ts';
import { refundOf } from './refund.ts';
import { lastDayOf } from './term.ts';

const byMonth = (months: number): Warranty => ({ months, 'pro-rata': 'by-month' });

/** A year free of charge, then less and less. */
const freeThenLess: Warranty = {
  months: 36,
  'pro-rata': [
    { from: 0, to: 12, percent: 100 },
    { from: 12, to: 24, percent: 60 },
    { from: 24, to: 36, percent: 30 },
  ],
};

const termsOf = (battery: Warranty, currency = 'EUR'): Policy => ({
  shop: 'Corner Parts',
  currency,
  'return-window': { days: 30 },
  warranty: { battery },
});

interface Example {
  readonly what: string;
  readonly terms: Warranty;
  readonly sold: string;
  readonly back: string;
  readonly price: number;
  readonly currency?: string;
  readonly months: number;
  readonly total: number;
}

const examples: readonly Example[] = [
  {
    // February has no 31st: its last day fills the month. 36 - 1 = 35; 12000 × 35 / 36 = 11666.67.
    what: 'sold on the 31st, back on the last day of February: one month',
    terms: byMonth(36),
    sold: '2026-01-31',
    back: '2026-02-28',
    price: 12_000,
    months: 1,
    total: 11_667,
  },
  {
    // One day sooner the month is not full. 12000 × 36 / 36 = 12000.
    what: 'sold on the 31st, back a day before the end of February: no month',
    terms: byMonth(36),
    sold: '2026-01-31',
    back: '2026-02-27',
    price: 12_000,
    months: 0,
    total: 12_000,
  },
  {
    // 31 August to 30 September, October 31, November 30: three. 12000 × 33 / 36 = 11000.
    what: 'sold on the 31st, back at the end of a month of 30 days',
    terms: byMonth(36),
    sold: '2025-08-31',
    back: '2025-11-30',
    price: 12_000,
    months: 3,
    total: 11_000,
  },
  {
    // A year after 29 February 2024 ends on 28 February 2025. 24 - 12 = 12; 8990 × 12 / 24 = 4495.
    what: 'sold on a leap day, back on the last day of February of the next year',
    terms: byMonth(24),
    sold: '2024-02-29',
    back: '2025-02-28',
    price: 8990,
    months: 12,
    total: 4495,
  },
  {
    // 29 February 2024 is a day after 28 February: still 12 months of 24. 8990 × 12 / 24 = 4495.
    what: 'sold a year before a leap day, back on it',
    terms: byMonth(24),
    sold: '2023-02-28',
    back: '2024-02-29',
    price: 8990,
    months: 12,
    total: 4495,
  },
  {
    // 15 May 2025 to 14 May 2026: 11 whole months, the first step: 9995 × 100 % = 9995.
    what: 'the last day on which it is replaced free of charge',
    terms: freeThenLess,
    sold: '2025-05-15',
    back: '2026-05-14',
    price: 9995,
    months: 11,
    total: 9995,
  },
  {
    // A day later 12 whole months: 9995 × 60 % = 5997.
    what: 'the first day on which less is paid',
    terms: freeThenLess,
    sold: '2025-05-15',
    back: '2026-05-15',
    price: 9995,
    months: 12,
    total: 5997,
  },
  {
    // The last day of the warranty: 36 whole months, and the last step holds: 9995 × 30 % = 2998.5,
    // a half in the customer's favour.
    what: 'the last day of the warranty, by steps; half a cent goes to the customer',
    terms: freeThenLess,
    sold: '2023-05-15',
    back: '2026-05-15',
    price: 9995,
    months: 36,
    total: 2999,
  },
  {
    // 36 - 36 = 0 months left: nothing.
    what: 'the last day of the warranty, by the month',
    terms: byMonth(36),
    sold: '2023-05-15',
    back: '2026-05-15',
    price: 9995,
    months: 36,
    total: 0,
  },
  {
    // Yen have no decimals. 24 - 7 = 17; 15800 × 17 / 24 = 11191.67.
    what: 'a currency without decimals',
    terms: byMonth(24),
    sold: '2025-06-10',
    back: '2026-01-10',
    price: 15_800,
    currency: 'JPY',
    months: 7,
    total: 11_192,
  },
  {
    // Dinars of a thousand fils. 36 - 13 = 23; 24.750 × 23 / 36 = 15.8125, so 15.813.
    what: 'a currency of three decimals; half a fils goes to the customer',
    terms: byMonth(36),
    sold: '2024-12-01',
    back: '2026-01-31',
    price: 24_750,
    currency: 'KWD',
    months: 13,
    total: 15_813,
  },
];

test.each(examples)('$what', ({ terms, sold, back, price, currency, months, total }) => {
  const policy = termsOf(terms, currency);
  const sale = { policy, part: 'battery', price, sold, day: back, isDepositHeld: false } as const;
  const refund = refundOf('warranty', sale);
  expect(refund).toMatchObject({ lines: [{ amount: price }, { line: 'used', months }], total });
  expect(refund?.lines[1]?.amount).toBe(total - price);
});

test('the warranty ends on its last day, and a day later no amount is told', () => {
  const policy = termsOf(freeThenLess);
  const sold = '2023-01-31';
  expect(lastDayOf('policy.warranty', { policy, part: 'battery', sold })).toBe('2026-01-31');
  expect(lastDayOf('policy.return-window', { policy, part: 'battery', sold })).toBe('2023-03-02');
  const on = (day: string): unknown =>
    refundOf('warranty', { policy, part: 'battery', price: 9995, sold, day, isDepositHeld: false });
  expect(on('2026-01-31')).toMatchObject({ total: 2999 });
  expect(on('2026-02-01')).toBeUndefined();
});

/** A day so many months on as the platform has it: what runs over a month's end is cut to it. */
function platformMonthsLater(day: string, months: number): string {
  const from = new Date(`${day}T00:00:00Z`);
  const to = new Date(from);
  to.setUTCMonth(from.getUTCMonth() + months);
  // 31 January and a month is 3 March to the platform: day 0 of that month is the end of February.
  if (to.getUTCDate() !== from.getUTCDate()) to.setUTCDate(0);
  return new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short', timeZone: 'UTC' }).format(to);
}

test('months later, and whole months between two days, are those of the platform', () => {
  const day = fc
    .date({ min: new Date('1996-01-01'), max: new Date('2104-12-31'), noInvalidDate: true })
    .map((date) => date.toISOString().slice(0, 10));
  fc.assert(
    fc.property(day, fc.integer({ min: 0, max: 120 }), day, (from, months, to) => {
      expect(monthsLater(from, months)).toBe(platformMonthsLater(from, months));
      const between = wholeMonths(from, to);
      if (to < from) {
        expect(between).toBe(0);
        return;
      }
      expect(platformMonthsLater(from, between) <= to).toBe(true);
      expect(platformMonthsLater(from, between + 1) > to).toBe(true);
    }),
    { numRuns: 2000 },
  );
});
