import { createInstance } from 'i18next';
import { LanguageError } from '../language-error.ts';
import { isolationIn } from '../numbers/isolate.ts';
import type { GeneralTexts, Say } from './text-key.ts';

/**
 * The sayer of one conversation: an i18next instance of its own, ready at once, without any
 * fallback, gives the text of a key. Plurals follow `Intl.PluralRules` of the locale; in a language
 * that runs from right to left every value is isolated, and values are put in as they are.
 *
 * The sayer throws `text-missing` and `placeholder-missing`, naming the key.
 */
export function createSay(locale: string, texts: GeneralTexts): Say {
  const instance = createInstance();
  void instance.init({
    lng: locale,
    resources: { [locale]: { translation: texts } },
    fallbackLng: false,
    load: 'currentOnly',
    initAsync: false,
    parseMissingKeyHandler: (key) => {
      throw new LanguageError('text-missing', key);
    },
  });
  const { words: isolate } = isolationIn(locale);
  // To find a text and its places takes far longer than to fill them, and both stay as they are.
  const cut = new Map<string, readonly string[]>();
  const piecesOf = (key: string, count: number | string | undefined): readonly string[] => {
    const name = count === undefined ? key : `${key} ${String(count)}`;
    const known = cut.get(name);
    if (known !== undefined) return known;
    const chosen = instance.t(key, {
      skipInterpolation: true,
      ...(typeof count === 'number' ? { count } : {}),
    });
    const pieces = chosen.split(place);
    cut.set(name, pieces);
    return pieces;
  };
  return (key, ...values) => {
    const given: Readonly<Record<string, string | number>> = values[0] ?? {};
    return piecesOf(key, given['count'])
      .map((piece, index) => {
        if (index % 2 === 0) return piece;
        const value = given[piece];
        if (value === undefined) throw new LanguageError('placeholder-missing', piece);
        return typeof value === 'string' ? isolate(value) : String(value);
      })
      .join('');
  };
}

/** A place to be filled; cut at, every second piece is its name. */
const place = /\{\{(\w+)\}\}/u;
