import type { en } from './en.ts';

/** The words of the page itself: keys, hints, notices. */
export type PageWords = { readonly [Name in keyof typeof en]: string };
