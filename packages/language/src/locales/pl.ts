import type { Locale } from '../locale-names.ts';
import { pl as texts } from '../texts/pl.ts';
import { plWords as words } from '../words/pl.ts';

/** Polish. */
export const pl: Locale = { texts, words };

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
