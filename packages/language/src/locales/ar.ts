import type { Locale } from '../locale-names.ts';
import { ar as texts } from '../texts/ar.ts';
import { latinReaderOf } from '../typed/latin-letters.ts';
import { arLatin } from '../words/ar-latin.ts';
import { arWords as words } from '../words/ar.ts';

/** Arabic. */
export const ar: Locale = {
  texts,
  words: {
    ...words,
    spelling: { ...words.spelling, digits: arLatin.digits },
    readLatin: latinReaderOf(arLatin),
  },
};

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
