import { LanguageError } from './language-error.ts';
import { ar } from './texts/ar.ts';
import { de } from './texts/de.ts';
import { en } from './texts/en.ts';
import { es } from './texts/es.ts';
import { fr } from './texts/fr.ts';
import { pl } from './texts/pl.ts';
import type { GeneralTexts } from './texts/text-key.ts';
import { arWords } from './words/ar.ts';
import { deWords } from './words/de.ts';
import { enWords } from './words/en.ts';
import { esWords } from './words/es.ts';
import { frWords } from './words/fr.ts';
import { plWords } from './words/pl.ts';
import type { Words } from './words/words.ts';

/** What a language consists of. */
export interface Locale {
  /** The language's name in itself. */
  readonly name: string;
  readonly texts: GeneralTexts;
  readonly words: Words;
}

const locales: Readonly<Record<string, Locale>> = {
  en: { name: 'English', texts: en, words: enWords },
  es: { name: 'Español', texts: es, words: esWords },
  de: { name: 'Deutsch', texts: de, words: deWords },
  fr: { name: 'Français', texts: fr, words: frWords },
  pl: { name: 'Polski', texts: pl, words: plWords },
  ar: { name: 'العربية', texts: ar, words: arWords },
};

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
