import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Policy } from './policy.ts';
import { lackingFor, payments, refundOf, type Payment, type Sale } from './refund.ts';

const policy: Policy = {
  shop: 'Corner Parts',
  currency: 'EUR',
  'return-window': { days: 30, restocking: { percent: 15 } },
  warranty: {
    starter: { months: 24 },
    battery: {
      months: 36,
      'pro-rata': [
        { from: 0, to: 12, percent: 100 },
        { from: 12, to: 24, percent: 66.67 },
        { from: 24, to: 36, percent: 33.33 },
      ],
    },
  },
  'exchange-deposit': { starter: 4500 },
};

function refund(payment: Payment, sale: Partial<Sale> = {}): ReturnType<typeof refundOf> {
  const usual: Sale = {
    policy,
    part: 'battery',
    price: 9999,
    day: '2026-03-31',
    isDepositHeld: false,
  };
  return refundOf(payment, { ...usual, ...sale });
}

describe('hand-worked examples', () => {
  test('the whole price', () => {
    expect(refund('price')).toEqual({
      currency: 'EUR',
      lines: [{ line: 'price', amount: 9999 }],
      total: 9999,
    });
  });

  test('15 % of 99.99 is kept back: 85 % is 84.9915, so 84.99 is paid and 15.00 kept', () => {
    expect(refund('return-window')).toMatchObject({
      lines: [{ amount: 9999 }, { line: 'restocking', percent: 15, amount: -1500 }],
      total: 8499,
    });
  });

  test('a fixed fee is kept back, and never more than was paid', () => {
    const fixed = (amount: number, price: number): number | undefined =>
      refund('return-window', {
        price,
        policy: { ...policy, 'return-window': { days: 30, restocking: { amount } } },
      })?.total;
    expect(fixed(500, 9999)).toBe(9499);
    expect(fixed(500, 300)).toBe(0);
  });

  test.each([
    // Bought on 31 March 2025: on 30 March 2026 eleven whole months, on 31 March twelve.
    ['2026-03-30', 11, 100, 9999],
    ['2026-03-31', 12, 66.67, 6666], // 66.6633 of 99.99 is 6666.3 cents
    ['2027-03-31', 24, 33.33, 3333], // 3332.7 cents
    ['2028-03-31', 36, 33.33, 3333], // the last day of the warranty
  ])('a battery on %s after %i months: %d percent', (day, months, percent, total) => {
    const back = refund('warranty', { sold: '2025-03-31', day });
    expect(back).toMatchObject({ lines: [{}, { line: 'used', months, percent }], total });
  });

  test('by the month: 7 of 36 months are used, 29 left; 9999 × 29 / 36 = 8054.75', () => {
    const byMonth: Policy = {
      ...policy,
      warranty: { battery: { months: 36, 'pro-rata': 'by-month' } },
    };
    const back = refund('warranty', { policy: byMonth, sold: '2025-08-15' });
    expect(back).toMatchObject({ lines: [{}, { months: 7, left: 29, of: 36 }], total: 8055 });
  });

  test('a half is rounded in the customer’s favour: 50 % of 0.99 is 0.495, so 0.50', () => {
    const half: Policy = { ...policy, 'return-window': { days: 30, restocking: { percent: 50 } } };
    expect(refund('return-window', { policy: half, price: 99 })?.total).toBe(50);
  });

  test('the deposit for the old unit comes on top where it is held', () => {
    expect(refund('price', { part: 'starter', isDepositHeld: true })).toMatchObject({
      lines: [{ line: 'price' }, { line: 'deposit', amount: 4500 }],
      total: 14_499,
    });
    expect(refund('deposit', { part: 'starter', isDepositHeld: true })?.total).toBe(4500);
  });
});

test('nothing is told that the terms or the sale do not give', () => {
  expect(refund('price', { price: undefined })).toBeUndefined();
  expect(refund('warranty')).toBeUndefined(); // the day of the sale is not known
  expect(refund('warranty', { sold: '2020-01-01' })).toBeUndefined(); // past the warranty
  // Said to be under warranty, where the shop's terms have none for batteries.
  const without = { ...policy, warranty: { starter: { months: 24 } } };
  expect(refund('warranty', { policy: without })).toBeUndefined();
  // A day after the return window of 30 days.
  const late = { sold: '2026-02-28', day: '2026-03-31' };
  expect(refund('return-window', late)).toBeUndefined();
  expect(refund('deposit')).toBeUndefined();
  expect(refund('deposit', { isDepositHeld: true })).toBeUndefined(); // none for batteries
});

test('the lines add up to the total, and nobody gets more than was paid', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1_000_000_000 }),
      fc.integer({ min: 0, max: 10_000 }),
      fc.constantFrom(...payments),
      (price, hundredths, payment) => {
        const terms: Policy = {
          ...policy,
          'return-window': { days: 30, restocking: { percent: hundredths / 100 } },
        };
        const back = refund(payment, { policy: terms, price, sold: '2025-01-31' });
        if (back === undefined) return;
        const sum = back.lines.reduce((before, { amount }) => before + amount, 0);
        expect(back.total).toBe(sum);
        expect(Number.isSafeInteger(back.total)).toBe(true);
        expect(back.total).toBeGreaterThanOrEqual(0);
        expect(back.total).toBeLessThanOrEqual(price);
      },
    ),
  );
});

describe('what an amount lacks is named', () => {
  const known = { policy, part: 'battery', price: 9999, sold: '2025-10-01' } as const;
  test.each([
    ['nothing', 'warranty', {}, []],
    ['the terms', 'warranty', { policy: null, price: undefined }, ['terms']],
    ['the price', 'price', { price: undefined }, ['price']],
    ['the day, by which the part of the price goes', 'warranty', { sold: undefined }, ['day']],
    ['no day, where the whole price is paid', 'price', { sold: undefined }, []],
    ['price and day', 'warranty', { price: undefined, sold: undefined }, ['price', 'day']],
    [
      'terms of warranty for the part',
      'warranty',
      { policy: { ...policy, warranty: {} } },
      ['warranty'],
    ],
  ] as const)('%s', (_, payment, changed, lacking) => {
    expect(lackingFor(payment, { ...known, ...changed })).toEqual(lacking);
  });
});
