import type { en } from './en.ts';

/** The words of the desk itself: keys, hints, notices. */
export type DeskWords = { readonly [Name in keyof typeof en]: string };
