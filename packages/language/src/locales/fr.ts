import type { Locale } from '../locale-names.ts';
import { fr as texts } from '../texts/fr.ts';
import { frWords as words } from '../words/fr.ts';

/** French. */
export const fr: Locale = { texts, words };

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
