import type { Locale } from '../locale-names.ts';
import { ar as texts } from '../texts/ar.ts';
import { arWords as words } from '../words/ar.ts';

/** Arabic. */
export const ar: Locale = { texts, words };
