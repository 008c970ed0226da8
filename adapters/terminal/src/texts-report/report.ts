import { createHash } from 'node:crypto';
import type { FlatTexts } from './flat-texts.ts';

/** The fingerprints of the English texts that a translation was made from, by key. */
export type MadeFrom = Readonly<Record<string, string>>;

/** What is to be done in one language. */
export interface TextsReport {
  /** Keys that English has and the language has not. */
  readonly missing: readonly string[];
  /** Keys that the language has and English has not. */
  readonly unused: readonly string[];
  /** Texts much longer than the English one. */
  readonly overlong: readonly string[];
  /** Texts whose English text has changed since they were translated, or never was noted. */
  readonly changed: readonly string[];
}

/** A text this many times as long as the English one may not fit where it is shown. */
const mostTimes = 2;

/** Shorter texts than this always fit. */
const shortText = 30;

/** Compares a language with the English texts that it is a translation of. */
export function reportTexts(english: FlatTexts, own: FlatTexts, madeFrom: MadeFrom): TextsReport {
  const keys = [...english.keys()];
  const translated = keys.filter((key) => own.has(key));
  return {
    missing: keys.filter((key) => !own.has(key) || own.get(key)?.trim() === ''),
    unused: [...own.keys()].filter((key) => !english.has(key) && !isPluralForm(key, english)),
    overlong: translated.filter((key) => {
      const length = own.get(key)?.length ?? 0;
      return length > shortText && length > mostTimes * (english.get(key)?.length ?? 0);
    }),
    changed: translated.filter((key) => madeFrom[key] !== fingerprint(english.get(key) ?? '')),
  };
}

/** A language has as many plural forms as its grammar wants. */
function isPluralForm(key: string, english: FlatTexts): boolean {
  return english.has(key.replace(/_(?:zero|one|two|few|many)$/, '_other'));
}

/** Eight hexadecimal digits of the SHA-256 of a text. */
function fingerprint(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 8);
}

/** The fingerprints of all English texts, as of a translation that has just been made. */
export function madeFromNow(english: FlatTexts): MadeFrom {
  return Object.fromEntries([...english].map(([key, text]) => [key, fingerprint(text)]));
}

/** True where nothing is missing, unused or out of date; what is overlong is only pointed out. */
export function isComplete({ missing, unused, changed }: TextsReport): boolean {
  return missing.length === 0 && unused.length === 0 && changed.length === 0;
}
