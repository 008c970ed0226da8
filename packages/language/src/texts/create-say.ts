import { createInstance } from 'i18next';
import { LanguageError } from '../language-error.ts';
import { isolationIn } from '../numbers/isolate.ts';
import type { GeneralTexts, Say } from './text-key.ts';

/**
 * The sayer of one conversation: an i18next instance of its own, ready at once, without escaping
 * and without any fallback. Plurals follow `Intl.PluralRules` of the locale; in a language that runs from
 * right to left every value is isolated.
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
    interpolation: { escapeValue: false, skipOnVariables: true },
    parseMissingKeyHandler: (key) => {
      throw new LanguageError('text-missing', key);
    },
    missingInterpolationHandler: (text, match: readonly string[]) => {
      throw new LanguageError('placeholder-missing', match[1] ?? text);
    },
  });
  const { words: isolate } = isolationIn(locale);
  // What has no places to fill is the same every time.
  const fixed = new Map<string, string>();
  return (key, ...values) => {
    const given: Readonly<Record<string, string | number>> | undefined = values[0];
    if (given === undefined) {
      const text = fixed.get(key) ?? instance.t(key);
      fixed.set(key, text);
      return text;
    }
    const isolated = Object.entries(given).map(([name, value]): [string, string | number] => [
      name,
      typeof value === 'string' ? isolate(value) : value,
    ]);
    return instance.t(key, Object.fromEntries(isolated));
  };
}
