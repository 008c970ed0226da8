import type { en } from './en.ts';

/** The words of the counter itself: keys, hints, notices. */
export type CounterWords = { readonly [Name in keyof typeof en]: string };
