import { ar } from './ar.ts';
import { de } from './de.ts';
import { es } from './es.ts';
import { fr } from './fr.ts';
import { pl } from './pl.ts';
import type { PracticeWords } from './practice.ts';

const languages: Readonly<Record<string, PracticeWords>> = { es, de, fr, pl, ar };

/**
 * What a bound goes by, in a language; undefined for a published text, which keeps its own, and
 * where the language has no words for it.
 */
export function practiceIn(locale: string, text: string): string | undefined {
  const words = languages[locale] ?? languages[locale.split('-', 1)[0] ?? ''];
  return words !== undefined && Object.hasOwn(words, text)
    ? words[text as keyof PracticeWords]
    : undefined;
}
