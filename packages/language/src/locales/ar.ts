import type { Locale } from '../locale-names.ts';
import { ar as texts } from '../texts/ar.ts';
import { latinReaderOf } from '../typed/latin-letters.ts';
import { arLatin } from '../words/ar-latin.ts';
import { arWords as words } from '../words/ar.ts';

/** Arabic. Pure, so that a page that loads its parts leaves it out. */
export const ar: Locale = /* @__PURE__ */ readingLatin();

function readingLatin(): Locale {
  const spelling = { ...words.spelling, digits: arLatin.digits };
  return { texts, words: { ...words, spelling, readLatin: latinReaderOf(arLatin) } };
}

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
