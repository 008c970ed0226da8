/**
 * Calendar days as ISO 8601 texts, `2026-01-31`, reckoned by the platform's own calendar. Such
 * texts of one length are compared as texts.
 */

const pattern = /^(\d{4})-(\d\d)-(\d\d)$/u;

/** True for a text that has the form of a day, whether the calendar has it or not. */
export function looksLikeDay(text: string): boolean {
  return pattern.test(text);
}

/** True for a text that has the form of a month: `2026-01`. */
export function looksLikeMonth(text: string): boolean {
  return /^\d{4}-\d\d$/u.test(text);
}

/** True for a day that the calendar has: `2026-02-28`, never `2026-02-30`. */
export function isDay(text: string): boolean {
  return looksLikeDay(text) && dayAt(...partsOf(text)) === text;
}

/**
 * The day on which an instant falls: in an IANA time zone, or as its own offset writes it.
 *
 * @example
 * dayOf('2026-01-31T23:30:00-05:00'); // '2026-01-31'
 * dayOf('2026-01-31T23:30:00-05:00', 'Europe/Berlin'); // '2026-02-01'
 */
export function dayOf(instant: string, timeZone?: string): string {
  if (timeZone === undefined) return instant.slice(0, 10);
  const parts = new Intl.DateTimeFormat('en', {
    timeZone,
    calendar: 'iso8601',
    numberingSystem: 'latn',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(new Date(instant));
  const part = (type: string): string => parts.find((one) => one.type === type)?.value ?? '';
  return `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`;
}

/** The day so many days later. */
export function daysLater(day: string, days: number): string {
  const [year, month, date] = partsOf(day);
  return dayAt(year, month, date + days);
}

/** The same day so many months later, or the last of that month where it is shorter. */
export function monthsLater(day: string, months: number): string {
  const [year, month, date] = partsOf(day);
  const last = Number(dayAt(year, month + months + 1, 0).slice(8));
  return dayAt(year, month + months, Math.min(date, last));
}

/** How many whole months lie between two days, 0 where the second is the earlier one. */
export function wholeMonths(from: string, to: string): number {
  const [year, month] = partsOf(from);
  const [toYear, toMonth] = partsOf(to);
  const months = (toYear - year) * 12 + toMonth - month;
  return Math.max(0, monthsLater(from, months) > to ? months - 1 : months);
}

function partsOf(day: string): [year: number, month: number, date: number] {
  const [, year, month, date] = pattern.exec(day) ?? [];
  return [Number(year), Number(month) - 1, Number(date)];
}

/** The day of a year, a month from 0 and a date, each of which may run over. */
function dayAt(year: number, month: number, date: number): string {
  const at = new Date(0);
  at.setUTCFullYear(year, month, date);
  return at.toISOString().slice(0, 10);
}
