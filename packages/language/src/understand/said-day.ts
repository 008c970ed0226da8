import { isDay, type AnswerInput } from '@keyturn/core';
import { findPhrase } from '../typed/heard.ts';
import { normalise } from '../typed/normalise.ts';
import { readTokens } from '../typed/read-tokens.ts';
import { daysBack } from './day-back.ts';
import type { CheckPhrases } from './lexicon.ts';
import { type Listener, type Turn, input, isAsked, unclear } from './turn.ts';
import type { Understood } from './understood.ts';

/**
 * A day: as ISO 8601 has it, in figures in the order of the language, with its month in words, or by
 * how far it lies back; to the question for it also a month, which may lie in one term. Without its
 * year, or told so, it is a day only to the question for it, or where the text names that: of
 * anything else a person may speak so. Whether the calendar has it is not judged here. It is the
 * answer to the one check of the flow that asks for a day, and its correction where that was answered
 * before.
 */
export function readDay(turn: Turn): Understood | undefined {
  const check = checkOfDay(turn);
  if (check === undefined) return undefined;
  const { listener, text, hearing } = turn;
  const plain = normalise(text, listener.lexicon.words.spelling);
  const found =
    isoDay(plain) ??
    figureDay(plain, listener.locale) ??
    namedDay(plain, listener) ??
    (isSpokenOf(check, turn) ? passedDay(plain, turn) : undefined) ??
    (check === turn.inHand && isAsked(turn) ? passedMonth(plain, check, turn) : undefined);
  if (found === undefined)
    return isPartOfDay(plain, check, turn) ? unclear(turn, noDay(turn)) : undefined;
  if (typeof found !== 'string') return eitherDay(check, found, turn);
  const answers: readonly AnswerInput[] = [{ check: check.id, value: [found] }];
  const isInHand = check === turn.inHand && isAsked(turn);
  return !isInHand && hearing.answered.includes(check.id)
    ? input([{ type: 'correction', answers }], 'correction')
    : input([{ type: 'answers', answers }]);
}

/** What is said of a text that is no day: where none would be taken, none is asked for. */
export function noDay({ hearing }: Pick<Turn, 'hearing'>): 'not-a-day' | 'unknown-choice' {
  return hearing.takesDays === false ? 'unknown-choice' : 'not-a-day';
}

function checkOfDay({ inHand, listener, hearing }: Turn): CheckPhrases | undefined {
  if (hearing.awaiting === 'confirm' || hearing.awaiting === 'resume') return undefined;
  if (inHand?.check.form.kind === 'date') return inHand;
  const [only, more] = [...listener.lexicon.checks.values()].filter(
    ({ check }) => check.form.kind === 'date',
  );
  return more === undefined ? only : undefined;
}

const iso = /(?<!\d)(\d{4})[-/.](\d\d?)[-/.](\d\d?)(?!\d)/u;

function isoDay(text: string): string | undefined {
  const [, year, month, date] = iso.exec(text) ?? [];
  return dayOf(year, month, date);
}

/** Two days that a text may be: which figure is the month nobody can tell. */
type Either = readonly [one: string, other: string];

/** Asks which of two days is meant. */
function eitherDay({ id }: CheckPhrases, days: Either, { listener }: Turn): Understood {
  const offers = days.map((day) => ({ check: id, value: day, label: listener.formatDay(day) }));
  return { type: 'offers', offers };
}

/** True where the text answers the check that asks for a day, or names what it asks. */
function isSpokenOf(check: CheckPhrases, { inHand, literal }: Turn): boolean {
  return check === inHand || check.names.some((name) => findPhrase(literal, name) >= 0);
}

/**
 * A month without its day, or less than that, said of the sale: "bought in March", "last winter". It
 * is no day, and no term either.
 */
function isPartOfDay(text: string, check: CheckPhrases, turn: Turn): boolean {
  const { locale, lexicon } = turn.listener;
  const isMonth = monthIn(text, turn.listener) >= 0;
  return isSpokenOf(check, turn) && (isMonth || daysBack(locale, lexicon.words).isLoose(text));
}

/** The last day that a text may mean: "3 March", "yesterday", "last Tuesday". */
function passedDay(text: string, { hearing: { today }, listener }: Turn): string | undefined {
  if (today === undefined) return undefined;
  const yearless = yearlessDay(text, today, listener);
  if (yearless !== undefined) return yearless;
  const { locale, lexicon } = listener;
  return daysBack(locale, lexicon.words).dayIn(text, today);
}

