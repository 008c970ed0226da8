import type { Locale } from '../locale-names.ts';
import { es as texts } from '../texts/es.ts';
import { esWords as words } from '../words/es.ts';

/** Spanish. */
export const es: Locale = { texts, words };

/** Its two parts, for a page that loads one after the other. */
export { texts, words };
