import { LanguageError } from '../language-error.ts';
import { isolationIn } from '../numbers/isolate.ts';
import type { GeneralTexts, Say } from './text-key.ts';

/** A place to be filled: `{{name}}`. */
const place = /\{\{(\w+)\}\}/gu;

/**
 * The sayer of one conversation, without any fallback. The texts have the form of i18next:
 * `{{name}}` is a place to be filled, and where a `count` is given the text of its plural is taken,
 * `key_one`, by `Intl.PluralRules` of the locale. In a language that runs from right to left every
 * value is isolated; a value is put in as it is, and never read as a text.
 *
 * The sayer throws `text-missing` and `placeholder-missing`, naming the key.
 */
export function createSay(locale: string, texts: GeneralTexts): Say {
  const plurals = new Intl.PluralRules(locale);
  const { words: isolate } = isolationIn(locale);

  const textOf = (key: string): string => {
    const [group = '', name = ''] = key.split('.');
    const text = (texts as Readonly<Record<string, Readonly<Record<string, string>>>>)[group]?.[
      name
    ];
    if (text === undefined) throw new LanguageError('text-missing', key);
    return text;
  };
  return (key, ...values) => {
    const given: Readonly<Record<string, string | number>> = values[0] ?? {};
    const count = given['count'];
    const text = textOf(typeof count === 'number' ? `${key}_${plurals.select(count)}` : key);
    return text.replace(place, (_, name: string) => {
      const value = given[name];
      if (value === undefined) throw new LanguageError('placeholder-missing', name);
      return typeof value === 'string' ? isolate(value) : String(value);
    });
  };
}
