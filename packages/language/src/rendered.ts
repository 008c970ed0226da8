/**
 * Messages put into words, still free of any channel: what a terminal prints, a bot sends and a
 * page shows. Every text is whole and ready to be read aloud.
 */
import type { ReadingMessage } from '@keyturn/core';

/** One thing that can be picked. */
export interface RenderedOption {
  /** Choice or band id. */
  readonly id: string;
  /** What to press for it: "1", "2", … */
  readonly key: string;
  readonly label: string;
}

/** One of the faults in a ranking. */
export interface RenderedFault {
  readonly id: string;
  readonly name: string;
  /** Share of one, now and a turn before. */
  readonly share: number;
  readonly before: number;
}

/** A heading with the lines under it. */
export interface RenderedSection {
  /** What it tells: of a verdict or a decision `rests`, `do`, `stops`, `refund`; of numbers the check, `losses` or the fault. */
  readonly id: string;
  readonly heading: string;
  readonly lines: readonly string[];
}

/** A message in words. */
export type Rendered =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'caution';
      readonly caution: string;
      /** The signal word in the reader's language, as the safety-sign standards give it. */
      readonly word: string;
      readonly text: string;
    }
  | { readonly kind: 'confirm'; readonly text: string }
  | {
      readonly kind: 'question';
      readonly check: string;
      readonly text: string;
      /** How to do it, a step a line; empty where there is nothing to explain. */
      readonly how: readonly string[];
      /** A day is written, or one of the options is picked for it. */
      readonly entry: 'choice' | 'choices' | 'reading' | 'date' | 'work';
      /** Empty for a reading taken by a meter. */
      readonly options: readonly RenderedOption[];
      /** The unit's sign, for a reading. */
      readonly unit?: string;
    }
  | {
      readonly kind: 'scale';
      readonly text: string;
      /** What it means, without the figure; close to a bound, how likely each side is. */
      readonly means: string;
      readonly reading: ReadingMessage;
      /** Short names of the bands, in ascending order. */
      readonly bandLabels: readonly string[];
    }
  | { readonly kind: 'numbers'; readonly sections: readonly RenderedSection[] }
  | {
      readonly kind: 'ranking';
      readonly heading: string;
      readonly faults: readonly RenderedFault[];
    }
  | {
      readonly kind: 'verdict';
      readonly title: string;
      readonly strength: string;
      readonly sections: readonly RenderedSection[];
    }
  | { readonly kind: 'refused'; readonly text: string }
  | { readonly kind: 'done'; readonly text: string };
