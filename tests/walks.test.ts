/**
 * Walks: a new user who writes only free text, never a number key, comes to the right verdict. The
 * lines were typed as they came to mind, before it was known how they are heard, and none was put
 * into other words afterwards.
 */
import { existsSync } from 'node:fs';
import { localeTags } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { noStart } from './support/no-start.ts';
import { walk, walksOf, type Exchange, type Walk, type Walked } from './support/walks.ts';

const { checks } = noStart.chart.flow;

const languages = localeTags
  .filter((locale) => existsSync(new URL(`walks/${locale}.json`, import.meta.url)))
  .map((locale) => ({ locale, walks: walksOf(locale) }));

const ends = new Map<Walk, Walked>();

/** A walk's end; each is walked once. */
function endOf(one: Walk, locale: string): Walked {
  const known = ends.get(one);
  if (known !== undefined) return known;
  const end = walk(one, locale);
  ends.set(one, end);
  return end;
}

const exchangesOf = (walks: readonly Walk[], locale: string): readonly Exchange[] =>
  walks.flatMap((one) => endOf(one, locale).exchanges);

describe.each(languages)('in $locale', ({ locale, walks }) => {
  test('ten vehicles are walked through in free text alone', () => {
    expect(new Set(walks.map(({ card }) => card)).size).toBeGreaterThanOrEqual(10);
    const keys = walks
      .flatMap(({ lines }) => lines)
      .filter(({ asked }) => checks[asked]?.form.kind !== 'reading')
      .filter(({ typed }) => /^\s*[a-z1-9]\s*$/u.test(typed));
    expect(keys).toEqual([]);
  });

  test.each(walks)(
    'of $card nothing is taken that was not meant, and nothing forbidden asked',
    (one) => {
      const { card, exchanges } = endOf(one, locale);
      const wrong = exchanges.filter(({ line, outcome }) => outcome === 'wrong' && !line?.misheard);
      expect(wrong.map(({ asked, line, wrong: taken }) => ({ asked, line, taken }))).toEqual([]);
      expect(exchanges.filter(({ asked }) => card.forbid.includes(asked))).toEqual([]);
    },
  );

  test.each(walks.filter(({ short }) => short === undefined))(
    '$card comes to its verdict',
    (one) => {
      const { card, verdict } = endOf(one, locale);
      if (card.accept.fault) expect(card.accept.fault).toContain(verdict.fault);
      if (card.accept.remedy) expect(card.accept.remedy).toContain(verdict.remedy);
    },
  );

  test('the walks have words for what is asked', () => {
    const said = exchangesOf(walks, locale);
    expect(said.filter(({ line }) => line === null).length).toBeLessThan(said.length / 10);
  });
});

test('ten in each language come to the right verdict', () => {
  const rows = languages.map(({ locale, walks }) => {
    const all = exchangesOf(walks, locale);
    const count = (outcome: Exchange['outcome']): number =>
      all.filter((one) => one.line !== null && one.outcome === outcome).length;
    const unsaid = all.filter(({ line }) => line === null).length;
    return {
      locale,
      walks: walks.length,
      right: walks.filter((one) => isRight(endOf(one, locale))).length,
      typed: all.length - unsaid,
      understood: count('understood'),
      'asked back': count('asked back'),
      wrong: count('wrong'),
      'not typed': unsaid,
    };
  });
  const table = [Object.keys(rows[0] ?? {}), ...rows.map((row) => Object.values(row))];
  process.stdout.write(`${table.map((row) => row.map(cell).join('')).join('\n')}\n`);
  for (const { locale, right } of rows) expect(right, locale).toBeGreaterThanOrEqual(10);
});

function isRight({ card, verdict }: Walked): boolean {
  const { fault, remedy } = card.accept;
  return (fault?.includes(verdict.fault) ?? true) && (remedy?.includes(verdict.remedy) ?? true);
}

function cell(value: string | number): string {
  return String(value).padStart(12);
}
