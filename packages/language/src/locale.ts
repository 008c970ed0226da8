import { LanguageError } from './language-error.ts';
import type { Locale } from './locale-names.ts';
import { ar } from './locales/ar.ts';
import { de } from './locales/de.ts';
import { en } from './locales/en.ts';
import { es } from './locales/es.ts';
import { fr } from './locales/fr.ts';
import { pl } from './locales/pl.ts';
import type { GeneralTexts } from './texts/text-key.ts';
import { dangerTeller } from './understand/told-danger.ts';

const locales: Readonly<Record<string, Locale>> = Object.fromEntries(
  Object.entries({ en, es, de, fr, pl, ar }).map(([tag, { texts, words }]) => [
    tag,
    { texts, words: { ...words, readDangers: dangerTeller } },
  ]),
);

/** The languages that there are, by BCP 47 tag. */
export const localeTags: readonly string[] = Object.keys(locales);

/** The language of a BCP 47 tag: its own, or that of its language alone. Throws `locale-unknown`. */
export function findLocale(tag: string): Locale {
  const base = tag.split('-', 1)[0] ?? tag;
  const key = [tag, base].find((known) => Object.hasOwn(locales, known));
  const locale = key === undefined ? undefined : locales[key];
  if (locale === undefined) throw new LanguageError('locale-unknown', tag);
  return locale;
}

/** The general texts of a language. Throws `locale-unknown`. */
export function generalTexts(tag: string): GeneralTexts {
  return findLocale(tag).texts;
}
