import { describe, expect, test } from 'vitest';
import { dayOf, daysLater, isDay, monthsLater, wholeMonths } from './calendar.ts';

describe('days of the calendar', () => {
  test.each(['2026-01-31', '2024-02-29', '2000-02-29', '1999-12-31'])('%s is one', (day) => {
    expect(isDay(day)).toBe(true);
  });

  // 2100 and 1900 are no leap years: the Gregorian calendar leaves three of four centuries out.
  test.each(['2026-02-29', '2100-02-29', '2026-04-31', '2026-13-01', '2026-00-10', '2026-1-1', ''])(
    '%j is none',
    (day) => {
      expect(isDay(day)).toBe(false);
    },
  );
});

describe('the day of an instant', () => {
  test.each([
    ['2026-01-31T23:30:00-05:00', undefined, '2026-01-31'],
    ['2026-01-31T23:30:00-05:00', 'America/New_York', '2026-01-31'],
    ['2026-01-31T23:30:00-05:00', 'Europe/Berlin', '2026-02-01'],
    ['2026-01-01T08:00:00Z', 'Pacific/Kiritimati', '2026-01-01'],
    ['2026-01-01T12:00:00Z', 'Pacific/Kiritimati', '2026-01-02'],
    ['2026-01-01T08:00:00Z', 'Pacific/Pago_Pago', '2025-12-31'],
    // An hour after the clocks of Berlin went forward on 29 March 2026.
    ['2026-03-29T02:00:00Z', 'Europe/Berlin', '2026-03-29'],
  ])('%s in %s is %s', (instant, zone, day) => {
    expect(dayOf(instant, zone)).toBe(day);
  });
});

describe('later days', () => {
  test.each([
    ['2026-01-31', 1, '2026-02-28'],
    ['2024-01-31', 1, '2024-02-29'],
    ['2024-02-29', 12, '2025-02-28'],
    ['2026-08-31', 6, '2027-02-28'],
    ['2026-12-15', 1, '2027-01-15'],
    ['2026-05-31', 0, '2026-05-31'],
  ])('%s and %i months is %s: a month that is shorter ends sooner', (day, months, later) => {
    expect(monthsLater(day, months)).toBe(later);
  });

  test.each([
    ['2026-02-27', 2, '2026-03-01'],
    ['2024-02-27', 2, '2024-02-29'],
    ['2026-12-31', 1, '2027-01-01'],
    // Clocks go back on 25 October 2026 in Europe: a day has 25 hours there, and is one day.
    ['2026-10-24', 2, '2026-10-26'],
  ])('%s and %i days is %s', (day, days, later) => {
    expect(daysLater(day, days)).toBe(later);
  });

  test.each([
    ['2026-01-31', '2026-02-28', 1],
    ['2026-01-31', '2026-02-27', 0],
    ['2026-01-15', '2027-01-14', 11],
    ['2026-01-15', '2027-01-15', 12],
    ['2026-05-01', '2026-04-01', 0],
  ])('between %s and %s lie %i whole months', (from, to, months) => {
    expect(wholeMonths(from, to)).toBe(months);
  });
});
