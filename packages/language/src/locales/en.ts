import type { Locale } from '../locale-names.ts';
import { en as texts } from '../texts/en.ts';
import { enWords as words } from '../words/en.ts';

/** English. */
export const en: Locale = { texts, words };

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
