import { once } from '../once.ts';
import { normalise } from '../typed/normalise.ts';
import { isNear } from '../typed/typing-mistake.ts';

/** A name by which people call a language, and its tag. */
interface LanguageName {
  readonly name: string;
  readonly locale: string;
}

/** Finds the BCP 47 tag of the language that a word names, in whatever language it does. */
export type LanguageNames = (word: string) => string | undefined;

/** The article and prepositions that Arabic writes on to a language's name. */
const arabicPrefix = /^[بل]?ال|^لل|^ب/;

/** A shorter word names no language. */
const shortestName = 4;

/** The share of a name that must be the same; the rest is its ending: "polski", "po polsku". */
const leastShared = 0.7;

/** Of a language that we do not speak nearly all must be: "fine" is no "finés"; of a long word a little less. */
const leastSharedOfOthers = 0.85;
const leastSharedOfLong = 0.8;
const longWord = 9;

/** Languages that are asked for, whether we speak them or not. */
const askedFor = [
  ...['bg', 'bn', 'ca', 'cs', 'da', 'el', 'et', 'fa', 'fi', 'gl', 'he', 'hi', 'hr', 'hu', 'it'],
  ...['ja', 'ko', 'ku', 'lt', 'lv', 'nl', 'no', 'pt', 'ro', 'ru', 'sk', 'sl', 'so', 'sq', 'sr'],
  ...['sv', 'sw', 'ta', 'th', 'tl', 'tr', 'uk', 'ur', 'vi', 'zh'],
];

/** The names of these languages and of others, in all of these and in themselves, by `Intl.DisplayNames`. */
export function createLanguageNames(locales: readonly string[]): LanguageNames {
  const others = askedFor.filter((tag) => !locales.includes(tag));
  const nameIn = (inLocale: string, locale: string): LanguageName => {
    const display = new Intl.DisplayNames(inLocale, { type: 'language' });
    return { name: plainName(display.of(locale) ?? locale), locale };
  };
  // Hundreds of names take a while: a program that hears nobody makes none.
  const allNames = once(() =>
    [
      ...locales.flatMap((inLocale) =>
        [...locales, ...others].map((locale) => nameIn(inLocale, locale)),
      ),
      ...others.map((locale) => nameIn(locale, locale)),
    ].filter(({ name }) => name.length >= shortestName),
  );
  const find = (word: string): string | undefined => {
    const plain = plainName(word);
    if (plain.length < shortestName) return undefined;
    const names = allNames();
    const shared = names.map(({ name, locale }) => ({ locale, share: sharedStart(name, plain) }));
    const best = shared.reduce((one, other) => (other.share > one.share ? other : one));
    const ofOthers = plain.length < longWord ? leastSharedOfOthers : leastSharedOfLong;
    const least = locales.includes(best.locale) ? leastShared : ofOthers;
    if (best.share >= least) return best.locale;
    // "Person" is no mistyped Persian: only a language that there is may be mistyped.
    return names.find(({ name, locale }) => locales.includes(locale) && isNear(name, plain))
      ?.locale;
  };
  const kept = new Map<string, string | undefined>();
  return (word) => {
    if (kept.has(word)) return kept.get(word);
    if (kept.size >= mostKept) kept.clear();
    const found = find(word);
    kept.set(word, found);
    return found;
  };
}

/** So many words are remembered. */
const mostKept = 2000;

function plainName(name: string): string {
  return normalise(name).replace(arabicPrefix, '');
}

function sharedStart(one: string, other: string): number {
  const longer = Math.max(one.length, other.length);
  let same = 0;
  while (same < longer && one[same] === other[same]) same += 1;
  return same < shortestName ? 0 : same / longer;
}
