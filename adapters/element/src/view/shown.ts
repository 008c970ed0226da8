/**
 * All that a view is made from, and all that it can do.
 */
import type { CasePosition, Chart, Input, Strip } from '@keyturn/core';
import type { Rendered, Teller, ToldTexts } from '@keyturn/language';
import type { Sitting } from '../case/sitting.ts';
import type { PageWords } from '../words/page-words.ts';

/** What the hand has begun and not finished; nothing of it belongs to the case. */
export interface Hand {
  /** The figure typed so far on the pad, in plain digits with a point. */
  readonly figure: string;
  /** Picked so far where several answers may hold; null where nothing was touched yet. */
  readonly picked: readonly string[] | null;
  /** The check whose answer is being put right. */
  readonly correcting: string | null;
  /** Which drawer is open. */
  readonly open: 'danger' | 'more' | 'note' | null;
  /** Whether the note was copied; null before that was tried. */
  readonly copied: boolean | null;
  /** True after the first of the two presses by which a keyboard holds. */
  readonly armed: 'confirm' | 'clear' | null;
  readonly isListening: boolean;
}

/** A hand that has begun nothing. */
export const emptyHand: Hand = {
  figure: '',
  picked: null,
  correcting: null,
  open: null,
  copied: null,
  armed: null,
  isListening: false,
};

/** What a view can do. */
export interface Actions {
  readonly take: (...inputs: readonly Input[]) => void;
  readonly say: (line: string) => void;
  readonly hand: (change: Partial<Hand>) => void;
  readonly speakIn: (() => void) | undefined;
  readonly language: (tag: string) => void;
  /** Gives the note to another program of the device, or copies it. */
  readonly passOn: (note: string) => void;
  readonly clear: () => void;
}

/** What a view is made from. */
export interface Shown {
  readonly chart: Chart;
  readonly texts: PageWords;
  readonly flowTexts: ToldTexts;
  readonly speaker: Teller;
  /** BCP 47 tag. */
  readonly locale: string;
  readonly locales: Readonly<Record<string, string>>;
  readonly sitting: Sitting;
  readonly strip: Strip;
  readonly position: CasePosition;
  /** What stands before the person now, in words. */
  readonly now: readonly Rendered[];
  /** What was said last, in words. */
  readonly said: readonly Rendered[];
  /** Notices of the page itself. */
  /** True where the figure that was not taken would be right on a 24 V vehicle. */
  /** The emergency number to be called from here. */
  readonly emergency: string;
  readonly mayBe24: boolean;
  readonly notices: readonly string[];
  readonly hand: Hand;
  /** The pictures of the step in hand, as SVG text, once they can be drawn. */
  readonly pictures: {
    /** Where the leads go, or how the clamp meter is held. */
    readonly meter?: string;
    readonly circuit?: string;
  };
  /** The time of the clock, in milliseconds of the epoch. */
  readonly clock: number;
  readonly act: Actions;
}

/** A text of the page with its one placeholder filled. */
export function fill(text: string, name: string): string {
  return text.replace('{{name}}', () => name);
}
