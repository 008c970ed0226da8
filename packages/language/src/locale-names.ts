import type { GeneralTexts } from './texts/text-key.ts';
import type { Words } from './words/words.ts';

/** What a language consists of. */
export interface Locale {
  readonly texts: GeneralTexts;
  readonly words: Words;
}

/** The languages that there are, by BCP 47 tag, each by its name in itself. */
export const localeNames: Readonly<Record<string, string>> = {
  en: 'English',
  es: 'Español',
  de: 'Deutsch',
  fr: 'Français',
  pl: 'Polski',
  ar: 'العربية',
};
