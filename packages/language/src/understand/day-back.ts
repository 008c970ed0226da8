/**
 * A day that is told by how far it lies back: "yesterday", "last Tuesday", "two weeks ago", and what
 * tells of none: "last winter".
 */
import { daysLater, monthsLater } from '@keyturn/core';
import { normalise } from '../typed/normalise.ts';
import { figureWordsOf, type Words } from '../words/words.ts';

/** The words of a language for that, as they are spelled once they are typed. */
export interface DaysBack {
  /** The day that a text means on another day, both ISO 8601; undefined where it tells none so. */
  readonly dayIn: (text: string, today: string) => string | undefined;
  /** True where a text says of a time that has passed no more than its season, week, month or year. */
  readonly isLoose: (text: string) => boolean;
  /** True for a word that is of a day in such a text. */
  readonly isOfDay: (word: string) => boolean;
}

/** Words of a language, by BCP 47 tag, for days told by how far they lie back. */
export function daysBack(locale: string, words: Words): DaysBack {
  const spelled = (said: string): string => normalise(said, words.spelling);
  const { days } = words;
  const phrases = Object.entries(days.back)
    .map(([said, back]): [string, number] => [spelled(said), back])
    // "The day before yesterday" holds "yesterday".
    .toSorted(([one], [other]) => other.length - one.length);
  const units = new Map<string, number>([
    ...days.day.map((said) => [spelled(said), 1] as const),
    ...days.week.map((said) => [spelled(said), 7] as const),
  ]);
  const months = new Map<string, number>([
    ...(words.units['mo'] ?? []).map((said) => [spelled(said), 1] as const),
    ...(words.units['a'] ?? []).map((said) => [spelled(said), 12] as const),
  ]);
  const one = new Set([days.day[0], days.week[0]].map((said) => spelled(said ?? '')));
  const seasons = days.seasons.map(spelled);
  const nearly = [...words.boundsOnly, ...words.vague, ...figureWordsOf(words).roughly].map(
    spelled,
  );
  const pairs = new Map(
    Object.entries(words.spelling?.twoOf ?? {}).flatMap(([two, one]) => {
      const unit = units.get(spelled(one));
      return unit === undefined ? [] : [[spelled(two), 2 * unit] as const];
    }),
  );
  const ago = days.ago.map(spelled);
  const last = new Set(days.last.map(spelled));
  const weekdays = new Map<string, number>([
    ...weekdayNames(locale).map((name, weekday) => [spelled(name), weekday] as const),
    ...Object.entries(days.weekdays).map(([said, weekday]) => [spelled(said), weekday] as const),
  ]);
  const cardinals = new Map(
    Object.entries(words.cardinals).map(([said, value]) => [spelled(said), value]),
  );
  const ofPhrases = new Set(
    [...phrases.map(([said]) => said), ...ago].flatMap((said) => said.split(' ')),
  );

  const countedBack = (said: readonly string[]): number | undefined => {
    if (!ago.some((one) => isIn(one, said))) return undefined;
    const pair = said.map((word) => pairs.get(word)).find((back) => back !== undefined);
    if (pair !== undefined) return pair;
    const at = said.findIndex((word) => units.has(word));
    const unit = units.get(said[at] ?? '');
    if (unit === undefined) return undefined;
    // "A day ago" is one, "some days ago" is none that anybody could name.
    const count = countIn(said[at - 1]) ?? (one.has(said[at] ?? '') ? 1 : undefined);
    return count === undefined ? undefined : count * unit;
  };

  /** So many months or years, said as a whole number and nothing beside it: "two years ago". */
  const monthsBack = (said: readonly string[]): number | undefined => {
    if (!ago.some((phrase) => isIn(phrase, said))) return undefined;
    const counts = said.filter((word) => countIn(word) !== undefined);
    const at = said.findIndex((word) => months.has(word));
    const count = countIn(said[at - 1]);
    const isExact = counts.length === 1 && !nearly.some((phrase) => isIn(phrase, said));
    return count === undefined || !isExact ? undefined : count * (months.get(said[at] ?? '') ?? 0);
  };

  const countIn = (word = ''): number | undefined => {
    const count = /^\d+$/u.test(word) ? Number(word) : cardinals.get(word);
    return Number.isInteger(count) ? count : undefined;
  };

  const toWeekday = (said: readonly string[], today: string): number | undefined => {
    const weekday = said.map((word) => weekdays.get(word)).find((one) => one !== undefined);
    if (weekday === undefined) return undefined;
    const now = new Date(`${today}T00:00:00Z`).getUTCDay();
    const isLastWeek = said.some(
      (word, at) =>
        units.get(word) === 7 && (last.has(said[at - 1] ?? '') || last.has(said[at + 1] ?? '')),
    );
    // A week begins on its Monday, ISO 8601.
    if (isLastWeek) return ((now + 6) % 7) + 7 - ((weekday + 6) % 7);
    return (now - weekday + 7) % 7 || 7;
  };

  return {
    dayIn: (text, today) => {
      const said = wordsIn(text);
      const phrase = phrases.find(([known]) => isIn(known, said));
      const back = phrase?.[1] ?? countedBack(said) ?? toWeekday(said, today);
      if (back !== undefined) return daysLater(today, -back);
      const months = monthsBack(said);
      return months === undefined ? undefined : monthsLater(today, -months);
    },
    isLoose: (text) => {
      const said = wordsIn(text);
      const isBack = ago.some((phrase) => isIn(phrase, said));
      return (
        seasons.some((phrase) => isIn(phrase, said)) ||
        said.some((word, at) => {
          const isLast = last.has(said[at - 1] ?? '') || last.has(said[at + 1] ?? '');
          const isOfMonths = months.has(word) && (isBack || isLast);
          return isOfMonths || (isBack && units.get(word) === 7) || /^(?:19|20)\d\d$/u.test(word);
        })
      );
    },
    isOfDay: (word) =>
      [last, ofPhrases].some((known) => known.has(word)) ||
      [units, pairs, weekdays, cardinals].some((known) => known.has(word)),
  };
}

function wordsIn(text: string): readonly string[] {
  return text.match(/[\p{L}\p{M}]+|\d+/gu) ?? [];
}

/** True where the words of a phrase follow each other in a text. */
function isIn(phrase: string, said: readonly string[]): boolean {
  return ` ${said.join(' ')} `.includes(` ${phrase} `);
}

/** The days of a week, Sunday first. */
function weekdayNames(locale: string): readonly string[] {
  const format = new Intl.DateTimeFormat(locale, { weekday: 'long', timeZone: 'UTC' });
  // The fourth of January 2026 is a Sunday.
  return Array.from({ length: 7 }, (_, day) => format.format(new Date(Date.UTC(2026, 0, 4 + day))));
}
