import type { Speaker } from '@keyturn/language';
import { ar } from './ar.ts';
import { de } from './de.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import { fr } from './fr.ts';
import { pl } from './pl.ts';
import type { SheetWords } from './sheet-words.ts';

const languages: Readonly<Record<string, SheetWords>> = { en, es, de, fr, pl, ar };

/** The sheets' words in a language: its own, or those of the language alone. Throws RangeError. */
export function sheetWordsIn(locale: string): SheetWords {
  const words = languages[locale] ?? languages[locale.split('-', 1)[0] ?? ''];
  if (words === undefined) throw new RangeError(`the sheets have no words in ${locale}`);
  return words;
}

/** First strong isolate, and what ends it: Unicode Standard Annex 9, 2.4. */
const [isolateBegins, isolateEnds] = ['\u2068', '\u2069'];

/** A text of whatever direction, set so that it cannot mix with the words around it. */
export function isolated(text: string, direction: Speaker['direction']): string {
  return direction === 'rtl' ? `${isolateBegins}${text}${isolateEnds}` : text;
}

/** A text with its places filled in: `{name}` by the value of that name. */
export function fill(
  text: string,
  values: Readonly<Record<string, string>>,
  direction: Speaker['direction'],
): string {
  return text.replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = values[name];
    return value === undefined ? place : isolated(value, direction);
  });
}
