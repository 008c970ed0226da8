/**
 * Walks: a new user who writes only free text, never a number key, comes to the right verdict. The
 * lines were typed as they came to mind, before it was known how they are heard, and none was put
 * into other words afterwards.
 */
import { existsSync } from 'node:fs';
import { localeTags } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { walk, walksOf, type Exchange, type Walked } from './support/walks.ts';

const walked = localeTags
  .filter((locale) => existsSync(new URL(`walks/${locale}.json`, import.meta.url)))
  .map((locale) => {
    const walks = walksOf(locale);
    return { locale, walks, ends: walks.map((one) => [one.card, walk(one, locale)] as const) };
  });

describe.each(walked)('in $locale', ({ walks, ends }) => {
  test('ten vehicles are walked through in free text alone', () => {
    expect(new Set(walks.map(({ card }) => card)).size).toBeGreaterThanOrEqual(10);
    const keys = walks.flatMap(({ lines }) => lines.map(({ typed }) => typed.trim()));
    expect(keys.filter((typed) => /^[\p{L}1-9]$/u.test(typed))).toEqual([]);
  });

  test.each(ends)('%s comes to the verdict of its card', (_, { card, verdict }) => {
    const { fault, remedy, strength } = card.accept;
    if (fault) expect(fault).toContain(verdict.fault);
    if (remedy) expect(remedy).toContain(verdict.remedy);
    if (strength) expect(strength).toContain(verdict.strength);
  });

  test.each(ends)('in %s nothing is taken that was not meant, and nothing forbidden', (_, end) => {
    const { card, exchanges } = end;
    const wrong = exchanges.filter(({ line, outcome }) => outcome === 'wrong' && !line?.misheard);
    expect(wrong.map(({ asked, line, wrong: taken }) => ({ asked, line, taken }))).toEqual([]);
    expect(exchanges.filter(({ asked }) => card.forbid.includes(asked))).toEqual([]);
  });

  test('what is asked is what the walks have words for', () => {
    const said = ends.flatMap(([, { exchanges }]) => exchanges);
    expect(said.filter(({ line }) => line === null).length).toBeLessThan(said.length / 10);
  });
});

test('how it went', () => {
  const rows = walked.map(({ locale, ends }) => {
    const all = ends.flatMap(([, { exchanges }]) => exchanges);
    const count = (...outcomes: readonly Exchange['outcome'][]) =>
      all.filter(({ line, outcome }) => line !== null && outcomes.includes(outcome)).length;
    return [
      locale,
      ends.filter(([, end]) => isRight(end)).length,
      count('understood', 'asked back', 'wrong'),
      count('understood'),
      count('asked back'),
      count('wrong'),
      all.length - count('understood', 'asked back', 'wrong'),
    ];
  });
  const head = ['', 'right', 'typed', 'understood', 'asked back', 'wrong', 'not typed'];
  process.stdout.write(`${[head, ...rows].map((row) => row.map(cell).join('')).join('\n')}\n`);
  for (const row of rows) expect(row[1]).toBeGreaterThanOrEqual(10);
});

function isRight({ card, verdict }: Walked): boolean {
  const { fault, remedy } = card.accept;
  return (fault?.includes(verdict.fault) ?? true) && (remedy?.includes(verdict.remedy) ?? true);
}

function cell(value: string | number): string {
  return String(value).padStart(12);
}
