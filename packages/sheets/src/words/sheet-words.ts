import type { en } from './en.ts';

/** The words of the sheets themselves in one language; what a case says comes from its texts. */
export type SheetWords = { readonly [Name in keyof typeof en]: string };
