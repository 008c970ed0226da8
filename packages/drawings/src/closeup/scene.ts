import type { Pen, Point } from '../svg/pen.ts';
import type { Teller } from '@keyturn/language';
import type { Lead } from '../svg/tags.ts';

/** A lead held to a place of a scene: its tip, and where its tag has room. */
export interface Hold {
  readonly at: Point;
  readonly tag: Point;
}

/** One of two batteries, measured by itself: both leads are held there, one place after the other. */
export interface HoldBoth extends Readonly<Record<Lead, Hold>> {
  readonly says: 'first' | 'second';
  /** Where it is said which of the two it is. */
  readonly sign: Point;
}

/** Part of the vehicle seen close to, so large that a place on it cannot be mistaken. */
export interface Scene {
  readonly height: number;
  readonly draw: (pen: Pen, speaker: Teller) => string[];
  readonly places: Readonly<Record<string, Hold | HoldBoth>>;
}
