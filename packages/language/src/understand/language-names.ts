import { normalise } from '../typed/normalise.ts';

/** A name by which people call a language, and its tag. */
interface LanguageName {
  readonly name: string;
  readonly locale: string;
}

/** Finds the language that a word names, in whatever language it does. */
export type LanguageNames = (word: string) => string | undefined;

/** The article and prepositions that Arabic writes on to a language's name. */
const arabicPrefix = /^[بل]?ال|^لل|^ب/;

/** A shorter word names no language. */
const shortestName = 4;

/** The share of a name that must be the same; the rest is its ending: "polski", "po polsku". */
const leastShared = 0.7;

/** The names of some languages in all of these languages, by `Intl.DisplayNames`. */
export function createLanguageNames(locales: readonly string[]): LanguageNames {
  const names = locales.flatMap((inLocale): LanguageName[] => {
    const display = new Intl.DisplayNames(inLocale, { type: 'language' });
    return locales.map((locale) => ({ name: plainName(display.of(locale) ?? locale), locale }));
  });
  return (word) => {
    const plain = plainName(word);
    if (plain.length < shortestName) return undefined;
    const shared = names.map(({ name, locale }) => ({ locale, share: sharedStart(name, plain) }));
    const best = shared.reduce((one, other) => (other.share > one.share ? other : one));
    return best.share >= leastShared ? best.locale : undefined;
  };
}

function plainName(name: string): string {
  return normalise(name).replace(arabicPrefix, '');
}

function sharedStart(one: string, other: string): number {
  const longer = Math.max(one.length, other.length);
  let same = 0;
  while (same < longer && one[same] === other[same]) same += 1;
  return same < shortestName ? 0 : same / longer;
}
