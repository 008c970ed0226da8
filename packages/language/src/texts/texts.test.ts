import { describe, expect, test } from 'vitest';
import { LanguageError } from '../language-error.ts';
import { findLocale, localeTags } from '../locale.ts';
import { createSay } from './create-say.ts';
import { en } from './en.ts';
import type { GeneralTexts } from './text-key.ts';

const plural = /_(?:zero|one|two|few|many|other)$/;

function flatten(texts: GeneralTexts): Record<string, string> {
  return Object.fromEntries(
    Object.entries(texts).flatMap(([group, names]) =>
      Object.entries(names).map(([name, text]) => [`${group}.${name}`, text]),
    ),
  );
}

function placeholders(text: string): string[] {
  return [...text.matchAll(/\{\{(\w+)\}\}/g)].map((match) => match[1] ?? '').sort();
}

const english = flatten(en);
const bases = new Set(Object.keys(english).map((key) => key.replace(plural, '')));
const plurals = new Set(
  Object.keys(english)
    .filter((key) => plural.test(key))
    .map((key) => key.replace(plural, '')),
);

describe.each(localeTags)('the general texts in %s', (locale) => {
  const texts = flatten(findLocale(locale).texts);
  const { pluralCategories } = new Intl.PluralRules(locale).resolvedOptions();

  test('are those of the English ones, no more and no fewer', () => {
    expect(new Set(Object.keys(texts).map((key) => key.replace(plural, '')))).toEqual(bases);
  });

  test.each([...plurals])('%s has every plural category of the language', (base) => {
    for (const category of pluralCategories) {
      expect(texts).toHaveProperty([`${base}_${category}`]);
    }
  });

  test('have the placeholders of the English ones', () => {
    for (const [key, text] of Object.entries(texts)) {
      const model = english[key] ?? english[`${key.replace(plural, '')}_other`] ?? '';
      const missing = placeholders(model).filter((name) => name !== 'count');
      expect(
        placeholders(text).filter((name) => name !== 'count'),
        key,
      ).toEqual(missing);
    }
  });

  test.each([0, 1, 2, 5, 21])('%d takes the plural of Intl', (count) => {
    const say = createSay(locale, findLocale(locale).texts);
    const category = new Intl.PluralRules(locale).select(count);
    const text = texts[`ranking.heading_${category}`] ?? '';
    expect(say('ranking.heading', { count })).toBe(text.replace('{{count}}', String(count)));
  });
});

describe('a text that is not there', () => {
  const say = createSay('en', en);

  test('does not compile, and throws its key', () => {
    // @ts-expect-error: there is no such text
    expect(() => say('verdict.nowhere')).toThrow(
      new LanguageError('text-missing', 'verdict.nowhere'),
    );
  });

  test('throws where the plural that is wanted is missing', () => {
    const broken = createSay('en', { ranking: { heading_one: 'x' } } as never);
    expect(broken('ranking.heading', { count: 1 })).toBe('x');
    expect(() => broken('ranking.heading', { count: 2 })).toThrow(LanguageError);
  });

  test('throws where a placeholder is not filled, and does not compile', () => {
    // @ts-expect-error: the name is missing
    expect(() => say('verdict.title', {})).toThrow(
      new LanguageError('placeholder-missing', 'name'),
    );
    // @ts-expect-error: all values are missing
    expect(() => say('verdict.title')).toThrow(LanguageError);
    // @ts-expect-error: a plural needs its count
    expect(() => say('setAside.checks', { names: 'x' })).toThrow(LanguageError);
  });

  test('values are put in as they are, and never read as a text', () => {
    expect(say('verdict.title', { name: '<b> & {{share}} $t(word.danger)' })).toBe(
      'At fault: <b> & {{share}} $t(word.danger)',
    );
  });
});

test('a tag with a region has the texts of its language; an unknown one is thrown', () => {
  expect(findLocale('en-GB')).toBe(findLocale('en'));
  expect(() => findLocale('xx')).toThrow(new LanguageError('locale-unknown', 'xx'));
});
