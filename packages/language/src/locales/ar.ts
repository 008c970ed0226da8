import type { Locale } from '../locale-names.ts';
import { ar as texts } from '../texts/ar.ts';
import { arWords as words } from '../words/ar.ts';

/** Arabic. */
export const ar: Locale = { texts, words };

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
