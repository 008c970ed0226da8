import type { Locale } from '../locale-names.ts';
import { de as texts } from '../texts/de.ts';
import { deWords as words } from '../words/de.ts';

/** German. */
export const de: Locale = { texts, words };

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
