/**
 * A sitting kept between visits, in the plain storage of the browser: written at once, so that
 * nothing is lost when a phone closes the page right after an answer.
 */
import type { Chart } from '@keyturn/core';
import { foldCase } from '@keyturn/core';
import type { Sitting } from './sitting.ts';

/** The version of this form. */
const format = 1;

/** The part of the browser's storage that is used. */
export type KeptPlace = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** What was found under a key. */
export type Found =
  | { readonly type: 'sitting'; readonly sitting: Sitting }
  | { readonly type: 'nothing' }
  /** A case that this version cannot go on with, or not a case; it is put aside, not lost. */
  | { readonly type: 'unfit' };

/** Keeps a sitting under a key; false where the browser keeps nothing. */
export function keepSitting(place: KeptPlace | undefined, key: string, sitting: Sitting): boolean {
  try {
    place?.setItem(key, JSON.stringify({ format, ...sitting }));
    return place !== undefined;
  } catch {
    return false;
  }
}

/** Finds a sitting under a key. */
export function findSitting(place: KeptPlace | undefined, key: string, chart: Chart): Found {
  const text = readText(place, key);
  if (text === null) return { type: 'nothing' };
  try {
    const kept = JSON.parse(text) as Sitting & { readonly format: number };
    if (kept.format !== format) return putAside(place, key, text);
    // The events are what counts: what they do not give is no case.
    return { type: 'sitting', sitting: { ...kept, case: foldCase(chart, kept.events) } };
  } catch {
    return putAside(place, key, text);
  }
}

function putAside(place: KeptPlace | undefined, key: string, text: string): Found {
  place?.setItem(`${key}.unfit`, text);
  return { type: 'unfit' };
}

/** Forgets what is kept under a key. */
export function forgetSitting(place: KeptPlace | undefined, key: string): void {
  try {
    place?.removeItem(key);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}

function readText(place: KeptPlace | undefined, key: string): string | null {
  try {
    return place?.getItem(key) ?? null;
  } catch {
    return null;
  }
}