/** "3 March", "March 3rd", "der 3. März": the last one that has passed. */
function yearlessDay(text: string, today: string, listener: Listener): string | undefined {
  const month = monthIn(text, listener);
  const [date, more] = text.match(/(?<![\d.,])\d\d?(?!\d|[.,]\d)/gu) ?? [];
  if (month < 0 || date === undefined || more !== undefined) return undefined;
  const year = Number(today.slice(0, 4));
  // The 29th of February may lie some years back.
  return [0, 1, 2, 3, 4]
    .map((back) => dayOf(String(year - back), String(month + 1), date))
    .find((day) => day !== undefined && isDay(day) && day <= today);
}

/** "January", "last March", "March 2025", where that is all that is said: the last one that has begun. */
function passedMonth(text: string, check: CheckPhrases, turn: Turn): string | undefined {
  const { hearing, listener } = turn;
  const { today } = hearing;
  const month = monthIn(text, listener);
  const [year, more] = text.match(/\d+/gu) ?? [];
  const isAlone = wordsBesideDay(text, check, listener) === '';
  if (today === undefined || month < 0 || more !== undefined || !isAlone) return undefined;
  if (year !== undefined) return /^\d{4}$/u.test(year) ? monthOf(Number(year), month) : undefined;
  const thisYear = Number(today.slice(0, 4));
  const last = monthOf(thisYear, month);
  return last <= today.slice(0, last.length) ? last : monthOf(thisYear - 1, month);
}

/** ISO 8601, of a month from 0. */
function monthOf(year: number, month: number): string {
  return `${String(year)}-${String(month + 1).padStart(2, '0')}`;
}

const figures = /(?<!\d)(\d\d?)\s?([./-])\s?(\d\d?)\s?\2\s?(\d{4}|\d\d)(?!\d)/u;

/** "20.12.2025", "20/12/2025"; both where either may be the month and the region is not told. */
function figureDay(text: string, locale: string): string | Either | undefined {
  const [, first, mark, second, year] = figures.exec(text) ?? [];
  if (first === undefined || second === undefined) return undefined;
  const order = new Intl.Locale(locale);
  const monthFirst = dayOf(year, first, second);
  const dateFirst = dayOf(year, second, first);
  if (mark === '.' || Number(first) > 12 || order.language !== 'en') return dateFirst;
  if (Number(second) > 12 || order.region === 'US') return monthFirst;
  if (order.region !== undefined || first === second) return dateFirst;
  return monthFirst === undefined || dateFirst === undefined ? undefined : [monthFirst, dateFirst];
}

/** "20 December 2025", "Dec 20th, 2025". */
function namedDay(text: string, listener: Listener): string | undefined {
  const month = monthIn(text, listener);
  const numbers: readonly string[] = text.match(/\d+/gu) ?? [];
  const year = numbers.find((number) => number.length === 4);
  const date = numbers.find((number) => number.length < 3);
  return month < 0 ? undefined : dayOf(year, String(month + 1), date);
}

/** The month that a text names, from 0; below 0 where it names none. */
function monthIn(text: string, { locale, lexicon }: Listener): number {
  const { spelling } = lexicon.words;
  const words: readonly string[] = text.match(/[\p{L}\p{M}]+/gu) ?? [];
  return monthNames(locale).findIndex((names) =>
    names.some((name) => words.includes(normalise(name, spelling).replace(/\.$/u, ''))),
  );
}

/** The words of a text that neither are of a day in it nor name the check that asks for one. */
export function wordsBesideDay(text: string, { names }: CheckPhrases, listener: Listener): string {
  const { reader, words } = listener.lexicon;
  const named = new Set(names.flat());
  const back = daysBack(listener.locale, words);
  return readTokens(text, words)
    .flatMap((token) => (token.kind === 'word' ? [token.text] : []))
    .filter((word) => monthIn(word, listener) < 0 && !back.isOfDay(word))
    .filter((word) => !reader.literally(word).some((term) => named.has(term)))
    .join(' ');
}

/** The twelve months, each as it stands in a date and alone, whole and cut short. */
function monthNames(locale: string): readonly (readonly string[])[] {
  const ways: readonly Intl.DateTimeFormatOptions[] = [
    { month: 'long' },
    { month: 'short' },
    { month: 'long', day: 'numeric' },
    { month: 'short', day: 'numeric' },
  ];
  const formats = ways.map((way) => new Intl.DateTimeFormat(locale, { ...way, timeZone: 'UTC' }));
  return Array.from({ length: 12 }, (_, month) =>
    formats.map(
      (format) =>
        format
          .formatToParts(new Date(Date.UTC(2026, month, 1)))
          .find(({ type }) => type === 'month')?.value ?? '',
    ),
  );
}

function dayOf(year?: string, month?: string, date?: string): string | undefined {
  if (year === undefined || month === undefined || date === undefined) return undefined;
  const whole = year.length === 2 ? `20${year}` : year;
  return `${whole}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
}
